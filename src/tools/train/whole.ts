import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import { certaintyFeatures } from '#language/decide/certainty.ts';
import type { Model } from '#language/decide/model.ts';
import type { Ranker } from '#language/decide/rank.ts';
import { readModel } from '#language/decide/weights.ts';
import { fitCertainty } from './fit-certainty.ts';
import { fitRanker, type Ranking, type RankOptions, rankOf } from './fit-rank.ts';
import type { Group } from './groups.ts';
import { rankingsOf } from './rankings.ts';
import { type TrainOptions, usual } from './train.ts';
import { inMoreVoices } from './voices.ts';

export const usualRank: RankOptions = { epochs: 8, rate: 0.03, l2: 1e-4, least: 7, drop: 0.5, seed: 11 };

/** Meanings teach, not wordings: more than so many of one are left out. */
const mostWordings = 4;

/** The share of each option when whole readings are weighed, and whether the best is right. */
function judged(r: Ranking, ranker: Ranker): { readonly order: number[]; readonly p: number[] } {
  const z = r.options.map(x => rankOf(ranker, x.features, x.roles, x.question));
  const top = Math.max(...z);
  const e = z.map(v => Math.exp(v - top));
  const sum = e.reduce((a, b) => a + b, 0);
  const p = e.map(v => v / sum);
  return { p, order: [...p.keys()].sort((a, b) => p[b]! - p[a]!) };
}

/** All choices of a hundred thousand wordings are held at once: some 5 GB. */
const heapMb = 10_000;
/** Most of what is made is gone at once. */
const youngMb = 192;

/** A model fitted in a thread of its own, rounded as it is shipped. */
async function fitted(groups: readonly Group[], options: TrainOptions): Promise<Model> {
  const worker = new Worker(new URL('./fit-part.ts', import.meta.url), {
    workerData: { groups, options },
    resourceLimits: { maxOldGenerationSizeMb: heapMb, maxYoungGenerationSizeMb: youngMb },
  });
  const [bytes] = (await once(worker, 'message')) as [Uint8Array];
  return readModel(Buffer.from(bytes));
}

/** Who wrote a group: an author's second file is numbered. */
const authorOf = ({ file }: Group): string => file.replace(/-\d+$/, '');

/** The groups in two halves of which no author writes for both: how sure a reading is, is learned as of a stranger's. */
function halvesByAuthor(groups: readonly Group[]): readonly [Group[], Group[]] {
  const authors = [...new Set(groups.map(authorOf))].sort();
  const half = new Map(authors.map((author, n) => [author, n % 2]));
  const of = (which: number): Group[] => groups.filter(group => half.get(authorOf(group)) === which);
  return [of(0), of(1)];
}

/**
 * Fits the whole reader: roles and questions; then, by halves whose authors have not seen each other, what whole readings
 * weigh and how sure a reading may be taken.
 */
export async function trainWhole(
  labelled: readonly Group[],
  o: TrainOptions = usual,
  rank: RankOptions = usualRank,
): Promise<Model> {
  const groups = labelled.map(group => ({ ...group, wordings: group.wordings.slice(0, mostWordings) }));
  // How sure a reading is, is learned of messages as they were written.
  const halves = halvesByAuthor(groups);
  // The whole takes the longest: what the halves are for is done beside it.
  const model = fitted(inMoreVoices(groups), o);
  const [first, second] = await Promise.all(halves.map(half => fitted(half, o)));
  const rankings = [second!, first!].map((other, k) => rankingsOf(halves[k as 0 | 1], other, k * 1e6));
  const ranker = fitRanker(rankings.flat(), rank);
  const judgedReadings = rankings.flatMap((half, k) => {
    const other = fitRanker(rankings[1 - k]!, rank);
    return half.map(r => {
      const { p, order } = judged(r, other);
      const best = r.options[order[0]!]!;
      return {
        group: r.group,
        features: best.features,
        signs: certaintyFeatures(p[order[0]!]!, p[order[1]!] ?? 0, best.signs),
        isExact: best.isRight,
      };
    });
  });
  return { ...(await model), ranker, ...fitCertainty(judgedReadings) };
}
