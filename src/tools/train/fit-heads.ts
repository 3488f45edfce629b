import type { Net } from '#language/decide/model.ts';
import { type Member, together } from './ensemble.ts';
import type { Example, FitOptions } from './lessons.ts';
import { Parameters, seeded } from './net.ts';
import { Trunk } from './trunk.ts';
import { kept, mapped, renumbered, rows, shuffled, vocabularyOf } from './vocabulary.ts';

interface Fitted {
  readonly index: Map<number, number>;
  readonly member: Member;
}

/**
 * Fits several questions about a message over one layer of hidden units, by several members whose scores are averaged.
 * @param heads how many outcomes each has; in the net they stand one after another
 */
export function fitHeads(examples: readonly Example[], heads: readonly number[], o: FitOptions): Net {
  const first = fitMember(examples, heads, o);
  const all = [first];
  while (all.length < o.members)
    all.push(fitMember(examples, heads, { ...o, seed: o.seed + 100 * all.length }, first.index));
  return together(
    first.index,
    all.map(({ member }) => member),
  );
}

/** @param known the features that another member kept: then none are dropped */
function fitMember(
  examples: readonly Example[],
  heads: readonly number[],
  o: FitOptions,
  known?: Map<number, number>,
): Fitted {
  const random = seeded(o.seed + 1);
  let index =
    known ??
    vocabularyOf(
      examples.map(e => [e.group, e.features] as const),
      o.least,
    );
  const D = o.units;
  const offsets = heads.map((_, k) => heads.slice(0, k).reduce((a, b) => a + b, 0));
  const outcomes = heads.reduce((a, b) => a + b, 0);
  const trunk = new Trunk(index.size, o, random);
  const V = new Parameters(outcomes * D, 0.1, random);
  const vb = new Parameters(outcomes, 0, random);
  const data = examples.map(e => ({ f: rows(index, e.features), lessons: e.lessons }));
  const { h, dh } = trunk;
  const z = new Float64Array(outcomes);
  const total = o.epochs + o.after;
  for (let epoch = 0; epoch < total; epoch++) {
    if (epoch === o.epochs && !known) {
      const uses = new Float64Array(index.size);
      for (const { f } of data) for (const r of f) uses[r]!++;
      const to = kept(trunk.E, D, uses, o.keep);
      trunk.prune(to);
      index = renumbered(index, to);
      for (const d of data) d.f = mapped(d.f, to);
    }
    let loss = 0;
    for (const i of shuffled(data.length, random)) {
      const { f, lessons } = data[i]!;
      trunk.forward(f);
      for (const { head, gold, weight = 1 } of lessons) {
        const from = offsets[head]!;
        const to = from + heads[head]!;
        let top = -Infinity;
        for (let c = from; c < to; c++) {
          let b = vb.w[c]!;
          for (let d = 0; d < D; d++) b += V.w[c * D + d]! * h[d]!;
          z[c] = b;
          if (b > top) top = b;
        }
        let sum = 0;
        for (let c = from; c < to; c++) sum += z[c] = Math.exp(z[c]! - top);
        let right = 0;
        for (const g of gold) right += z[from + g]!;
        loss -= Math.log(Math.max(1e-12, right / sum));
        for (let c = from; c < to; c++) {
          const grad = weight * (z[c]! / sum - (gold.includes(c - from) ? z[c]! / right : 0));
          if (Math.abs(grad) < 1e-5) continue;
          vb.step(c, grad, o.rate);
          for (let d = 0; d < D; d++) {
            dh[d]! += grad * V.w[c * D + d]!;
            V.step(c * D + d, grad * h[d]! + o.l2 * V.w[c * D + d]!, o.rate);
          }
        }
      }
      trunk.backward(f);
    }
    if (epoch >= total - Math.max(2, Math.round(o.after * 0.7)))
      for (const p of [trunk.E, trunk.B, V, vb]) p.note();
    if (process.env.VERBOSE)
      console.error(
        `questions, epoch ${epoch + 1}: loss ${(loss / data.length).toFixed(4)}; ${index.size} features`,
      );
  }
  for (const p of [trunk.E, trunk.B, V, vb]) p.settle();
  return {
    index,
    member: { units: D, features: trunk.E.w, bias: trunk.B.w, out: V.w, outBias: vb.w },
  };
}
