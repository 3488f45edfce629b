import type { PlainQuestion } from './plain-question.ts';

/** Choosing and using gear, where no figure is needed. */
export const gearQuestions: readonly PlainQuestion[] = [
  {
    name: 'weight',
    spots: [
      'how_heavy|weigh|weighs|how_much_lighter|how_much_heavier|lighter_than|heavier_than|what_weight|difference_in_weight batter*|agm|lithium|lifepo*|gel',
    ],
    hasAnyFigures: true,
    says: '100 Ah of lithium weighs about 11 to 14 kg, 100 Ah of AGM about 28 to 33 kg.',
    lines: [
      'For the same amp hours to use, lithium is about a quarter of the weight, as only half of an AGM is for use.',
      'Other sizes weigh in step: twice the amp hours, twice the kilos.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'fridge-at-night',
    spots: [
      'fridge|freezer|esky turn|switch|leave|unplug|run off|overnight|night|nights|day_and_night|all_the_time|all_day save|should|need|better|worth|ok|okay|can -volt* -cuts -turns -keeps -how_long -last -amp -inverter -car -starter -enough',
    ],
    says: 'Leave it on: once cold it runs little, and it has to catch up if you switch it off.',
    lines: [
      'Better savings: pack it cold at home, keep it shaded and full, open it less, and set it to 4 °C.',
      'On the only starter battery it is another matter: there it goes off with the engine.',
    ],
    next: ['fridge, 100Ah, 3 days?', 'what does a fridge use a day?'],
  },
  {
    name: 'first-battery',
    spots: [
      'best|good|which|what batter* beginner*|timer|newbie|starting_out|just_starting|first_battery|learner -how_long',
    ],
    isBeforeSums: true,
    says: 'A 100 Ah lithium if you can spend it, else a 120 Ah AGM: each runs a small fridge for a weekend.',
    lines: [
      'Lithium: a third of the weight, nearly twice the use, 10 years; it needs a lithium charger and no frost on charge.',
      'AGM: cheaper, puts up with most chargers; use only half, and keep it full.',
    ],
    next: ['agm or lithium?', 'fridge, 100Ah, 3 days?'],
  },
  {
    name: 'two-on-one-cable',
    spots: [
      'run|put|hang|connect|feed|share two|both|several|things|lights|fridge one|same|single cable|wire|lead|circuit|fuse -long -batteries',
    ],
    says: 'Yes, if cable and fuse are for both together: add up the amps.',
    lines: [
      'A fridge is happier alone: what shares its cable pulls its volts down.',
      'From one fused main cable to a fuse box, and from there a thin one to each thing, is the tidy way.',
    ],
    next: ['what cable for 15A over 4 m?'],
  },
  {
    name: 'fridge-plug',
    spots: [
      'plug|socket|connector|outlet fridge|freezer what|which|best|should|type|kind -hot -melt* -warm -cuts -mains -in_at',
    ],
    isBeforeSums: true,
    says: 'A two-pole plug or a screw-in socket on its own fused cable: the dash plug works loose.',
    lines: ['4 or 6 mm² for some 5 m, with a 15 A fuse at the battery, suits most camping fridges.'],
    next: ['what cable for a fridge, 4 m?', 'what is a two-pole connector?'],
  },
  {
    name: 'joining-cable',
    spots: [
      'how join|joining|splice|extend|connect cable|cables|wire|wires -batteries -panel* -parallel -mains -240',
    ],
    says: 'Crimp it with a proper tool and cover it with glued heat-shrink; for thick cable use lugs on a post.',
    lines: [
      'Twist and tape works loose and gets hot. Join only cable of the same size, else the fuse suits the thinner one.',
    ],
    caution: 'fuse-at-battery',
  },
  {
    name: 'cable-length',
    spots: [
      'longer|long|length|distance cable|cables|wire|wires|lead|run thicker|thick|lose|loses|loss|matter|matters|weaker|drop -what_size -how_much -how_thick -what_cable -which_cable',
    ],
    says: 'Yes: twice the length loses twice the volts, so a longer run needs thicker cable.',
    lines: [
      'At 12 V it matters a lot: 5 A through 5 m of 2.5 mm² and back loses about 0.4 V.',
      'Tell me the amps and the metres, and I’ll name the size.',
    ],
    next: ['what cable for 10A over 5 m?', 'what is voltage drop?'],
  },
  {
    name: 'which-fuse',
    spots: ['how know|choose|pick|work_out|tell|decide fuse|fuses -blow* -blew -blown -gone'],
    says: 'A quarter above what the thing draws for long, and never above what its cable carries.',
    lines: [
      'So 8 A asks for a 10 A fuse, on cable of 1.5 mm² or more.',
      'It goes at the battery end. Tell me amps and cable, and I’ll name it.',
    ],
    caution: 'fuse-at-battery',
    next: ['what fuse for a 10A fridge?'],
  },
  {
    name: 'starter-or-deep',
    spots: [
      'car_battery|starter_battery|cranking_battery|normal_battery|ordinary_battery|truck_battery as_a|as_my|instead_of_a|difference|deep_cycle -charg* -how_long -run -phone* -jump* -tonight -flat* -start_it -power_station',
    ],
    says: 'Get a deep-cycle battery for camp: a car battery is made to start an engine, and dies of deep use.',
    lines: [
      'A car battery taken down to half a few dozen times is worn out; a deep-cycle AGM stands hundreds, lithium thousands.',
    ],
    next: ['agm or lithium?', 'what battery do I need for a fridge?'],
  },
  {
    name: 'pure-sine',
    isBeforeSums: true,
    spots: [
      'pure_sine modified or -difference -whats',
      'pure_sine|sine_wave|modified_sine|modified need|do_i|ok|okay|hurt|damage|run|matter|worth -watts_for -what_size',
    ],
    says: 'Get pure sine: it runs everything. Modified sine is only for plain heaters and lamps.',
    lines: [
      'Motors, microwaves, laptop bricks, battery chargers and anything medical can run hot or fail on modified sine.',
    ],
    next: ['what is pure sine?', 'what size inverter for a laptop?'],
  },
  {
    name: 'need-an-inverter',
    isBeforeSums: true,
    spots: [
      'need_an_inverter|need_a_inverter|need_inverter|inverter_necessary do|does|is -wire -socket -medical -monitor -size -big -watt -watts -kettle -microwave -hair* -toast* -coffee -heater -bigger -fuse -cable',
    ],
    says: 'Only for things that have no 12 V or USB lead: phones, lights, fridges and most laptops need none.',
    lines: [
      'A laptop runs on a 12 V or USB-C car charger that gives its watts, and wastes less than an inverter.',
      'Kettles, toasters and hair dryers need a big one, and a big battery: gas is easier at camp.',
    ],
    next: ['what size inverter for a laptop?', 'what is an inverter?'],
  },
  {
    name: 'need-a-monitor',
    spots: ['need|worth|should_i|bother shunt|battery_monitor|monitor -size -baby -medical -screen'],
    says: 'Yes, worth it: a shunt monitor is the one thing that tells how much is really left.',
    lines: [
      'With lithium you need it most, as the volts hardly move. With AGM a voltmeter read at rest will do to begin with.',
    ],
    next: ['what is a shunt?'],
  },
  {
    name: 'earth-the-inverter',
    spots: [
      'earth|ground|earthed|grounded|earthing inverter|battery|panel|solar|frame do|does|should|need|needs|must|have_to|how -hook* -pole -leak* -plug -socket',
      'earthing inverter chassis|body|frame',
    ],
    says: 'Do what its manual says: most inverters have an earth stud for a wire to the vehicle’s body.',
    lines: [
      'Mains coming out of it stays in its own outlet; wiring it to sockets is for a licensed electrician.',
      'The battery’s minus usually goes to the body once, with a cable as thick as the plus.',
    ],
    caution: 'mains-wiring',
  },
  {
    name: 'fuse-place',
    spots: [
      'where|which_end|which_side|how_close|how_far fuse|fuses put|go|goes|fit|mount|place|install|does|from|end -blow* -blew',
    ],
    isBeforeSums: true,
    says: 'At the battery end of the plus wire, within a hand’s width of the terminal.',
    lines: [
      'A cable between two batteries, or from a battery to a charger that is fed from another one, has a fuse at each battery.',
      'Fuse and holder stay dry, reachable and away from the battery’s vents.',
    ],
    next: ['what fuse for a 25A dcdc?'],
  },
  {
    name: 'breaker-instead',
    spots: [
      'breaker ok|okay|instead|better|can|use|same|or fuse|it|that|this|would|better -trip* -keeps -post -site -hook*',
    ],
    isBeforeSums: true,
    says: 'Yes, a DC breaker of the same amps does a fuse’s work, and you can reset it.',
    lines: [
      'It must be made for DC and for your volts; cheap ones trip early, run hot or fail.',
      'Close to a big lithium battery use a fuse that can break its short circuit, as small breakers can’t.',
    ],
    next: ['what is a circuit breaker?'],
  },
  {
    name: 'fuse-for-the-cable',
    spots: ['why|whats|reason fuse smaller|lower|less|under|below cable|wire|lead -blow* -blew'],
    says: 'So that the fuse blows before the cable gets hot: it is there for the cable, not for the load.',
    lines: [
      'It stands between the two: above what the thing draws for long, not above what the cable carries.',
    ],
    next: ['what fuse for 10A on 4mm2?'],
  },
  {
    name: 'join-batteries',
    spots: [
      'how wire|join|connect|hook|link|parallel batteries|second_battery|two_battery together|up|parallel|in_parallel|each_other|second_battery -fridge -panel* -solar -charg* -dcdc -starter -car -jump*',
    ],
    says: 'In parallel: plus to plus, minus to minus, with thick cables of the same length.',
    lines: [
      'Only batteries of one kind, size and age; charge each full first, and have a fuse at each plus.',
      'Take the plus for your gear off one battery and the minus off the other, so that both work alike.',
      'Plus to the next one’s minus is series: that makes 24 V and ruins 12 V gear.',
    ],
    caution: 'mixed-batteries',
    next: ['2 x 100Ah in parallel, how much is that?'],
  },
  {
    name: 'need-a-fuse',
    isBeforeSums: true,
    spots: [
      'need|really|have_to|necessary|bother fuse|fuses do|does|is -slow -size -what_amp -amp -blow* -blew -bigger -panel* -solar -kettle -too -cable_and',
    ],
    says: 'Yes: each cable that leaves the battery needs its own fuse, right at the battery.',
    lines: [
      'Without one a chafed wire glows and burns the vehicle; the fuse is for the cable, not for the fridge.',
      'Tell me the amps and the cable, and I’ll name the size.',
    ],
    caution: 'no-fuse',
    next: ['what fuse for a 10A fridge?', 'what cable for 10A over 5 m?'],
  },
  {
    name: 'first-order',
    spots: [
      'order|first connect*|hook*|wire|disconnect* controller|regulator|panel|panels|solar',
      'which terminal|lead|post|side|wire first',
    ],
    says: 'Controller to the battery first, then the panel; to take it apart, the panel first.',
    lines: [
      'At a battery, plus goes on first and minus last; taking it off, minus first.',
      'A controller that sees the panel before the battery can pick the wrong voltage, or die.',
    ],
  },
  {
    name: 'panel-behind-glass',
    spots: [
      'panel|panels|solar window|windscreen|windshield|glass|inside|dash work|ok|through|behind|charge|make|good',
    ],
    says: 'It works behind glass, but badly: count on half or less of what it makes outside.',
    lines: [
      'Put it outside and turn it to the sun; take in loose panels before you drive or when the wind gets up.',
    ],
    next: ['200W panel in June, what will it make?'],
  },
  {
    name: 'panel-moon',
    spots: [
      'panel|panels|solar night|moon|moonlight|dark|streetlight|lamp work|charge|make|drain|anything -fridge -last -how_long -size',
    ],
    says: 'No, a panel makes nothing at night, and the controller keeps it from draining the battery.',
    lines: ['So the battery has to carry the night: plan for the hours from about 4 pm to 9 am.'],
  },
  {
    name: 'through-the-socket',
    spots: [
      'cig*|lighter|dash|accessory|12v_socket|twelve_volt_socket|socket solar|panel|panels|charge|charger|fridge|inverter|kettle ok|okay|can|plug|run|safe|through|enough -mains -wall -powered -hot -melt* -warm -loose -how_long',
    ],
    says: 'Up to about 8 A, yes: a dash socket’s thin wire and fuse stop at 10 to 15 A.',
    lines: [
      'Phones and a small fridge are fine while the plug stays tight and cool; an inverter over 100 W is not.',
      'Many dash sockets are dead with the key off, so nothing charges or runs through them then.',
      'For a fridge or a panel, better fit a two-pole plug on its own fused cable.',
    ],
    next: ['what cable for a fridge, 4 m?', 'what is a two-pole connector?'],
  },
];
