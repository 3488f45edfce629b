import { describe, expect, test } from 'vitest';
import { hear } from '#conversation/hear.ts';
import { remembered, withMore } from '#conversation/kept/remembered.ts';
import { emptyMemory, type Frame } from '#conversation/memory.ts';
import { turned } from '#conversation/turns/turn.ts';
import type { Stated } from '#rig/rig.ts';

const at = new Date('2026-01-15T09:00:00Z');
const frame = (intent: Frame['intent'], facts: Stated): Frame => ({
  intent,
  facts,
  claims: [],
  from: 'ann',
  at: 0,
});
const told = (text: string, facts: Stated) => ({
  ...hear(emptyMemory(), { chat: 'c', from: 'ann', text, at, kind: 'group' as const }),
  facts,
  corrects: undefined,
  removed: [],
});

describe('a question turned by facts', () => {
  const fridge: Stated = { batteries: [{ capacityAh: 100 }], loads: [{ name: 'fridge', powerW: 50 }] };
  const freezer: Stated = { loads: [{ name: 'freezer', powerW: 70 }] };
  test('what was called by a wrong name gives way', () => {
    const text = 'i said fridge but it is the freezer, 70 w';
    expect(turned(frame('run-time', fridge), fridge, told(text, freezer)).loads).toEqual(freezer.loads);
  });
  test('what is told beside it does not', () => {
    const text = 'the freezer is 70 w';
    expect(turned(frame('run-time', fridge), fridge, told(text, freezer)).loads).toHaveLength(2);
  });
  test('another charger on the generator stays a charger', () => {
    const before: Stated = { chargers: [{ kind: 'generator' }, { kind: 'mains', currentA: 15 }] };
    const now: Stated = { chargers: [{ kind: 'mains', currentA: 30 }] };
    expect(turned(frame('charge-time', before), before, told('with a 30', now)).chargers).toEqual([
      { kind: 'generator' },
      { kind: 'mains', currentA: 30 },
    ]);
    const alone: Stated = { chargers: [{ kind: 'generator' }] };
    expect(turned(frame('charge-time', alone), alone, told('a 30', now)).chargers).toEqual([
      { kind: 'generator' },
      { kind: 'mains', currentA: 30 },
    ]);
  });
});

describe('a running draw put otherwise', () => {
  const of = (currentA: number, more: object = {}): Stated => ({
    loads: [{ name: 'fridge', currentA, ...more }],
  });
  test.for<[says: string, before: Stated, now: Stated, isAverage: boolean | undefined]>([
    ['3 A while it runs, then 2.5', of(3), of(2.5), false],
    ['an average stays one', of(3, { isAverage: true }), of(2.5), true],
    ['3 A while it runs, then 1.2: an average', of(3), of(1.2), undefined],
    ['1.2 A on average, then 1', of(1.2), of(1), undefined],
  ])('%s', ([, before, now, isAverage]) => {
    const [load] = turned(frame('run-time', before), before, told('more like that', now)).loads ?? [];
    expect(load?.isAverage).toBe(isAverage);
  });
});

describe('what comes on top of a rig', () => {
  const cpap: Stated = { loads: [{ name: 'cpap', currentA: 3, hoursPerDay: 8 }] };
  test('told as one number of amp hours a day', () => {
    expect(withMore({ dailyUseAh: 40 }, cpap).loads).toEqual([
      { name: 'all else', chargeAhPerDay: 40 },
      ...(cpap.loads ?? []),
    ]);
  });
  test('of which no use is told', () => {
    expect(withMore({ batteries: [{ capacityAh: 100 }] }, cpap)).toEqual(cpap);
  });
});

describe('“what about mine, it is a 120” after somebody else’s question', () => {
  const theirs = {
    ...frame('run-time', { batteries: [{ capacityAh: 100 }], loads: [{ name: 'fridge' }] }),
    from: 'bea',
  };
  const message = { chat: 'c', from: 'ann', text: 'what about mine', at, kind: 'group' as const };
  const lent = (facts: Stated, owner: string) =>
    remembered(
      { ...emptyMemory(), frames: [theirs] },
      message,
      { ...told('what about mine', facts), owner },
      { frame: theirs, extent: 'circumstances' },
      undefined,
    ).lent;
  test('the same things run on it', () => {
    expect(lent({ batteries: [{ capacityAh: 120 }] }, 'me')).toEqual({ loads: [{ name: 'fridge' }] });
  });
  test('but not on what is another’s, nor on one’s own loads', () => {
    expect(lent({ batteries: [{ capacityAh: 120 }] }, 'dot')).toEqual({});
    const whole: Stated = { batteries: [{ capacityAh: 120 }], loads: [{ name: 'fan', powerW: 10 }] };
    expect(lent(whole, 'me')).toEqual({});
  });
});
