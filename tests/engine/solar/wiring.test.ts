import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { latitudeMonth } from '#climate/latitude.ts';
import { meanChargeV } from '#engine/battery/round-trip.ts';
import { coldestMorning, toldCold } from '#engine/solar/cold.ts';
import { type PanelCase, wire, wiringAssumptions } from '#engine/solar/wiring.ts';
import { inSeriesOf, judgeWiring } from '#engine/solar/wiring-fit.ts';
import { Trace } from '#rule/trace.ts';

const [chargeV] = meanChargeV('agm', 'sun');

const months = Array.from({ length: 12 }, (_, m) => m + 1);
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
  const worst = { ...values, coldestC: -20, voltageCoefficient: -0.004 };
  const coldVoltage = {
    value: wired.coldVoltage,
    low: wired.coldVoltage,
    high: wire(given, inSeries, worst).coldVoltage,
  };
  return { inSeries, ...wired, ...judgeWiring(given, inSeries, { ...wired, coldVoltage }) };
};

test('panels without their watts charge with amps that nobody can tell: none, and no line of them', () => {
  const lines = (powerW?: number) => {
    const trace = new Trace();
    const given = about({ panels: [{ count: 2, powerW, openCircuitV: 22 }], controller: 'mppt' });
    const { chargeCurrent } = wire(given, 1, likely(given), trace);
    const names = trace.steps.map(step => (step.kind === 'rule' ? step.rule.name : step.name));
    return { isCharged: chargeCurrent > 0, isTold: names.includes('trackedCurrent') };
  };
  expect(lines(100)).toEqual({ isCharged: true, isTold: true });
  expect(lines()).toEqual({ isCharged: false, isTold: false });
});

describe('volts and amps of a string, worked out by hand', () => {
  test('three of 24.5 V in series: 73.5 V, and 11 % more at 10 below', () => {
    const found = solve(
      about({
        panels: [{ count: 3, powerW: 200, openCircuitV: 24.5 }],
        arrangement: 'series',
        controller: 'mppt',
      }),
    );
    expect(found.stringVoltage).toBeCloseTo(73.5, 9);
    expect(found.coldVoltage).toBeCloseTo(73.5 * (1 + 0.0032 * 35), 9);
    // 600 W × 0.95 at the volts of a battery that the sun charges, some 13.4 V.
    expect(found.chargeCurrent).toBeCloseTo((600 * 0.95) / chargeV, 9);
    expect(Math.abs(chargeV - 13.4)).toBeLessThan(0.1);
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

describe('unlike panels', () => {
  const panels = [
    { count: 1, powerW: 100, openCircuitV: 20 },
    { count: 3, powerW: 100, openCircuitV: 24 },
  ];
  test('side by side the highest volts count, in a string their sum', () => {
    expect(solve(about({ panels, arrangement: 'parallel' })).stringVoltage).toBe(24);
    expect(solve(about({ panels, arrangement: 'series' })).stringVoltage).toBeCloseTo(20 + 3 * 24, 9);
  });
  test('one whose volts aren’t told is none that differs', () => {
    const half = [{ count: 1, powerW: 100 }, panels[1]] as PanelCase['panels'];
    expect(solve(about({ panels: half, arrangement: 'parallel', plate: { limitV: 100 } })).reason).not.toBe(
      'unlike-volts',
    );
    expect(solve(about({ panels, arrangement: 'parallel', plate: { limitV: 100 } })).reason).toBe(
      'unlike-volts',
    );
  });
});

describe('what a PWM passes', () => {
  const amps = (given: Partial<PanelCase>) => solve(about({ controller: 'pwm', ...given })).chargeCurrent;
  test('a panel for a roof at 12 V: 300 ÷ (0.82 × 39), where an MPPT gives 300 × 0.95 ÷ 13.4', () => {
    const panels = [{ count: 1, powerW: 300, openCircuitV: 39 }];
    expect(amps({ panels })).toBeCloseTo(9.38, 2);
    expect(solve(about({ panels, controller: 'mppt' })).chargeCurrent).toBeCloseTo((300 * 0.95) / chargeV, 9);
  });
  test('in series the weakest panel’s amps, in parallel those of all', () => {
    const panels = [
      { count: 1, powerW: 100, openCircuitV: 22 },
      { count: 1, powerW: 160, openCircuitV: 22 },
    ];
    expect(amps({ panels, arrangement: 'parallel' })).toBeCloseTo(260 / (0.82 * 22), 9);
    expect(amps({ panels, arrangement: 'series', blocks: 2 })).toBeCloseTo(100 / (0.82 * 22), 9);
  });
  test('the amps of the label before those of the watts', () => {
    const panels = [{ count: 2, powerW: 100, openCircuitV: 22 }];
    expect(amps({ panels, arrangement: 'parallel', fullPowerA: 5.4 })).toBeCloseTo(10.8, 9);
  });
  test('never more than the watts are worth: of 17 V open circuit, 100 W', () => {
    expect(amps({ panels: [{ count: 1, powerW: 100, openCircuitV: 17 }] })).toBeCloseTo(
      Math.min(100 / (0.82 * 17), 95 / chargeV),
      9,
    );
  });
  test('nothing from too few volts', () => {
    expect(amps({ arrangement: 'parallel', blocks: 2 })).toBe(0);
  });
});

const coldOf = (given: PanelCase) => {
  const values = likely(given);
  return wire(given, inSeriesOf(given, values), values).coldVoltage;
};

describe('the cold', () => {
  const coldV = (given: Partial<PanelCase>) => coldOf(about({ arrangement: 'series', ...given }));
  test('told: two of 22 V at 20 below are 44 × (1 + 0.0032 × 45)', () => {
    expect(coldV({ coldestC: -20 })).toBeCloseTo(50.34, 2);
  });
  test('by place: a mountain winter is colder than a tropical one, a year as cold as its coldest month', () => {
    const cairns = { latitudeDeg: -16.9, longitudeDeg: 145.8 };
    const cooma = { latitudeDeg: -36.2, longitudeDeg: 149.1 };
    const at = (where: PanelCase['where']) => coldestMorning(present(where)).value;
    expect(at({ ...cairns, month: 7 })).toBeGreaterThan(5);
    expect(at({ ...cooma, month: 7 })).toBeLessThan(0);
    expect(at({ ...cooma, heightM: 2000, month: 7 })).toBeLessThan(at({ ...cooma, month: 7 }));
    expect(at(cooma)).toBe(Math.min(...months.map(month => at({ ...cooma, month }))));
    expect(coldV({ where: cooma })).toBeGreaterThan(coldV({ where: cairns }));
  });
  test('the span about the coldest night, and a frosty morning where nobody said where', () => {
    const { value, low, high } = coldestMorning({ latitudeDeg: -35.3, longitudeDeg: 149.1, month: 7 });
    expect([low - value, high - value]).toEqual([-6, 4]);
    expect(coldestMorning({ month: 7 })).toMatchObject({ value: -10, low: -20, high: 0 });
    // By latitude alone, of its coldest month, and wider as places on it differ.
    const along = coldestMorning({ latitudeDeg: -35.3 });
    expect(along.value).toBe(Math.round(latitudeMonth(-35.3, 7).nightMinC) - 7);
    expect(along.value).toBe(coldestMorning({ latitudeDeg: -35.3, month: 7 }).value);
    expect(along.value - along.low).toBeGreaterThan(6);
    expect(along.high - along.value).toBeGreaterThan(4);
  });
  test('a warm day that was told says nothing of the coldest morning', () => {
    expect([toldCold(-5), toldCold(10), toldCold(11), toldCold(undefined)]).toEqual([
      -5,
      10,
      undefined,
      undefined,
    ]);
  });
});

describe('whether it suits', () => {
  const three = { panels: [{ count: 3, powerW: 200, openCircuitV: 24.5 }], arrangement: 'series' } as const;
  test.each<[string, Partial<PanelCase>, string, string]>([
    // 73.5 V is 81.7 at 10 below, 86.7 at 20 below by the steepest panel.
    ['the limit is passed', { ...three, plate: { limitV: 75 } }, 'no', 'over-limit'],
    ['the limit may be passed', { ...three, plate: { limitV: 84 } }, 'tight', 'near-limit'],
    ['the limit stands it', { ...three, plate: { limitV: 100 } }, 'yes', 'within-limit'],
    [
      'amps above an MPPT’s rating are held',
      { ...three, plate: { limitV: 100, ratedA: 40 } },
      'tight',
      'held-to-rating',
    ],
    ['amps within it', { ...three, plate: { limitV: 100, ratedA: 45 } }, 'yes', 'within-limit'],
    // Two of 100 W at 22 V: 11.1 A, and a quarter more 13.9 A.
    ['a PWM can’t hold amps back', { controller: 'pwm', plate: { ratedA: 10 } }, 'no', 'over-rating'],
    ['a PWM with little room', { controller: 'pwm', plate: { ratedA: 13 } }, 'tight', 'near-rating'],
    ['a PWM with room', { controller: 'pwm', plate: { ratedA: 15 } }, 'yes', 'fits'],
    // 50 V, 55 in the cold: on 24 V a PWM is asked for no limit of an MPPT.
    [
      'a PWM stands the volts of its battery',
      {
        panels: [{ count: 2, powerW: 100, openCircuitV: 25 }],
        controller: 'pwm',
        blocks: 2,
        arrangement: 'series',
      },
      'yes',
      'fits',
    ],
    ['a no before a tight', { ...three, controller: 'pwm', plate: { limitV: 84 } }, 'no', 'pwm-too-high'],
  ])('%s', (_name, changes, fit, reason) => {
    expect(solve(about(changes))).toMatchObject({ fit, reason });
  });

  test('proposes as many in series as the told limit allows', () => {
    const panels = [{ count: 4, powerW: 100, openCircuitV: 22 }];
    const many = (limitV?: number) =>
      solve(about({ panels, controller: 'mppt', ...(limitV ? { plate: { limitV } } : {}) })).inSeries;
    expect([many(50), many(60), many(100), many(150), many()]).toEqual([1, 2, 2, 4, 4]);
  });

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
