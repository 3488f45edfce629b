import { describe, expect, test } from 'vitest';
import { withNoChange } from '#conversation/answering/no-change.ts';
import { standingOf, toldNothing } from '#conversation/answering/uncounted-turn.ts';
import { hear } from '#conversation/hear.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { intentNamed } from '#intents';
import type { Stated } from '#rig/rig.ts';
import { interpretedAs } from './as-heard.ts';

const heard = (text: string) =>
  hear(emptyMemory(), {
    chat: 'c',
    from: 'ann',
    text,
    at: new Date('2026-01-15T09:00:00Z'),
    kind: 'group',
  });

describe('a line that tells no fact', () => {
  test.each([
    ['are you sure?', 'doubts'],
    ['that wide??', 'doubts'],
    ['no way', 'agrees'],
    ['so no?', 'agrees'],
    ["it won't, we've tried it", 'agrees'],
    ['what if we only run it at night', 'turns'],
    ['it was off for a while', 'turns'],
    ['not both at once', 'turns'],
    ['no fridge then', 'turns'],
    ["can't bring it after all", 'turns'],
    ['at half throttle then?', 'turns'],
    ['and with the lid left open', 'turns'],
    ['which of those eats most', 'asks'],
    ['he can not miss a night, stop at what level', 'asks'],
    ['is that enough', 'asks'],
    ['use that then?', 'asks'],
  ])('%s', (text, standing) => {
    expect(standingOf(heard(text), { verdict: 'no', headline: 'No: it lasts 2 days.' })).toBe(standing);
  });

  test('a guess of no is doubted by a yes', () => {
    expect(standingOf(heard('so no?'), { verdict: 'yes', headline: 'Yes.' })).toBe('doubts');
  });

  test.each([
    ['so not 450?', 'agrees'],
    ['so not 225?', 'doubts'],
  ])('of a figure: %s', (text, standing) => {
    const said = { verdict: null, headline: '2 in series: 225 Ah at 12 V.' };
    expect(standingOf(heard(text), said)).toBe(standing);
  });
});

const rig: Stated = {
  batteries: [{ capacityAh: 100, chemistry: 'agm' }],
  loads: [{ name: 'fridge', powerW: 45 }],
};
const reply = {
  headline: 'It lasts about 35 hours.',
  verdict: 'no',
  figures: { runTime: { value: 35, low: 30, high: 40, unit: 'h' } },
} as const;

const first = (text: string, facts: Stated = rig, intent = 'run-time'): string =>
  toldNothing(reply, interpretedAs(intent, facts, { text })).headline;

describe('what is said of it', () => {
  test('what can’t be counted is said to be so, with the answer under it', () => {
    const read = interpretedAs('run-time', rig, { text: 'what if we only run it at night' });
    const { headline, lines } = toldNothing(reply, read);
    expect(headline).toMatch(/^I can’t count that in without a figure/);
    expect(lines?.[0]).toBe('Without it: It lasts about 35 hours.');
  });

  test.each([
    ['so no?', 'That’s right. It lasts'],
    ['are you sure?', 'Still the same. It lasts'],
    ['is that enough', 'It lasts'],
    ['so does a jump pack save us', 'As before: It lasts'],
    ['what should i swap it for', 'As before: It lasts'],
    ['and in winter?', 'Tell me how warm it gets then'],
  ])('%s', (text, start) => {
    expect(first(text).startsWith(start)).toBe(true);
  });

  test('a season’s sun hangs on the place', () => {
    const facts = { solar: [{ powerW: 100 }], dailyUseAh: 30 };
    expect(first('even in winter?', facts, 'solar-size')).toMatch(/^The winter sun hangs on the place/);
  });

  test('a fault has no sum that anything could go into', () => {
    const read = interpretedAs('run-time', rig, { text: 'tried it again, it cuts out in the night' });
    expect(toldNothing(reply, read).headline).toMatch(/^I can’t count that in/);
    expect(toldNothing(reply, { ...read, intent: intentNamed('fault') }).headline).toMatch(/^As before: /);
  });

  test('first lines fit a phone', () => {
    for (const text of ['what if we only run it at night', 'and in winter?'])
      expect(first(text).length).toBeLessThanOrEqual(100);
  });
});

describe('a thing named again', () => {
  const said = { loads: [{ name: 'fridge' }] };
  const withFrame = (loads: Stated['loads']) => ({
    ...interpretedAs('run-time', said, { text: 'we run the fridge only in the daytime' }),
    frame: { intent: 'run-time', facts: { ...rig, loads }, claims: [], from: 'ann', at: 0 },
    replay: () => reply,
  });
  test('that was counted is no unknown one', () => {
    const { headline } = withNoChange(reply, withFrame(rig.loads) as never);
    expect(headline).toMatch(/^I can’t count that in/);
  });
  test('that nobody has counted is asked for', () => {
    const { headline } = withNoChange(reply, withFrame([]) as never);
    expect(headline).toBe('I can’t count the fridge yet: what does it draw?');
  });
});
