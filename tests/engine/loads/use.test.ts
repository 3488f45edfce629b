import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { dailyUseAh, dayOf, type Use, useAssumptions, usePerLoad } from '#engine/loads/model.ts';
import { chargeOver, meanwhileA, meanwhileAssumptions } from '#engine/loads/over.ts';
import { coolingReading } from '#engine/loads/reading.ts';
import type { Load } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';

const dc = (name: string, rest: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'dc', ...rest });
const ac = (name: string, rest: Partial<Load> = {}): Load => ({ ...dc(name, rest), supply: 'ac' });
const use = (...loads: Load[]): Use => ({ loads, voltageV: 12 });
const ah = (...loads: Load[]) => dailyUseAh(use(...loads), {});

describe('an inverter that is left on', () => {
  const idle = (loads: Load[], inverterW?: number) =>
    usePerLoad({ loads, voltageV: 12, isInverterLeftOn: true, ...(inverterW && { inverterW }) }, {}).find(
      ({ load }) => load.name === 'inverter, idle',
    )?.chargeAh ?? 0;
  const on = (name: string, powerW: number, hoursPerDay: number): Load => ({
    name,
    count: 1,
    supply: 'ac',
    powerW,
    hoursPerDay,
  });

  test('idles while nothing runs on it: less the longer something does, and not at all where that is always', () => {
    // 0.7 % of 1,000 W at 12 V for 24 h, 21 h and none.
    expect(idle([], 1000)).toBeCloseTo((0.007 * 1000 * 24) / 12, 9);
    expect(idle([on('tv', 60, 3)], 1000)).toBeCloseTo((0.007 * 1000 * 21) / 12, 9);
    expect(idle([on('tv', 60, 24)], 1000)).toBe(0);
    expect(idle([on('tv', 60, 20), on('laptop', 60, 20)], 1000)).toBe(0);
  });

  test('its own rating untold, it is the one that the largest load needs', () => {
    const both = idle([on('tv', 60, 1), on('toaster', 900, 1)]);
    expect(both).toBeCloseTo((idle([on('toaster', 900, 1)]) * 22) / 23, 9);
    expect(both).toBeGreaterThan(1.5 * idle([on('tv', 60, 2)]));
  });
});

describe('a day’s use in Ah at 12 V', () => {
  test.for<[says: string, load: Load, want: number]>([
    ['a fridge of 1 A', dc('fridge', { currentA: 1 }), 24],
    ['2.5 A is still its average', dc('fridge', { currentA: 2.5 }), 60],
    ['an average is left alone, however big', dc('fridge', { currentA: 4, isAverage: true }), 96],
    ['a told share of the time is taken', dc('fridge', { currentA: 4.2, dutyPercent: 50 }), 50.4],
    ['hours of a compressor are its duty', dc('fridge', { powerW: 60, hoursPerDay: 9 }), 45],
    ['and so are its minutes', dc('freezer', { currentA: 4, minutesPerDay: 300 }), 20],
    ['each of two', dc('fridge', { count: 2, currentA: 5, hoursPerDay: 6 }), 60],
    ['hours of an average', dc('fridge', { currentA: 1.5, hoursPerDay: 12 }), 18],
    ['pump, 15 minutes', dc('water pump', { currentA: 5, minutesPerDay: 15 }), 1.25],
    ['four lights', dc('light', { count: 4, powerW: 3, hoursPerDay: 5 }), 5],
    ['told in Ah a day', dc('fridge', { chargeAhPerDay: 20, count: 2 }), 40],
    ['told in Wh a day', dc('fridge', { energyWhPerDay: 360 }), 30],
    ['an unknown thing runs all day', dc('gizmo', { currentA: 0.5 }), 12],
    ['a load alone runs on', dc('fan', { currentA: 2 }), 48],
  ])('%s', ([, load, want]) => {
    expect(ah(load)).toBeCloseTo(want, 9);
  });

  test.for<[says: string, load: Load, want: number]>([
    ['above that it is what it draws while running', dc('fridge', { currentA: 4 }), 4 * 0.35 * 24],
    ['watts on the plate are the running draw', dc('fridge', { powerW: 60 }), 5 * 0.35 * 24],
    ['plugged in all day', dc('fridge', { powerW: 60, hoursPerDay: 24 }), 5 * 0.35 * 24],
    ['or nearly', dc('fridge', { powerW: 60, hoursPerDay: 20 }), 5 * 0.35 * 20],
    ['a freezer works harder', dc('freezer', { powerW: 60 }), 5 * 0.5 * 24],
    ['what was told of a mains fridge at the battery', ac('fridge', { currentA: 25 }), 25 * 0.35 * 24],
  ])('%s, by its box within 1 %', ([, load, want]) => {
    expect(present(usePerLoad(use(load), { idleShare: 0 })[0]).chargeAh / want).toBeCloseTo(1, 1.7);
  });

  test('hours of a compressor are spread over the day', () => {
    const day = dayOf(use(dc('fridge', { powerW: 60, hoursPerDay: 9 })), {});
    expect(chargeOver(day, 12)).toBeCloseTo(45 / 2, 9);
    expect(day.currentA).toBeCloseTo(5, 9);
  });

  test('the inverter of a mains compressor waits for it', () => {
    const [fridge] = usePerLoad(use(ac('fridge', { powerW: 120, hoursPerDay: 8 })), { idleShare: 0.01 });
    const [without] = usePerLoad(use(ac('fridge', { powerW: 120, hoursPerDay: 8 })), { idleShare: 0 });
    expect(fridge?.chargeAh).toBeGreaterThan((without?.chargeAh ?? Number.NaN) + 1);
  });

  test('beside others a fan has the hours of its kind', () => {
    const [fan] = usePerLoad(use(dc('fan', { currentA: 2 }), dc('fridge', { currentA: 1 })), {});
    expect(present(fan).hours).toBe(8);
  });

  test('where all run on, nothing has typical hours', () => {
    const loads = [dc('fan', { currentA: 2 }), dc('lamp', { currentA: 0.5 })];
    expect(dailyUseAh({ ...use(...loads), doAllRunOn: true }, {})).toBeCloseTo(60, 9);
  });

  test('meanwhile all run, on mains too: 2 A and 0.5 A are 2.5 A', () => {
    const loads = [dc('fan', { currentA: 2 }), dc('lamp', { currentA: 0.5 })];
    expect(meanwhileA(use(...loads), {})).toBeCloseTo(2.5, 9);
    const kettle = use(ac('kettle', { powerW: 1000 }));
    expect(meanwhileA(kettle, {})).toBeCloseTo(dailyUseAh({ ...kettle, doAllRunOn: true }, {}) / 24, 9);
    expect(meanwhileA(kettle, {})).toBeGreaterThan(1000 / 12);
    expect(meanwhileAssumptions(use(dc('fan'))).map(a => a.name)).toEqual(['fan power']);
  });

  test('what people leave out is typical, assumed and named', () => {
    const names = useAssumptions(use(dc('fan'), dc('fan'), dc('fridge'))).map(a => a.name);
    expect(names).toEqual([
      'fan power',
      'fan hours a day',
      'fan2 power',
      'fan2 hours a day',
      'fridge volume',
      'fridge openings',
      'fridge power',
      'ambientC',
    ]);
  });

  test('each assumption of two alike moves its own', () => {
    const two = use(dc('fan', { hoursPerDay: 10 }), dc('fan', { hoursPerDay: 1 }));
    expect(dailyUseAh(two, { 'fan power': 12, 'fan2 power': 24 })).toBeCloseTo(12, 9);
  });

  test('one number for the whole day needs nothing else', () => {
    expect(dailyUseAh({ ...use(), dailyUseAh: 40 }, {})).toBe(40);
    expect(dailyUseAh({ ...use(), dailyUseWh: 480 }, {})).toBe(40);
    expect(useAssumptions({ ...use(dc('fan')), dailyUseAh: 40 })).toEqual([]);
  });

  test('hotter is more, for what cools and for nothing else', () => {
    const at = (ambientC: number, load: Load) => dailyUseAh({ ...use(load), ambientC }, {});
    expect(at(35, dc('fridge', { powerW: 50 }))).toBeGreaterThan(at(20, dc('fridge', { powerW: 50 })));
    expect(at(35, dc('tv', { powerW: 50, hoursPerDay: 3 }))).toBe(
      at(20, dc('tv', { powerW: 50, hoursPerDay: 3 })),
    );
  });
});

describe('through the inverter', () => {
  test('a kettle of 2 kW for 20 minutes takes more than its 667 Wh', () => {
    const wh = 12 * ah(ac('kettle', { powerW: 2000, minutesPerDay: 20 }));
    expect(wh).toBeGreaterThan(667 / 0.94);
    expect(wh).toBeLessThan(667 / 0.85);
  });

  test('two at once load the inverter twice as far', () => {
    const current = (count: number) =>
      present(usePerLoad({ ...use(ac('toaster', { count, powerW: 800 })), inverterW: 3000 }, {})[0]).currentA;
    const [one, two] = [current(1), current(2)];
    expect(two).toBeGreaterThan(1.9 * one);
    expect(two).toBeLessThan(2 * one);
    expect(two).toBeGreaterThan(1600 / 12 / 0.94);
    expect(two).toBeLessThan(1600 / 12 / 0.85);
  });

  test('a big inverter wastes more on a small load', () => {
    const load = ac('laptop', { powerW: 60, hoursPerDay: 3 });
    const behind = (inverterW: number) => dailyUseAh({ ...use(load), inverterW }, {});
    expect(behind(3000)).toBeGreaterThan(1.05 * behind(150));
  });

  test('a mains fridge keeps the inverter waiting: its idle draw comes on top', () => {
    const fridge = ac('fridge', { powerW: 120 });
    const [one] = usePerLoad({ ...use(fridge), inverterW: 1500 }, { idleShare: 0.01 });
    const [none] = usePerLoad({ ...use(fridge), inverterW: 1500 }, { idleShare: 0 });
    // A household one of 300 L: 6.3 × (0.669433 + 0.02)², × 0.022 ÷ 0.04 × 1.25, × 26.5 × 1.25, ÷ 120 ÷ (0.529 × 1.35 × 257.65 ÷ 92.5).
    expect(present(one).duty).toBeCloseTo(0.2857, 3);
    expect(present(one).chargeAh - present(none).chargeAh).toBeCloseTo(
      (0.01 * 1500 * 24 * (1 - present(one).duty)) / 12,
      9,
    );
  });

  test('mains amps are at the socket, big ones at the battery', () => {
    const current = (currentA: number) =>
      present(usePerLoad({ ...use(ac('oven', { currentA })), mainsV: 120 }, {})[0]).currentA;
    expect(current(10)).toBeGreaterThan(1200 / 12);
    expect(current(90)).toBe(90);
  });

  test('a microwave takes half as much again as its plate says', () => {
    const plain = dc('microwave', { powerW: 800 });
    expect(present(usePerLoad(use(plain), { 'microwave input factor': 1.5 })[0]).currentA).toBeCloseTo(
      100,
      9,
    );
    expect(present(usePerLoad(use(dc('microwave', { currentA: 90 })), {})[0]).currentA).toBe(90);
  });
});

describe('the current to rate the battery at', () => {
  test('counts each draw by the charge drawn at it', () => {
    const day = dayOf(use(dc('fridge', { currentA: 1 }), dc('pump', { currentA: 6, hoursPerDay: 1 })), {});
    expect(day.dailyUse).toBeCloseTo(30, 9);
    expect(day.currentA).toBeCloseTo((24 * 1 + 6 * 6) / 30, 9);
    expect(day.peakA).toBe(6);
  });

  test('nothing drawn is nothing', () => {
    expect(dayOf(use(), {})).toEqual({ dailyUse: 0, currentA: 0, peakA: 0, parts: [] });
  });
});

describe('over a time', () => {
  const day = dayOf(use(dc('fridge', { currentA: 1 }), dc('lamp', { currentA: 2, hoursPerDay: 5 })), {});
  test.for([
    [48, 68],
    [24, 34],
    [12, 12 + 10],
    [4, 4 + 8],
  ] as const)('%s h take %s Ah', ([hours, want]) => {
    expect(chargeOver(day, hours)).toBeCloseTo(want, 9);
  });
});

test('a reading that could be either is named, a clear one is not', () => {
  expect(coolingReading(dc('fridge', { currentA: 1 }))).toBe('average');
  expect(coolingReading(dc('fridge', { powerW: 45 }))).toBe('running');
  expect(coolingReading(dc('fridge', { powerW: 45, hoursPerDay: 8 }))).toBe('hours');
  expect(coolingReading(dc('fridge', { powerW: 45, hoursPerDay: 22 }))).toBe('running');
  expect(coolingReading(dc('fridge', { currentA: 4, isAverage: true }))).toBeUndefined();
  expect(coolingReading(dc('fridge', { currentA: 4, dutyPercent: 40 }))).toBeUndefined();
  expect(coolingReading(dc('fridge', { chargeAhPerDay: 20 }))).toBeUndefined();
  expect(coolingReading(dc('tv', { powerW: 45 }))).toBeUndefined();
});

test('more load is never less use', () => {
  const one = fc.record({
    name: fc.constantFrom('fridge', 'light', 'kettle', 'microwave', 'freezer', 'gizmo'),
    count: fc.integer({ min: 1, max: 4 }),
    supply: fc.constantFrom('dc' as const, 'ac' as const),
    powerW: fc.double({ min: 1, max: 2000, noNaN: true }),
    // From 20 h on a fridge is plugged in all day and cycles; below, the hours are its compressor's.
    hoursPerDay: fc.double({ min: 0, max: 19.9, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(one, { minLength: 1, maxLength: 5 }), one, (loads, more) => {
      const before = dailyUseAh(use(...loads), {});
      const after = dailyUseAh(use(...loads, more), {});
      const double = dailyUseAh(use(...loads.map(l => ({ ...l, hoursPerDay: l.hoursPerDay / 2 }))), {});
      return before >= 0 && after >= before - 1e-9 && double <= before + 1e-9;
    }),
  );
});

test('the working ends in the sum of the loads', () => {
  const trace = new Trace();
  const total = dailyUseAh(
    use(dc('fridge', { currentA: 1 }), dc('pump', { currentA: 6, hoursPerDay: 1 })),
    {},
    trace,
  );
  expect(trace.steps.at(-1)).toMatchObject({ name: 'dailyUse', value: total, says: 'Q = 24 Ah + 6 Ah' });
});
