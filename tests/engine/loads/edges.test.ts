import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { partLoadEfficiency } from '#engine/inverter/rules.ts';
import { convertKind } from '#engine/loads/convert.ts';
import { kindOf } from '#engine/loads/cooler.ts';
import { coolerKinds } from '#engine/loads/cooler-table.ts';
import { inputPowerW, inverterBehind } from '#engine/loads/draw.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import {
  dailyUseAh,
  dayOf,
  runningCurrentA,
  type Use,
  useAssumptions,
  usePerLoad,
} from '#engine/loads/model.ts';
import { chargeOver } from '#engine/loads/over.ts';
import { coolingReading, inputFactorOf, readLoads } from '#engine/loads/reading.ts';
import type { Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { Trace } from '#rule/trace.ts';

const dc = (name: string, rest: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'dc', ...rest });
const ac = (name: string, rest: Partial<Load> = {}): Load => ({ ...dc(name, rest), supply: 'ac' });
const use = (...loads: Load[]): Use => ({ loads, voltageV: 12 });
const names = (...loads: Load[]) => useAssumptions(use(...loads)).map(a => a.name);
const eta = (z: number) => run(partLoadEfficiency, { eta_n: 0.9, z });

describe('what is taken for granted of a load', () => {
  test.for<[says: string, loads: Load[], want: string[]]>([
    ['all told', [dc('fan', { powerW: 20, hoursPerDay: 3 })], []],
    ['amps told', [dc('fan', { currentA: 2, hoursPerDay: 3 })], []],
    ['minutes told', [dc('fan', { minutesPerDay: 30 })], ['fan power']],
    ['a day’s energy told', [dc('tv', { energyWhPerDay: 500 })], []],
    ['a day’s charge told', [ac('tv', { chargeAhPerDay: 40 })], []],
    ['an unknown thing', [dc('gizmo')], []],
    ['an unknown thing beside another', [dc('gizmo', { powerW: 5 }), dc('gizmo', { powerW: 5 })], []],
    ['alone with a draw it runs on', [dc('fan', { powerW: 20 })], []],
    ['alone without one it has its hours', [dc('fan')], ['fan power', 'fan hours a day']],
    [
      'a mains thing alone has its hours',
      [ac('toaster', { powerW: 800 })],
      ['toaster hours a day', 'inverterEfficiency', 'idleShare'],
    ],
    [
      'a fridge with a plate',
      [dc('fridge', { powerW: 45 })],
      ['fridge volume', 'fridge openings', 'ambientC'],
    ],
    ['a fridge that averages', [dc('fridge', { currentA: 1 })], []],
    [
      'a fridge on mains',
      [ac('fridge', { powerW: 90 })],
      ['fridge volume', 'fridge openings', 'inverterEfficiency', 'idleShare', 'ambientC'],
    ],
    [
      'a microwave by its plate',
      [ac('microwave', { powerW: 800, hoursPerDay: 0.1 })],
      ['microwave input factor', 'inverterEfficiency', 'idleShare'],
    ],
    [
      'a microwave by its amps',
      [ac('microwave', { currentA: 4, hoursPerDay: 0.1 })],
      ['inverterEfficiency', 'idleShare'],
    ],
    [
      'a microwave by what it takes in',
      [ac('microwave', { powerW: 1300, isInput: true, hoursPerDay: 0.1 })],
      ['inverterEfficiency', 'idleShare'],
    ],
    [
      'one of two on mains',
      [dc('fan', { powerW: 5, hoursPerDay: 1 }), ac('tv', { powerW: 40, hoursPerDay: 1 })],
      ['inverterEfficiency', 'idleShare'],
    ],
    [
      'a mains fridge beside a lamp',
      [dc('light', { powerW: 5, hoursPerDay: 1 }), ac('fridge', { powerW: 90 })],
      ['fridge volume', 'fridge openings', 'inverterEfficiency', 'idleShare', 'ambientC'],
    ],
    [
      'a lamp on mains beside a fridge of 12 V',
      [ac('light', { powerW: 5, hoursPerDay: 1 }), dc('fridge', { powerW: 45 })],
      ['fridge volume', 'fridge openings', 'inverterEfficiency', 'idleShare', 'ambientC'],
    ],
  ])('%s', ([, loads, want]) => {
    expect(names(...loads)).toEqual(want);
  });

  test('with the spans of its row', () => {
    const [power, hours] = useAssumptions(use(dc('fan')));
    expect(power).toEqual({ name: 'fan power', low: 5, value: 15, high: 30, unit: 'W', why: 'typical fan' });
    expect(hours).toEqual({
      name: 'fan hours a day',
      low: 6,
      value: 8,
      high: 12,
      unit: 'h',
      why: 'typical fan',
    });
    const [factor] = useAssumptions(use(ac('microwave', { powerW: 800, hoursPerDay: 1 })));
    expect(factor).toMatchObject({ low: 1.45, value: 1.55, high: 1.65 });
  });

  test('the box by its draw, wider where none was told; openings of a fridge and of a freezer', () => {
    const [box, openings] = useAssumptions(use(dc('fridge', { powerW: 45 })));
    const why = 'usual for that draw, common practice';
    expect(box).toEqual({ name: 'fridge volume', low: 26, value: 40, high: 60, unit: 'L', why });
    expect(openings).toMatchObject({ name: 'fridge openings', low: 0.3, value: 0.65, high: 1, unit: '' });
    const [open] = useAssumptions(use(dc('fridge')));
    expect(open).toMatchObject({ low: 20, value: 40, high: 80, why: 'a usual one, common practice' });
    const [, ofFreezer] = useAssumptions(use(dc('freezer', { powerW: 50 })));
    expect(ofFreezer).toMatchObject({ low: 0.1, value: 0.35, high: 0.7 });
  });

  test('a box told to the engine moves its use, the draw of its compressor only the share of the time', () => {
    const fridge = dc('fridge');
    const of = (values: Record<string, number>) => present(usePerLoad(use(fridge), values)[0]);
    expect(of({ 'fridge volume': 80 }).chargeAh).toBeGreaterThan(1.4 * of({ 'fridge volume': 40 }).chargeAh);
    expect(of({ 'fridge openings': 1 }).chargeAh).toBeCloseTo((2 / 1.65) * of({}).chargeAh, 9);
    expect(of({ 'fridge power': 90 }).chargeAh).toBeCloseTo(of({}).chargeAh, 9);
    expect(of({ 'fridge power': 90 }).duty).toBeCloseTo(of({}).duty / 2, 9);
  });

  test('told weather and a told day leave nothing open', () => {
    const fridge = dc('fridge', { powerW: 45 });
    expect(useAssumptions({ ...use(fridge), ambientC: 30 }).map(a => a.name)).toEqual([
      'fridge volume',
      'fridge openings',
    ]);
    expect(useAssumptions({ ...use(fridge), dailyUseWh: 400 })).toEqual([]);
    expect(useAssumptions({ ...use(fridge), dailyUseAh: 40 })).toEqual([]);
  });
});

describe('draws', () => {
  const reading = (load: Load) => present(readLoads({ loads: [load] })[0]);

  test('amps at the mains or at the battery', () => {
    const at = (load: Load, u: Partial<Use> = {}) => inputPowerW(reading(load), { ...use(load), ...u }, {});
    expect(at(ac('oven', { currentA: 4 }))).toBe(920);
    expect(at(ac('oven', { currentA: 4 }), { mainsV: 120 })).toBe(480);
    expect(at(dc('pump', { currentA: 4 }))).toBe(48);
    // Watts and amps told: watts are the plate.
    expect(at(dc('pump', { currentA: 4, powerW: 60 }))).toBe(60);
    expect(at(dc('gizmo'))).toBeUndefined();
    expect(runningCurrentA(dc('gizmo'), use(), {})).toBe(0);
    expect(dailyUseAh(use(ac('gizmo')), {})).toBe(0);
  });

  test('20 A are still at the socket, more were measured at the battery', () => {
    const amps = (currentA: number) =>
      runningCurrentA(ac('oven', { currentA }), { ...use(), mainsV: 120 }, {});
    expect(amps(20)).toBeGreaterThan(200);
    expect(amps(20.1)).toBe(20.1);
  });

  test('behind an inverter that runs all of a kind and starts one', () => {
    const behind = (load: Load, powerW: number, inverterW?: number) =>
      inverterBehind(reading(load), { ...use(load), inverterW }, powerW);
    expect(behind(ac('tv'), 100)).toBe(150);
    expect(behind(ac('tv', { count: 3 }), 100)).toBe(600);
    expect(behind(ac('fridge'), 100)).toBe(300);
    expect(behind(ac('fridge', { count: 4 }), 100)).toBe(600);
    expect(behind(ac('air conditioner'), 1000)).toBe(2500);
    expect(behind(ac('tv'), 100, 2000)).toBe(2000);
    // 100 W on a usual 150 W one.
    expect(runningCurrentA(ac('tv', { powerW: 100 }), use(), {})).toBeCloseTo(100 / eta(100 / 150) / 12, 9);
  });

  test('one of the loads is read in its place, one that is not among them by itself', () => {
    const [first, second] = [dc('fan'), dc('fan')];
    const values = { 'fan power': 12, 'fan2 power': 24 };
    const both = use(first, second);
    expect(runningCurrentA(first, both, values)).toBe(1);
    expect(runningCurrentA(second, both, values)).toBe(2);
    expect(runningCurrentA(dc('fan'), both, values)).toBe(1);
  });

  test('no household microwave cooks with more than 1,250 W', () => {
    expect(inputFactorOf(ac('microwave', { powerW: 1250 }))).toBeDefined();
    expect(inputFactorOf(ac('microwave', { powerW: 1251 }))).toBeUndefined();
    expect(inputFactorOf(ac('tv', { powerW: 40 }))).toBeUndefined();
  });

  test('a mains fridge waits with the inverter on: its share by the hours and the volts', () => {
    const fridge = ac('fridge', { powerW: 100 });
    const [one] = usePerLoad(use(fridge), {});
    const S = 300;
    const running = (100 / eta(100 / 300) / 12) * present(one).duty * 24;
    expect(present(one).chargeAh).toBeCloseTo(running + (0.007 * S * 24 * (1 - present(one).duty)) / 12, 9);
    const [at24] = usePerLoad({ ...use(fridge), voltageV: 24 }, {});
    expect(present(at24).chargeAh).toBeCloseTo(present(one).chargeAh / 2, 9);
  });
});

describe('how a draw was meant', () => {
  test('hours that nobody told', () => {
    const hours = (u: Use) => usePerLoad(u, {}).map(l => l.hours);
    expect(hours(use(ac('toaster', { powerW: 1000 })))[0]).toBeLessThan(24);
    expect(hours({ ...use(ac('toaster', { powerW: 1000 })), doesMainsRunOn: true })).toEqual([24]);
    expect(hours(use(dc('fan', { isAverage: true }), dc('tv')))).toEqual([24, 3]);
    expect(hours(use(dc('fridge', { currentA: 1 }), dc('tv')))).toEqual([24, 3]);
    expect(hours(use(dc('gizmo', { powerW: 3 }), dc('tv')))).toEqual([24, 3]);
    expect(hours(use(dc('fan', { minutesPerDay: 90 })))).toEqual([1.5]);
  });

  test('what cycles', () => {
    const cycles = (load: Load) => present(readLoads({ loads: [load] })[0]).cycles;
    expect(cycles(dc('fridge'))).toBe(true);
    expect(cycles(dc('fridge', { powerW: 45 }))).toBe(true);
    expect(cycles(dc('fridge', { currentA: 2.6 }))).toBe(true);
    expect(cycles(dc('fridge', { currentA: 2.5 }))).toBe(false);
    expect(cycles(dc('fridge', { currentA: 1, powerW: 45 }))).toBe(true);
    expect(cycles(dc('fridge', { powerW: 45, dutyPercent: 40 }))).toBe(false);
    expect(cycles(dc('fridge', { powerW: 45, isAverage: true }))).toBe(false);
    expect(cycles(dc('tv', { powerW: 45 }))).toBe(false);
  });

  test('a doubt only where a draw of a thing that cools was told', () => {
    expect(coolingReading(dc('fridge'))).toBeUndefined();
    expect(coolingReading(dc('gizmo', { powerW: 4 }))).toBeUndefined();
    expect(coolingReading(dc('fridge', { currentA: 2.6 }))).toBe('running');
  });

  test('freezers from below −5 °C', () => {
    expect(kindOf(-5)).toBe(coolerKinds.fridge);
    expect(kindOf(-5.1)).toBe(coolerKinds.freezer);
  });

  test('names a little off', () => {
    expect(applianceOf('fridge-freezer')?.id).toBe('fridge');
    expect(applianceOf('  fridge')?.id).toBe('fridge');
    expect(applianceOf('fridges')?.id).toBe('fridge');
    expect(applianceOf('my  big   fan')?.id).toBe('fan');
    expect(applianceOf('gas')?.id).toBeUndefined();
  });
});

describe('a day and parts of it', () => {
  test('a whole told day is spread over its hours', () => {
    const [told] = usePerLoad(use(dc('fridge', { chargeAhPerDay: 24, count: 2 })), {});
    expect(told).toMatchObject({ chargeAh: 48, currentA: 2, hours: 24, duty: 1 });
    expect(dayOf({ ...use(), dailyUseAh: 48 }, {})).toEqual({
      dailyUse: 48,
      currentA: 2,
      peakA: 2,
      parts: [],
    });
    expect(dayOf({ ...use(), dailyUseWh: 576 }, {})).toMatchObject({ dailyUse: 48, currentA: 2, peakA: 2 });
  });

  test('one load alone needs no line of a sum', () => {
    const trace = new Trace();
    dayOf(use(dc('fridge', { currentA: 1 })), {}, trace);
    expect(trace.steps.map(s => (s.kind === 'rule' ? s.rule.name : s.name))).toEqual(['dailyCharge']);
  });

  test('a day to the hour goes evenly, and so does what was told as one number', () => {
    const lamp = dayOf(use(dc('lamp', { currentA: 2, hoursPerDay: 5 })), {});
    expect(chargeOver(lamp, 24)).toBeCloseTo(10, 9);
    expect(chargeOver(lamp, 23.9)).toBeCloseTo(10, 9);
    expect(chargeOver(dayOf({ ...use(), dailyUseAh: 48 }, {}), 6)).toBeCloseTo(12, 9);
    const trace = new Trace();
    chargeOver(lamp, 24, trace);
    expect(trace.steps).toMatchObject([{ kind: 'rule' }]);
    // A thing that is on for no time takes nothing.
    expect(chargeOver(dayOf(use(dc('lamp', { currentA: 2, hoursPerDay: 0 })), {}), 5)).toBe(0);
  });

  test('amps through volts, and amp hours through volts', () => {
    const at = (from: 'current' | 'charge', to: 'power' | 'energy') => {
      const trace = new Trace();
      convertKind({ value: 2, from, to, voltageV: 12, hours: 1 }, trace);
      return trace.steps.map(s => (s.kind === 'rule' ? s.rule.name : ''));
    };
    expect(at('current', 'power')).toEqual(['powerOfCurrent']);
    expect(at('charge', 'energy')).toEqual(['dailyEnergy']);
  });

  test('the biggest draw is the likely one, not that of a moved assumption', () => {
    const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }]));
    expect(exploreRunTime({ bank, use: use(dc('tv', { hoursPerDay: 3 })) }).peakA).toBeCloseTo(40 / 12, 9);
  });
});
