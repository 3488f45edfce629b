import { describe, expect, test } from 'vitest';
import { readTwice } from '#intents/read-twice.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { ask } from './ask.ts';

const told = (say: string, before: string[] = []): string => ask({ say, before }).text;

/** What is read twice in a message. */
function readIn(say: string) {
  const { words, mentions } = recognise(say);
  const read = readTwice({}, words, mentions);
  return read && [read.of, read.first, read.later, read.hours, read.capacityAh];
}

test.for<[string, unknown]>([
  ['12.6 last night and 12.3 this morning, 100 Ah agm', ['volts', 12.6, 12.3, 10, 100]],
  ['12.3 this morning, last night it was 12.6, 100ah agm', ['volts', 12.6, 12.3, 10, 100]],
  ['from 95% at 8pm to 71% at 7am on a 200Ah lithium', ['percent', 95, 71, 11, 200]],
  ['soc was 90 yesterday at 6pm and 64 at 6 this morning, 100Ah', ['percent', 90, 64, 12, 100]],
  ['85 % last night at 8, 64 this morning at 8, 100 Ah', ['percent', 85, 64, 10, 100]],
  ['shunt said 82 Ah last night, 55 Ah this morning', ['left', 82, 55, 10, undefined]],
  ['used 12 Ah at 9pm and 31 Ah at 6am on the shunt', ['used', 12, 31, 9, undefined]],
  ['12.8 at sundown, 12.4 at sunrise, two 100ah agms', ['volts', 12.8, 12.4, 12, 200]],
  ['went from 60 to 65 % after 3 hours on 100 Ah', ['percent', 60, 65, 3, 100]],
  // Two figures of one time, of two things, or a level that is wanted.
  ['12.6 at the battery and 12.4 at the fridge', undefined],
  ['the meter falls from 12.5 to 11.4 volts when the pump runs', undefined],
  ['fridge 60 W at 35% duty, station at 90%', undefined],
  ['Sid says 80%, I say 50%', undefined],
  ['I’m at 38% and I’ve burned 11% since sundown, it’s 1:30 now', undefined],
])('two readings: %s', ([say, read]) => expect(readIn(say)).toEqual(read));

describe('what went out between two readings', () => {
  test.each([
    [
      'battery was 12.6 last night and 12.3 this morning, only the fridge on, 100 Ah agm: how much did we use',
      // The table of AGM at rest: 12.6 V is 80.7 %, 12.3 V is 53 %.
      [
        /^About 28 Ah \(18–34 Ah\)/,
        /2\.8 Ah an hour over the 10 hours or so/,
        /A fridge usually takes 11 Ah/,
      ],
    ],
    [
      'went from 95% at 8pm to 71% at 7am on a 200Ah lithium. how much did we burn overnight?',
      // 24 % of 200 Ah is 48 Ah; over 11 h that is 4.4 Ah an hour.
      [/^About 48 Ah: 95 to 71 %/, /4\.4 Ah an hour over the 11 hours/],
    ],
    [
      'shunt said 82 Ah last night, 55 Ah this morning. how much did the fridge take',
      [/^About 27 Ah: from 82 to 55 Ah left/],
    ],
    [
      'soc was 90 yesterday at 6pm and 64 at 6 this morning, 100Ah lithium, what’s that an hour',
      [/^About 2\.2 Ah an hour/],
    ],
    ['Was 85 % at 8pm, 64 % at 8am, 100 Ah. So what do I use a day?', [/^About 42 Ah a day at that rate/]],
    [
      'lithium 100ah read 13.3 last night and 13.1 this arvo, how much have we used',
      [/^Volts can’t tell on lithium/, /shunt/],
    ],
    ['battery dropped from 12.7 to 12.2 overnight, is that a lot', [/^About 47 %/, /How big is it/]],
  ])('%s', (say, lines) => {
    const text = told(say);
    for (const line of lines) expect(text).toMatch(line);
    expect(text).not.toContain('Not counted');
  });
});

describe('what went in between two readings', () => {
  test.each([
    [
      'drove 3 hrs and the agm only went from 12.1 to 12.6, dcdc busted?',
      // The table of AGM at rest: 12.1 V is 33 %, 12.6 V is 80.7 %.
      [/^No, it did charge: 12\.1 to 12\.6 V on AGM is about 48 %/, /an hour after it stops/],
    ],
    [
      'only went from 60 to 65 % after 3 hours of a 25 A dcdc on 100 Ah',
      // 5 % of 100 Ah; 0.97 × 25 A × 3 h is 73 Ah.
      [/^Too little: 60 to 65 % is 5 Ah of 100 Ah, where 25 A over 3 hours gives about 73 Ah/, /1\. Feed/],
    ],
    [
      'battery went from 30% to 75% in a 2 hour drive with a 25a dcdc, 100ah. is that right?',
      [/^Yes, it did charge: 30 to 75 % is 45 Ah/],
    ],
    [
      'left home at 88% and after 2 hours driving it only got to 92%, agm 120ah dcdc 20A',
      [/Near full a battery takes less and less/],
    ],
    [
      'solar only brought it from 70% to 74% today, 200ah, 160w panel whats wrong',
      [/^Too little/, /1\. Shade/],
    ],
    ['monitor went from 40% to 100% in half an hour of sun. no way?? 80w panel', [/^Too fast to be true/]],
    ['lithium 13.2 before, 13.3 after driving 2 hours, dcdc working?', [/^Volts can’t tell on lithium/]],
  ])('%s', (say, lines) => {
    for (const line of lines) expect(told(say)).toMatch(line);
  });

  test('what is still to be charged is no reading', () =>
    expect(told('how long to get from 60 to 80% with a 25A dcdc on 100Ah')).toMatch(/minutes/));
});

describe('what a monitor counted, against what runs', () => {
  test.each([
    [
      'shunt says I’ve used 71 Ah since yesterday arvo, fridge and a few lights. does that stack up?',
      [/^More than usual: fridge and lights/, /Most often/],
    ],
    [
      'my meter reckons 15 Ah gone since 6pm yesterday, it’s 8am, fridge only. plausible?',
      [/^Yes, about right/, /15 Ah in 14 hours/],
    ],
    ['we pulled 2 Ah overnight with a fridge, is that possible', [/^Less than usual/, /put some back/]],
    ['shunt says 71 ah out since yesterday arvo. stack up?', [/^71 Ah in/, /What was running/]],
  ])('%s', (say, lines) => {
    for (const line of lines) expect(told(say)).toMatch(line);
  });
});

test.each([
  // 42 h at 2 A out of 100 Ah.
  [
    'if we stay till noon sunday what’s left, 100ah lithium full friday 6pm, 2 amps all the time',
    /^About 16 % at noon sunday/,
  ],
  [
    '200ah agm full saturday 10am, fridge pulls 3 amps nonstop, how much will be left by monday 8am',
    /^About 31 % at monday 8am/,
  ],
  [
    'full at 6pm friday, 100Ah lithium, 1.5A average. where will it be sunday lunchtime?',
    /^About 36 % at sunday lunchtime/,
  ],
])('a level at a clock time: %s', (say, line) => expect(told(say)).toMatch(line));

test.each([
  [
    'my panel did 24 Ah yesterday, fridge ate 30, how long have I got',
    /^6 Ah a day short: 24 Ah in, 30 Ah out/,
  ],
  [
    'solar makes 40Ah a day and we use 55, 100Ah lithium full. how many days?',
    /^15 Ah a day short.* about 5¼ days/,
  ],
  [
    'we put in 20 Ah a day and take out 35, 120ah agm, how long will that last',
    /^15 Ah a day short.* about 4 days/,
  ],
  ['sun gave us 33 and we burned 41 amp hours, 100ah lithium, how many days like that', /^8 Ah a day short/],
  ['took 40 Ah out and put 25 Ah back in today, will it keep up', /^15 Ah a day short/],
  ['harvest was 50 ah yesterday, consumption 42 ah. are we ok?', /^It keeps up: 8 Ah a day to spare/],
])('net of what came in and went out: %s', (say, line) => expect(told(say)).toMatch(line));
