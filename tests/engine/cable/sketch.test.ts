import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draw } from '#answer/chart/draw.ts';
import { present } from '#basics/present.ts';
import { dropOn } from '#engine/cable/choose.ts';
import { conductorAssumptions } from '#engine/cable/conductor.ts';
import { type Sketch, sketchOf } from '#engine/cable/sketch.ts';
import type { SketchLead } from '#engine/cable/sketch-lead.ts';
import { carriesA } from '#engine/cable/surroundings.ts';
import { dropLimits, fuseFactor } from '#engine/cable/tables.ts';
import { wiringChart } from '#intents/wiring-chart.ts';
import type { Facts, Solar } from '#rig/rig.ts';
import { illegible } from '../../answer/chart/legible.ts';

const dc = (name: string, currentA?: number) => ({ name, count: 1, supply: 'dc' as const, currentA });

const rigs: fc.Arbitrary<Facts> = fc.record({
  batteries: fc.array(
    fc.record({
      count: fc.integer({ min: 1, max: 4 }),
      capacityAh: fc.integer({ min: 7, max: 400 }),
      chemistry: fc.constantFrom('agm' as const, 'lfp' as const),
    }),
    { minLength: 1, maxLength: 1 },
  ),
  solar: fc.array(
    fc.record({ count: fc.integer({ min: 1, max: 4 }), powerW: fc.integer({ min: 20, max: 400 }) }),
    {
      maxLength: 2,
    },
  ),
  chargers: fc.array(
    fc.record({
      kind: fc.constantFrom('dcdc' as const, 'isolator' as const, 'mains' as const, 'generator' as const),
      currentA: fc.option(fc.integer({ min: 5, max: 60 }), { nil: undefined }),
    }),
    { maxLength: 3 },
  ),
  inverter: fc.option(fc.record({ powerW: fc.integer({ min: 150, max: 4000 }) }), { nil: undefined }),
  loads: fc.array(
    fc
      .tuple(
        fc.constantFrom('fridge', 'light', 'pump', 'gadget'),
        fc.double({ min: 0.1, max: 30, noNaN: true }),
      )
      .map(([name, amps]) => dc(name, amps)),
    { maxLength: 9 },
  ),
  systemVoltageV: fc.constantFrom(undefined, 24),
}) as fc.Arbitrary<Facts>;

const leadsOf = (sketch: Sketch): SketchLead[] => [
  sketch.main,
  ...sketch.branches.flatMap(branch => branch.leads),
];
const metric = (areaMm2: number) => ({ areaMm2, as: 'metric' as const, size: areaMm2 });

describe('any rig', () => {
  test('each fuse holds its load and guards its cable, or it is said that no cable does', () => {
    fc.assert(
      fc.property(rigs, facts => {
        const sketch = sketchOf(facts);
        if (!sketch) return;
        for (const lead of leadsOf(sketch)) {
          if (lead.isTooMuch) continue;
          // 125 % of what flows for long: NEC practice, as in tables.ts; a grain for binary.
          expect(lead.fuseA).toBeGreaterThanOrEqual(fuseFactor * lead.currentA * (1 - 1e-5));
          expect(carriesA(metric(lead.areaMm2))).toBeGreaterThanOrEqual(lead.fuseA * (1 - 1e-9));
        }
      }),
    );
  });
  test('no charging cable loses more than ISO 10133 allows for what is critical, 3 %', () => {
    fc.assert(
      fc.property(rigs, facts => {
        const sketch = sketchOf(facts);
        const values = Object.fromEntries(conductorAssumptions(undefined).map(a => [a.name, a.value]));
        for (const { side, leads } of sketch?.branches ?? []) {
          if (side === 'out') continue;
          const last = present(leads.at(-1));
          if (last.isTooMuch) continue;
          const about = {
            lengthM: last.lengthM,
            currentA: last.currentA,
            continuousA: last.currentA,
            voltageV: present(sketch).voltageV,
          };
          expect(dropOn(metric(last.areaMm2), about, values).percent).toBeLessThanOrEqual(
            dropLimits.critical.value * 1.0001,
          );
        }
      }),
    );
  });
  test('the main cable carries the larger of what comes in and what goes out', () => {
    fc.assert(
      fc.property(rigs, facts => {
        const sketch = sketchOf(facts);
        for (const { leads } of sketch?.branches ?? [])
          expect(present(sketch).main.currentA).toBeGreaterThanOrEqual(
            present(leads.at(-1)).currentA * (1 - 1e-9),
          );
      }),
    );
  });
});

test('what runs on mains, and what is told as a day’s use alone, has no lead of its own', () => {
  const sketch = present(
    sketchOf({
      batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm' }],
      loads: [
        dc('fan', 3),
        { name: 'kettle', count: 1, supply: 'ac', powerW: 1000 },
        { name: 'tv', count: 1, supply: 'dc', energyWhPerDay: 200 },
      ],
    }),
  );
  expect(sketch.branches.flatMap(({ load }) => (load ? [load.name] : []))).toEqual(['fan']);
});

test('more than the battery may give is told, and only that', () => {
  const on = (powerW: number) =>
    present(
      sketchOf({
        batteries: [{ count: 1, capacityAh: 200, chemistry: 'lfp', maxCurrentA: 100 }],
        inverter: { powerW },
      }),
    );
  expect(on(2000).exceedsA).toBe(100);
  expect(on(500)).not.toHaveProperty('exceedsA');
});

test('whatever is offered as a picture can be drawn, and read on a phone', () => {
  fc.assert(
    fc.property(rigs, fc.boolean(), (facts, isEmpty) => {
      const batteries = present(facts.batteries).map(one => (isEmpty ? { ...one, capacityAh: 0 } : one));
      const chart = wiringChart({ ...facts, batteries })?.();
      expect(isEmpty && chart !== undefined).toBe(false);
      if (chart) expect(illegible(draw(chart))).toEqual([]);
    }),
  );
});

describe('a rig', () => {
  const bank = { batteries: [{ count: 1, capacityAh: 200, chemistry: 'lfp' as const }] };
  test('is drawn whole: the largest five loads, the others named', () => {
    const loads = [1, 2, 3, 4, 5, 6, 7].map(amps => dc(`gadget ${amps}`, amps));
    const sketch = present(sketchOf({ ...bank, loads }));
    expect(sketch.branches.map(branch => branch.load?.name)).toEqual(
      [7, 6, 5, 4, 3].map(amps => `gadget ${amps}`),
    );
    expect(sketch.others.map(load => load.name)).toEqual(['gadget 2', 'gadget 1']);
    // 28 A of all seven, not 25 of those drawn.
    expect(sketch.main.currentA).toBeCloseTo(28, 6);
  });
  test('a fridge told by its average is fused for what it draws while it runs', () => {
    const average = { ...dc('fridge', 1.2), isAverage: true };
    const [branch] = present(sketchOf({ ...bank, loads: [average] })).branches;
    // 45 W on 12 V: 3.75 A.
    expect(present(branch).leads[0].currentA).toBeGreaterThan(3);
  });
  test('a DC-DC charger takes in more than it gives', () => {
    const [branch] = present(sketchOf({ ...bank, chargers: [{ kind: 'dcdc', currentA: 25 }] })).branches;
    const [starter, house] = present(branch).leads as [SketchLead, SketchLead];
    expect(starter.currentA).toBeGreaterThan(house.currentA);
    expect(house.currentA).toBe(25);
  });
  test('a thing of no known draw has no lead', () => {
    const { branches } = present(sketchOf({ ...bank, loads: [dc('gizmo'), dc('fridge', 4)] }));
    expect(branches.map(({ load }) => load?.name)).toEqual(['fridge']);
  });
  test('a panel without its watts has no lead, and changes none beside it', () => {
    const told = { count: 1, powerW: 200 };
    const branches = (...solar: Solar[]) =>
      present(sketchOf({ ...bank, solar, loads: [dc('fridge', 4)] })).branches.filter(
        ({ side }) => side === 'in',
      );
    expect(branches({ count: 1 })).toEqual([]);
    expect(branches(told, { count: 1 })).toEqual(branches(told));
    expect(branches(told)).toHaveLength(1);
  });
  test('panels in series halve the current of their lead, and not that behind the controller', () => {
    const solar = [{ count: 2, powerW: 200, openCircuitV: 24 }];
    const [one, two] = [1, 2].map(
      inSeries => present(present(sketchOf({ ...bank, solar }, { inSeries })).branches[0]).leads,
    );
    expect(present(present(two)[0]).currentA).toBeCloseTo(present(present(one)[0]).currentA / 2, 6);
    expect(present(present(two)[1]).currentA).toBe(present(present(one)[1]).currentA);
  });
  test('nothing is drawn without a battery, or with nothing on it', () => {
    expect(sketchOf({ loads: [dc('fridge', 4)] })).toBeUndefined();
    expect(sketchOf(bank)).toBeUndefined();
  });
});
