import { expect, test } from 'vitest';
import { FeatureList } from '#language/decide/feature-list.ts';
import { Table } from '#language/decide/table.ts';
import { readModel, shippedModel, writeModel } from '#language/decide/weights.ts';
import { slots } from '#language/propose/slots.ts';
import { fingerprintIn } from '../../../src/tools/train/fingerprint.ts';
import { smallModel } from './small-model.ts';

/** Features are 32 bits with a sign; the file keeps them in the order of those without. */
const highest = 0xffffffff | 0;

const made = () => {
  const model = smallModel({ load: 1.25, fuseA: -0.5 });
  const index = new Map([
    [highest, 1],
    [7, 0],
  ]);
  return {
    ...model,
    owners: Table.of(index, Float32Array.from([1, -0.5]), 1),
    ranker: { features: Table.of(new Map([[3, 0]]), Float32Array.from([0.25]), 1), logs: [1, 0.5] as const },
  };
};

test('a model comes back from its bytes', () => {
  const model = made();
  const again = readModel(writeModel(model, 'abc'));
  expect(again.intentNames).toEqual(model.intentNames);
  expect(again.hazardNames).toEqual(model.hazardNames);
  expect(again.certainty).toEqual(model.certainty);
  expect([...again.slots.outBias]).toEqual([...model.slots.outBias]);
  expect(again.ranker?.logs).toEqual([1, 0.5]);
  const weight = (feature: number): number => again.owners.scale * again.owners.weight(feature);
  // Weights are kept in steps of a 127th of the largest.
  expect(weight(7)).toBeCloseTo(1, 2);
  expect(weight(highest)).toBeCloseTo(-0.5, 2);
});

test('writing it twice gives the same bytes, and so does writing what was read', () => {
  const bytes = writeModel(made(), 'abc');
  expect(writeModel(made(), 'abc').equals(bytes)).toBe(true);
  expect(writeModel(readModel(bytes), 'abc').equals(bytes)).toBe(true);
});

/** Rows of features 0, 1, 2 …, whose weights are whole steps from −127 to 127. */
const tableOf = (rows: number, size: number): Table =>
  Table.of(
    new Map(Array.from({ length: rows }, (_, row) => [row, row])),
    Float32Array.from({ length: rows * size }, (_, k) => (k === 0 ? 127 : ((k * 89) % 255) - 127)),
    size,
  );

test.each([1, 3, 4, 8, 72])('rows of %i weights are summed as their bytes say, however many', size => {
  const table = tableOf(9, size);
  const list = new FeatureList();
  // The largest and the smallest bytes, more rows than one sum under way holds, some of which no table knows.
  for (let k = 0; k < 1500; k++) list.push((k * k) % 11);
  const known = [...list.taken()].filter(feature => feature < 9);
  const summed = (features: readonly number[]): number[] =>
    Array.from({ length: size }, (_, d) =>
      features.reduce((sum, feature) => sum + (table.rows[feature * size + d] ?? 0), 0),
    );
  for (const [add, features] of [
    ['add', known],
    ['addOnce', [...new Set(known)]],
  ] as const) {
    const got = new Int32Array(size);
    table[add](list, got);
    expect([...got]).toEqual(summed(features));
  }
});

test('the fingerprint stands in the first line', () => {
  expect(fingerprintIn(writeModel(made(), 'abc'))).toBe('abc');
});

test('the shipped weights fit the slots and are small', () => {
  const model = shippedModel();
  expect(model.slots.outBias).toHaveLength(slots.length);
  expect(writeModel(model, 'x').length).toBeLessThan(8_000_000);
});
