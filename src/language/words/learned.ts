import clusterTable from './clusters.json' with { type: 'json' };
import learned from './learned.json' with { type: 'json' };

/** Words that the labelled messages use, written by `npm run train`: what is said often, what things and people are called. */
export const learnedWords: { readonly vocabulary: readonly string[]; readonly things: readonly string[]; readonly people: readonly string[];
  /** Words of things and places that were named at least once: never plain words, however often they are said. */
  readonly nouns: readonly string[];
} = learned;

/** Word → fine cluster × 64 + coarse cluster, by vectors trained on other text: kinship of words the messages never use. */
const clusters = clusterTable as Readonly<Record<string, number>>;
export const fineCluster = (word: string): number => (Object.hasOwn(clusters, word) ? Math.floor(clusters[word]! / 64) : -1);
export const coarseCluster = (word: string): number => (Object.hasOwn(clusters, word) ? clusters[word]! % 64 : -1);
