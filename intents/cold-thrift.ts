import type { ParsedMessage } from '#language/reading.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from './asides.ts';
import { cools } from './facts.ts';

const isCold = ({ loads = [] }: Facts): boolean =>
  loads.length === 0 || loads.some(({ name }) => cools(name));

/** With the air's heat told it is worked out. */
const isMild = (facts: Facts): boolean => isCold(facts) && facts.ambientC === undefined;

/** Degrees that a freezer is set to, in the words. */
const freezerC = { from: -10, to: -25 } as const;

const tellsFreezing = ({ recognised: { mentions } }: ParsedMessage): boolean =>
  mentions.some(
    ({ kind, value }) =>
      (kind === 'number' || kind === 'amount') && value <= freezerC.from && value >= freezerC.to,
  );

/**
 * How a thing that cools takes more or less: what it is set to, its lid, the air about it, its age. Each degree between
 * it and the air drives about a twentieth of its heat in mild air. Common practice.
 */
export const coldThrift: readonly Aside[] = [
  {
    name: 'set-to-freeze',
    spots: [
      'freezer_at|thermostat_at|fridge_at|freezer_set|fridge_set|thermostat_set double|twice|half|how_much_more|instead -as_a_freezer -long -last -ambient',
    ],
    hasAnyFigures: true,
    when: (facts, parsed) => isMild(facts) && tellsFreezing(parsed),
    says: 'At −18 °C it takes about one and a half to two times what it takes at 4 °C.',
    lines: [
      'A 40 L one at 25 °C: about 50 Ah a day in place of 31. At −12 °C it takes about a seventh less than at −18 °C.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fridge-or-freezer-mode',
    spots: ['fridge_mode|freezer_mode|or_freezer|or_fridge mode|power|more|use|uses -which -buy -long'],
    when: isMild,
    hasAnyFigures: true,
    says: 'Freezing takes about one and a half to two times what cooling takes.',
    lines: ['A 40 L one at 25 °C: about 50 Ah a day at −18 °C, 31 Ah at 4 °C.'],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'set-warmer',
    spots: [
      'set|setting|turn|turned|run|have fridge|it instead_of|rather_than|in_place_of save|saves|less|more|degrees|help|helps -panel* -inverter -amp -volt* -charger',
      'turn_it|set_it|setting_it|set_the_fridge|turn_the_fridge from|up_to|down_to degrees|save|saves|less|more|help|to -volt* -inverter -charger -panel*',
      'fridge|freezer warmer|colder help|helps|worth|save|saves -outside -day -hot',
    ],
    hasAnyFigures: true,
    when: isMild,
    says: 'Each degree warmer saves about a twentieth, each degree colder takes a twentieth more.',
    lines: [
      'From 2 to 6 °C saves about a fifth; but milk and meat keep safely only at 5 °C or below.',
      'Shade, air around it and few warm things put in save as much again.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'lid-opened',
    spots: [
      'open|opened|opening|opens|lid fridge|freezer|her|it|lid less|not_so_often|not_so_much|all_day|seldom|often|rarely',
    ],
    hasAnyFigures: true,
    when: isCold,
    says: 'It counts for a tenth to a quarter: opened all day it uses that much more, kept shut less.',
    lines: [
      'A chest type loses little of its cold by the lid; warm food put in it costs more than the opening.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'in-the-heat',
    spots: [
      'fridge|freezer|it summer|heat|hot|hotter|heatwave|warm_weather|tropics more|extra|harder|change|affect|affects|matter|difference -long -last -cpap -hot_water -batter* -panel* -solar -cable -inverter -hot_food -warm_food',
    ],
    when: isMild,
    hasAnyFigures: true,
    says: 'Yes: at 40 °C a fridge takes about twice what it takes at 25 °C, at 32 °C about a third more.',
    lines: [
      'A 40 L one: about 31 Ah a day at 25 °C, about 63 Ah at 40 °C. Shade and air around it bring that down.',
      'Tell me the heat, and I’ll count with it.',
    ],
    next: ['fridge at 35 °C, how much a day?'],
  },
  {
    name: 'grown-old',
    spots: [
      'fridge|freezer old|older|ages|aged|years more|drawing|draw|draws|use|uses|using -battery -long -last',
    ],
    when: isCold,
    hasAnyFigures: true,
    says: 'A sound one hardly; a worn seal, a dusty condenser or lost gas makes it run far longer.',
    lines: [
      'Clean the fins, check that the lid grips paper all round, and give it air. Running without a stop in mild weather, it’s sick.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'as-it-should',
    spots: [
      'fridge|freezer using|use|uses|drawing|draws|takes how|know|tell|whether what_it_should|too_much|normal|as_it_should -heat -hot',
    ],
    when: isCold,
    hasAnyFigures: true,
    says: 'In mild weather it should run about a third of the time: time its hum over an hour.',
    lines: [
      'A 40 L one at 25 °C takes about 31 Ah a day (15 to 59). Over half the time in mild weather: check seal, fins and air.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'frozen-first',
    spots: [
      'freeze|frozen meat|food|drinks|bottles|beers|everything first|before|if|save|help|helps -freezer -at_home -anyway -what_about -how_long',
    ],
    hasAnyFigures: true,
    when: isCold,
    says: 'Yes, for the first day or two: packed frozen or ice-cold it saves about 10 to 20 Ah.',
    lines: ['Thawing food cools the rest. Warm food or drink takes about 1½ Ah a kilo to cool.'],
    next: ['what does a fridge use a day?'],
  },
];
