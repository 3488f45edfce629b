import { writeFileSync } from 'node:fs';
import { present } from '#basics/present.ts';
import { packClusters } from '#language/words/clusters.ts';
import { kMeans, normalise } from './clusters/k-means.ts';
import { readVectors } from './clusters/vectors.ts';
import { readGroups } from './train/groups.ts';

// `npm run clusters -- FILE`: makes src/language/words/clusters.json again from a file of word vectors (clusters.md
// beside it tells which). No part of `npm run train`.
const [file] = process.argv.slice(2);
if (!file) {
  console.error('clusters: which file of word vectors? npm run clusters -- FILE');
  process.exit(2);
}
const size = 100;
const commonest = 20_000;
const isPlain = (word: string): boolean => /^[a-z]{2,}$/.test(word);

const uses = new Map<string, number>();
for (const { wordings } of readGroups('tests/messages'))
  for (const wording of wordings)
    for (const word of wording
      .toLowerCase()
      .replace(/['’]/g, '')
      .match(/[a-z]{2,}/g) ?? [])
      uses.set(word, (uses.get(word) ?? 0) + 1);

const vectors = readVectors(file, size);
const chosen = new Set([...vectors.keys()].filter(isPlain).slice(0, commonest));
for (const word of uses.keys()) if (vectors.has(word)) chosen.add(word);
const words = [...chosen].sort();
const rows = Float32Array.from(words.flatMap(word => present(vectors.get(word))));
normalise(rows, size);
// What our messages say pulls more, so that the clusters are about our talk.
const weights = words.map(word =>
  uses.has(word) ? 4 + Math.min(10, Math.log2(present(uses.get(word)) + 1)) : 1,
);
const isOurs = (row: number): boolean => uses.has(present(words[row]));
const of = (clusters: number): Int32Array =>
  kMeans(rows, size, weights, isOurs, { clusters, rounds: 12, seed: 4242 });
const [fine, coarse] = [of(512), of(64)];
const packed = packClusters(
  new Map(words.map((word, i) => [word, present(fine[i]) * 64 + present(coarse[i])])),
);
const path = new URL('../language/words/clusters.json', import.meta.url);
writeFileSync(path, `${JSON.stringify(packed)}\n`);
console.log(
  `${words.length} words in ${new Set(fine).size} fine and ${new Set(coarse).size} coarse clusters`,
);
console.log('now run "npm run train": the weights go by the clusters');
