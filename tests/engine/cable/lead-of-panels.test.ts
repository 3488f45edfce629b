import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { conductorAssumptions } from '#engine/cable/conductor.ts';
import { panelFuse } from '#engine/cable/fuse-kinds.ts';
import { sketchOf } from '#engine/cable/sketch.ts';

test('the fuse on the lead of panels is one for panels, the others are none', () => {
  const sketch = present(
    sketchOf({
      batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm' }],
      solar: [{ count: 2, powerW: 200 }],
      chargers: [{ kind: 'dcdc', currentA: 25 }],
    }),
  );
  const kinds = sketch.branches.flatMap(({ leads }) => leads.map(({ name, fuseKind }) => [name, fuseKind]));
  const ofPanels = kinds.filter(([name]) => name === 'panels');
  expect(ofPanels.length).toBeGreaterThan(0);
  for (const [name, kind] of kinds) expect(kind === panelFuse.name).toBe(name === 'panels');
});

test('the leads of a small rig are none that is too much for any cable, each with the fuse of its current', () => {
  const sketch = present(
    sketchOf({
      batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm' }],
      chargers: [{ kind: 'mains', currentA: 20 }],
      loads: [{ name: 'pump', count: 1, supply: 'dc', currentA: 8 }],
    }),
  );
  const leads = sketch.branches.flatMap(branch => branch.leads);
  expect(leads.map(({ isTooMuch }) => isTooMuch)).toEqual(leads.map(() => false));
  // 125 % of 8 and of 20 A, the next rating sold (ISO 8820-3): 10 and 25 A.
  const fuses = new Map(leads.map(({ currentA, fuseA }) => [currentA, fuseA]));
  expect(fuses.get(8)).toBe(10);
  expect(fuses.get(20)).toBe(25);
});

test('copper is warmer than the air about it, and told in degrees', () => {
  for (const airC of [undefined, 10, 30, 45]) {
    const copper = present(conductorAssumptions(undefined, airC).find(({ name }) => name === 'conductorC'));
    expect(copper.unit).toBe('°C');
    expect(copper.value).toBeGreaterThan(airC ?? 0);
    expect(copper.low).toBeLessThanOrEqual(copper.value);
    expect(copper.high).toBeGreaterThan(copper.value);
  }
});
