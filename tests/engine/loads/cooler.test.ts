import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { averageA, type Cooler, dutyAt, kindOf, usualCooler, usualVolumeL } from '#engine/loads/cooler.ts';
import { type Insulation, insulations } from '#engine/loads/cooler-table.ts';
import { dailyUseAh, type Use } from '#engine/loads/model.ts';
import type { Load } from '#rig/rig.ts';
import { printStep } from '#rule/print.ts';
import { type RuleStep, Trace } from '#rule/trace.ts';
import { draws } from '../../house/share.ts';
import { ratios, sheets, tropical } from './cooler-sheets.ts';

const runs = { seed: 13, numRuns: draws(1000, 10_000) } as const;
const averageW = (cooler: Cooler, ambientC: number) => averageA(cooler, ambientC, 1);

describe('worked by hand', () => {
  test('40 L at 4 °C in 25 °C: each step', () => {
    const trace = new Trace();
    dutyAt(usualCooler(4), 25, trace);
    const steps = trace.steps.map(step => [(step as RuleStep).rule.name, step.value] as const);
    // 6.3 × (0.341995 + 0.0175)², 0.024 × 0.81419 ÷ 0.035 × 1.3, × 21 × 1.65, 0.529 × 263.15 ÷ 87, ÷ 45 ÷ 1.6001.
    expect(steps).toEqual([
      ['boxSurface', expect.closeTo(0.81419, 4)],
      ['wallLeak', expect.closeTo(0.72579, 4)],
      ['heatGain', expect.closeTo(25.149, 2)],
      ['coolingRatio', expect.closeTo(1.60007, 4)],
      ['compressorDuty', expect.closeTo(0.34927, 4)],
    ]);
  });

  test('the working can be read: numbers with their units', () => {
    const trace = new Trace();
    dutyAt(usualCooler(4), 25, trace);
    expect(trace.steps.map(step => printStep(step).formula.split(' = ').at(-1))).toEqual([
      '6.3 × (0.04 m³^(1 ÷ 3) + 0.035 m ÷ 2)^2',
      '0.024 W/(m·K) × 0.81419 m² ÷ 0.035 m × (1 + 0.3)',
      '0.72579 W/K × (25 °C − 4 °C) × (1 + 0.65)',
      '0.529 × ((-10 °C) + 273.15 K) ÷ max(37 K, 40 °C − (-10 °C) + 37 K)',
      'max(0.05, min(1, 25.149 W ÷ (45 W × 1.6001)))',
    ]);
  });

  test('average amps are the draw for its share of the time', () => {
    expect(averageA(usualCooler(4), 25, 12)).toBeCloseTo((0.34927 * 45) / 12, 3);
    expect(averageA(usualCooler(4), 25, 24)).toBeCloseTo((0.34927 * 45) / 24, 3);
  });

  test.for<[says: string, setPointC: number, powerW: number, litres: number]>([
    ['the usual fridge', 4, 45, 40],
    ['the usual freezer', -15, 50, 40],
    // (0.359495 × √2 − 0.0175)³ and (0.359495 × √(150 ÷ 45) − 0.0175)³
    ['twice the draw', 4, 90, 118],
    ['a household fridge', 4, 150, 261],
    ['never less than 2 L', 4, 1, 2],
    ['never less than 2 L, not even below nothing', 4, 0.05, 2],
  ])('%s: %d °C and %d W stand for %d L', ([, setPointC, powerW, litres]) => {
    expect(usualVolumeL(setPointC, powerW)).toBe(litres);
  });

  test('at and below its set point it hardly runs, in an oven always', () => {
    for (const ambientC of [4, 0, -30, -60]) expect(dutyAt(usualCooler(4), ambientC)).toBe(0.05);
    expect(dutyAt(usualCooler(4), 60)).toBe(1);
  });
});

describe('held against figures from outside, from memory', () => {
  const errors: (readonly [says: string, error: number])[] = [
    ...sheets.map(({ says, box, ambientC, averageW: want }) => {
      const cooler = { ...box, goodsShare: 0, powerW: 60 };
      return [says, averageW(cooler, ambientC) / want - 1] as const;
    }),
    ...ratios.map(([says, hot, cool, want]) => {
      const fridge = usualCooler(4);
      return [says, averageW(fridge, hot) / averageW(fridge, cool) / want - 1] as const;
    }),
    ['built for the tropics', dutyAt(usualCooler(4), tropical.ambientC) / tropical.duty - 1],
  ];

  test('within 15 % by root mean square, from 16 to 43 °C', () => {
    const rms = Math.sqrt(errors.reduce((sum, [, e]) => sum + e * e, 0) / errors.length);
    expect(rms).toBeLessThanOrEqual(0.15);
  });

  test.for(errors)('%s: within 30 %', ([, error]) => {
    expect(Math.abs(error)).toBeLessThan(0.3);
  });
});

const order: readonly Insulation[] = ['thin', 'usual', 'good', 'thick', 'very thick'];
const air = fc.double({ min: -30, max: 60, noNaN: true });
const set = fc.double({ min: -22, max: 10, noNaN: true });
const volume = fc.double({ min: 5, max: 600, noNaN: true });
const cooler: fc.Arbitrary<Cooler> = fc.record({
  setPointC: set,
  volumeL: volume,
  insulation: fc.constantFrom(...order),
  goodsShare: fc.double({ min: 0, max: 1.5, noNaN: true }),
  powerW: fc.double({ min: 20, max: 400, noNaN: true }),
});
/** A pair, the lesser first. */
const two = (one: fc.Arbitrary<number>) =>
  fc.tuple(one, one).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
/** Rounding alone may differ. */
const atLeast = (a: number, b: number): void => {
  expect(a).toBeGreaterThanOrEqual(b * (1 - 1e-12));
};

describe('of any box', () => {
  test('all classes of insulation are in order', () => {
    expect(Object.keys(insulations)).toEqual(order);
  });

  test('runs never above all the time, never below its controls', () => {
    fc.assert(
      fc.property(cooler, air, (box, T) => {
        expect(dutyAt(box, T)).toBeGreaterThanOrEqual(0.05);
        expect(dutyAt(box, T)).toBeLessThanOrEqual(1);
      }),
      runs,
    );
  });

  test('hotter never uses less', () => {
    fc.assert(
      fc.property(cooler, two(air), (box, [mild, hot]) => atLeast(averageW(box, hot), averageW(box, mild))),
      runs,
    );
  });

  test('a colder set point never uses less', () => {
    fc.assert(
      fc.property(cooler, two(set), air, (box, [cold, warm], T) =>
        atLeast(averageW({ ...box, setPointC: cold }, T), averageW({ ...box, setPointC: warm }, T)),
      ),
      runs,
    );
  });

  test('a larger box never uses less', () => {
    fc.assert(
      fc.property(cooler, two(volume), air, (box, [small, large], T) =>
        atLeast(averageW({ ...box, volumeL: large }, T), averageW({ ...box, volumeL: small }, T)),
      ),
      runs,
    );
  });

  test('better insulation never uses more', () => {
    fc.assert(
      fc.property(cooler, fc.nat(3), fc.nat(3), air, (box, from, more, T) => {
        const better = present(order[Math.min(4, from + 1 + more)]);
        atLeast(
          averageW({ ...box, insulation: present(order[from]) }, T),
          averageW({ ...box, insulation: better }, T),
        );
      }),
      runs,
    );
  });

  test('more warm goods never use less', () => {
    fc.assert(
      fc.property(cooler, two(fc.double({ min: 0, max: 2, noNaN: true })), air, (box, [few, many], T) =>
        atLeast(averageW({ ...box, goodsShare: many }, T), averageW({ ...box, goodsShare: few }, T)),
      ),
      runs,
    );
  });
});

describe('of usual ones by name', () => {
  const load = (name: string, rest: Partial<Load>): Load => ({ name, count: 1, supply: 'dc', ...rest });
  const ah = (one: Load, ambientC: number) => {
    const use: Use = { loads: [one], voltageV: 12, ambientC };
    return dailyUseAh(use, {});
  };
  const watts = fc.double({ min: 25, max: 300, noNaN: true });

  test('a freezer never uses less than a fridge of the same draw', () => {
    fc.assert(
      fc.property(watts, air, (powerW, T) =>
        atLeast(ah(load('freezer', { powerW }), T), ah(load('fridge', { powerW }), T)),
      ),
      runs,
    );
  });

  test('nor where no draw is told', () => {
    fc.assert(
      fc.property(air, T => atLeast(ah(load('freezer', {}), T), ah(load('fridge', {}), T))),
      runs,
    );
  });

  test('a bigger draw stands for a bigger box and never uses less', () => {
    fc.assert(
      fc.property(two(watts), air, fc.constantFrom('fridge', 'freezer'), ([small, big], T, name) =>
        atLeast(ah(load(name, { powerW: big }), T), ah(load(name, { powerW: small }), T)),
      ),
      runs,
    );
  });

  test('whatever its draw, a fridge runs 35 % of the time at 25 °C and a freezer half of it', () => {
    fc.assert(
      fc.property(watts, powerW => {
        expect(Math.abs(dutyAt(usualCooler(4, powerW), 25) - 0.35)).toBeLessThan(0.015);
        expect(Math.abs(dutyAt(usualCooler(-15, powerW), 25) - 0.5)).toBeLessThan(0.02);
      }),
      runs,
    );
  });

  test('better walls for a freezer', () => {
    expect([kindOf(4).insulation, kindOf(-15).insulation]).toEqual(['usual', 'good']);
  });
});
