import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Turn, talk, value } from './talk.ts';

describe('a thing told closer after its answer', () => {
  const rig: Turn = 'Fay: my battery is 120ah lithium, fridge is 50w';
  const asked: Turn = 'Fay: how many days have i got';
  test.each([
    'kids keep opening it lol, say its running 70% of the time',
    'the kids leave it open so more like 70% on',
    'its on about 70% of the time in this heat',
  ])('“%s” answers that again', text => {
    const { last, memory } = talk([rig, asked, `Fay: ${text}`]);
    expect(last.intent).toBe('run-time');
    expect(value(last, 'dailyUse')).toBeCloseTo(65.6, 0);
    expect(memory.rigs.fay?.loads?.[0]?.dutyPercent).toBeUndefined();
  });
  test('hours are those of each day', () => {
    const { answers } = talk([
      'Bob: how much does a diesel heater use overnight',
      'Bob: its the 2kw one, 10 hours, on low',
      'Bob: so with our 75ah leisure battery how many nights is that',
    ]);
    expect(present(answers[1]).text).toMatch(/^About 17 Ah a day/);
    expect(present(answers[2]).text).toMatch(/^It lasts about 2 nights/);
  });
  test('what is told of other gear is kept', () => {
    const { last } = talk([rig, asked, 'Fay: my panel is 160w']);
    expect(last.intent).toBe('rig');
  });
});

test('the kilowatts of a heater that burns fuel are its heat', () => {
  const { last } = talk(['Ann: 2kw diesel heater 10 hours a night, how many Ah']);
  expect(value(last, 'dailyUse')).toBeLessThan(40);
});

describe('what a question started from stays', () => {
  test('the level, with another battery in', () => {
    const { last } = talk([
      'Tui: how long to charge a 100ah lithium from flat with a 20a charger',
      'Tui: whats that on a 200 then',
    ]);
    expect(last.text).toMatch(/200 Ah lithium at 0 %/);
  });
  test('hours a night, and another battery beside the one', () => {
    const { answers } = talk([
      'Bob: Three of us, each with a cpap at 35W, 7 hours',
      'Bob: one 100Ah lithium, how many nights?',
      'Bob: and if one of us brings another 50Ah',
    ]);
    expect(present(answers[1]).text).toMatch(/^It lasts about 1¼ nights/);
    expect(present(answers[2]).text).toMatch(/^It lasts about 2 nights/);
    expect(value(present(answers[2]), 'usableCapacity')).toBeCloseTo(120, -1);
  });
  test('a day’s use more is none of a battery', () => {
    const { last } = talk([
      'Al: 100ah lithium, fridge 40ah a day, how many days',
      'Al: and if we bring another 20ah a day of lights',
    ]);
    expect(value(last, 'usableCapacity')).toBeCloseTo(80, 0);
    expect(value(last, 'dailyUse')).toBeCloseTo(60, 0);
  });
});
