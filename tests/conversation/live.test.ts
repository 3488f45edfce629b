import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Turn, talk, value } from './talk.ts';

/** One message in a private chat, in the evening (17:00) unless told. */
const ask = (text: string, at = '2026-01-15T17:00:00Z', before: readonly Turn[] = []) =>
  talk([...before, `kim: ${text}` as Turn], { kind: 'private', at }).last;

describe('a level at a clock time', () => {
  test.each([
    // A fridge draws a little less by night than on average. 14 h of 1.5 A out of 100 Ah: 21 points less.
    ['82% now, what level at 7am', 61, 'yes', 'my rig: 100Ah AGM, fridge 1.5A average'],
    // 14 h of 3 A: 42 points less, below half.
    ['82% now, what level at 7am', 40, 'no', 'my rig: 100Ah AGM, fridge 3A average'],
    // A monitor's current: 14 h of 4 A.
    ['100Ah lithium at 90%, -4 A, what % by 7am', 34, 'yes', undefined],
    // Into it: 3 h of 8 A.
    ['100Ah lithium at 60%, +8 A, what % in 3 hours', 84, 'yes', undefined],
  ] as const)('%s', (text, percent, verdict, before) => {
    const answer = ask(text, undefined, before ? [`kim: ${before}`] : []);
    expect(answer.intent).toBe('charge-level');
    expect(Math.abs(value(answer, 'stateOfCharge') - percent)).toBeLessThan(3);
    expect(answer.verdict).toBe(verdict);
    expect(present(answer.text.split('\n')[0]).length).toBeLessThanOrEqual(100);
  });

  test('the sun counts by day, and never fills it past full', () => {
    const rig = 'kim: my rig: 100Ah AGM, fridge 1.2A average, 400W solar' as const;
    const dawn = ask('80% now, what level at 7am', undefined, [rig]);
    const day = ask('80% now, how full at 4pm?', '2026-01-15T07:00:00Z', [rig]);
    expect(value(dawn, 'stateOfCharge')).toBeLessThan(68);
    expect(value(day, 'stateOfCharge')).toBeGreaterThan(90);
    expect(value(day, 'stateOfCharge')).toBeLessThanOrEqual(100);
  });

  test('without a time it is the level now, as before', () => {
    expect(value(ask('my AGM reads 12.2 V at rest, how full is it'), 'stateOfCharge')).toBeCloseTo(43, 0);
  });

  test('the clock is that of a place known by its name', () => {
    // Nine in the morning at Greenwich is five in the afternoon in Perth: 14 h to seven, not 22.
    const rig = 'kim: my rig: 100Ah AGM, fridge 1.5A average, in Perth, Western Australia' as const;
    const answer = ask('82% now, what level at 7am', '2026-01-15T09:15:00Z', [rig]);
    expect(Math.abs(value(answer, 'stateOfCharge') - 61)).toBeLessThan(2.5);
  });
});

describe('should I drive now', () => {
  const rig = 'kim: my rig: 100Ah AGM, fridge 1.2A average, 25A dcdc' as const;

  test.each([
    // 8 Ah above half at 1.2 A: 7 h, and it is 16 to the morning.
    ['battery is at 58%, should I drive now?', 'yes', 6.7],
    // 45 Ah: 37 h.
    ['battery is at 95%, should I drive now?', 'no', 37.5],
    ['battery is at 40%, should I drive now?', 'yes', 0],
  ] as const)('%s', (text, verdict, hours) => {
    const answer = ask(text, undefined, [rig]);
    expect(answer.intent).toBe('charge-time');
    expect(answer.verdict).toBe(verdict);
    expect(Math.abs(value(answer, 'runTime') - hours)).toBeLessThan(0.5);
    expect(present(answer.text.split('\n')[0]).length).toBeLessThanOrEqual(100);
  });

  test('what it takes to see the morning is told', () => {
    // 16 h of 1.2 A are 19.2 Ah, and 8 are there.
    const answer = ask('battery is at 58%, should I drive now?', undefined, [rig]);
    expect(value(answer, 'chargeNeeded')).toBeCloseTo(11.2, 0);
  });

  test('how long a charge takes is still that', () => {
    const answer = ask('how long should I charge a 100Ah AGM at 50% with a 20A mains charger?');
    expect(value(answer, 'chargeTime')).toBeGreaterThan(2);
  });
});

describe('readings in a run time and a charge time', () => {
  test('volts at rest tell how much is left, roughly, and that is said', () => {
    const answer = ask('100Ah AGM reads 12.4V rested, -3.2A, how long have we got');
    expect(value(answer, 'runTime')).toBeGreaterThan(2);
    expect(value(answer, 'runTime')).toBeLessThan(7);
    expect(answer.text).toContain('rough gauge');
    expect(answer.assumed.map(a => a.name)).toContain('stateOfCharge');
  });

  test('a percentage goes before the volts', () => {
    const answer = ask('100Ah AGM at 80%, 12.4V, -3A, how long have we got');
    expect(value(answer, 'runTime')).toBeCloseTo(10, 0);
  });

  test('what flows in fills it', () => {
    // 40 Ah at 8 A.
    const answer = ask('+8 A into a 100Ah lithium at 60 %, when is it full');
    expect(value(answer, 'chargeTime')).toBeGreaterThan(4.9);
    expect(value(answer, 'chargeTime')).toBeLessThan(5.7);
  });
});
