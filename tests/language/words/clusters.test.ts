import { expect, test } from 'vitest';
import { packClusters, unpackClusters } from '#language/words/clusters.ts';
import { coarseCluster, fineCluster } from '#language/words/learned.ts';
import { kMeans, normalise } from '../../../src/tools/clusters/k-means.ts';

test('words and numbers come back as they were packed', () => {
  const words = new Map([
    ['batteries', 65535],
    ['battery', 0],
    ['bat', 258],
    ['a', 1],
    ['averyveryverylongwordthatgoesonandonandon', 2],
    ['averyveryverylongwordthatgoesonandonanon', 3],
  ]);
  const packed = packClusters(words);
  expect(packed.words.startsWith('AaBveryvery')).toBe(true);
  expect(new Map([...unpackClusters(packed)].sort())).toEqual(new Map([...words].sort()));
});

test('kin stand together, what is no word nowhere', () => {
  expect(fineCluster('uncle')).toBe(fineCluster('aunt'));
  expect(coarseCluster('uncle')).toBe(coarseCluster('aunt'));
  expect(fineCluster('uncle')).not.toBe(fineCluster('chimney'));
  for (const word of ['', '?', 'constructor', 'xqzzy']) expect(fineCluster(word)).toBe(-1);
});

test('k-means parts what points two ways, the same way each time', () => {
  const rows = Float32Array.from([1, 0.1, 1, 0, 1, -0.1, 0.1, 1, 0, 1, -0.1, 1]);
  normalise(rows, 2);
  const clusters = () =>
    kMeans(rows, 2, [1, 1, 1, 1, 1, 1], row => row === 0 || row === 4, { clusters: 2, rounds: 5, seed: 3 });
  const [first, , third, fourth, , last] = clusters();
  expect(first).toBe(third);
  expect(fourth).toBe(last);
  expect(clusters()).toEqual(clusters());
});
