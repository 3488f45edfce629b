import { present } from '#basics/present.ts';
/** What k-means is to do: how many clusters, how often to go over all words. */
export interface KMeansOptions {
  readonly clusters: number;
  readonly rounds: number;
  readonly seed: number;
}

/** Numbers from a seed (a linear congruential generator, the constants of ISO C's example). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0;
    return state / 4294967296;
  };
}

/** Scales each row to the length one, in place. */
export function normalise(rows: Float32Array, size: number): void {
  for (let from = 0; from < rows.length; from += size) {
    let sum = 0;
    for (let d = 0; d < size; d++) sum += present(rows[from + d]) ** 2;
    const length = Math.sqrt(sum) || 1;
    for (let d = 0; d < size; d++) rows[from + d] = present(rows[from + d]) / length;
  }
}

/**
 * Spherical k-means: which cluster each row belongs to. The same input always gives the same clusters.
 * @param rows vectors of length one, one after another
 * @param weights how much each row pulls the middle of its cluster
 * @param mayStart whether a row may be a cluster's first middle
 */
export function kMeans(
  rows: Float32Array,
  size: number,
  weights: readonly number[],
  mayStart: (row: number) => boolean,
  { clusters, rounds, seed }: KMeansOptions,
): Int32Array {
  const count = weights.length;
  const random = seeded(seed);
  const middles = new Float32Array(clusters * size);
  for (let k = 0; k < clusters; k++) {
    let row: number;
    do row = Math.floor(random() * count);
    while (!mayStart(row));
    middles.set(rows.subarray(row * size, (row + 1) * size), k * size);
  }
  const cluster = new Int32Array(count);
  for (let round = 0; round < rounds; round++) {
    for (let i = 0; i < count; i++) {
      let best = -Infinity;
      for (let k = 0; k < clusters; k++) {
        let cosine = 0;
        for (let d = 0; d < size; d++) cosine += present(rows[i * size + d]) * present(middles[k * size + d]);
        if (cosine > best) {
          best = cosine;
          cluster[i] = k;
        }
      }
    }
    middles.fill(0);
    for (let i = 0; i < count; i++)
      for (let d = 0; d < size; d++)
        middles[present(cluster[i]) * size + d] =
          present(middles[present(cluster[i]) * size + d]) +
          present(weights[i]) * present(rows[i * size + d]);
    normalise(middles, size);
  }
  return cluster;
}
