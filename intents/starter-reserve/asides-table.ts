import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';

/** Whether a house battery may start the engine hangs on its kind. */
const jump = ({ batteries = [] }: Facts): string => {
  const kind = batteries.find(b => b.role !== 'starter' && b.chemistry !== undefined)?.chemistry;
  if (kind === 'lfp')
    return 'No: most lithium camp batteries can’t give a starting current; their BMS cuts out.';
  return kind === undefined
    ? 'Yes off a lead-acid house battery, with jump leads; not off lithium: its BMS cuts out.'
    : 'Yes, a lead-acid house battery can start it with jump leads, if it is well charged.';
};

/** What is asked of the starter battery beside how long it can spare. Common practice. */
export const starterAsides: readonly Aside[] = [
  {
    name: 'jump-pack-size',
    spots: [
      'jump_pack|jump_starter|booster_pack|jumper_pack|jump_box start|diesel|petrol|peak|big|size|which|enough -phones -fridge',
    ],
    hasAnyFigures: true,
    says: 'Go by the engine size on its label: for a 3 L diesel 1500 A peak or more, 2000 A for a 4 L.',
    lines: [
      'Peak amps flatter: an old or cold diesel wants a size more. Charge the pack first and keep it warm.',
      'Red to plus, black to bare metal on the engine, and off again as soon as it runs.',
    ],
  },
  {
    name: 'cold-cranking-amps',
    spots: ['cca|cranking_amps|cold_cranking|crank_rating fridge|run|lights|camp|last'],
    hasAnyFigures: true,
    says: 'Cranking amps tell how hard it starts, nothing of how long it runs a fridge: that’s its Ah.',
    lines: [
      'A quarter of its Ah is for you, the rest for starting: of 70 Ah about 18 Ah, half a day of fridge.',
    ],
    cautions: ['starter-reserve'],
    next: ['what second battery do I need?'],
  },
  {
    name: 'which-cca',
    spots: ['cca|cranking_amps|cold_cranking start|diesel|petrol|enough|or|which -fridge'],
    hasAnyFigures: true,
    says: 'Take the one with more CCA: what counts is at least what the engine’s handbook asks for.',
    lines: [
      'Small diesels mostly want 600 to 800 CCA. In frost the more the better: an old one has lost a third or so.',
    ],
  },
  {
    name: 'jump-order',
    spots: [
      'red black first|then|order|battery_to_battery|which',
      'order|which_first|what_first jump|leads|clamp*',
    ],
    hasAnyFigures: true,
    says: 'Red to the flat plus, red to the good plus, black to the good minus, last black to bare metal.',
    lines: [
      'The last clamp goes on the dead engine, away from its battery, where a spark does no harm. Off again in reverse.',
      'Not a frozen, swollen or leaking battery, and never 24 V on 12 V.',
    ],
  },
  {
    name: 'wont-start',
    spots: [
      'wont_start|wouldnt_start|didnt_start|doesnt_start|dead_this_morning|is_flat|batterys_flat|battery_flat|battery_is_dead -will_it -how_long -will_she -does_it -before -till -until -jump_pack',
    ],
    when: ({ volts }) => volts === undefined,
    hasAnyFigures: true,
    says: 'Jump it from another 12 V car or a jump pack, or charge it; then drive an hour or two.',
    lines: [
      'What ran overnight took what the engine needs: a cool box takes 4 A, a starter battery spares about 20 Ah.',
      'Give the camp gear a second battery, or a socket that goes off with the key.',
    ],
    next: ['what second battery do I need?', 'isolator or dcdc?'],
  },
  {
    name: 'engine-on-or-off',
    spots: [
      'engine on_or_off|running_or_off|off_or_on|running_or_not|on_while|engine_on|engine_running air|compressor|pump|winch|tyres|tires|or',
    ],
    hasAnyFigures: true,
    says: 'Engine on: big draws like a compressor or winch go with it running, outside in the open.',
    lines: [
      'The alternator carries most of it, and the volts stay up so that the thing runs faster.',
      'Never run an engine in a shed or beside a tent: its exhaust kills.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'winch',
    spots: ['winch|winching -house -lithium'],
    hasAnyFigures: true,
    says: 'Winch with the engine running: two minutes at 200 A take about 7 Ah, which it puts back.',
    lines: [
      'Pull for a minute, rest a few, and let it idle on. With the engine off you may not start again.',
    ],
    cautions: ['starter-reserve', 'big-current'],
  },
  {
    name: 'why-high',
    spots: ['why high|set|setting|quarter|three_quarters'],
    says: 'High makes the fridge stop early, near 11.8 V, while the battery can still start the engine.',
    lines: ['Low and medium let it run on to 10.5 or 11 V, too little to start on.'],
    cautions: ['starter-reserve'],
  },
  {
    name: 'start-off-the-house',
    spots: [
      'jump|start|crank engine|truck|car|it|him|her|van|ute|landcruiser|main|mains off|from|with|using|use house|second|lithium|leisure|camper|camping|auxiliary -how_long -run -before_it -still_start -fridge_on',
      'smallest battery start',
    ],
    hasAnyFigures: true,
    says: jump,
    lines: [
      'Red to the flat plus, red to the good plus, black to the good minus, black last to bare metal of the dead engine.',
      'Not a frozen, swollen or leaking one, and never 24 V on 12 V. A jump pack made for it is the simplest.',
    ],
    cautions: ['starter-reserve'],
  },
  {
    name: 'flat-already',
    spots: [
      'wont_start|doesnt_start|does_not_start|will_not_start|wont_crank|does_not_crank|wont_turn_over|didnt_start|did_not_start|only_clicks|just_clicks|wouldnt_start|would_not_start -if -so -until -till -before -risk -worried -long -when -why -next_day -how_many -how_much -tomorrow',
    ],
    hasAnyFigures: true,
    says: 'It’s most likely flat: charge it, or start it with jump leads off another lead-acid battery.',
    lines: [
      'Red to the flat plus, red to the good plus, black to the good minus, black last to bare metal of the dead engine.',
      'Once it runs, drive an hour at least, then charge it right up. Camp gear belongs on a second battery.',
    ],
    cautions: ['starter-reserve'],
    next: ['isolator or dcdc?', 'what second battery do I need?'],
  },
  {
    name: 'parked',
    spots: [
      'stand|stands|standing|parked|sits|sit|sitting|stood|left|leave month|months|weeks|week -fridge -lights -stereo',
    ],
    hasAnyFigures: true,
    says: 'A sound one starts after about a month parked; alarms and trackers shorten that to weeks.',
    lines: [
      'They take about 0.02 to 0.05 A all day: ½ to 1 Ah a day of the 20 Ah or so that it has to spare.',
      'For longer take the minus off, or keep it up with a small panel or charger.',
    ],
    next: ['how do I store a battery?'],
  },
  {
    name: 'how-to-prevent',
    spots: [
      'how stop|prevent|avoid|keep_it_from again|happening|flat|flattening',
      'stop_it_happening|stop_that_happening',
      'gizmo|gadget|device|what|thing|something|anything stops|prevents|protects|cuts_it_off',
    ],
    hasAnyFigures: true,
    says: 'Give the fridge a second battery behind a DC-DC charger or isolator, so the engine’s stays full.',
    lines: [
      'Till then set the fridge’s cut-out to high, or use a socket that goes off with the key.',
      'Charge the flat one right up soon: standing flat ruins it.',
    ],
    next: ['isolator or dcdc?', 'what second battery do I need?'],
  },
  {
    name: 'engine-size',
    spots: [
      'engine_size|size_of_the_engine|bigger_engine|litre|liter matter|fit|buy|replace|which|what -fridge -crank_at -start_at -reads -lights',
      'what cranking_amps|cca|cranker need|fit|buy',
    ],
    when: (_, { facts }) => !facts.loads?.length && facts.volts === undefined,
    hasAnyFigures: true,
    says: 'Yes: a bigger engine, and any diesel, needs more cold cranking amps. Its handbook says how many.',
    lines: [
      'Small diesels mostly want 600 to 800 CCA, petrol engines 400 to 600; in frost the more the better.',
    ],
  },
  {
    name: 'older-or-diesel',
    spots: [
      'old|older|years|aged|tired|worn diesel|it|battery worse|matter|still|harder|less|does|start -cca -cold -second_hand -buy -litre',
    ],
    hasAnyFigures: true,
    when: (_, { facts }) => !facts.loads?.length && facts.volts === undefined,
    says: 'Yes, it leaves less: an old battery has lost a third or so, and a diesel needs twice the kick.',
    lines: [
      'Halve the hours I gave, stop at 12.4 V at rest, and have it load-tested past four years.',
      'Keep a charged jump pack in the car.',
    ],
    cautions: ['starter-reserve'],
  },
  {
    name: 'cold-start',
    spots: [
      'how_cold|cold_before|too_cold|cold_start|frost|freezing start|starts|crank|wont_start|diesel -lithium -fridge -heater',
    ],
    when: ({ volts }) => volts === undefined,
    hasAnyFigures: true,
    says: 'From about 0 °C down a tired battery may fail: at −18 °C even a good one gives half its kick.',
    lines: [
      'The engine needs more just then, a diesel most. Charge it full the evening before, and let the glow plugs finish.',
    ],
  },
  {
    name: 'with-the-engine-on',
    spots: [
      'the_engine_on|engine_on|engine_running|motor_running|engine_idling with|w|if|while|and|even -how_long -not -overnight -before -start_it -or_off',
      'ute_running|engine_running do_i|need|even -how_long -overnight',
    ],
    hasAnyFigures: true,
    says: 'With the engine running the alternator carries it: the starter battery isn’t drawn down.',
    lines: [
      'At idle an alternator gives less, about half: a big light bar or inverter can still take more than that.',
      'Never run it in a shed or beside a tent: its exhaust kills.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'fridge-while-starting',
    spots: [
      'turn|switch|unplug|have_to fridge|lights|everything starting|cranking|when_i_start|when_we_start|before_i_start|before_we_start -overnight -how',
    ],
    hasAnyFigures: true,
    says: 'No need: a fridge’s few amps are nothing to the 200 A or so that a start takes.',
    lines: ['Off it spares a weak battery a little, and keeps delicate things from the dip while it cranks.'],
  },
  {
    name: 'cut-out-enough',
    spots: [
      'cut_out|cutout|cut_off|cutoff|protection enough|set|should|what|strand|protect|low|high -how_long',
    ],
    hasAnyFigures: true,
    says: 'Set it to high, about 11.8 V: it helps, but it is no promise that the engine starts.',
    lines: [
      'An old battery or a cold morning can fail above that. Low and medium run on to 10.5 or 11 V, too little to start on.',
      'Sure is a second battery behind an isolator or DC-DC charger, and a jump pack.',
    ],
    cautions: ['starter-reserve'],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'instead',
    spots: ['what|whats do_instead|advise|suggest|recommend|instead -size', 'what_else can|could|do'],
    says: 'Run it off a second battery or a power station, or start the engine every few hours.',
    lines: [
      'A fridge takes about 13 Ah in ten hours: a 50 Ah lithium or a 500 Wh station does a night.',
      'Else ice in an esky overnight, and the fridge while you drive.',
    ],
    next: ['what second battery do I need?'],
  },
  {
    name: 'one-or-two',
    spots: [
      'need two|second|another|separate|leisure batter*|one -series -parallel -how_long',
      'batteries use|take one_for|one_of_them camp*|gear',
      'from_factory|two_batteries|both_batteries camp|gear|camping|one_for',
    ],
    says: 'One does for lights and phones of an evening; for a fridge overnight have a second battery.',
    lines: [
      'A starter battery has only about a quarter of its label to spare if it’s to start.',
      'Two from the factory work as one for the engine: splitting them is a job for an auto electrician.',
    ],
    cautions: ['starter-reserve'],
    next: ['isolator or dcdc?', 'what second battery do I need?'],
  },
];
