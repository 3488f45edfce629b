import type { Ranker } from '#language/decide/rank.ts';
import { Table } from '#language/decide/table.ts';
import { Parameters, seeded } from './net.ts';
import { rows, vocabularyOf } from './vocabulary.ts';

/** One wording's likeliest readings, and which of them are right. */
export interface Ranking {
  readonly group: number;
  readonly options: readonly {
    readonly features: Int32Array;
    readonly roles: number;
    readonly question: number;
    readonly isRight: boolean;
    /** What tells how sure it may be taken, by itself. */
    readonly signs: readonly number[];
  }[];
}

export interface RankOptions {
  readonly epochs: number;
  readonly rate: number;
  readonly l2: number;
  readonly least: number;
  readonly drop: number;
  readonly seed: number;
}

/** Fits the weights of whole readings: a log-linear choice among the likeliest, from readings of groups their model has not seen. */
export function fitRanker(rankings: readonly Ranking[], o: RankOptions): Ranker {
  const random = seeded(o.seed);
  const useful = rankings.filter(r => r.options.some(x => x.isRight) && r.options.some(x => !x.isRight));
  const index = vocabularyOf(
    useful.flatMap(r => r.options.map(x => [r.group, x.features] as const)),
    o.least,
  );
  const W = new Parameters(index.size, 0, random);
  const L = new Parameters(2, 0, random);
  L.w[0] = 1;
  L.w[1] = 1;
  const data = useful.map(r =>
    r.options.map(x => ({
      rows: rows(index, x.features),
      roles: x.roles,
      question: x.question,
      isRight: x.isRight,
    })),
  );
  for (let epoch = 0; epoch < o.epochs; epoch++) {
    let loss = 0;
    const order = Array.from({ length: data.length }, (_, i) => i);
    for (let i = order.length - 1; i > 0; i--) {
      const j = Math.floor(random() * (i + 1));
      [order[i], order[j]] = [order[j]!, order[i]!];
    }
    for (const i of order) {
      const options = data[i]!;
      const salt = Math.floor(random() * 1e9);
      const isKept = (r: number): boolean =>
        ((Math.imul(r + salt, 2654435761) >>> 0) % 1000) / 1000 >= o.drop;
      const scale = 1 / (1 - o.drop);
      const z = options.map(x => {
        let sum = L.w[0]! * x.roles + L.w[1]! * x.question;
        for (const r of x.rows) if (isKept(r)) sum += W.w[r]! * scale;
        return sum;
      });
      const top = Math.max(...z);
      const e = z.map(v => Math.exp(v - top));
      const sum = e.reduce((a, b) => a + b, 0);
      const right = e.reduce((a, b, k) => a + (options[k]!.isRight ? b : 0), 0);
      loss -= Math.log(Math.max(1e-12, right / sum));
      options.forEach((x, k) => {
        const grad = e[k]! / sum - (x.isRight ? e[k]! / right : 0);
        if (Math.abs(grad) < 1e-4) return;
        L.step(0, grad * x.roles, o.rate * 0.3);
        L.step(1, grad * x.question, o.rate * 0.3);
        for (const r of x.rows) if (isKept(r)) W.step(r, grad * scale + o.l2 * W.w[r]!, o.rate);
      });
    }
    if (epoch >= o.epochs / 2) for (const p of [W, L]) p.note();
    if (process.env.VERBOSE)
      console.error(
        `whole readings, epoch ${epoch + 1}: loss ${(loss / data.length).toFixed(4)}; ${index.size} features of ${data.length}`,
      );
  }
  for (const p of [W, L]) p.settle();
  return { features: Table.of(index, W.w, 1), logs: [L.w[0]!, L.w[1]!] };
}

/** The score of a whole reading by its features. */
export function rankOf(
  { features: table, logs }: Ranker,
  features: Iterable<number>,
  roles: number,
  question: number,
): number {
  return logs[0] * roles + logs[1] * question + table.scale * table.sum(features);
}
