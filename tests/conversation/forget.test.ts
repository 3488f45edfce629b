import { describe, expect, test } from 'vitest';
import { notRequests, requests } from '../language/requests/forget-words.ts';
import { type Turn, talk } from './talk.ts';

const told: Turn[] = [
  'ada: our rig: 100ah agm, fridge 1A',
  'ada: my rig is 60ah gel',
  'sam: my rig is 75ah agm',
];
const { memory } = talk(told);
const owners = ({ memory: { rigs } }: ReturnType<typeof talk>): string[] => Object.keys(rigs).sort();

test('none of 300 messages with a word of forgetting wipes anything, or asks to', () => {
  const wiped = notRequests.filter(text => {
    const done = talk([`ada: ${text}`, 'ada: yes, forget'], { memory });
    return owners(done).join() !== ',ada,sam';
  });
  expect(wiped).toEqual([]);
});

describe('a plain request is asked back, and does it after the button', () => {
  test.for([...requests])('%s', ([text]) => {
    const asked = talk([`ada: ${text}`], { memory });
    expect(asked.last.intent).toBe('forget');
    expect(owners(asked)).toEqual(['', 'ada', 'sam']);
    if (!asked.last.next.includes('yes, forget')) {
      expect(asked.last.text).toMatch(/keep nothing of/);
      return;
    }
    const done = talk(['ada: yes, forget'], { memory: asked.memory });
    expect(owners(done).length).toBeLessThan(3);
  });
});

test.for([
  ['ben', 'ada', 'forget everything', 'a button of another’s question'],
  ['ada', 'ada', 'forget it', 'no question at all'],
] as const)('%s taps yes to %s’s %s: nothing goes', ([who, asker, wish]) => {
  const done = talk([`${asker}: ${wish}`, `${who}: yes, forget`], { memory });
  expect(owners(done)).toEqual(['', 'ada', 'sam']);
});

test('yes counts for ten minutes, and only as the next word', () => {
  const asked = talk(['ada: forget everything'], { memory }).memory;
  const late = talk(['ada: yes, forget'], { memory: asked, at: '2026-01-15T09:11:00Z' });
  expect(owners(late)).toEqual(['', 'ada', 'sam']);
  const gone = talk(['ada: fridge 1A, 100Ah, how long?', 'ada: yes'], { memory: asked });
  expect(owners(gone)).toEqual(['', 'ada', 'sam']);
  expect(owners(talk(['ada: no, keep it', 'ada: yes'], { memory: asked }))).toEqual(['', 'ada', 'sam']);
  expect(owners(talk(['ben: nice sunset', 'ada: yep'], { memory: asked }))).toEqual([]);
});

describe('who may', () => {
  const last = (turns: Turn[], isAdmin: boolean) => talk(turns, { memory, isAdmin });
  test('only an admin clears the chat; another clears what is theirs', () => {
    const done = last(['sam: forget everything', 'sam: yes, forget'], false);
    expect(owners(done)).toEqual(['', 'ada']);
    expect(done.last.text).toMatch(/only an admin/);
    expect(owners(last(['ada: forget everything', 'ada: yes, forget'], true))).toEqual([]);
  });
  test('somebody’s rig goes by them or an admin', () => {
    expect(owners(last(["ada: forget sam's rig", 'ada: yes'], false))).toEqual(['', 'ada', 'sam']);
    expect(owners(last(["sam: forget sam's rig", 'sam: yes'], false))).toEqual(['', 'ada']);
    expect(owners(last(["ada: forget sam's rig", 'ada: yes'], true))).toEqual(['', 'ada']);
  });
  test('nobody changes another’s rig but an admin', () => {
    const changed = last(["ada: sam's rig: 300Ah lithium"], false);
    expect(changed.memory.rigs.sam).toEqual(memory.rigs.sam);
    expect(changed.last.text).toMatch(/Only Sam or an admin/);
    expect(last(["ada: sam's rig: 300Ah lithium"], true).memory.rigs.sam).not.toEqual(memory.rigs.sam);
  });
});

describe('undo', () => {
  test.for(['undo', 'undo that', 'put it back', 'Undo please'])('“%s” puts a rig back', text => {
    const done = talk(['ada: my rig is 200ah lithium', `ada: ${text}`], { memory });
    expect(done.memory.rigs).toEqual(memory.rigs);
    expect(done.last.text).toContain('60 Ah');
  });
  test('a rig that was new is unknown again', () => {
    expect(owners(talk(['lou: my rig is 200ah lithium', 'lou: undo'], { memory }))).toEqual([
      '',
      'ada',
      'sam',
    ]);
  });
  test('not somebody else’s change, not after an hour, not what was forgotten', () => {
    const changed = talk(['ada: my rig is 200ah lithium'], { memory });
    expect(talk(['sam: undo'], { memory: changed.memory }).memory.rigs).toEqual(changed.memory.rigs);
    const late = talk(['ada: undo'], { memory: changed.memory, at: '2026-01-15T10:01:00Z' });
    expect(late.memory.rigs).toEqual(changed.memory.rigs);
    const forgotten = talk(['ada: forget my rig', 'ada: yes', 'ada: undo'], { memory });
    expect(owners(forgotten)).toEqual(['', 'sam']);
  });
});
