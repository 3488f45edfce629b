import { describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { hear } from '#conversation/hear.ts';
import { interpret } from '#conversation/interpret.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { leastSure, leastSureAlone } from '#conversation/unsure/sureness.ts';
import { twoReadings } from '#conversation/unsure/two-readings.ts';
import type { Stated } from '#rig/rig.ts';
import { nothingSaid } from '../intents/setting.ts';
import { talk } from './talk.ts';

const fan = { name: 'fan', currentA: 2 };
const battery = [{ capacityAh: 100 }];
const daily = { loads: [{ ...fan, hoursPerDay: 10 }], batteries: battery };
const once = { loads: [fan], batteries: battery, durationH: 10 };

/** A message with its readings and their probabilities, as if read. */
const read = (...options: [intent: string, stated: object, probability: number][]) => ({
  ...nothingSaid,
  issues: [],
  asRead: { intent: options[0]?.[0] ?? 'none', stated: { ...options[0]?.[1] } },
  certainty: options[0]?.[2] ?? 1,
  options: options.map(([intent, stated, probability]) => ({ intent, stated, probability })) as never,
});
const half = leastSure - 0.05;
const alone = leastSureAlone - 0.05;

test('of two unsure readings both are told in words, with what they share', () => {
  const two = twoReadings(read(['run-time', daily, half], ['run-time', once, half - 0.1]));
  expect(two?.options.map(({ say }) => say)).toEqual(['fan 2 A, 10 h a day', 'fan 2 A, 10 hours in all']);
  expect(two?.shared).toEqual({ batteries: battery });
});

test('two questions are told by their titles', () => {
  const two = twoReadings(read(['run-time', once, half], ['battery-size', once, half - 0.1]));
  expect(two?.options.map(({ say }) => say)).toEqual(['How long will it last?', 'What battery do I need?']);
});

test('of a guess the likeliest other question is told, though its facts differ and readings of the first are nearer', () => {
  const guess = 0.3;
  const two = twoReadings(
    read(
      ['charge-level', once, guess],
      ['charge-level', daily, guess - 0.05],
      ['fault', { volts: 12 }, 0.1],
      ['list', {}, 0.01],
    ),
  );
  expect(two?.options.map(({ say }) => say)).toEqual(['How full is my battery?', 'What is wrong with it?']);
  // Nothing is worked out of a trouble, and no other question may be meant: it is answered.
  expect(twoReadings(read(['fault', { volts: 12 }, guess]))).toBeUndefined();
});

describe('readings of a question that would be answered with the same words', () => {
  const here = { ...daily, place: 'broome' };
  const there = { ...daily, place: 'kununurra' };
  const asRead = (third: number) =>
    read(['run-time', here, 0.45], ['run-time', there, 0.4], ['run-time', once, third]);
  const byLoads = (_: string, { loads }: Stated): string => JSON.stringify(loads);
  const byPlace = (_: string, { place = 'nowhere' }: Stated): string => place;

  test('are as sure as they are together', () => {
    expect(twoReadings(asRead(0.1), byLoads)).toBeUndefined();
  });
  test('are asked about where the answers differ', () => {
    const says = twoReadings(asRead(0.1), byPlace)?.options.map(({ say }) => say);
    expect(says).toEqual(['in Broome', 'in Kununurra']);
  });
  test('so is one that only leaves out what the likeliest takes', () => {
    const { durationH: _d, ...bare } = once;
    expect(twoReadings(read(['run-time', once, 0.45], ['run-time', bare, 0.4]))).toBeUndefined();
  });
  test('are never offered against each other', () => {
    const torn = read(['run-time', here, 0.41], ['run-time', there, 0.15], ['run-time', once, 0.1]);
    const says = twoReadings(torn, byLoads)?.options.map(({ say }) => say);
    expect(says?.join()).not.toContain('Kununurra');
  });
});

test('a lone reading that is unsure is said back, to say yes or no to', () => {
  const two = twoReadings(read(['run-time', daily, alone]));
  expect(two?.echo).toBe('How long will it last? fan 2 A, 10 h a day, 100 Ah battery');
  expect(two?.options.map(({ say }) => say)).toEqual(['Yes', 'No']);
  expect(two?.options[0]).toMatchObject({ intent: 'run-time', facts: daily });
});

test('so is one whose rival differs in nothing that can be said shortly', () => {
  const shaded = { ...once, shade: true };
  const two = twoReadings(read(['trip', once, alone], ['trip', shaded, alone - 0.1]));
  expect(two?.echo).toMatch(/fan 2 A/);
});

test('“yes” answers what was said back, “no” asks for other words', () => {
  const at = new Date('2026-01-15T09:00:00Z');
  const message = { chat: 'c', from: 'kim', text: 'fan 2A 10h on 100Ah', at, kind: 'group' } as const;
  const choice = {
    at: at.getTime(),
    options: [
      { say: 'Yes', intent: 'run-time', facts: daily },
      { say: 'No', intent: 'unclear', facts: {} },
    ],
  } as never;
  const reply = (text: string) => converse({ ...emptyMemory(), choice }, { ...message, text }).answer;
  expect(reply('yes').figures.runTime).toBeDefined();
  expect(reply('No')).toMatchObject({ intent: 'unclear', figures: {} });
});

test.each<[why: string, ...options: [string, object, number][]]>([
  ['sure enough', ['run-time', daily, leastSure], ['run-time', once, 0.3]],
  [
    'readings that answer alike are one',
    ['run-time', once, half],
    ['run-time', { ...once, loads: [{ ...fan, isAverage: true }] }, 0.2],
    ['run-time', { ...once, place: 'broome' }, 0.2],
    ['run-time', daily, 0.03],
  ],
  ['a lone reading, sure enough for one', ['run-time', daily, leastSureAlone]],
  ['talk is not asked about', ['none', {}, half], ['run-time', once, half - 0.1]],
])('not asked about: %s', (_why, ...options) => {
  expect(twoReadings(read(...options), () => 'About 2 days.')).toBeUndefined();
});

test('nothing is answered while two readings stand', () => {
  const at = new Date('2026-01-15T09:00:00Z');
  const message = { chat: 'c', from: 'kim', text: 'fan 2A 10h on 100Ah', at, kind: 'group' } as const;
  const heard = {
    ...hear(emptyMemory(), message),
    ...read(['run-time', daily, half], ['run-time', once, half - 0.1]),
    facts: daily,
    intent: 'run-time',
  };
  const { intent, two } = interpret(emptyMemory(), message, heard);
  expect(intent.name).toBe('unclear');
  expect(two?.options).toHaveLength(2);
  // The same message, read for certain, is answered.
  expect(converse(emptyMemory(), { ...message, text: 'fan 2A, 100Ah, how long?' }).answer.intent).toBe(
    'run-time',
  );
});

test('a yes to what was said back is a yes to that in a group as well, whatever the talk was of', () => {
  const asked = [
    'kim: 1500W inverter trips with the 1600W hair dryer',
    'kim: running a 45W fridge from the start battery overnight, will the ute crank in the morning',
  ] as const;
  for (const kind of ['private', 'group'] as const) {
    const back = talk([...asked], { kind }).last;
    const { last } = talk([...asked, `kim: ${back.next[0] ?? 'yes'}`], { kind });
    expect(last.intent).toBe('starter-reserve');
  }
});
