import { describe, expect, test } from 'vitest';
import { recognise } from '#language/recognise/recognise.ts';

/** The shares of the time that a message tells by turns, in per cent. */
const duties = (text: string): number[] =>
  recognise(text)
    .mentions.filter(m => m.cls === '%duty')
    .map(m => m.value);

describe('a share of the time, told by turns', () => {
  test.for<[text: string, percent: number]>([
    ['it runs one minute in four', 25],
    ['kicks in ten minutes outta every thirty', 33.3],
    ['10 min in every 30 min', 33.3],
    ['works 20 min, stops 40', 33.3],
    ['20 min on, 40 off', 33.3],
    ['runs 15 minutes then rests 45', 25],
    ['1 hour in 3', 33.3],
    ['15 minutes in the hour', 25],
    ['12 minutes out of every hour', 20],
    ['40 min of the hour', 66.7],
  ])('%s', ([text, percent]) => {
    expect(duties(text)).toEqual([percent]);
  });

  test.for([
    'on 10 hours, off 14', // the time of day
    '2 hours in 3 days',
    'the kettle for 5 minutes in the morning',
    '15 min in 30 amps',
    '20 minutes of 5 amps',
    '100 Ah in 4 boxes',
  ])('none in: %s', text => {
    expect(duties(text)).toEqual([]);
  });
});
