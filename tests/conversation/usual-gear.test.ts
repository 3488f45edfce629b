import { describe, expect, test } from 'vitest';
import { talk, value } from './talk.ts';

// What nobody told is assumed by name where that can't hurt, and one thing is asked for.

const questions = (text: string): number => text.split('?').length - 1;

describe('usual gear in place of what was not told', () => {
  test.each<[text: string, intent: string, says: RegExp, asks: RegExp]>([
    [
      '38%, should I drive now?',
      'charge-time',
      /^Yes, drive now: it is at 38 %/,
      /What battery have you got\?/,
    ],
    [
      'lithium at 38%, should I charge now?',
      'charge-time',
      /^Soon: it is at 38 %, still above the 20 %/,
      /What battery/,
    ],
    ['how long to charge my 120Ah AGM?', 'charge-time', /^About \d.* on the charger/, /What charges it\?/],
    [
      'how long must I drive to fill my 120Ah AGM?',
      'charge-time',
      /of driving to fill it/,
      /What charges it\?/,
    ],
    ['how long to charge with a 10A charger?', 'charge-time', /on the charger/, /What battery/],
    ['how long will 200Ah last?', 'run-time', /^It lasts about 3/, /What runs on yours\?/],
    [
      'fridge on lithium, how long will it last?',
      'run-time',
      /^A typical 100 Ah lithium runs it/,
      /What battery/,
    ],
    [
      'battery at 70%, fridge on, how long will it last?',
      'run-time',
      /^A typical 100 Ah AGM at 70 % runs it/,
      /What battery/,
    ],
    ['what do I need to buy?', 'list', /^You need \d+ Ah of AGM/, /what will it run\?/],
  ])('%s', (text, intent, says, asks) => {
    const { last } = talk([`ann: ${text}`]);
    expect(last.intent).toBe(intent);
    expect(last.text).toMatch(says);
    expect(last.text).toMatch(asks);
    expect(questions(last.text)).toBe(1);
    expect(last.text).toContain('Assumed:');
  });

  test('two batteries are joined without their size', () => {
    const { last } = talk(['ann: two AGM batteries in parallel, what do I get?']);
    expect(last.text).toMatch(/^In parallel: still 12 V, with twice the amp hours/);
    expect(last.text).toContain('100 Ah battery (each, as you told no size)');
  });

  test.each([
    ['a cable', 'what cable for a fridge?'],
    ['a fuse', 'what fuse do I need?'],
    ['lithium near freezing', 'lithium, it is 2 °C here, how long to charge?'],
    ['a medical device', 'how long will my cpap last?'],
  ])('%s is never guessed', (_, text) => {
    expect(talk([`ann: ${text}`]).last.figures).toEqual({});
  });

  test('what was asked for goes on in the same question', () => {
    const { last } = talk(['ann: how long to charge a 100Ah AGM at 50%?', 'ann: 10A charger']);
    expect(last.intent).toBe('charge-time');
    expect(last.text).not.toContain('?');
    expect(value(last, 'chargeTime')).toBeGreaterThan(5);
  });
});

describe('a few words after an answer tell more of the fridge', () => {
  const asked = 'ann: fridge 2A, 100Ah AGM, how long?' as const;
  test.each<[told: string, before: `${string}: ${string}`, dailyAh: number]>([
    // 2 A for 24 h, a third, 40 % and half of it.
    ['average', asked, 48],
    ['it only runs a third of the time', asked, 16],
    ["it's running 40% of the time", asked, 19],
    ['runs half the time', asked, 24],
  ])('%s', (told, before, dailyAh) => {
    const { last } = talk([before, `ann: ${told}`]);
    expect(Math.round(value(last, 'dailyUse'))).toBe(dailyAh);
  });

  test('the draw while it runs', () => {
    const { answers, last } = talk([asked, 'ann: only while it runs']);
    expect(value(last, 'dailyUse')).toBeLessThan(0.6 * value(answers[0] ?? last, 'dailyUse'));
    expect(last.text).not.toContain('I took 2 A');
  });

  test('told with it, nothing is offered', () => {
    const { last } = talk(['ann: fridge 2A while running, 100Ah AGM, how long?']);
    expect(value(last, 'dailyUse')).toBeLessThan(30);
    expect(last.text).not.toContain('I took 2 A');
  });

  test('its litres, which are counted', () => {
    const { answers, last } = talk([
      'ann: how long will a fridge last on 100Ah AGM?',
      "ann: it's a 75 litre one",
    ]);
    expect(value(last, 'dailyUse')).toBeGreaterThan(1.3 * value(answers[0] ?? last, 'dailyUse'));
    expect(last.text).not.toContain('Not counted');
  });

  test('after a note it is noted', () => {
    const { last, memory } = talk(['ann: my fridge is 3.5A', 'ann: only while it runs']);
    expect(last.text).toContain('fridge 3.5 A while it runs');
    expect(memory.rigs.ann?.loads).toEqual([{ name: 'fridge', currentA: 3.5, isAverage: false }]);
  });

  test.each(['running late', 'how long is it running?', 'a 40 L tank', 'half of us are running'])(
    '“%s” tells nothing of it',
    line => {
      const { answers, memory } = talk([asked, `ann: ${line}`]);
      expect(answers[1]?.figures.dailyUse?.value).not.toBe(16);
      expect(memory.frames.every(({ facts }) => facts.loads?.[0]?.isAverage === undefined)).toBe(true);
    },
  );
});

describe('a thing of which no figure is known', () => {
  test('is said to count for nothing, and is never called typical', () => {
    const { last } = talk(['ann: laptop 6 hours a day and a gizmo 2 hours a day, 200Ah lithium, how long?']);
    expect(last.text).toContain('Not counted, as I know no figure of it: gizmo.');
    expect(last.text).not.toMatch(/gizmo[^.;]*\(typical\)/);
  });

  test('but not beside a cable whose current is told', () => {
    expect(talk(['ann: what cable for a 20A gizmo over 4 m?']).last.text).not.toContain('Not counted');
  });
});

describe('nothing is guessed', () => {
  test('where nothing is told and nothing of time is asked', () => {
    expect(talk(['ann: can I leave the solar on while driving?']).last.figures).toEqual({});
  });

  test('of a battery from the talk before with nothing on it', () => {
    const { last } = talk(['ann: 100Ah AGM at 12.4V, how full is it?', 'ann: how long will it last?']);
    expect(last.text).not.toContain('typical fridge');
  });
});

describe('where a danger is seen', () => {
  test('nobody is told besides that there was no question', () => {
    const { last } = talk(['ann: do I need an electrician to wire a 240V inlet on my camper?']);
    expect(last.hazards).toContain('mains-wiring');
    expect(last.text).not.toMatch(/power question|do you mean|would you like/);
  });

  test('a current past the limit told is named', () => {
    const { last } = talk(['ann: my lithium BMS is 50A, can I run a 1000W kettle?']);
    expect(last.text).toMatch(/87 A is more than the 50 A|limit of 50 A is less/);
    expect(last.text).not.toContain('Not counted');
  });
});
