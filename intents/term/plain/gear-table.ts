import type { PlainQuestion } from './plain-question.ts';

/** Choosing and using gear, where no figure is needed. */
export const gear: readonly PlainQuestion[] = [
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
      'need|needs|have_to|necessary inverter do|does|is -wire -socket -medical -monitor -size -big -watt -watts -kettle -microwave -hair* -toast* -coffee -heater -bigger -fuse -cable',
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
