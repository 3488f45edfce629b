import { describe, expect, test } from 'vitest';
import { inSeriesOf, judgeWiring, type PanelCase, wire, wiringAssumptions } from '#engine/solar/wiring.ts';

const likely = (about: PanelCase) => Object.fromEntries(wiringAssumptions(about).map(a => [a.name, a.value]));
const about = (changes: Partial<PanelCase>): PanelCase => ({
  panels: [{ count: 2, powerW: 100, openCircuitV: 22 }],
  blocks: 1,
  isShaded: false,
  ...changes,
});
const solve = (given: PanelCase) => {
  const values = likely(given);
  const inSeries = inSeriesOf(given, values);
  const wired = wire(given, inSeries, values);
  return { inSeries, ...wired, ...judgeWiring(given, inSeries, wired) };
};

describe('volts and amps of a string, worked out by hand', () => {
  test('three of 24.5 V in series: 73.5 V, and 13 % more in the cold', () => {
    const found = solve(
      about({
        panels: [{ count: 3, powerW: 200, openCircuitV: 24.5 }],
        arrangement: 'series',
        controller: 'mppt',
      }),
    );
    expect(found.stringVoltage).toBeCloseTo(73.5, 9);
    expect(found.coldVoltage).toBeCloseTo(73.5 * 1.13, 9);
    // 600 W × 0.95 ÷ 13.2 V
    expect(found.chargeCurrent).toBeCloseTo(43.18, 2);
  });

  test('four of 100 W on a PWM in parallel: four times 100 ÷ (0.82 × 22)', () => {
    const found = solve(
      about({
        panels: [{ count: 4, powerW: 100, openCircuitV: 22 }],
        controller: 'pwm',
        arrangement: 'parallel',
      }),
    );
    expect(found.chargeCurrent).toBeCloseTo(22.17, 2);
    expect(found.stringVoltage).toBe(22);
  });

  test('in series a PWM passes the current of one', () => {
    const found = solve(about({ controller: 'pwm', blocks: 2 }));
    expect(found.inSeries).toBe(2);
    expect(found.chargeCurrent).toBeCloseTo(100 / (0.82 * 22), 9);
  });
});

describe('whether it suits', () => {
  test.each<[string, Partial<PanelCase>, number, string]>([
    ['a PWM at 12 V goes parallel', { controller: 'pwm' }, 1, 'fits'],
    ['a PWM at 24 V goes two in series', { controller: 'pwm', blocks: 2 }, 2, 'fits'],
    [
      'a PWM in series at 12 V throws volts away',
      { controller: 'pwm', arrangement: 'series' },
      2,
      'pwm-too-high',
    ],
    [
      '12 V panels in parallel on 24 V are too low',
      { controller: 'mppt', arrangement: 'parallel', blocks: 2 },
      1,
      'too-low',
    ],
    ['an MPPT takes two in series', { controller: 'mppt' }, 2, 'fits'],
    ['shade speaks for parallel', { controller: 'mppt', isShaded: true }, 1, 'fits'],
    [
      'a roof panel on a PWM is a waste',
      { controller: 'pwm', panels: [{ count: 1, powerW: 300, openCircuitV: 40 }] },
      1,
      'pwm-wastes',
    ],
    [
      'six in series pass what most stand',
      { controller: 'mppt', arrangement: 'series', panels: [{ count: 6, powerW: 100, openCircuitV: 24 }] },
      6,
      'above-usual',
    ],
    [
      'three in series want a controller of enough volts',
      { controller: 'mppt', arrangement: 'series', panels: [{ count: 3, powerW: 200, openCircuitV: 24.5 }] },
      3,
      'needs-limit',
    ],
    [
      'unlike panels in series hold one another back',
      {
        arrangement: 'series',
        panels: [
          { count: 1, powerW: 100, openCircuitV: 22 },
          { count: 1, powerW: 150, openCircuitV: 22 },
        ],
      },
      2,
      'unlike-currents',
    ],
    [
      'unlike volts in parallel',
      {
        arrangement: 'parallel',
        panels: [
          { count: 1, powerW: 100, openCircuitV: 21 },
          { count: 1, powerW: 200, openCircuitV: 26 },
        ],
      },
      1,
      'unlike-volts',
    ],
  ])('%s', (_name, changes, inSeries, reason) => {
    expect(solve(about(changes))).toMatchObject({ inSeries, reason });
  });

  test('volts of the label that nobody read out are assumed with their span', () => {
    expect(wiringAssumptions(about({ panels: [{ count: 1, powerW: 100 }] }))[0]).toMatchObject({
      low: 20,
      high: 25,
    });
    expect(wiringAssumptions(about({ panels: [{ count: 1, powerW: 350 }] }))[0]).toMatchObject({ value: 40 });
  });
});
