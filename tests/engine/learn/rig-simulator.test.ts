import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { simulateRig } from './rig-simulator.ts';

const rigs = Array.from({ length: 200 }, (_, seed) => simulateRig(seed));
const median = (all: readonly number[]): number =>
  present([...all].sort((a, b) => a - b)[Math.floor(all.length / 2)]);

describe('the rigs in the field', () => {
  test('are the same for the same seed, and unlike for another', () => {
    expect(simulateRig(3)).toEqual(simulateRig(3));
    expect(simulateRig(3)).not.toEqual(simulateRig(4));
  });

  test('last about 30 % more or less than what was told gives', () => {
    const off = rigs.map(rig => Math.abs(rig.toldHoursPerShare / rig.hoursPerShare - 1));
    expect(median(off)).toBeGreaterThan(0.25);
    expect(median(off)).toBeLessThan(0.4);
  });

  test('are read about twice a day for three days, one reading in twenty wrong and one in twenty late', () => {
    const all = rigs.flatMap(rig => rig.readings);
    expect(all.length / rigs.length).toBeGreaterThan(5.5);
    expect(all.length / rigs.length).toBeLessThan(7);
    for (const flaw of ['wrong', 'stale']) {
      const share = all.filter(reading => reading.flaw === flaw).length / all.length;
      expect(share).toBeGreaterThan(0.03);
      expect(share).toBeLessThan(0.08);
    }
  });
});
