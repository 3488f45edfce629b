import { describe, expect, test } from 'vitest';
import { dcdcTold } from '#conversation/told/charger-told.ts';
import { read } from '#language/reading.ts';
import { talk, value } from './talk.ts';

describe('a DC-DC charger that somebody says they have', () => {
  const told = (text: string) => {
    const parsed = read(text);
    return dcdcTold({ ...parsed, facts: {} }) !== undefined;
  };

  test.for([
    'my ute has a dc-dc charger',
    'just fitted a dcdc charger to the ute',
    'our dcdc charger is by the back seat',
    'we have got a DC-DC',
  ])('%s', text => {
    expect(told(text)).toBe(true);
  });

  test.for([
    'should I have a dcdc charger',
    'have you got a dcdc charger?',
    'dcdc or isolator, we have neither',
    'I have no dcdc charger',
    'we run an isolator and not a dcdc charger',
    'a dcdc charger is by the back seat',
    'our charger is a mains one',
    'how do I wire my dcdc charger',
    'my ute would run better on a dcdc charger',
  ])('not by “%s”', text => {
    expect(told(text)).toBe(false);
  });
});

describe('what is reckoned by it', () => {
  const ask = 'sam: /power drove 3 hours, how long to charge 100Ah AGM from 50%?';
  const hours = (...turns: Parameters<typeof talk>[0]) => value(talk(turns).last, 'chargeTime');

  test('told in passing, it charges in the place of an isolator', () => {
    expect(hours('sam: my ute has a dc-dc charger', ask)).toBeLessThan(hours(ask));
  });

  test('by nobody else', () => {
    expect(hours('kim: my ute has a dc-dc charger', ask)).toBe(hours(ask));
  });

  test('one whose amps are known goes before it', () => {
    const rig = 'sam: /power my rig is 100Ah AGM, 10A dcdc charger';
    expect(hours(rig, 'sam: my ute has a dc-dc charger', ask)).toBe(hours(rig, ask));
  });
});
