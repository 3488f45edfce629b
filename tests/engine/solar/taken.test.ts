import { describe, expect, test } from 'vitest';
import type { Assumption, Values } from '#engine/assumption.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { likelyOf } from '#engine/explore.ts';
import {
  bestPowerOf,
  dailyYield,
  flowingAh,
  panelPowerFor,
  peakSunHours,
  type SolarCase,
  solarAssumptions,
  storedOf,
} from '#engine/solar/model.ts';

// What is taken for granted of the sun and of panels: all of it bears on the answer, and what is not told is likely.

const byron = { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 3 } as const;
const cases: readonly (readonly [says: string, c: SolarCase])[] = [
  ['nothing told', {}],
  ['an overcast day anywhere', { sky: 'overcast' }],
  ['a month without a place', { month: 6, isMonthTold: true, sky: 'sunny' }],
  ['a place without a month', { latitudeDeg: -28.6, longitudeDeg: 153.6 }],
  ['a place without a month, overcast', { latitudeDeg: -28.6, longitudeDeg: 153.6, sky: 'overcast' }],
  ['a latitude and a month', { latitudeDeg: -28.6, month: 3 }],
  ['a place and a month', byron],
  ['a sunny day there', { ...byron, sky: 'sunny' }],
  ['an overcast day there, in shade', { ...byron, sky: 'overcast', shade: 'half' }],
  ['tilted', { ...byron, mount: 'tilted' }],
  ['tilted on an MPPT', { ...byron, mount: 'tilted', controller: 'mppt' }],
  ['on a PWM', { ...byron, controller: 'pwm' }],
  [
    'on a PWM, by its label',
    { ...byron, controller: 'pwm', panels: [{ count: 1, powerW: 100, openCircuitV: 22 }] },
  ],
  ['on a PWM at 24 V', { ...byron, controller: 'pwm', blocks: 2 }],
  ['on a warm day that was told', { ...byron, ambientC: 35 }],
  ['sun hours that were told', { peakSunHours: 5 }],
  ['sun hours on an overcast day', { peakSunHours: 5, sky: 'overcast' }],
  [
    'by what readings taught',
    {
      ...byron,
      learned: { name: 'learnedSun', value: 80, low: 70, high: 90, unit: '%', why: 'readings' },
    },
  ],
];
const ofPanel = (c: SolarCase) => ({ ...c, powerW: 200, nominalVoltageV: (c.blocks ?? 1) * 12 });
/** The figures that answers take from it. */
const figures = (c: SolarCase, values?: Values): readonly number[] => {
  const panel = ofPanel(c);
  const made = dailyYield(panel, values);
  return [
    made.peakSunHours,
    made.dailyYieldEnergyWh,
    made.dailyYieldAh,
    panelPowerFor(40, panel, values).panelPowerW,
    panelPowerFor(40, panel, values).peakSunHours,
    storedOf(30, panel, values),
    flowingAh(made, panel, values),
    bestPowerOf(200, c, values),
    peakSunHours(c, values),
  ];
};
const allOf = (c: SolarCase): readonly Assumption[] => [
  ...solarAssumptions(c),
  ...storageAssumptions(c.chemistry ?? 'agm'),
];
const near = (expected: readonly number[]) => expected.map(figure => expect.closeTo(figure, 9) as number);

describe.for(cases)('%s', ([, c]) => {
  const likely = likelyOf(allOf(c));

  test('what nobody brings is likely', () => {
    expect(figures(c)).toEqual(near(figures(c, likely)));
    for (const { name } of allOf(c)) {
      const { [name]: _, ...others } = likely;
      expect(figures(c, others), name).toEqual(near(figures(c, likely)));
    }
  });

  // A PWM passes amps: what a panel's volts hang on need not move them.
  test.skipIf(c.controller === 'pwm')('whatever is taken for granted moves a figure, to either end', () => {
    const before = figures(c, likely);
    for (const { name, low, value, high } of allOf(c))
      for (const end of [low, high].filter(one => one !== value)) {
        const moved = figures(c, { ...likely, [name]: end });
        expect(
          Math.max(...moved.map((figure, k) => Math.abs(figure - (before[k] ?? 0)))),
          name,
        ).toBeGreaterThan(1e-9);
      }
  });

  test('a name is taken once', () => {
    const names = allOf(c).map(({ name }) => name);
    expect(names).toEqual([...new Set(names)]);
  });
});

describe('where the sun comes from', () => {
  const names = (c: SolarCase) => solarAssumptions(c).map(({ name }) => name);
  test.for<[says: string, c: SolarCase, name: string | undefined]>([
    ['told: nothing', { peakSunHours: 5 }, undefined],
    ['told before any place', { ...byron, peakSunHours: 5 }, undefined],
    [
      'told of a usual day, under full cloud: what that lets through',
      { peakSunHours: 5, sky: 'overcast' },
      'overcastShare',
    ],
    ['told as little as 2 h, it is of that day', { peakSunHours: 2, sky: 'overcast' }, undefined],
    ['a little more is not', { peakSunHours: 2.1, sky: 'overcast' }, 'overcastShare'],
    ['nowhere', {}, 'peakSunHours'],
    ['nowhere, sunny', { sky: 'sunny' }, 'sunnyPeakSunHours'],
    ['nowhere, overcast', { sky: 'overcast' }, 'overcastPeakSunHours'],
    ['a place', { latitudeDeg: -28 }, 'peakSunHours'],
    ['a place and a month', byron, 'clearness'],
    ['a sunny day there', { ...byron, sky: 'sunny' }, 'sunnyClearness'],
    ['an overcast day there', { ...byron, sky: 'overcast' }, 'overcastClearness'],
  ])('%s', ([, c, name]) => {
    const sun = names(c).filter(one => /PeakSunHours|peakSunHours|[cC]learness|overcastShare/.test(one));
    expect(sun).toEqual(name === undefined ? [] : [name]);
  });

  test('a panel stands as steep as the latitude, from 15° to 60°, 12° either way; a flat one has no tilt', () => {
    const tilt = (latitudeDeg: number) =>
      solarAssumptions({ latitudeDeg, month: 3, mount: 'tilted' }).find(({ name }) => name === 'panelTilt');
    for (const [latitude, value] of [
      [0, 15],
      [-12, 15],
      [-28.6, 28.6],
      [45, 45],
      [70, 60],
    ] as const)
      expect(tilt(latitude)).toMatchObject({ value, low: value - 12, high: value + 12 });
    expect(names(byron)).not.toContain('panelTilt');
    expect(names({ ...byron, mount: 'tilted' })).toContain('panelAzimuth');
  });
});
