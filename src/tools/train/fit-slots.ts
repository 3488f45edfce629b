import type { Net } from '#language/decide/model.ts';
import { Table } from '#language/decide/table.ts';
import { type Member, meanOf, together } from './ensemble.ts';
import type { Choice, FitOptions } from './lessons.ts';
import { Parameters, seeded } from './net.ts';
import { renamed } from './ragged.ts';
import { Trunk } from './trunk.ts';
import { kept, mapped, renumbered, rows, shuffled, vocabularyOf } from './vocabulary.ts';

interface Known {
  readonly index: Map<number, number>;
  readonly ownerIndex: Map<number, number>;
}

interface Fitted extends Known {
  readonly member: Member;
  readonly owners: Float32Array;
}

/**
 * Fits the roles and their owners: a log-linear choice among the candidates of each mention over hidden units, by
 * several members whose scores are averaged.
 */
export function fitSlots(
  choices: readonly Choice[],
  outcomes: number,
  o: FitOptions,
): { readonly net: Net; readonly owners: Table } {
  const first = fitMember(choices, outcomes, o);
  const all = [first];
  while (all.length < o.members)
    all.push(fitMember(choices, outcomes, { ...o, seed: o.seed + 100 * all.length }, first));
  return {
    net: together(
      first.index,
      all.map(({ member }) => member),
    ),
    owners: Table.of(first.ownerIndex, meanOf(all.map(({ owners }) => owners)), 1),
  };
}

/** @param known the features that another member kept: then none are dropped */
function fitMember(choices: readonly Choice[], outcomes: number, o: FitOptions, known?: Known): Fitted {
  const random = seeded(o.seed);
  let index =
    known?.index ??
    vocabularyOf(
      choices.map(c => [c.group, c.context] as const),
      o.least,
    );
  let ownerIndex =
    known?.ownerIndex ??
    vocabularyOf(
      choices.map(c => [c.group, c.owners.values] as const),
      o.leastOwner,
    );
  const D = o.units;
  const trunk = new Trunk(index.size, o, random);
  const V = new Parameters(outcomes * D, 0.1, random);
  const vb = new Parameters(outcomes, 0, random);
  let O = new Parameters(ownerIndex.size, 0, random);
  const data = choices.map(c => ({
    f: rows(index, c.context),
    s: c.slots,
    own: renamed(c.owners, f => ownerIndex.get(f) ?? -1),
    gold: c.gold,
    weight: c.weight ?? 1,
  }));
  const { h, dh } = trunk;
  const keepOwner = Math.round(o.dropOwner * 1000);
  const scale = 1 / (1 - o.dropOwner);
  const total = o.epochs + o.after;
  for (let epoch = 0; epoch < total; epoch++) {
    if (epoch === o.epochs && !known) {
      const uses = new Float64Array(index.size);
      for (const { f } of data) for (const r of f) uses[r]!++;
      const to = kept(trunk.E, D, uses, o.keep);
      trunk.prune(to);
      index = renumbered(index, to);
      const ownUses = new Float64Array(ownerIndex.size);
      for (const { own } of data) for (const r of own.values) ownUses[r]!++;
      const toOwner = kept(O, 1, ownUses, o.keepOwners);
      O = O.rows(1, toOwner);
      ownerIndex = renumbered(ownerIndex, toOwner);
      for (const d of data) {
        d.f = mapped(d.f, to);
        d.own = renamed(d.own, r => toOwner[r]!);
      }
    }
    let loss = 0;
    for (const i of shuffled(data.length, random)) {
      const { f, s, own, gold, weight } = data[i]!;
      const { values, ends } = own;
      const isKept = (r: number): boolean =>
        keepOwner === 0 || ((r * 2654435761 + i * 40503 + epoch * 977) >>> 0) % 1000 >= keepOwner;
      trunk.forward(f);
      const n = s.length;
      const z = new Float64Array(n);
      let top = -Infinity;
      const base = new Map<number, number>();
      for (let c = 0; c < n; c++) {
        let b = base.get(s[c]!);
        if (b === undefined) {
          b = vb.w[s[c]!]!;
          const from = s[c]! * D;
          for (let d = 0; d < D; d++) b += V.w[from + d]! * h[d]!;
          base.set(s[c]!, b);
        }
        for (let k = c > 0 ? ends[c - 1]! : 0; k < ends[c]!; k++)
          if (isKept(values[k]!)) b += O.w[values[k]!]! * scale;
        z[c] = b;
        if (b > top) top = b;
      }
      let sum = 0;
      for (let c = 0; c < n; c++) sum += z[c] = Math.exp(z[c]! - top);
      let right = 0;
      for (const g of gold) right += z[g]!;
      loss -= Math.log(Math.max(1e-12, right / sum));
      const bySlot = new Map<number, number>();
      for (let c = 0; c < n; c++) {
        const grad = weight * (z[c]! / sum - (gold.includes(c) ? z[c]! / right : 0));
        if (Math.abs(grad) < 1e-5) continue;
        bySlot.set(s[c]!, (bySlot.get(s[c]!) ?? 0) + grad);
        for (let k = c > 0 ? ends[c - 1]! : 0; k < ends[c]!; k++) {
          const r = values[k]!;
          if (isKept(r)) O.step(r, grad * scale + o.l2 * O.w[r]!, o.rate);
        }
      }
      for (const [t, grad] of bySlot) {
        const from = t * D;
        vb.step(t, grad, o.rate);
        for (let d = 0; d < D; d++) {
          dh[d]! += grad * V.w[from + d]!;
          V.step(from + d, grad * h[d]! + o.l2 * V.w[from + d]!, o.rate);
        }
      }
      trunk.backward(f);
    }
    if (epoch >= total - Math.max(2, Math.round(o.after * 0.7)))
      for (const p of [trunk.E, trunk.B, V, vb, O]) p.note();
    if (process.env.VERBOSE)
      console.error(
        `roles, epoch ${epoch + 1}: loss ${(loss / data.length).toFixed(4)}; ${index.size} features, ${ownerIndex.size} of owners`,
      );
  }
  for (const p of [trunk.E, trunk.B, V, vb, O]) p.settle();
  return {
    index,
    ownerIndex,
    member: { units: D, features: trunk.E.w, bias: trunk.B.w, out: V.w, outBias: vb.w },
    owners: O.w,
  };
}
