import recognizers from '@microsoft/recognizers-text-number-with-unit';
import { type ParsedMessage, read } from '#language/reading.ts';
import type { Section } from './measure.ts';

/**
 * A message and the quantities marked in it by hand, in the units that facts are kept in. What kind of thing it
 * is ("a 12 V fridge") is no figure of its own.
 */
type Marked = readonly [say: string, quantities: readonly (readonly [value: number, unit: string])[]];

const marked: readonly Marked[] = [
  [
    'fridge 1.2A, 100Ah, 3 days?',
    [
      [1.2, 'A'],
      [100, 'Ah'],
      [72, 'h'],
    ],
  ],
  [
    'how long will a 12v 45 watt fridge run on 120 amp hours',
    [
      [45, 'W'],
      [120, 'Ah'],
    ],
  ],
  [
    'FRIDGE 2.5 AMPS 90AH AGM HOW LONG',
    [
      [2.5, 'A'],
      [90, 'Ah'],
    ],
  ],
  [
    '0,8 A lamp on an 80 Ah battery, how long does it last',
    [
      [0.8, 'A'],
      [80, 'Ah'],
    ],
  ],
  [
    '.5a light, 75ah agm, how many hours',
    [
      [0.5, 'A'],
      [75, 'Ah'],
    ],
  ],
  [
    '1.28kWh lithium and a 60W fan 6 hours a night, how many nights',
    [
      [1280, 'Wh'],
      [60, 'W'],
      [6, 'h'],
    ],
  ],
  [
    '2x 105ah agm, 1.5a fridge average, a long weekend?',
    [
      [105, 'Ah'],
      [1.5, 'A'],
      [72, 'h'],
    ],
  ],
  [
    'two hundred amp hours of lithium, 3 amp fridge, how long',
    [
      [200, 'Ah'],
      [3, 'A'],
    ],
  ],
  [
    'charge a 100Ah lfp from 20% with a 20A dcdc, how long',
    [
      [100, 'Ah'],
      [20, '%'],
      [20, 'A'],
    ],
  ],
  ['what size panel for 40Ah a day', [[40, 'Ah']]],
  [
    'we use 600Wh a day, what battery for 2 days',
    [
      [600, 'Wh'],
      [48, 'h'],
    ],
  ],
  [
    '200W panel, 5 peak sun hours, how many amp hours a day',
    [
      [200, 'W'],
      [5, 'h'],
    ],
  ],
  [
    '1500w inverter, 1400w kettle for 5 minutes, 100ah lithium, ok?',
    [
      [1500, 'W'],
      [1400, 'W'],
      [5 / 60, 'h'],
      [100, 'Ah'],
    ],
  ],
  [
    'cable for 30 amps over 6 metres',
    [
      [30, 'A'],
      [6, 'm'],
    ],
  ],
  [
    'what drop on 4m of 16mm2 at 50A',
    [
      [4, 'm'],
      [16, 'mm²'],
      [50, 'A'],
    ],
  ],
  [
    '20 ft of 8 AWG, 25 amps, voltage drop?',
    [
      [6.096, 'm'],
      [8, 'AWG'],
      [25, 'A'],
    ],
  ],
  [
    'what fuse for a 30A dcdc on 10 mm² cable',
    [
      [30, 'A'],
      [10, 'mm²'],
    ],
  ],
  ['agm reads 12.4V at rest, how full', [[12.4, 'V']]],
  [
    'what is 60W in amps at 24V',
    [
      [60, 'W'],
      [24, 'V'],
    ],
  ],
  ['how many amp hours is 20000mAh', [[20000, 'mAh']]],
  [
    '100Ah agm at -5°C, 2A heater fan, how long',
    [
      [100, 'Ah'],
      [-5, '°C'],
      [2, 'A'],
    ],
  ],
  [
    'it is 95F outside, 3.2A fridge, 100ah, how long',
    [
      [35, '°C'],
      [3.2, 'A'],
      [100, 'Ah'],
    ],
  ],
  [
    'cpap 30W for 8hrs on a 50Ah, how many nights',
    [
      [30, 'W'],
      [8, 'h'],
      [50, 'Ah'],
    ],
  ],
  [
    'starter battery 70Ah, stereo 4A, how long before it wont start',
    [
      [70, 'Ah'],
      [4, 'A'],
    ],
  ],
  [
    'generator for a 40A charger, 2h a day',
    [
      [40, 'A'],
      [2, 'h'],
    ],
  ],
  [
    'two 6v 225ah in series, what have i got',
    [
      [6, 'V'],
      [225, 'Ah'],
    ],
  ],
  [
    '1/2 amp pump 20 mins a day on 40ah, how long',
    [
      [0.5, 'A'],
      [20 / 60, 'h'],
      [40, 'Ah'],
    ],
  ],
  ['fridge 1.1-1.4A on 100ah how long', [[100, 'Ah']]],
  [
    '1,200W coffee machine on a 2,000W inverter ok?',
    [
      [1200, 'W'],
      [2000, 'W'],
    ],
  ],
  [
    '1½ hours driving a day, 25A dc-dc, enough for 30ah a day?',
    [
      [1.5, 'h'],
      [25, 'A'],
      [30, 'Ah'],
    ],
  ],
];

const bySuffix: readonly (readonly [RegExp, string, number])[] = [
  [/Ah(PerDay)?$/, 'Ah', 1],
  [/Wh(PerDay)?$/, 'Wh', 1],
  [/(duration|startHour|hours|drivingHours|peakSunHours)(H|PerDay)?$/, 'h', 1],
  [/minutesPerDay$/, 'h', 1 / 60],
  [/Mm2$/, 'mm²', 1],
  [/awg$/, 'AWG', 1],
  [/Percent$/, '%', 1],
  [/(volts|V)$/, 'V', 1],
  [/C$/, '°C', 1],
  [/M$/, 'm', 1],
  [/A$/, 'A', 1],
  [/W$/, 'W', 1],
];

/** Every quantity that was read, wherever it went: facts or a conversion. */
function quantitiesOf(said: ParsedMessage): (readonly [number, string])[] {
  const found: (readonly [number, string])[] = said.conversion
    ? [[said.conversion.value, said.conversion.unit]]
    : [];
  const walk = (value: unknown, key: string): void => {
    if (typeof value === 'number') {
      const [, unit, factor] = bySuffix.find(([suffix]) => suffix.test(key)) ?? [undefined, '', 1];
      found.push([value * factor, unit]);
    } else if (Array.isArray(value)) for (const inner of value) walk(inner, key);
    else if (value !== null && typeof value === 'object')
      for (const [k, inner] of Object.entries(value)) walk(inner, k);
  };
  walk(said.facts, '');
  walk(said.conversion, '');
  return found;
}

const isNear = (a: number, b: number) => Math.abs(a - b) <= 0.005 * Math.max(1, Math.abs(b));

/** How many of the marked quantities are read right; a general recogniser of numbers with units beside it. */
export function quantities(): Section {
  let [all, right, theirs] = [0, 0, 0];
  const missed: string[] = [];
  for (const [say, wanted] of marked) {
    const got = quantitiesOf(read(say));
    const general = recognizers.recognizeDimension(say, 'en-us').map(found => Number(found.resolution.value));
    for (const [value, unit] of wanted) {
      all++;
      if (got.some(([v, u]) => isNear(v, value) && u === unit)) right++;
      else missed.push(`${value} ${unit} of "${say}"`);
      if (general.some(v => isNear(v, value))) theirs++;
    }
  }
  return {
    title: `Quantities read right, of ${marked.length} messages marked by hand`,
    lines: [
      { what: 'read right', value: `${right} of ${all}`, goal: 'all', isMet: right === all },
      { what: 'recognizers-text, the number with any unit', value: `${theirs} of ${all}` },
      ...missed.map(what => ({ what: `missed: ${what}`, value: '' })),
    ],
  };
}
