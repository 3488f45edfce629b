import { describe, expect, test } from 'vitest';
import { hear } from '#conversation/hear.ts';
import { emptyMemory, type Frame, type Memory } from '#conversation/memory.ts';
import { claimsOf } from '#conversation/turns/claims.ts';
import { contestedIn } from '#conversation/turns/contested.ts';

const at = new Date('2026-01-15T09:00:00Z');
const heard = {
  ...hear(emptyMemory(), { chat: 'c', from: 'ann', text: "so who's right?", at, kind: 'group' as const }),
  facts: {},
  claims: [],
};
const frame = (more: Partial<Frame> = {}): Frame => ({
  intent: 'run-time',
  facts: { batteries: [{ capacityAh: 75 }], dailyUseAh: 36 },
  claims: [],
  from: 'ann',
  at: 1,
  ...more,
});
const memory = (...frames: Frame[]): Memory => ({ ...emptyMemory(), frames });
const own = ({ at: time }: Frame) => ({ headline: `of ${time}` });

describe('who is right, where nobody has told a number', () => {
  test('is held against the bot’s own answer', () => {
    const contested = contestedIn(memory(frame()), heard, [], frame(), own);
    expect(contested).toMatchObject({ sides: [] });
    expect(contested?.answer()?.headline).toBe('of 1');
  });
  test('to the last question that has one', () => {
    const open = frame({ at: 2, from: 'bob', asked: ['the battery'] });
    expect(contestedIn(memory(frame(), open), heard, [], open, own)?.answer()?.headline).toBe('of 1');
    expect(contestedIn(memory(open), heard, [], open, own)).toBeUndefined();
  });
  test('an argument itself has no answer', () => {
    const argued = frame({ intent: 'settle' });
    expect(contestedIn(memory(argued), heard, [], argued, own)).toBeUndefined();
  });
  test('and not where one is claimed', () => {
    const claims = [{ who: 'bob', value: 2, unit: 'days' }];
    expect(contestedIn(memory(frame()), heard, claims, frame(), own)).toBeUndefined();
  });
});

describe('“you said 33”', () => {
  const said = { ...heard, claims: [{ who: 'you', value: 33, unit: 'h' }] };
  test('after an answer is of the bot', () => {
    expect(claimsOf(said, 'ann', frame())).toEqual([{ who: 'bot', value: 33, unit: 'h' }]);
  });
  test('with no answer before is of whoever is spoken to', () => {
    expect(claimsOf(said, 'ann', undefined)[0]?.who).toBe('you');
    expect(claimsOf(said, 'ann', frame({ asked: ['the battery'] }))[0]?.who).toBe('you');
  });
});
