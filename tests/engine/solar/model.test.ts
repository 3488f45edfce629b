import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { explore } from '#engine/explore.ts';
import {
  bestPowerOf,
  dailyYield,
  panelPowerFor,
  peakSunHours,
  type SolarCase,
  solarAssumptions,
  storedOf,
} from '#engine/solar/model.ts';
import { panelLosses } from '#engine/solar/rules.ts';
import { run } from '#rule/rule.ts';
import { Trace } from '#rule/trace.ts';

const seeded = { seed: 3, numRuns: 200 } as const;
const melbourne = { latitudeDeg: -37.8, longitudeDeg: 145 } as const;
const made = (c: SolarCase, powerW = 100) => dailyYield({ ...c, powerW, nominalVoltageV: 12 });
const share = (c: SolarCase) => {
  const { dailyYieldEnergyWh, peakSunHours: H } = made(c);
  return dailyYieldEnergyWh / (100 * H);
};

const cases: fc.Arbitrary<SolarCase> = fc.record(
  {
    latitudeDeg: fc.double({ min: -60, max: 60, noNaN: true }),
    longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
    month: fc.integer({ min: 1, max: 12 }),
    mount: fc.constantFrom('flat' as const, 'tilted' as const),
    controller: fc.constantFrom('mppt' as const, 'pwm' as const),
    sky: fc.constantFrom('sunny' as const, 'mixed' as const, 'overcast' as const),
    shade: fc.constantFrom('none' as const, 'half' as const, 'heavy' as const),
    peakSunHours: fc.double({ min: 0.5, max: 9, noNaN: true }),
    ambientC: fc.double({ min: -10, max: 45, noNaN: true }),
  },
  { requiredKeys: [] },
);

test('values that are handed in go before the likely ones, and the others are filled in', () => {
  const cases: SolarCase[] = [
    { latitudeDeg: -30, longitudeDeg: 150, month: 4, mount: 'tilted', controller: 'pwm' },
    { latitudeDeg: -30, month: 4, sky: 'overcast' },
    { peakSunHours: 5, sky: 'overcast' },
    {},
  ];
  for (const c of cases) {
    const panel = { ...c, powerW: 100, nominalVoltageV: 12 };
    const all = Object.fromEntries(solarAssumptions(c).map(a => [a.name, a.value]));
    expect(dailyYield(panel, all)).toEqual(dailyYield(panel));
    for (const { name, low, high } of solarAssumptions(c))
      for (const value of [low, high])
        expect(dailyYield(panel, { [name]: value }), name).toEqual(
          dailyYield(panel, { ...all, [name]: value }),
        );
  }
});

describe('what readings have taught of a yield', () => {
  const learned = {
    name: 'learnedSun',
    value: 80,
    low: 70,
    high: 90,
    unit: '%',
    why: 'by your readings',
  } as const;
  const told = { peakSunHours: 5, ambientC: 20 } as const;

  test('is taken of what is reckoned, in watt hours and in amp hours, where it is handed in', () => {
    const values = {
      ...Object.fromEntries(solarAssumptions({ ...told, learned }).map(a => [a.name, a.value])),
    };
    const case100 = { ...told, powerW: 100, nominalVoltageV: 12 };
    const [plain, taught] = [dailyYield(case100, values), dailyYield({ ...case100, learned }, values)];
    expect(taught.dailyYieldEnergyWh).toBeCloseTo(0.8 * plain.dailyYieldEnergyWh, 9);
    expect(taught.dailyYieldAh).toBeCloseTo(0.8 * plain.dailyYieldAh, 9);
    expect(taught.peakSunHours).toBe(plain.peakSunHours);
  });

  test('is among what is taken for granted, as is the air unless it is told', () => {
    const names = (c: SolarCase) => solarAssumptions(c).map(a => a.name);
    expect(names({ ...told, learned })).toContain('learnedSun');
    expect(names(told)).not.toContain('learnedSun');
    expect(names(told)).not.toContain('dayTemperature');
    expect(names({ peakSunHours: 5 })).toContain('dayTemperature');
  });
});

describe('what arrives of a panel', () => {
  test('is about 0.65 to 0.85 of rating × sun hours with MPPT, 0.55 to 0.70 with PWM (common practice)', () => {
    for (const ambientC of [10, 20, 30]) {
      const mppt = share({ peakSunHours: 5, controller: 'mppt', ambientC });
      const pwm = share({ peakSunHours: 5, controller: 'pwm', ambientC });
      expect(mppt).toBeGreaterThan(0.65);
      expect(mppt).toBeLessThan(0.85);
      expect(pwm).toBeGreaterThan(0.55);
      expect(pwm).toBeLessThan(0.7);
    }
  });

  test('is never more than its rating in full sun', () => {
    fc.assert(
      fc.property(cases, c => {
        const likely = bestPowerOf(100, c);
        return likely > 0 && likely < 100;
      }),
      seeded,
    );
  });

  test('shrinks with heat under MPPT and not under PWM', () => {
    const at = (controller: 'mppt' | 'pwm', ambientC: number) =>
      share({ peakSunHours: 5, controller, ambientC });
    expect(at('mppt', 40)).toBeLessThan(at('mppt', 10));
    expect(at('pwm', 40)).toBe(at('pwm', 10));
  });

  test('losses multiply: 2, 3, 5 and 4 % leave 86.7 %, not 86 %', () => {
    const left = run(panelLosses, { L_dirt: 0.02, L_wire: 0.03, L_mismatch: 0.05, L_reflection: 0.04 });
    expect(left).toBeCloseTo(0.98 * 0.97 * 0.95 * 0.96, 12);
    expect(left).toBeGreaterThan(1 - 0.14);
  });

  test('of shade words, half in the shade leaves less than half, trees next to nothing', () => {
    const full = made({ peakSunHours: 5 }).dailyYieldEnergyWh;
    expect(made({ peakSunHours: 5, shade: 'half' }).dailyYieldEnergyWh).toBeLessThan(full / 2);
    expect(made({ peakSunHours: 5, shade: 'heavy' }).dailyYieldEnergyWh).toBeLessThan(full / 5);
    expect(made({ peakSunHours: 5, shade: 'none' }).dailyYieldEnergyWh).toBe(full);
  });
});

describe('sky words', () => {
  test('order themselves: overcast, average, clear', () => {
    for (let month = 1; month <= 12; month++) {
      const under = (sky: SolarCase['sky']) => peakSunHours({ ...melbourne, month, sky });
      expect(under('overcast')).toBeLessThan(under('mixed'));
      expect(under('mixed')).toBeLessThan(under('sunny'));
    }
  });

  test('full cloud leaves 10 to 30 % of a clear day', () => {
    const clear = peakSunHours({ ...melbourne, month: 1, sky: 'sunny' });
    const cloud = peakSunHours({ ...melbourne, month: 1, sky: 'overcast' });
    expect(cloud / clear).toBeGreaterThan(0.1);
    expect(cloud / clear).toBeLessThan(0.3);
  });

  test('full cloud cuts told sun hours too, but not a figure that is cloudy already', () => {
    expect(peakSunHours({ peakSunHours: 4, sky: 'overcast' })).toBeLessThan(1.5);
    expect(peakSunHours({ peakSunHours: 1.5, sky: 'overcast' })).toBe(1.5);
    expect(peakSunHours({ peakSunHours: 4 })).toBe(4);
  });

  test('without a place five sun hours are assumed, with a wide span, and named', () => {
    const [sun] = solarAssumptions({});
    expect(sun).toMatchObject({ name: 'peakSunHours', value: 5 });
    expect(present(sun).high - present(sun).low).toBeGreaterThan(2);
    expect(peakSunHours({})).toBe(5);
  });

  test('without a month the year is taken, from its worst month to its best', () => {
    const sun = present(solarAssumptions({ ...melbourne }).find(a => a.name === 'peakSunHours'));
    expect(sun.low).toBeLessThan(2.2);
    expect(sun.high).toBeGreaterThan(6);
    expect(sun.value).toBeCloseTo(4.2, 0);
  });
});

describe('panel size and yield', () => {
  test('are each other’s inverse, but for the charge that the battery keeps', () => {
    fc.assert(
      fc.property(cases, fc.double({ min: 1, max: 300, noNaN: true }), (c, dailyAh) => {
        const panel = { ...c, nominalVoltageV: 12.8, chemistry: 'lfp' as const };
        const { panelPowerW } = panelPowerFor(dailyAh, panel);
        if (!Number.isFinite(panelPowerW)) return true;
        const made = dailyYield({ ...panel, powerW: panelPowerW }).dailyYieldAh;
        return Math.abs(storedOf(made, panel) - dailyAh) < 1e-6 * dailyAh;
      }),
      seeded,
    );
  });

  test('more panel never brings less, and twice the panel brings twice as much', () => {
    fc.assert(
      fc.property(cases, fc.double({ min: 10, max: 1000, noNaN: true }), (c, powerW) => {
        const one = made(c, powerW).dailyYieldAh;
        const two = made(c, 2 * powerW).dailyYieldAh;
        return two >= one && Math.abs(two - 2 * one) < 1e-9 * Math.max(1, two);
      }),
      seeded,
    );
  });

  test('no day brings more than the clear sky and the rating allow', () => {
    fc.assert(
      fc.property(cases, c => {
        const { peakSunHours: H, dailyYieldEnergyWh } = made(c);
        return H >= 0 && H < 14 && dailyYieldEnergyWh <= 100 * H;
      }),
      seeded,
    );
  });

  test('every assumption has a reason and holds its value, and every figure its likely run', () => {
    fc.assert(
      fc.property(cases, c => {
        const assumed = solarAssumptions(c);
        const isSound = assumed.every(a => a.low <= a.value && a.value <= a.high && a.why.length > 4);
        const names = assumed.map(a => a.name);
        const { figures } = explore(assumed, 'dailyYieldAh', values => ({
          ...dailyYield({ ...c, powerW: 200, nominalVoltageV: 12 }, values),
        }));
        const isHeld = Object.values(figures).every(f => f.low <= f.value && f.value <= f.high);
        return isSound && isHeld && new Set(names).size === names.length;
      }),
      { ...seeded, numRuns: 60 },
    );
  });

  test('what is told is not assumed', () => {
    const names = solarAssumptions({
      ...melbourne,
      month: 1,
      ambientC: 30,
      peakSunHours: 5,
      controller: 'mppt',
    }).map(a => a.name);
    expect(names).not.toContain('clearness');
    expect(names).not.toContain('dayTemperature');
    expect(
      present(solarAssumptions({ controller: 'mppt' }).find(a => a.name === 'controllerEfficiency')).low,
    ).toBeGreaterThan(0.9);
    expect(present(solarAssumptions({}).find(a => a.name === 'controllerEfficiency')).low).toBeLessThan(0.8);
  });

  test('the working runs from the sun outside the air to the charge', () => {
    const trace = new Trace();
    const c = {
      ...melbourne,
      month: 1,
      mount: 'tilted',
      controller: 'mppt',
      powerW: 100,
      nominalVoltageV: 12,
    } as const;
    const { dailyYieldAh } = dailyYield(c, {}, trace);
    const names = trace.steps.map(step => (step.kind === 'rule' ? step.rule.name : step.name));
    expect(names[0]).toBe('declination');
    expect(names).toContain('tiltedPlaneRadiation');
    expect(names).toContain('cellTemperature');
    expect(names.at(-1)).toBe('dailyYieldCharge');
    expect(present(trace.steps.at(-1)).value).toBe(dailyYieldAh);
  });

  test('where the sun does not rise no panel will do', () => {
    const dark = { latitudeDeg: 78, longitudeDeg: 16, month: 12, nominalVoltageV: 12 } as const;
    expect(panelPowerFor(30, dark).panelPowerW).toBe(Number.POSITIVE_INFINITY);
    expect(made(dark).dailyYieldAh).toBe(0);
  });
});
