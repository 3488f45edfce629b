import { describe, expect, test } from 'vitest';
import type { PanelCase } from '#engine/solar/wiring.ts';
import { inSeriesOf, judgeWiring, type WiredSpan } from '#engine/solar/wiring-fit.ts';

// A bound that is met is kept: a controller for 100 V stands 100 V, a rating of 20 A carries 20 A.

const about = (changes: Partial<PanelCase> = {}): PanelCase => ({
  panels: [{ count: 2, powerW: 100, openCircuitV: 22 }],
  blocks: 1,
  isShaded: false,
  controller: 'mppt',
  ...changes,
});
/** A string of so many volts, in the cold at the likely and at the worst, and what it charges with. */
const wired = (stringVoltage: number, cold = stringVoltage, worst = cold, chargeCurrent = 5): WiredSpan => ({
  stringVoltage,
  coldVoltage: { value: cold, low: stringVoltage, high: worst },
  chargeCurrent,
});

describe('volts and amps at, just below and just above each bound', () => {
  test.for<[says: string, changes: Partial<PanelCase>, it: WiredSpan, fit: string, reason: string]>([
    ['17 V charge 12 V', {}, wired(17), 'yes', 'fits'],
    ['less do not', {}, wired(16.9), 'no', 'too-low'],
    ['34 V charge 24 V', { blocks: 2 }, wired(34), 'yes', 'fits'],
    ['less do not charge 24 V', { blocks: 2 }, wired(33.9), 'no', 'too-low'],
    ['50 V in the cold any MPPT stands', {}, wired(45, 50, 60), 'yes', 'fits'],
    ['more wants a look at its label', {}, wired(45, 50.1, 60), 'tight', 'needs-limit'],
    ['150 V some stand', {}, wired(130, 150, 160), 'tight', 'needs-limit'],
    ['more hardly any', {}, wired(130, 150.1, 160), 'no', 'above-usual'],
    ['a told limit that is met', { plate: { limitV: 100 } }, wired(90, 100, 100), 'yes', 'within-limit'],
    ['passed at the worst', { plate: { limitV: 100 } }, wired(90, 100, 100.1), 'tight', 'near-limit'],
    ['passed', { plate: { limitV: 100 } }, wired(90, 100.1, 110), 'no', 'over-limit'],
    ['an MPPT at its rating', { plate: { ratedA: 20 } }, wired(40, 44, 46, 20), 'yes', 'fits'],
    ['above it it holds back', { plate: { ratedA: 20 } }, wired(40, 44, 46, 20.1), 'tight', 'held-to-rating'],
    [
      'a PWM at four fifths of its rating',
      { controller: 'pwm', plate: { ratedA: 25 } },
      wired(22, 24, 26, 20),
      'yes',
      'fits',
    ],
    [
      'above that cloud edges pass it',
      { controller: 'pwm', plate: { ratedA: 25 } },
      wired(22, 24, 26, 20.1),
      'tight',
      'near-rating',
    ],
    [
      'at its rating no more than that',
      { controller: 'pwm', plate: { ratedA: 25 } },
      wired(22, 24, 26, 25),
      'tight',
      'near-rating',
    ],
    [
      'above its rating',
      { controller: 'pwm', plate: { ratedA: 25 } },
      wired(22, 24, 26, 25.1),
      'no',
      'over-rating',
    ],
    ['27 V into a PWM', { controller: 'pwm' }, wired(27), 'yes', 'fits'],
    ['more are lost', { controller: 'pwm' }, wired(27.1), 'tight', 'pwm-wastes'],
    ['54 V into a PWM at 24 V', { controller: 'pwm', blocks: 2 }, wired(54), 'yes', 'fits'],
    [
      'a PWM is asked for no MPPT’s volts',
      { controller: 'pwm', blocks: 4 },
      wired(88, 160, 170),
      'yes',
      'fits',
    ],
  ])('%s', ([, changes, it, fit, reason]) => {
    expect(judgeWiring(about(changes), 1, it)).toEqual({ fit, reason });
  });
});

describe('unlike panels, by a tenth of the larger', () => {
  const of = (
    ...panels: readonly (readonly [powerW: number | undefined, openCircuitV: number | undefined])[]
  ) => about({ panels: panels.map(([powerW, openCircuitV]) => ({ count: 1, powerW, openCircuitV })) });
  test.for<[says: string, it: PanelCase, inSeries: number, reason: string]>([
    ['a tenth in volts side by side is alike', of([100, 20], [100, 18]), 1, 'fits'],
    ['more is not', of([100, 20], [100, 17.9]), 1, 'unlike-volts'],
    ['in a string volts may differ', of([100, 20], [90, 18]), 2, 'fits'],
    ['a tenth in amps in a string is alike', of([100, 20], [90, 20]), 2, 'fits'],
    ['more is not in a string', of([100, 20], [89, 20]), 2, 'unlike-currents'],
    ['side by side amps may differ', of([100, 20], [50, 20]), 1, 'fits'],
    ['a panel by its name has the usual volts', of([100, 12], [110, 22]), 2, 'fits'],
    ['and by its name it is unlike none', of([100, 12], [100, 22]), 1, 'fits'],
    ['without watts nobody knows its amps', of([100, 20], [undefined, 20]), 2, 'fits'],
  ])('%s', ([, it, inSeries, reason]) => {
    expect(judgeWiring(it, inSeries, wired(40)).reason).toBe(reason);
  });
});

describe('how many in series nobody said', () => {
  const values = { voltageCoefficient: 0, coldestC: 25, openCircuitVoltage: 22 };
  const series = (count: number, changes: Partial<PanelCase> = {}) =>
    inSeriesOf(about({ panels: [{ count, powerW: 100, openCircuitV: 22 }], ...changes }), values);
  test.for<[says: string, count: number, changes: Partial<PanelCase>, inSeries: number]>([
    ['four of 22 V stay below the usual 100 V', 4, {}, 4],
    ['five would not, and five divide by nothing else', 5, {}, 1],
    ['six make two strings of three', 6, {}, 3],
    ['a limit of 46.2 V with its room stands two', 4, { plate: { limitV: 46.2 } }, 2],
    ['a little less stands one', 4, { plate: { limitV: 46.1 } }, 1],
    ['in shade no more than the battery asks for', 4, { isShaded: true }, 1],
    ['in shade on 24 V two', 4, { isShaded: true, blocks: 2 }, 2],
    ['a PWM on 24 V two', 4, { controller: 'pwm', blocks: 2 }, 2],
    ['a PWM on 48 V four', 4, { controller: 'pwm', blocks: 4 }, 4],
    ['a PWM on 24 V with three panels one', 3, { controller: 'pwm', blocks: 2 }, 1],
  ])('%s', ([, count, changes, inSeries]) => {
    expect(series(count, changes)).toBe(inSeries);
  });

  test('unlike panels are strung no longer than the battery asks for', () => {
    const panels = [
      { count: 2, powerW: 100, openCircuitV: 22 },
      { count: 2, powerW: 120, openCircuitV: 22 },
    ];
    expect(inSeriesOf(about({ panels }), values)).toBe(1);
    expect(inSeriesOf(about({ panels, blocks: 2 }), values)).toBe(2);
  });

  test('panels of 44 V are made for 24 V: one on a PWM', () => {
    const panels = [{ count: 2, powerW: 300, openCircuitV: 44 }];
    expect(inSeriesOf(about({ panels, controller: 'pwm', blocks: 2 }), values)).toBe(1);
    expect(inSeriesOf(about({ panels, controller: 'pwm', blocks: 4 }), values)).toBe(2);
  });
});
