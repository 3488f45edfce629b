import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { learn } from '#engine/learn/learn.ts';
import { type RigReading, seenIn } from '#engine/learn/reading.ts';
import { type ByPart, byPart, type Expected, unlearned } from '#engine/learn/state.ts';

const hours = 24;
const expected: Expected = {
  labelAh: 100,
  capacityAh: 100,
  useAh: Array<number>(hours).fill(1),
  sunAh: Array<number>(hours).fill(0),
};
const hourMs = 3600_000;
const { mean } = unlearned(0);
/** A battery that holds 70 Ah of its 100, half full. */
const worn: ByPart = [0.5, 0, 0, Math.log(0.7), 0];
const first = (reading: Omit<RigReading, 'at'>, state: ByPart = mean) =>
  present(seenIn({ at: 0, ...reading }, state, expected)[0]);

describe('what a reading is measured against', () => {
  test('Ah left: lead counts from its label, lithium from what it holds', () => {
    expect(first({ leftAh: 65, chemistry: 'agm' }, worn)).toMatchObject({ value: 35, expected: 35 });
    const { value, expected: left } = first({ leftAh: 35, chemistry: 'lfp' }, worn);
    expect([value, left]).toEqual([35, expect.closeTo(35, 9)]);
  });

  test('the slopes are those of the expectation', () => {
    for (const reading of [
      { leftAh: 40, chemistry: 'lfp' },
      { leftAh: 40, chemistry: 'agm' },
      { usedAh: 60 },
    ] as const) {
      const at = first(reading, worn);
      for (let part = 0; part < worn.length; part++) {
        const step = 1e-6;
        const moved = first(
          reading,
          byPart(i => present(worn[i]) + (i === part ? step : 0)),
        );
        expect((moved.expected - at.expected) / step).toBeCloseTo(present(at.slope[part]), 3);
      }
    }
  });

  test('volts tell less of the level than a gauge does, and a flat battery less of what was drawn', () => {
    const gauge = first({ percent: 65 }).variance;
    expect(first({ restVolts: 12.4, chemistry: 'agm' }).variance).toBeGreaterThan(10 * gauge);
    expect(first({ percent: 5 }).variance).toBeGreaterThan(2 * gauge);
  });
});

describe('a glance at the amps', () => {
  const glance = (useA: number, sunA: number) => {
    const flows = (a: number) => Array<number>(hours).fill(a);
    const rig = { ...expected, useAh: flows(useA), sunAh: flows(sunA) };
    return present(seenIn({ at: 12 * hourMs, netA: 1 }, worn, rig)[0]);
  };

  test('is held against the sun less the use, and tells the less the more of either flows', () => {
    expect(glance(2, 6)).toMatchObject({ what: 'amps', value: 1, expected: 4 });
    expect(glance(4, 6).variance).toBeGreaterThan(glance(2, 6).variance);
    expect(glance(2, 8).variance).toBeGreaterThan(glance(2, 6).variance);
    expect(glance(2, 0).variance).toBeGreaterThan(0);
  });

  test('independent doubts add as squares: those of sun and use come to those of each', () => {
    const [both, use, sun, none] = [glance(2, 6), glance(2, 0), glance(0, 6), glance(0, 0)].map(
      g => g.variance,
    );
    expect(present(both) + present(none)).toBeCloseTo(present(use) + present(sun), 9);
  });
});

describe('what readings of Ah used over days teach', () => {
  /** Used Ah every twelve hours at a steady draw, A. */
  function taught(amps: number) {
    let known = learn(undefined, { at: 0, usedAh: 0 }, expected).learned;
    for (let hour = 12; hour <= 48; hour += 12)
      known = learn(known, { at: hour * hourMs, usedAh: amps * hour }, expected).learned;
    return known;
  }
  test.each([0.7, 1, 1.3])('%s A, whatever the battery holds', amps => {
    const { mean: found } = taught(amps);
    expect(Math.exp(present(found[1]))).toBeGreaterThan(0.94 * amps);
    expect(Math.exp(present(found[1]))).toBeLessThan(1.06 * amps);
  });
});

test('one glance at a compressor teaches little, at what runs steadily much', () => {
  const before = learn(undefined, { at: 0, percent: 90 }, expected).learned;
  const after = (isSteady: boolean) =>
    present(learn(before, { at: hourMs, netA: -3 }, { ...expected, isSteady }).learned.mean[1]);
  expect(after(true)).toBeGreaterThan(0.1);
  expect(Math.abs(after(false))).toBeLessThan(after(true) / 2);
});
