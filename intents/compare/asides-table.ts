import type { Aside } from '../asides.ts';

/** Two ways to the same end that no figure of theirs decides. Common practice. */
export const compareAsides: readonly Aside[] = [
  {
    name: 'twelve-volt-tv',
    spots: ['tv|telly mains|inverter v|twelve or|better|vs|want|buy -uses -draws -how_long'],
    says: 'A 12 V one: it takes its 20 to 40 W and no more, where an inverter adds 5 to 15 W just being on.',
    lines: [
      'Its supply must stand 11 to 14.5 V. A mains one with a 12 V brick may run straight on a steady 12 V.',
    ],
  },
  {
    name: 'bigger-fridge',
    spots: [
      'litre|liter|litres|l|bigger|larger fridge|freezer more|much|less|eat*|uses -battery -panel -freezer -lithium -agm -power_station',
    ],
    when: ({ loads = [] }) => loads.filter(({ currentA, powerW }) => currentA ?? powerW).length < 2,
    hasAnyFigures: true,
    says: 'Not much: the bigger of two takes about a tenth to a fifth more; heat and lid count for more.',
    lines: [
      'A 40 L compressor fridge takes about 30 Ah a day in mild weather, a 60 L one about 35.',
      'A full one is steadier than an empty one; take the size that you fill.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'six-volt-pair',
    spots: ['golf_cart|golf_carts'],
    hasAnyFigures: true,
    says: 'Golf-cart 6 V pairs outlive most 12 V blocks for less; lithium weighs a third and fills faster.',
    lines: [
      'A 6 V pair of 220 Ah gives about 110 Ah at 12 V and stands some 1000 cycles to half; 12 V “deep cycle” blocks mostly fewer.',
      'One dead cell ends the pair. Wet ones want a box vented outside.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'ice-or-fridge',
    spots: [
      'ice|esky|icebox|cool_bag|chilly_bin fridge|compressor|battery or|vs|versus|better|bag|bags|wins|use -no_fridge -fan -power_bank',
    ],
    hasAnyFigures: true,
    says: 'Ice for two days and less; from the third day on, or many weekends a year, the fridge wins.',
    lines: [
      'A good icebox takes about a bag of ice a day in heat: 20 days of two bags at 6 are 240 a year.',
      'A fridge needs about 30 Ah a day and a way to charge that.',
    ],
    next: ['fridge, 100Ah, 3 days?'],
  },
  {
    name: 'leisure-or-car-battery',
    spots: [
      'leisure|deep_cycle car_battery|starter_battery|starter just|same|difference|label|only|really|vs|or -jump* -flat',
    ],
    says: 'No: its thick plates stand being emptied to half hundreds of times; a car battery dies of that.',
    lines: [
      'Some cheap “leisure” ones are starters by another name: look for cycles at 50 % on the sheet, and for its weight.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'crimp-or-solder',
    spots: ['crimp*|crimps solder*'],
    says: 'Crimp: solder wicks up the strands, stiffens them and breaks from shaking; in heat it runs.',
    lines: ['A lug of the cable’s size, the right tool, glued heat-shrink over it. Pull on it hard to test.'],
  },
  {
    name: 'idle-or-drive',
    spots: ['idling|idle driving|drive more|better|faster|which|vs|versus'],
    hasAnyFigures: true,
    says: 'Driving: at idle an alternator gives a third to a half of what it gives on the road.',
    lines: [
      'A DC-DC holds back or drops out at idle. Idling also soots the engine up, and its exhaust can kill near a tent.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'flexible-or-glass',
    spots: [
      'flexible|flexi|glued|stick_on glass|rigid|framed|hard|fixed',
      'flexible_panel|flexible_panels how|worse|worth|last*|good',
    ],
    says: 'Glass, where weight allows: it lasts 20 years and more, a flexible one mostly 2 to 5.',
    lines: [
      'Flat on a roof a flexible one gets hot and makes about a tenth less. It weighs a fifth, and suits curves and awnings.',
    ],
  },
  {
    name: 'rigid-or-folding-price',
    spots: ['rigid|glass|fixed|roof|hard fold*|portable|suitcase worth|value|price|cheaper|dollars|a_watt'],
    hasAnyFigures: true,
    says: 'Rigid, if it lies in the sun anyway: same watts, longer life. Folding pays where you park in shade.',
    lines: [
      'Turned to the sun a folding one makes about a fifth more than one flat on the roof, if you are there to turn it.',
    ],
  },
  {
    name: 'power-bank-or-battery',
    spots: ['power_bank|powerbank or|instead|vs|versus|which battery|one'],
    when: ({ loads = [] }) => !loads.some(({ name }) => name.includes('fridge') || name.includes('heater')),
    hasAnyFigures: true,
    says: 'For phones and lights a power bank does: 20,000 mAh is about 6 Ah at 12 V. A pump needs a battery.',
    lines: [
      'A small 20 Ah lithium has three times as much, runs 12 V gear, and charges from a panel or the car.',
    ],
  },
  {
    name: 'socket-or-two-pole',
    spots: ['lighter|cig*|ciggy|cigarette|dash anderson|two_pole|screw_in which|or|better|into|what'],
    says: 'A 50 A two-pole plug, or a screw-in one: a lighter socket works loose and gets hot.',
    lines: ['Run it from the battery with its own fuse, 15 A on 6 mm² for a fridge at the back.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'heater',
    spots: ['gas|propane|diesel electric heater|heating|heat'],
    hasAnyFigures: true,
    says: 'A diesel or gas heater that is vented outside; never an open flame where you sleep.',
    lines: [
      'An electric one takes 500 W and more, 40 Ah an hour: only on a powered site. A 12 V blanket takes about 4 Ah an hour.',
    ],
    cautions: ['fuel-heater', 'carbon-monoxide'],
  },
  {
    name: 'gas-or-electric-cooking',
    spots: ['gas|butane cook*|hob|stove|induction|kettle|fry* -fridge -heater'],
    says: 'Gas spares the battery: cooking two meals a day by inverter takes about 60 to 90 Ah.',
    lines: [
      'Induction at 1500 W for 40 minutes is about 1 kWh, 90 Ah at 12 V with the losses. Gas wants open air.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'thermoelectric',
    spots: [
      'plug_in_coolbox|coolbox_plug|one_of_those_coolbox*|without_compressor|without_a_compressor',
      'peltier|thermoelectric|thermo_electric|coolbox|cool_box|cooler compressor -inverter',
      'compressor_one|compressor_fridge|compressor_type better|worth -inverter -way',
    ],
    says: 'Compressor: it runs a third of the time, while a thermoelectric box draws its 4 A all day.',
    lines: [
      'That is about 30 Ah a day against 90 or so, and the box only gets some 20 °C under the air.',
      'The box is cheap and fine on the drive, with the engine on.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fold-instead',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [
      'fold*|portable|loose|suitcase|collapsible panel|panels|solar|suitcase instead_of|get_away_with|do_instead|instead|rather_than|replace|do_the_same roof|fixed|mounted|permanent|up_top|on_top -lithium -how_much -how_many -series -parallel',
    ],
    verdict: 'yes',
    says: 'Yes: watt for watt it makes as much or more, as you can put it in the sun and turn it.',
    lines: [
      'You have to set it out, tie it down against the wind and take it in, and it makes nothing while you drive.',
      'A roof panel works by itself all day, flat and hot: about a fifth less than one turned to the sun.',
    ],
    next: ['200W panel in perth in july, what will it make?'],
  },
  {
    name: 'fold-or-roof',
    isAsked: 'if-unsure',
    spots: [
      'fold*|portable|loose|suitcase|collapsible roof|fixed|mounted|permanent|up_top -lithium -how_much -how_many -series -parallel',
      'folding_panel|portable_panel or|which|vs roof|fixed -blanket',
    ],
    says: 'Roof if you drive most days; folding if you park in shade and stay: it goes out into the sun.',
    lines: [
      'A roof panel works by itself all day, flat and hot: about a fifth less than one turned to the sun.',
      'Many have both: watts on the roof, and a loose one for shady camps.',
    ],
    next: ['200W panel in perth in july, what will it make?'],
  },
  {
    name: 'blanket',
    spots: ['blanket panel|panels|folding|solar|any_good|worth -electric -heated'],
    says: 'A folding panel makes more for its watts and lasts longer; a blanket packs smaller and lighter.',
    lines: [
      'A blanket lies flat and gets hot: expect half to two thirds of its label on a good day.',
      'Look at its Isc and at the plug, not at the watts in the advert.',
    ],
    next: ['200W panel in perth in july, what will it make?'],
  },
  {
    name: 'flat-or-tilted',
    spots: ['flat tilt*|angle*|propped', 'tilt* worth|bother'],
    says: 'Tilt them in winter, for a third more or so; in summer flat costs little.',
    lines: [
      'Loose ones are turned to the sun morning and afternoon for about a fifth more.',
      'Tell me a place, and I’ll work out both.',
    ],
    next: ['200W panel in perth in july, what will it make?'],
  },
  {
    name: 'inverter-or-direct',
    spots: [
      'inverter usb*|direct*|straight|twelve|off_the_battery|waste*|lose* -size -big -kettle -series',
      'is_that_the_same laptop*|laptops|tv|phones',
      'inverter laptop* charger|plug|direct*|better -size -big',
    ],
    says: 'Straight from 12 V or USB-C: an inverter loses 10 to 15 %, and 5 to 15 W just being on.',
    lines: [
      'A laptop on a USB-C car charger takes its watts and little more. A fridge with a 12 V lead runs on that.',
      'The inverter is for what has no such lead. Switch it off when you’re done.',
    ],
    next: ['what is idle draw?'],
  },
  {
    name: 'twelve-volt-fridge',
    spots: ['v_one|v_fridge|twelve_volt better|buy|cheaper|worth -kettle -way'],
    says: 'Yes, for camp a 12 V compressor fridge: about half of what a house fridge takes by inverter.',
    lines: [
      'It needs no inverter left on, stands shaking and a slope, and stops before the battery is flat.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'power-station',
    spots: ['power_station|powerstation|power_pack|all_in_one', 'not_handy|arent_handy|not_very_handy'],
    says: 'Power station if you want it to work out of the box; a battery box for price and repair.',
    lines: [
      'For the same Wh a box of parts costs about half, charges faster from the car, and each part can be swapped.',
      'A power station is one thing to carry and has its inverter built in; many charge slowly from a dash socket.',
    ],
  },
  {
    name: 'generator-or-solar',
    spots: ['generator|genny|genset|gennie solar|panel*'],
    says: 'Solar for each day; a small generator only as backup for grey weeks and for big loads.',
    lines: [
      'It is silent, needs no fuel and charges all day. Many parks limit generator hours.',
      'Tell me what you use a day, and I’ll work out both.',
    ],
    cautions: ['carbon-monoxide'],
    next: ['what solar do I need?', 'what generator do I need?'],
  },
  {
    name: 'battery-or-solar',
    spots: ['bigger|more|second|extra|larger battery|batteries solar|panel*'],
    says: 'Solar first, if you stay over two days: a bigger battery only moves the day it runs out.',
    lines: [
      'If it is flat by the first morning, the battery is too small for a night, or never gets full.',
      'Tell me what you use a day, and I’ll work out both.',
    ],
    next: ['what solar do I need?', 'what battery do I need?'],
  },
  {
    name: 'mppt-or-cheap',
    spots: ['mppt cheap*|or|pwm|worth|other|difference', 'one_small_panel|small_panel|just_one_panel'],
    says: 'MPPT, for 10 to 30 % more; on one small 12 V panel, up to 100 W or so, PWM will do.',
    lines: [
      'It gains most with cold, with low batteries and with panels of more than 12 V, where PWM wastes half.',
      'Tell me the watts, and I’ll work out both.',
    ],
    next: ['what controller for a 200W panel?'],
  },
  {
    name: 'driving-or-camp',
    spots: ['driving|drive camp|parked|stopped|stationary|at_night better|charge|when'],
    says: 'While driving: the alternator carries it then, and your battery stays full for camp.',
    lines: [
      'At camp it comes out of the battery; in the middle of a sunny day it comes straight off the panels.',
    ],
  },
];
