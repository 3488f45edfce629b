import { describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Frame, type Memory, memorySchema } from '#conversation/memory.ts';
import type { Message } from '#conversation/message.ts';
import { withoutPerson } from '#conversation/whose/without-person.ts';

const at = 1_770_000_000_000;
const frame = (from: string, more: Partial<Frame> = {}): Frame => ({
  intent: 'run-time',
  facts: {},
  claims: [],
  from,
  at,
  ...more,
});
const learned: NonNullable<Memory['learned']>[string] = {
  at,
  mean: [0, 0, 0, 0, 0],
  cov: Array(15).fill(0),
  readings: 1,
  gear: [1, 2, 3],
};
const lesson = { step: 1, isQuiz: false, done: [0], isOpen: false };
const annsClaim = { who: 'Ann', value: 4, unit: 'days' };
const kimsClaim = { who: 'Kim', value: 2, unit: 'days' };

/** A memory in which Ann and Kim have left something wherever somebody can. */
const shared: Memory = {
  ...emptyMemory(),
  rigs: { '': { batteries: [{ capacityAh: 300 }] }, ann: {}, kim: {} },
  learned: { ann: learned, kim: learned },
  lessons: { ann: lesson, kim: lesson },
  people: { t1: 'Ann', '@h1': 'Ann', t2: 'Kim' },
  claims: [annsClaim, kimsClaim],
  frames: [
    frame('ann'),
    // Kim asked by Ann's rig, and about what both claim.
    frame('kim', { owner: 'ann', at: at + 1 }),
    frame('kim', { claims: [annsClaim, kimsClaim], at: at + 2 }),
  ],
  talk: {
    at,
    lastFrom: 'kim',
    asks: [
      ['ann', 'run-time'],
      ['kim', 'trip'],
    ],
  },
  choice: { at, options: [{ say: 'a', intent: 'run-time', facts: {} }] },
  forgetting: { from: 'kim', at, request: { which: 'rig', owner: 'ann' } },
  undo: { from: 'kim', at, rigs: { ann: {} } },
};
const gone = withoutPerson(shared, 'ann');

describe('a group without one person', () => {
  test('names them nowhere', () => {
    expect(JSON.stringify(gone)).not.toMatch(/ann/i);
    expect(memorySchema.parse(gone)).toEqual(gone);
  });
  test('keeps all that is the others’ and the group’s', () => {
    expect(Object.keys(gone.rigs)).toEqual(['', 'kim']);
    expect(gone.learned).toEqual({ kim: learned });
    expect(gone.lessons).toEqual({ kim: lesson });
    expect(gone.people).toEqual({ t2: 'Kim' });
    expect(gone.claims).toEqual([kimsClaim]);
    expect(gone.frames).toEqual([frame('kim', { claims: [kimsClaim], at: at + 2 })]);
    expect(gone.talk?.asks).toEqual([['kim', 'trip']]);
  });
  test('the two readings asked about go with the question that they are of, and stay with another’s', () => {
    expect(gone.choice).toBeUndefined();
    expect(withoutPerson(shared, 'kim').choice).toEqual(shared.choice);
  });
  test('another’s step back and wish to forget stay, where they touch nothing of the person’s', () => {
    const others: Memory = {
      ...shared,
      undo: { from: 'kim', at, rigs: { kim: null } },
      forgetting: { from: 'kim', at, request: { which: 'me' } },
    };
    const { undo, forgetting } = withoutPerson(others, 'ann');
    expect([undo, forgetting]).toEqual([others.undo, others.forgetting]);
    const kimless = withoutPerson(others, 'kim');
    expect([kimless.undo, kimless.forgetting]).toEqual([undefined, undefined]);
  });
  test('changes nothing for somebody of whom nothing is kept, nor what it was handed', () => {
    const before = structuredClone(shared);
    expect(withoutPerson(shared, 'lee')).toEqual(shared);
    expect(shared).toEqual(before);
  });
});

test('in private the chat’s own rig is theirs, and the step back to it goes too', () => {
  const own: Memory = {
    ...emptyMemory(),
    rigs: { '': {}, kim: {} },
    learned: { '': learned },
    undo: { from: 'ann', at, rigs: { '': null } },
  };
  const left = withoutPerson(own, 'ann', '');
  expect([left.rigs, left.learned, left.undo]).toEqual([{ kim: {} }, undefined, undefined]);
});

test('"forget me" in a group does the same: another’s question by that rig goes too', () => {
  let memory = emptyMemory();
  const say = (from: string, text: string): void => {
    const message: Message = {
      chat: 'g',
      from,
      text,
      at: new Date(at),
      kind: 'group',
    };
    memory = converse(memory, message).memory;
  };
  say('Ann', 'my rig: 100Ah AGM, fridge 1.2A');
  say('Kim', 'my rig: 200Ah lithium, fridge 2A');
  say('Kim', "how long will Ann's rig last?");
  expect(memory.frames.some(({ owner }) => owner === 'ann')).toBe(true);
  say('Ann', 'forget me');
  say('Ann', 'yes, forget');
  expect(Object.keys(memory.rigs)).toEqual(['kim']);
  expect(memory.frames.filter(({ from, owner }) => from === 'ann' || owner === 'ann')).toEqual([]);
});
