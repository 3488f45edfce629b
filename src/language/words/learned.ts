import packed from './clusters.json' with { type: 'json' };
import { unpackClusters } from './clusters.ts';
import learned from './learned.json' with { type: 'json' };

/** What the labelled messages teach of words. */
export interface LearnedWords {
  /** Words said in several meanings. */
  readonly vocabulary: readonly string[];
  /** What things and people are called in more than one. */
  readonly things: readonly string[];
  readonly people: readonly string[];
  /** Words of things and places that were named at least once: never plain words, however often they are said. */
  readonly nouns: readonly string[];
}

/** Words that the labelled messages use, written by `npm run train`. */
export const learnedWords: LearnedWords = learned;

let unpacked: ReadonlyMap<string, number> | undefined;
function clusterOf(word: string): number | undefined {
  unpacked ??= unpackClusters(packed);
  return unpacked.get(word);
}

/** Fine cluster × 64 + coarse cluster, by vectors trained on other text: kinship of words the messages never use. */
export const fineCluster = (word: string): number => {
  const cluster = clusterOf(word);
  return cluster === undefined ? -1 : Math.floor(cluster / 64);
};
export const coarseCluster = (word: string): number => {
  const cluster = clusterOf(word);
  return cluster === undefined ? -1 : cluster % 64;
};
