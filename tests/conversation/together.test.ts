import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Turn, talk, value } from './talk.ts';

const fridge: Turn = 'Ben: my fridge uses 30ah a day';
const freezer: Turn = 'Zoe: our freezer is 45ah a day';

describe('what several people run, together', () => {
  test.each(["so what's the lot together", "what's that all up", "what's the total for both of us"])(
    '“%s” is summed, and whose is said',
    text => {
      const { last } = talk([fridge, freezer, `Ben: ${text}`]);
      expect(value(last, 'dailyUse')).toBeCloseTo(75, 0);
      expect(last.text).toMatch(/From Zoe's rig: freezer 45 Ah a day/);
      expect(last.text).not.toMatch(/From Ben/);
    },
  );
  test('somebody who told nothing hears whose each is', () => {
    const { last } = talk([fridge, freezer, 'Max: what is that combined']);
    expect(value(last, 'dailyUse')).toBeCloseTo(75, 0);
    expect(last.text).toMatch(/From Ben's rig/);
    expect(last.text).toMatch(/From Zoe's rig/);
  });
  test('goes into the question of who put theirs to it', () => {
    const { answers } = talk([
      'Chris: fridge uses 1.5ah every hour',
      'Nat: plus my cpap, 25ah a night',
      "Chris: what's that all up for a day",
      'Nat: will our 120ah lithium do 2 nights of it without any sun',
    ]);
    expect(value(present(answers[2]), 'dailyUse')).toBeCloseTo(61, 0);
    expect(answers[2]?.text).toMatch(/From Nat's question: cpap 25 Ah a day/);
    expect(answers[3]?.verdict).toBe('no');
    expect(answers[3]?.text).toMatch(/From Chris's question/);
  });
  test('“the lot” and “both” on a battery', () => {
    const { last } = talk([fridge, freezer, 'Zoe: how long would a 200ah lithium run the lot']);
    expect(value(last, 'dailyUse')).toBeCloseTo(75, 0);
    const both = talk([fridge, freezer, 'Ben: does a 200ah lithium do both for 2 days']);
    expect(value(both.last, 'usableCapacity')).toBeCloseTo(160, 0);
    expect(value(both.last, 'dailyUse')).toBeCloseTo(75, 0);
  });
  test('a use told as one number is called by who told it', () => {
    const { last } = talk(['Al: i use 30ah a day', "Bo: we're on 45ah a day", "Al: so what's the total"]);
    expect(last.text).toMatch(/^About 75 Ah a day\.\nBo’s use 45 Ah, Al’s use 30 Ah\./);
  });
});

test('“that plus” is what somebody else has just spoken of', () => {
  const { last } = talk([
    'Kim: fridge is 3A average',
    "Lou: i've a 100ah agm, would it run that and my 20W light overnight, 12 hours",
  ]);
  expect(last.text).toMatch(/Counted: fridge 3 A; light 20 W/);
  expect(last.text).toMatch(/From Kim's rig: fridge 3 A/);
});

describe('nothing is put together', () => {
  test('of several things of one’s own the total is theirs', () => {
    const { last } = talk([
      freezer,
      'Sam: starlink 30ah a day and the fridge 40ah a day, what do i use?',
      "Sam: what's the total",
    ]);
    expect(value(last, 'dailyUse')).toBeCloseTo(70, 0);
    expect(last.text).not.toMatch(/Zoe/);
  });
  test('before what somebody said of something else', () => {
    const { last } = talk([
      fridge,
      freezer,
      'Zoe: what fuse for a 30 A pump?',
      'Ben: fridge 30ah a day, how long on 100ah lithium',
      'Ben: and all up for 2 days?',
    ]);
    expect(last.text).not.toMatch(/Zoe/);
  });
});
