import { existsSync, readFileSync } from 'node:fs';
import { brotliDecompressSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { readPlane } from '#climate/codec.ts';
import { spotOf } from '#climate/grid.ts';
import { world } from '#climate/world.ts';
import { eigenvectors } from '../../src/tools/climate/eigen.ts';
import { planeBytes } from '../../src/tools/climate/encode.ts';
import { fitClimate } from '../../src/tools/climate/fit.ts';
import { hazeRatio } from '../../src/tools/climate/haze.ts';
import { leftOutErrors } from '../../src/tools/climate/left-out.ts';
import { fitErrors, latitudeErrors, temperatureErrors, townsOf } from '../../src/tools/climate/measure.ts';
import { type Reference, readReference } from '../../src/tools/climate/reference.ts';
import { read, root } from '../house/source.ts';

const path = process.env.CLIMATE_REFERENCE ?? `${root}../shared/climate/reference.bin`;
const isThere = existsSync(path);
if (!isThere) console.log('skipped: the fit is not held against its reference, which is not here');

describe.skipIf(!isThere)('the fit, without own points, against its reference', () => {
  const towns = townsOf(read('src/places/data/world.txt'));
  let known: Reference | undefined;
  const reference = (): Reference => (known ??= readReference(path));

  test('sun at all towns: RMS 2 % at most, 99.9 % within a fifth', { timeout: 60_000 }, () => {
    expect(towns).toHaveLength(55_975);
    const errors = fitErrors(towns, reference(), world());
    expect(errors.placeMonths).toBeGreaterThan(600_000);
    expect(errors.rmsPercent).toBeLessThan(2);
    expect(errors.withinFifthPercent).toBeGreaterThan(99.9);
    expect(errors.worstDarkKWhM2).toBeLessThan(0.1);
  });

  test('temperatures at all towns: RMS half a kelvin at most', { timeout: 60_000 }, () => {
    const { dayK, nightK } = temperatureErrors(towns, reference(), world());
    expect(dayK).toBeLessThan(0.5);
    expect(nightK).toBeLessThan(0.5);
  });

  test('a region of 5° that is left out: RMS 5.5 % at most', { timeout: 120_000 }, () => {
    const some = towns.filter((_, i) => i % 10 === 0);
    expect(leftOutErrors(some, reference(), world(), 5).rmsPercent).toBeLessThan(5.5);
  });

  test('a latitude alone: its means within 5 % and 1 K, single towns within 15 % and 4.5 K (RMS)', {
    timeout: 60_000,
  }, () => {
    const some = towns.filter((_, i) => i % 4 === 0);
    const { meanPercent, meanK } = latitudeErrors(towns, reference(), world());
    expect(meanPercent).toBeLessThan(5);
    expect(meanK).toBeLessThan(1);
    const { townPercent, townK } = latitudeErrors(some, reference(), world());
    expect(townPercent).toBeLessThan(15);
    expect(townK).toBeLessThan(4.5);
  });

  test('what is shipped is what the fit writes', { timeout: 60_000 }, () => {
    // What Brotli makes of it may differ from one version to the next; what it holds may not.
    const shipped = readFileSync(`${root}src/climate/data/world.bin`);
    expect(brotliDecompressSync(fitClimate(reference(), towns)).equals(brotliDecompressSync(shipped))).toBe(
      true,
    );
  });
});

test('a plane comes back as it went in', () => {
  const size = fc.record({ rows: fc.integer({ min: 1, max: 9 }), cols: fc.integer({ min: 1, max: 9 }) });
  const plane = size.chain(({ rows, cols }) =>
    fc.record({
      rows: fc.constant(rows),
      cols: fc.constant(cols),
      values: fc.array(fc.integer({ min: -3000, max: 3000 }), {
        minLength: rows * cols,
        maxLength: rows * cols,
      }),
    }),
  );
  fc.assert(
    fc.property(plane, ({ rows, cols, values }) => {
      const bytes = planeBytes(values, cols);
      const back = readPlane(Uint8Array.from([7, ...bytes]), 1, { rows, cols });
      return back.end === bytes.length + 1 && values.every((v, i) => back.values[i] === v);
    }),
    { seed: 8 },
  );
});

const ratio = ([a, b]: readonly number[] = []): number => present(a) / present(b);

test('eigenvectors, the greatest first', () => {
  // Eigenvalues 5 and 2.
  const [first, second] = eigenvectors([
    [4, Math.SQRT2],
    [Math.SQRT2, 3],
  ]);
  expect(ratio(first)).toBeCloseTo(Math.SQRT2, 9);
  expect(ratio(second)).toBeCloseTo(-Math.SQRT1_2, 9);
});

test('a spot lies between the four cells about it, round the globe', () => {
  const lay = { southDeg: -1, westDeg: -179.5, stepDeg: 1, rows: 3, cols: 360 };
  expect(spotOf(lay, -0.75, -179.25)).toEqual({
    cells: [0, 1, 360, 361],
    shares: [0.5625, 0.1875, 0.1875, 0.0625],
  });
  expect(spotOf(lay, -1, 179.75)).toMatchObject({ cells: [359, 0, 719, 360] });
  expect(spotOf(lay, 50, -179.5).shares).toEqual([0, 0, 1, 0]);
});

describe('measured haze', () => {
  test('within a box its ratio, outside fading to one over 3°', () => {
    expect(hazeRatio(30.7, 104.1, 0)).toBe(0.58);
    // Half way out of the far west's box, to the west, nothing else near.
    expect(hazeRatio(42, 73.5, 0)).toBeCloseTo(1 - 0.12 / 2, 9);
    expect(hazeRatio(42, 71.9, 0)).toBe(1);
    expect(hazeRatio(-33.9, 151.2, 0)).toBe(1);
    // Without a step at the edge.
    expect(hazeRatio(42, 74.9999, 0)).toBeCloseTo(0.88, 3);
  });

  test('where boxes overlap it is their mean', () => {
    // The edge that Hunan-Hubei and Guizhou share.
    expect(hazeRatio(27, 109.2, 0)).toBeCloseTo((0.77 + 0.72) / 2, 9);
  });
});
