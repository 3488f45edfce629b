import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Heard, hear } from '#conversation/hear.ts';
import { emptyMemory, type Frame, type Memory } from '#conversation/memory.ts';
import type { Message } from '#conversation/message.ts';
import { answeringBack } from '#conversation/turns/asked-back.ts';
import { withoutDispute } from '#conversation/turns/dispute.ts';
import { leastSure } from '#conversation/unsure/sureness.ts';

const at = new Date('2026-06-01T10:00:00Z');
const says = (text: string): Message => ({ chat: 'c', from: 'Ann', text, at, kind: 'group' }) as Message;
const frame = (more: Partial<Frame> = {}): Frame => ({
  intent: 'run-time',
  facts: { loads: [{ name: 'fan', powerW: 60 }] },
  claims: [],
  from: 'ann',
  at: at.getTime(),
  ...more,
});
const memory = (more: Partial<Memory>): Memory => ({ ...emptyMemory(), ...more });

/** A message of which it isn't sure whether it is an argument. */
function unsure(text: string, first: string, second: string): Heard {
  const heard = hear(emptyMemory(), says(text));
  const option = { ...present(heard.options[0]), stated: { loads: [{ powerW: 90 }] } };
  return {
    ...heard,
    intent: first,
    certainty: 0.5,
    options: [
      { ...option, intent: first, probability: 0.5 },
      { ...option, intent: second, probability: 0.5 },
    ],
  } as Heard;
}

describe('an argument needs somebody to argue with', () => {
  const heard = unsure('make it 90W', 'settle', 'run-time');
  test('a turn of one’s own question is none', () => {
    const taken = withoutDispute(memory({ frames: [frame()] }), says('make it 90W'), heard);
    expect(taken).toMatchObject({ intent: 'run-time', claims: [] });
    expect(taken.options.map(({ intent }) => intent)).toEqual(['run-time']);
    expect(taken.certainty).toBeGreaterThan(heard.certainty);
  });
  test.each<[string, Partial<Memory>]>([
    [
      'another has claimed something',
      { frames: [frame()], claims: [{ who: 'Bob', value: 3, unit: 'days' }] },
    ],
    ['the question is another’s', { frames: [frame({ from: 'bob' })] }],
    ['nothing was asked', {}],
    ['it was argued already', { frames: [frame({ intent: 'settle' })] }],
  ])('it may be one where %s', (_, kept) => {
    const surely = unsure('90W surely', 'settle', 'run-time');
    expect(withoutDispute(memory(kept), says('90W surely'), surely)).toBe(surely);
  });
  test('a figure told to one’s own answer, plainly so, is set against that', () => {
    const plain: Heard = {
      ...unsure('i get 60', 'settle', 'run-time'),
      certainty: leastSure,
      claims: [{ who: 'i', value: 60, unit: '' }],
    };
    expect(withoutDispute(memory({ frames: [frame()] }), says('i get 60'), plain)).toBe(plain);
    const open = memory({ frames: [frame({ asked: ['the battery'] })] });
    expect(withoutDispute(open, says('i get 60'), plain).intent).toBe('run-time');
  });
  test('a turn is none, whatever others guessed meanwhile', () => {
    const kept = memory({ frames: [frame()], claims: [{ who: 'Bob', value: 3, unit: 'days' }] });
    expect(withoutDispute(kept, says('make it 90W'), heard).intent).toBe('run-time');
  });
  test('it may be one where its words claim', () => {
    const claim = unsure('I reckon 90W', 'settle', 'run-time');
    expect(withoutDispute(memory({ frames: [frame()] }), says('I reckon 90W'), claim)).toBe(claim);
  });
});

describe('what was asked back for belongs to the question that lacked it', () => {
  const waiting = memory({ frames: [frame({ asked: ['the battery'] })] });
  const heard = unsure('the 90W one', 'rig', 'run-time');
  test('told shortly, it is not asked about again', () => {
    expect(answeringBack(waiting, says('the 90W one'), heard)).toMatchObject({
      intent: 'run-time',
      certainty: leastSure,
    });
  });
  test.each<[string, Memory, Heard]>([
    ['nothing was asked back', memory({ frames: [frame()] }), heard],
    ['another was asked', memory({ frames: [frame({ from: 'bob', asked: ['the battery'] })] }), heard],
    ['it is sure', waiting, { ...heard, certainty: 0.9 }],
    ['it is long', waiting, { ...heard, words: 12 }],
  ])('nothing changes where %s', (_, kept, said) => {
    expect(answeringBack(kept, says('the 90W one'), said)).toBe(said);
  });
});
