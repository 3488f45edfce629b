import type { PlainQuestion } from './plain-question.ts';

/** What things use, and how a fridge is made to use less; what is bought first; small jobs at the battery. */
export const useQuestions: readonly PlainQuestion[] = [
  {
    name: 'fridge-cut-off-setting',
    spots: [
      'low|lo med|medium|high|hi fridge|freezer|protect* setting|settings|mean*|which|what|mode|modes -temp* -degrees -how_long',
      'low_med_high|low_medium_high|high_medium_low|high_med_low fridge|setting|mean|which',
    ],
    says: 'It is when the fridge switches off to spare the battery: low runs longest, high stops first.',
    lines: [
      'Only the starter battery: high. A second battery: medium, or high to spare an AGM. Lithium looks after itself: low or medium.',
      'If it stops with the battery nearly full, thin cable is losing volts on the way: fit thicker.',
    ],
    next: ['what is voltage drop?', 'my fridge cuts out at night'],
  },
  {
    name: 'fridge-temperature',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'fridge|freezer|esky temp|temperature|degrees|thermostat what|which|whats|best|better|should set|setting|run_it|keep_it|be -outside -outdoors -hot -heat -hotter -volt* -how_long -how_much -shade -solar -if',
    ],
    says: 'Set a fridge to 4 °C and a freezer to −18 °C: each degree colder takes about a twentieth more.',
    lines: [
      'At 6 °C it uses about a tenth less than at 4 °C, but milk, meat and leftovers keep safely only at 5 °C or below.',
      'Frozen food that is eaten within days keeps at −12 °C.',
    ],
    next: ['fridge, 100Ah, 3 days?', 'what does a fridge use a day?'],
  },
  {
    name: 'fridge-as-freezer',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'as_a_freezer|as_freezer|freezer_setting|freezer_mode|on_freezer difference|if|more|double|extra|much_more -a_day -per_day -how_long -days -battery -nights',
    ],
    says: 'Run as a freezer it takes about one and a half to two times what it takes as a fridge.',
    lines: [
      'A 40 L one at 25 °C: about 50 Ah a day in place of 31. At −12 °C it takes about a seventh less than at −18 °C.',
    ],
    next: ['freezer, 100Ah lithium, how long?'],
  },
  {
    name: 'fridge-eco',
    isBeforeSums: true,
    spots: [
      'fridge|freezer eco|eco_mode|max_mode save|saves|saving|difference|better|worth|should|do|does|which -solar',
    ],
    says: 'Yes, a little: eco runs the compressor slower, which saves about a tenth but cools slower.',
    lines: ['Use “max” to cool it down on mains or while you drive, “eco” while it lives off the battery.'],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fridge-opened',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'fridge|freezer|esky keep_opening|keep_on_opening|opened_a_lot -cool* -light',
      'open|opening|opens|opened fridge|freezer|esky difference|matter|matters|more|how_much|use|uses|affect* all_the_time|all_day|lots|often|constantly|heaps|kids|every|door -cool* -light',
    ],
    says: 'Opened all day it uses about a tenth to a quarter more; warm food put in it costs more than that.',
    lines: [
      'A chest type loses little of its cold by the lid, an upright one loses most of it.',
      'Drinks in an ice box of their own keep the kids out of the fridge.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fridge-full',
    isBeforeSums: true,
    spots: [
      'full|fuller|empty|fill|filling|half_empty fridge|freezer save|saves|more_power|use_more|use_less|uses_more|eat_more|difference|better -battery -solar',
    ],
    says: 'Full or empty makes little difference; full of cold things it just gets less warm when opened.',
    lines: [
      'What counts is warm things put in, the heat around it and its vents. Bottles of cold water fill a half empty one.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fridge-warm-load',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'warm|room_temp*|hot cans|can|beer|beers|stubbies|slab|drinks|bottles|fish|food|shopping fridge|freezer|matter|difference|cool|chill|use|day -how_long',
      'cans|beer|beers|stubbies|slab|drinks|fish warm matter|difference|day',
    ],
    says: 'Cooling warm food or drink takes about 1½ Ah a kilo: a slab of 24 cans about 15 Ah.',
    lines: [
      'That is from 30 °C to 4 °C. Freezing it takes about three times as much.',
      'Chill it at home or while you drive, and put it in a few at a time.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fridge-precool',
    isBeforeSums: true,
    spots: ['precool*|pre_cool*|prechill*|pre_chill* -how_long'],
    says: 'Yes: cool the fridge and its food on mains the day before; that saves about 10 to 20 Ah.',
    lines: ['An empty warm fridge needs 1 to 3 hours flat out to get cold, a full one half a day or more.'],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fridge-shaded',
    isBeforeSums: true,
    spots: [
      'shade|blanket|cover|insulat* fridge|freezer put|help|helps|matter|save|saves|difference|worth|does -panel* -solar -heated -electric',
      'put_it|if_we_put|if_i_put in_the_shade -panel* -solar -batter*',
    ],
    says: 'Yes, it helps: each degree cooler around the fridge saves about a twentieth of what it uses.',
    lines: [
      'A cover or blanket is fine on the lid and walls; keep the vents of the compressor open to the air.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fridge-kind',
    isBeforeSums: true,
    spots: [
      'fridge|fridges gas|three_way|absorption|way compressor which|buy|better|get|should -how_many -how_much -how_long',
      'three_way_fridge|way_fridge|gas_fridge or compressor',
    ],
    says: 'Off a battery, the 12 V compressor sort: a gas (three-way) fridge on 12 V takes six times as much.',
    lines: [
      'A three-way one runs for weeks on a bottle of gas, but cools poorly in heat and has to stand level.',
      'On gas it is vented outside, by its maker’s and local rules.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fridge-thriftiest',
    isBeforeSums: true,
    spots: [
      'fridge|fridges hardly_anything|hardly_any|least_power|uses_least|most_efficient|lowest_power|least -noise -hum -quiet*',
    ],
    says: 'A small chest fridge with a compressor: about 20 Ah a day in mild weather, kept in the shade.',
    lines: [
      'Small, thick-walled and opened from above is what saves. Thermoelectric and three-way ones take far more.',
    ],
    next: ['what does a fridge use a day?', 'what battery do I need for a fridge?'],
  },
  {
    name: 'cold-cheaply',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: ['cheapest|cheap cold milk|meat|food|drinks|beer|beers -battery -solar'],
    says: 'For up to three or four nights, block ice in a good ice box; for longer a 12 V fridge pays off.',
    lines: [
      'Freeze the meat and the water bottles at home, keep the box shut and shaded, and drain no cold water.',
      'Milk and meat keep safely only at 5 °C or below.',
    ],
    next: ['what battery do I need for a fridge?'],
  },
  {
    name: 'inverter-by-itself',
    isBeforeSums: true,
    spots: [
      'inverter use|uses|lose|using|draw|draws|drain|drains|eat|eats|take|takes plugged|itself|by_itself|nothing_on|nothing|doing_nothing|idle|standby -leave -switch_off -turn_off -should -ok -better',
      'leaving|left inverter use|uses|eat|drain plugged|nothing|anything',
    ],
    says: 'Yes: an inverter that is on takes about ½ to 1½ A by itself, 5 to 15 Ah a night.',
    lines: [
      'Big ones take the most. Switch it off when you’re done; “eco” or “search” mode saves part of it.',
    ],
    next: ['what is idle draw?'],
  },
  {
    name: 'inverter-loss',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'inverter efficient|efficiency|lose|loses|loss|waste|wastes do_you|how|what|percent|count -volt* -drop -cable -plugged -stays -overnight',
    ],
    says: 'I count 90 %: of each 100 W it takes from the battery, about 90 W come out; the rest is heat.',
    lines: ['With a small load it is worse, as it takes about ½ to 1½ A by itself.'],
    next: ['what is idle draw?'],
  },
  {
    name: 'inverters-disliked',
    isBeforeSums: true,
    spots: ['why inverter|inverters hate|hates|avoid|against|bad|dislike|dont_like|not_use'],
    says: 'They waste: a tenth or more is lost, they draw while idle, and what runs on them is mostly big.',
    lines: [
      'What comes out is mains and can kill, so it needs care with water, leads and wiring.',
      'For what has no 12 V or USB lead, used briefly, one is fine.',
    ],
    next: ['do I need an inverter?'],
  },
  {
    name: 'evaporative-cooler',
    isBeforeSums: true,
    spots: ['evaporative|swamp_cooler|swampy humid|humidity|muggy|coast|any_good|work|works'],
    says: 'Not in humid air: it cools by drying water off, so it works well only in dry heat.',
    lines: ['It draws little, about 2 to 5 A. In the tropics a fan does as much for less.'],
    next: ['what does a fan use overnight?'],
  },
  {
    name: 'lighter-socket',
    hasAnyFigures: true,
    spots: [
      'socket|sockets|lighter|cigarette|ciggy|those max|maximum|limit amps|amp|a|watts|power|volt -fuse_size -inverter -solar -panel*',
      'how_many_amps|how_much socket|sockets|lighter handle|take|cope|give -solar -inverter',
    ],
    says: 'A cigarette-type socket is good for about 10 A, 120 W, for long; the fuse behind it tells.',
    lines: [
      'Its plug runs hot and shakes loose above that. A fridge is better on a plug that locks, with its own cable.',
    ],
    next: ['what cable for 10A over 5 m?'],
  },
  {
    name: 'find-watts',
    spots: ['where find|are|is|look|see|get watts|wattage|amps|draw -solar -panel* -fuse -probe* -monitor'],
    says: 'On its label or plug: look for W. If it says only V and A, multiply them: 12 V times 3.5 A is 42 W.',
    lines: [
      'A plug-in brick: its “output” is what the thing gets, its “input” can be more.',
      'A heating thing takes its label’s watts; a fridge takes them only while its compressor runs.',
    ],
    next: ['what is 60W in amps?'],
  },
  {
    name: 'amps-or-amp-hours',
    spots: ['amps amp_hours|amphours|ah count|add|adding|total|sum -difference -same'],
    says: 'Add up amp hours for the battery: amps times hours a day, for each thing.',
    lines: ['Add up plain amps only for what is on at the same time: that is for cable, fuse and charger.'],
    next: ['what is an amp hour?', 'what do I use a day?'],
  },
  {
    name: 'watts-into-amps',
    spots: [
      'how|whats turn|convert|change|get|go|work_out watts|amps into|to|from amps|watts -fridge -panel* -solar',
    ],
    says: 'Divide the watts by the volts: 60 W on 12 V is 5 A. Amps times volts are watts again.',
    lines: ['Through an inverter take a tenth more amps. Tell me a number, and I’ll turn it.'],
    next: ['what is 60W in amps?', '100Ah in Wh'],
  },
  {
    name: 'watts-and-amps',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: ['watts|watt amps|amp same|equal|identical -hours -hour -how_many -fridge'],
    says: 'No, watts are amps times volts: on 12 V one amp is 12 W, and 60 W is 5 A.',
    lines: ['The fuse and the cable go by amps; what a thing does is told in watts.'],
    next: ['what is an amp hour?', 'what is 60W in amps?'],
  },
  {
    name: 'panel-label',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'panel|panels|solar all_day|all_day_long|full_power|rated_power|rated_output|full_rating reckon*|says|true|really|actually|always|get -charge -leave* -fridge -run -connected -plugged -driv* -on',
    ],
    says: 'No: a panel gives its label’s watts at best for an hour or two around noon; flat, 70 to 80 %.',
    lines: [
      'Over a whole day its watts times 4 to 6 are its watt hours in fair weather, times 2 to 4 in winter.',
    ],
    next: ['what are peak sun hours?', '200W panel in June, what will it make?'],
  },
];
