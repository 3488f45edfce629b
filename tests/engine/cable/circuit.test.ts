import { describe, expect, test } from 'vitest';
import {
  behindController,
  type Circuit,
  type CircuitKind,
  circuitAssumptions,
  circuitCurrents,
  circuitKindOf,
  circuitUseOf,
  hasMotor,
} from '#engine/cable/circuit.ts';
import { fuseFor } from '#engine/cable/fuse.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';

const load = (name: string, rest: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'dc', ...rest });
const circuit = (kind: CircuitKind, facts: Facts, voltageV = 12): Circuit => ({
  kind,
  use: 'general',
  facts,
  voltageV,
});
const amps = (kind: CircuitKind, facts: Facts, voltageV = 12) => {
  const it = circuit(kind, facts, voltageV);
  return circuitCurrents(it, Object.fromEntries(circuitAssumptions(it).map(a => [a.name, a.value])));
};
const names = (kind: CircuitKind, facts: Facts) => circuitAssumptions(circuit(kind, facts)).map(a => a.name);

const everything: Facts = {
  cable: { currentA: 20 },
  inverter: { powerW: 1000 },
  loads: [load('fridge')],
  chargers: [{ kind: 'dcdc' }, { kind: 'mains' }],
  solar: [{ count: 1, powerW: 100 }],
};
const none: ReadonlySet<keyof Facts> = new Set();

describe('which circuit is meant', () => {
  test.for<[says: string, facts: Facts, recalled: (keyof Facts)[], kind: CircuitKind | undefined]>([
    ['a told current before all', everything, [], 'told'],
    ['then an inverter', { ...everything, cable: { lengthM: 3 } }, [], 'inverter'],
    ['then loads', { ...everything, cable: {}, inverter: {} }, [], 'loads'],
    ['then a DC-DC charger', { chargers: everything.chargers, solar: everything.solar }, [], 'dcdc'],
    ['another charger', { chargers: [{ kind: 'mains' }], solar: everything.solar }, [], 'charger'],
    ['a generator is no circuit of 12 V', { chargers: [{ kind: 'generator' }] }, [], undefined],
    ['panels', { solar: [{ count: 1 }, { count: 2, powerW: 100 }] }, [], 'solar'],
    ['panels without watts are none', { solar: [{ count: 1 }] }, [], undefined],
    ['no loads at all', { loads: [] }, [], undefined],
    ['nothing', {}, [], undefined],
    ['what is said before what is remembered', everything, ['cable', 'inverter', 'loads'], 'dcdc'],
    ['all remembered: the first', everything, ['cable', 'inverter', 'loads', 'chargers', 'solar'], 'told'],
  ])('%s', ([, facts, recalled, kind]) => {
    expect(circuitKindOf(facts, new Set(recalled))).toBe(kind);
  });
});

describe('how much drop it stands', () => {
  test.for<[kind: CircuitKind, facts: Facts, use: string]>([
    ['inverter', {}, 'critical'],
    ['dcdc', {}, 'critical'],
    ['charger', {}, 'critical'],
    ['solar', {}, 'critical'],
    ['told', { chargers: [{ kind: 'dcdc' }] }, 'critical'],
    ['told', { chargers: [] }, 'general'],
    ['told', {}, 'general'],
    ['loads', { loads: [load('light'), load('led strip')] }, 'lamps'],
    ['loads', { loads: [load('light'), load('fridge')] }, 'critical'],
    ['loads', { loads: [load('light'), load('pump')] }, 'general'],
    ['loads', { loads: [load('flood lamp')], chargers: [{ kind: 'dcdc' }] }, 'lamps'],
    ['loads', { loads: [] }, 'general'],
  ])('%s with %j: %s', ([kind, facts, use]) => {
    expect(circuitUseOf(kind, facts)).toBe(use);
  });
});

describe('its current', () => {
  test('of a load its draw is taken for granted, and not how long it runs, whatever it is called', () => {
    for (const name of ['water pump', 'the hot power washer', 'an old power supply box'])
      expect(names('loads', { loads: [load(name)] })).toEqual(
        names('loads', { loads: [load(name)] }).filter(one => / power$/.test(one)),
      );
    expect(names('loads', { loads: [load('water pump')] })).toEqual(['water pump power']);
  });

  test('as told', () => {
    expect(amps('told', { cable: { currentA: 18 } })).toMatchObject({
      ratedA: 18,
      cableA: 18,
      continuousA: 18,
      ofV: 12,
    });
    expect(names('told', { cable: { currentA: 18 } })).toEqual([]);
  });

  test('a told current of a DC-DC charger is what it gives; it takes in more', () => {
    // 40 A at 14.4 V out, 13.5 V in, nine tenths of it arriving.
    const inA = (40 * 14.4) / 0.9 / 13.5;
    const facts: Facts = { cable: { currentA: 40 }, chargers: [{ kind: 'dcdc' }] };
    expect(amps('told', facts)).toEqual({
      ratedA: 40,
      cableA: expect.closeTo(inA, 9),
      continuousA: expect.closeTo(inA, 9),
      ofV: 13.5,
    });
    expect(names('told', facts)).toEqual(['dcdcEfficiency', 'vehicleVoltage']);
    const same: Facts = { ...facts, chargers: [{ kind: 'dcdc', currentA: 40 }] };
    expect(amps('told', same).continuousA).toBeCloseTo(inA, 9);
    for (const kind of ['mains', 'isolator'] as const)
      expect(amps('told', { ...facts, chargers: [{ kind }] }).continuousA).toBe(40);
    const other: Facts = { ...facts, chargers: [{ kind: 'dcdc', currentA: 25 }] };
    expect(amps('told', other)).toMatchObject({ ratedA: 40, cableA: 40, continuousA: 40, ofV: 12 });
  });

  test('an inverter at its rating: 1,000 W at nine tenths of 12 V', () => {
    const { ratedA, continuousA } = amps('inverter', { inverter: { powerW: 1000 } });
    expect(ratedA).toBeCloseTo(1000 / 0.9 / 12, 1);
    expect(continuousA).toBe(ratedA);
    expect(amps('inverter', { inverter: { powerW: 1000 } }, 24).ratedA).toBeCloseTo(ratedA / 2, 9);
    expect(names('inverter', { inverter: { powerW: 1000 } })).toEqual([
      'inverterEfficiency',
      'loadedVoltage',
    ]);
  });

  test('loads run at the same time, each as often as it is there', () => {
    const loads = [load('pump', { currentA: 4 }), load('light', { powerW: 6, count: 4 })];
    expect(amps('loads', { loads })).toMatchObject({ ratedA: 6, cableA: 6, continuousA: 6 });
    expect(amps('loads', { loads }, 24).ratedA).toBeCloseTo(5, 9);
    expect(names('loads', { loads })).toEqual([]);
  });

  test('of loads only draws are taken for granted, not hours or weather', () => {
    const loads = [load('fridge'), load('fan'), load('kettle', { supply: 'ac' })];
    expect(names('loads', { loads })).toEqual([
      'fridge power',
      'fan power',
      'kettle power',
      'inverterEfficiency',
    ]);
    expect(names('loads', { loads: [load('microwave', { supply: 'ac', powerW: 800 })] })).toEqual([
      'microwave input factor',
      'inverterEfficiency',
    ]);
    // 45 W for the fridge, by the table.
    expect(amps('loads', { loads: [load('fridge')] }).ratedA).toBeCloseTo(45 / 12, 9);
  });

  test('a mains load asks for the rating of the inverter it is told with', () => {
    const loads = [load('laptop', { supply: 'ac', powerW: 60 })];
    const small = amps('loads', { loads, inverter: { powerW: 150 } }).ratedA;
    expect(amps('loads', { loads, inverter: { powerW: 3000 } }).ratedA).toBeGreaterThan(1.05 * small);
  });

  test('a DC-DC charger: amps, watts, or a usual one', () => {
    const inOf = (outA: number) => (outA * 14.4) / 0.9 / 13.5;
    const of = (rest: object): Facts => ({ chargers: [{ kind: 'mains' }, { kind: 'dcdc', ...rest }] });
    expect(amps('dcdc', of({ currentA: 30 }))).toEqual({
      ratedA: 30,
      cableA: expect.closeTo(inOf(30), 9),
      continuousA: expect.closeTo(inOf(30), 9),
      ofV: 13.5,
    });
    expect(amps('dcdc', of({ powerW: 240 })).ratedA).toBeCloseTo(20, 9);
    expect(amps('dcdc', of({ powerW: 240 }), 24).ratedA).toBeCloseTo(10, 9);
    expect(amps('dcdc', of({})).ratedA).toBe(25);
    expect(names('dcdc', of({}))).toEqual(['dcdcEfficiency', 'vehicleVoltage', 'chargerCurrent']);
    expect(names('dcdc', of({ currentA: 30 }))).toEqual(['dcdcEfficiency', 'vehicleVoltage']);
    expect(names('dcdc', of({ powerW: 240 }))).toEqual(['dcdcEfficiency', 'vehicleVoltage']);
  });

  test('the fuse before a DC-DC charger stands what it takes in at the low end of its input', () => {
    for (const currentA of [10, 20, 25, 30, 40, 50, 60]) {
      const it = circuit('dcdc', { chargers: [{ kind: 'dcdc', currentA }] });
      const assumptions = circuitAssumptions(it);
      const at = (end: 'value' | 'low') =>
        circuitCurrents(it, Object.fromEntries(assumptions.map(a => [a.name, a[end]]))).continuousA;
      expect(at('low')).toBeGreaterThan(1.1 * at('value'));
      expect(fuseFor(at('value')).ratingA).toBeGreaterThan(at('low'));
    }
  });

  test('another charger: its amps, its watts, or a usual one; a generator is not it', () => {
    const of = (rest: object): Facts => ({ chargers: [{ kind: 'generator' }, { kind: 'mains', ...rest }] });
    expect(amps('charger', of({ currentA: 15 }))).toMatchObject({ ratedA: 15, cableA: 15, continuousA: 15 });
    expect(amps('charger', of({ powerW: 240 }))).toMatchObject({ ratedA: 20, cableA: 20, continuousA: 20 });
    expect(amps('charger', of({}))).toMatchObject({ ratedA: 20, cableA: 20, continuousA: 20 });
    expect(names('charger', of({}))).toEqual(['chargerCurrent']);
    expect(names('charger', of({ currentA: 15 }))).toEqual([]);
  });

  test('panels side by side: full power for the drop, 125 % of a short for cable and fuse', () => {
    const solar = [{ count: 2, powerW: 120 }, { count: 1, powerW: 60 }, { count: 3 }];
    // 300 W at 0.82 × 22 V; a short gives 7 % more, bright sun a quarter more again.
    const fullA = 300 / (0.82 * 22);
    const { ratedA, cableA, continuousA } = amps('solar', { solar });
    expect([ratedA, cableA]).toEqual([expect.closeTo(fullA, 9), expect.closeTo(fullA, 9)]);
    expect(continuousA).toBeCloseTo(1.25 * 1.07 * fullA, 9);
    // For 24 V they stand two in a string.
    expect(amps('solar', { solar }, 24).ratedA).toBeCloseTo(fullA / 2, 9);
    expect(names('solar', { solar })).toEqual(['openCircuitVoltage', 'fullPowerShare']);
    const told = [{ count: 1, powerW: 200, openCircuitV: 24.3 }];
    expect(amps('solar', { solar: told }).ratedA).toBeCloseTo(200 / (0.82 * 24.3), 9);
    expect(names('solar', { solar: told })).toEqual(['fullPowerShare']);
  });

  test('one panel alone has no other to stand in a string with', () => {
    const one = [{ count: 1, powerW: 100 }];
    expect(amps('solar', { solar: one }, 24)).toEqual({ ...amps('solar', { solar: one }), ofV: 24 });
  });

  test('behind the controller flows another current: watts by the battery’s volts', () => {
    const trace = new Trace();
    expect(behindController(circuit('solar', { solar: [{ count: 2, powerW: 120 }] }), trace)).toBe(20);
    expect(trace.steps).toHaveLength(1);
    expect(trace.steps[0]).toMatchObject({ value: 20, inputs: { P: 240, V: 12 } });
  });

  test('the working of panels ends with the second of the two margins before the fuse', () => {
    const trace = new Trace();
    circuitCurrents(
      circuit('solar', { solar: [{ count: 1, powerW: 100, openCircuitV: 20 }] }),
      { fullPowerShare: 0.8 },
      trace,
    );
    const [short, continuous] = trace.steps;
    expect(short).toMatchObject({ value: expect.closeTo((1.07 * 100) / 16, 9) });
    expect(continuous).toMatchObject({ value: expect.closeTo((1.25 * 1.07 * 100) / 16, 9) });
  });
});

test('a motor is what the table of appliances gives a surge', () => {
  expect(hasMotor({ loads: [load('light'), load('fridge')] })).toBe(true);
  expect(hasMotor({ loads: [load('light'), load('gizmo')] })).toBe(false);
  expect(hasMotor({ loads: [] })).toBe(false);
  expect(hasMotor({})).toBe(false);
  expect(circuitKindOf({}, none)).toBeUndefined();
});

describe('a fuel heater is wired for its start', () => {
  // Glow plug about 10 A at 12 V for some minutes: installation sheets, common practice.
  test.for<[says: string, facts: Facts, voltageV: number, currentA: number]>([
    ['for the glow plug, not for the fan', { loads: [load('diesel heater')] }, 12, 10],
    ['half at 24 V', { loads: [load('diesel heater')] }, 24, 5],
    ['also where its running current is told', { loads: [load('diesel heater', { currentA: 2 })] }, 12, 10],
    ['a gas heater has none', { loads: [load('gas heater', { currentA: 2 })] }, 12, 2],
  ])('%s', ([, facts, voltageV, currentA]) => {
    expect(amps('loads', facts, voltageV).continuousA).toBeCloseTo(currentA, 6);
  });
});
