import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Heard, hear } from '#conversation/hear.ts';
import { emptyMemory } from '#conversation/memory.ts';
import type { Message } from '#conversation/message.ts';
import { asPut } from '#conversation/turns/as-put.ts';
import { isPlainEnough } from '#conversation/unsure/plain-enough.ts';
import { readingsOf, twoReadings } from '#conversation/unsure/two-readings.ts';
import { talk, value } from './talk.ts';

type Option = readonly [intent: string, probability: number, stated: Readonly<Record<string, unknown>>];

const at = new Date('2026-06-01T10:00:00Z');
const says = (text: string): Message => ({ chat: 'c', from: 'Ann', text, at, kind: 'group' }) as Message;

/** A text as if it were read so, the likeliest first. */
function read(text: string, certainty: number, options: readonly Option[]): Heard {
  const heard = hear(emptyMemory(), says(text));
  const [intent] = present(options[0]);
  return {
    ...heard,
    intent,
    certainty,
    hazards: [],
    options: options.map(([name, probability, stated]) => ({ intent: name, probability, stated })),
  } as unknown as Heard;
}

const fridge = { name: 'fridge' };
const lamp = { name: 'lamp' };
const battery = [{ capacityAh: 100 }];
const both = { loads: [fridge, lamp], batteries: battery, durationH: 72 };

describe('one reading is taken though it is unsure', () => {
  test.each<[why: string, certainty: number, ...options: Option[]]>([
    [
      'the others leave out what has no figure',
      0.45,
      ['run-time', 0.6, both],
      ['run-time', 0.3, { ...both, loads: [fridge] }],
    ],
    [
      'or how long',
      0.45,
      ['run-time', 0.6, both],
      ['run-time', 0.3, { loads: both.loads, batteries: battery }],
    ],
    [
      'or count another of the things',
      0.45,
      ['run-time', 0.6, { ...both, loads: [fridge, { ...lamp, count: 2 }] }],
      ['run-time', 0.3, { ...both, loads: [{ ...fridge, count: 2 }] }],
    ],
    ['or are another question of the same facts', 0.45, ['run-time', 0.6, both], ['trip', 0.3, both]],
    [
      'of bare things, less sure',
      0.25,
      ['energy-budget', 0.6, { loads: [fridge, lamp] }],
      ['energy-budget', 0.3, { loads: [fridge] }],
    ],
    [
      'of bare things, each left out in turn',
      0.35,
      ['energy-budget', 0.42, { loads: [fridge, lamp] }],
      ['energy-budget', 0.3, { loads: [fridge] }],
      ['energy-budget', 0.2, { loads: [lamp] }],
    ],
  ])('%s', (_, certainty, ...options) => {
    const heard = read('a line', certainty, options);
    expect(isPlainEnough(readingsOf(heard), heard)).toBe(true);
    expect(twoReadings(heard)).toBeUndefined();
  });

  const other = { ...both, batteries: [{ capacityAh: 120 }] };
  const draws = { ...both, loads: [{ ...fridge, currentA: 2 }, lamp] };
  test.each<[why: string, certainty: number, ...options: Option[]]>([
    ['a figure is another', 0.45, ['run-time', 0.6, both], ['run-time', 0.3, other]],
    ['a figure is left out', 0.45, ['run-time', 0.6, draws], ['run-time', 0.3, { ...both, loads: [lamp] }]],
    ['the other tells more', 0.45, ['run-time', 0.6, { ...both, loads: [fridge] }], ['run-time', 0.3, both]],
    ['another question of other facts', 0.45, ['run-time', 0.6, both], ['trip', 0.3, other]],
    ['no likelier than the rest', 0.45, ['run-time', 0.45, both], ['trip', 0.4, both]],
    [
      'too unsure',
      0.35,
      ['run-time', 0.6, { ...draws, batteries: [{ capacityAh: 100 }] }],
      ['trip', 0.3, draws],
    ],
    ['words alone', 0.45, ['run-time', 0.6, {}], ['trip', 0.3, {}]],
    [
      'the question takes not all of it',
      0.45,
      ['energy-budget', 0.6, { loads: [fridge], fuseA: 10 }],
      ['convert', 0.3, { loads: [fridge], fuseA: 10 }],
    ],
    [
      'health hangs on it',
      0.45,
      ['run-time', 0.6, { ...both, loads: [{ name: 'cpap' }] }],
      ['trip', 0.3, { ...both, loads: [{ name: 'cpap' }] }],
    ],
  ])('and it is asked about where %s', (_, certainty, ...options) => {
    const heard = read('a line', certainty, options);
    expect(isPlainEnough(readingsOf(heard), heard)).toBe(false);
  });

  test('not in a danger, nor where many figures stand', () => {
    const options: Option[] = [
      ['run-time', 0.6, both],
      ['trip', 0.3, both],
    ];
    const heard = read('a line', 0.45, options);
    expect(isPlainEnough(readingsOf(heard), { ...heard, hazards: ['no-fuse'] } as Heard)).toBe(false);
    const long = read('1 A, 2 A, 3 A, 4 A, 5 A, 6 A, 7 A', 0.45, options);
    expect(isPlainEnough(readingsOf(long), long)).toBe(false);
  });
});

describe('words that put one question', () => {
  const level = { batteries: [{ stateOfChargePercent: 55 }] };
  test.each<[text: string, intent: string, ...options: Option[]]>([
    [
      '55%, should I run the generator',
      'charge-time',
      ['generator', 0.4, level],
      ['charge-time', 0.3, level],
    ],
    ['will it make it to morning', 'run-time', ['fault', 0.5, both], ['run-time', 0.4, both]],
    ['will we make it', 'run-time', ['trip', 0.5, {}], ['run-time', 0.4, {}]],
    [
      'can I run a mixer',
      'inverter-check',
      ['convert', 0.5, { loads: [{ name: 'mixer' }] }],
      ['inverter-check', 0.4, { loads: [{ name: 'mixer' }] }],
    ],
    ['mppt or pwm', 'compare', ['solar-wiring', 0.5, {}], ['compare', 0.4, {}]],
    ['how long will the starter last', 'starter-reserve', ['run-time', 0.9, { loads: [lamp] }]],
  ])('%s: %s', (text, intent, ...options) => {
    expect(asPut(read(text, 0.4, options)).intent).toBe(intent);
  });

  test.each<[why: string, text: string, certainty: number, ...options: Option[]]>([
    [
      'something else is as likely',
      'will we make it',
      0.4,
      ['trip', 0.4, {}],
      ['run-time', 0.3, {}],
      ['settle', 0.3, {}],
    ],
    ['it is hardly that', 'will we make it', 0.4, ['trip', 0.9, {}], ['run-time', 0.1, {}]],
    ['reading is sure', 'will we make it', 0.9, ['trip', 0.9, {}], ['run-time', 0.3, {}]],
    ['it asks why', 'why was it flat in the morning', 0.4, ['fault', 0.5, both], ['run-time', 0.4, both]],
    [
      'the house battery is meant too',
      'how long will the starter last, and the house one',
      0.4,
      ['run-time', 0.9, both],
    ],
  ])('are not taken so where %s', (_, text, certainty, ...options) => {
    const heard = read(text, certainty, options);
    expect(asPut(heard)).toBe(heard);
  });

  test('how long a starter battery lasts has nothing of the trip before', () => {
    const trip = 'ann: fridge averages 2A, 100Ah AGM, 6 days?';
    const { last } = talk([trip, 'ann: how many hours will the starter last with a 2A stereo on']);
    expect(last.intent).toBe('starter-reserve');
    // A usual 70 Ah starter battery has 19 Ah to spare: common practice, and 19 Ah by 2 A.
    expect(value(last, 'runTime')).toBeCloseTo(9.5, 0);
  });
});
