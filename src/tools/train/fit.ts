import type { Net } from '#language/decide/model.ts';
import { Table } from '#language/decide/table.ts';
import type { Choice } from './dataset.ts';
import { Parameters, seeded } from './net.ts';

export interface FitOptions {
  readonly units: number;
  readonly epochs: number;
  /** Epochs after features of little weight are dropped. */
  readonly after: number;
  readonly rate: number;
  readonly l2: number;
  /** Features are left out with this chance while learning. */
  readonly drop: number;
  /** A feature is learned where at least so many meanings have it. */
  readonly least: number;
  /** How many features are kept. */
  readonly keep: number;
  readonly leastOwner: number;
  readonly keepOwners: number;
  readonly dropOwner: number;
  readonly seed: number;
}

/** Features seen in at least `least` groups, numbered. */
export function vocabularyOf(
  lists: Iterable<readonly [group: number, features: readonly number[]]>,
  least: number,
): Map<number, number> {
  const counts = new Map<number, { n: number; last: number }>();
  for (const [group, features] of lists)
    for (const f of features) {
      const c = counts.get(f);
      if (!c) counts.set(f, { n: 1, last: group });
      else if (c.last !== group) {
        c.n++;
        c.last = group;
      }
    }
  const kept = [...counts]
    .filter(([, c]) => c.n >= least)
    .map(([f]) => f)
    .sort((a, b) => (a >>> 0) - (b >>> 0));
  return new Map(kept.map((f, i) => [f, i]));
}

const rows = (index: ReadonlyMap<number, number>, features: readonly number[]): Int32Array => {
  const out: number[] = [];
  for (const f of features) {
    const row = index.get(f);
    if (row !== undefined) out.push(row);
  }
  return Int32Array.from(out);
};

function* shuffled(n: number, random: () => number): Generator<number> {
  const order = Int32Array.from({ length: n }, (_, i) => i);
  for (let i = n - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  yield* order;
}

/** Which rows say most: the size of a row times how often it speaks. Others become −1. */
function kept(E: Parameters, D: number, uses: Float64Array, keep: number): Int32Array {
  const n = uses.length;
  const weight = Float64Array.from({ length: n }, (_, r) => {
    let sum = 0;
    for (let d = 0; d < D; d++) sum += E.w[r * D + d]! ** 2;
    return sum * Math.sqrt(uses[r]!);
  });
  const order = Array.from({ length: n }, (_, i) => i).sort((a, b) => weight[b]! - weight[a]!);
  const out = new Int32Array(n).fill(-1);
  order
    .slice(0, keep)
    .sort((a, b) => a - b)
    .forEach((r, k) => {
      out[r] = k;
    });
  return out;
}

const mapped = (f: Int32Array, to: Int32Array): Int32Array => f.map(r => to[r]!).filter(r => r >= 0);
const renumbered = (index: Map<number, number>, to: Int32Array): Map<number, number> =>
  new Map([...index].flatMap(([f, r]): [number, number][] => (to[r]! >= 0 ? [[f, to[r]!]] : [])));

/** Hidden units over sparse features, with dropped features while learning. */
class Trunk {
  readonly D: number;
  E: Parameters;
  readonly B: Parameters;
  readonly h: Float32Array;
  readonly dh: Float32Array;
  #mask = new Uint8Array(1024);
  readonly #random: () => number;
  readonly #o: FitOptions;

  constructor(size: number, o: FitOptions, random: () => number) {
    this.D = o.units;
    this.E = new Parameters(size * o.units, 0.03, random);
    this.B = new Parameters(o.units, 0, random);
    this.h = new Float32Array(o.units);
    this.dh = new Float32Array(o.units);
    this.#random = random;
    this.#o = o;
  }

  forward(f: Int32Array): void {
    const { D, E, B, h } = this;
    const { drop } = this.#o;
    if (f.length > this.#mask.length) this.#mask = new Uint8Array(f.length * 2);
    const mask = this.#mask;
    const scale = 1 / (1 - drop);
    h.set(B.w);
    for (let k = 0; k < f.length; k++) {
      mask[k] = this.#random() >= drop ? 1 : 0;
      if (!mask[k]) continue;
      const from = f[k]! * D;
      for (let d = 0; d < D; d++) h[d]! += E.w[from + d]! * scale;
    }
    for (let d = 0; d < D; d++) h[d] = Math.tanh(h[d]!);
    this.dh.fill(0);
  }

  backward(f: Int32Array): void {
    const { D, E, B, h, dh } = this;
    const { drop, l2, rate } = this.#o;
    const scale = 1 / (1 - drop);
    for (let d = 0; d < D; d++) {
      dh[d]! *= 1 - h[d]! * h[d]!;
      B.step(d, dh[d]!, rate);
    }
    for (let k = 0; k < f.length; k++) {
      if (!this.#mask[k]) continue;
      const from = f[k]! * D;
      for (let d = 0; d < D; d++) E.step(from + d, dh[d]! * scale + l2 * E.w[from + d]!, rate);
    }
  }

  prune(to: Int32Array): void {
    this.E = this.E.rows(this.D, to);
  }
}

/** Fits the roles and their owners: a log-linear choice among the candidates of each mention over hidden units. */
export function fitSlots(
  choices: readonly Choice[],
  outcomes: number,
  o: FitOptions,
): { readonly net: Net; readonly owners: Table } {
  const random = seeded(o.seed);
  let index = vocabularyOf(
    choices.map(c => [c.group, c.context] as const),
    o.least,
  );
  let ownerIndex = vocabularyOf(
    choices.flatMap(c => c.owners.map(own => [c.group, own] as const)),
    o.leastOwner,
  );
  const D = o.units;
  const trunk = new Trunk(index.size, o, random);
  const V = new Parameters(outcomes * D, 0.1, random);
  const vb = new Parameters(outcomes, 0, random);
  let O = new Parameters(ownerIndex.size, 0, random);
  const data = choices.map(c => ({
    f: rows(index, c.context),
    s: Int16Array.from(c.slots),
    own: c.owners.map(x => rows(ownerIndex, x)),
    gold: c.gold,
    weight: c.weight ?? 1,
  }));
  const { h, dh } = trunk;
  const keepOwner = Math.round(o.dropOwner * 1000);
  const scale = 1 / (1 - o.dropOwner);
  const total = o.epochs + o.after;
  for (let epoch = 0; epoch < total; epoch++) {
    if (epoch === o.epochs) {
      const uses = new Float64Array(index.size);
      for (const { f } of data) for (const r of f) uses[r]!++;
      const to = kept(trunk.E, D, uses, o.keep);
      trunk.prune(to);
      index = renumbered(index, to);
      const ownUses = new Float64Array(ownerIndex.size);
      for (const { own } of data) for (const x of own) for (const r of x) ownUses[r]!++;
      const toOwner = kept(O, 1, ownUses, o.keepOwners);
      O = O.rows(1, toOwner);
      ownerIndex = renumbered(ownerIndex, toOwner);
      for (const d of data) {
        d.f = mapped(d.f, to);
        d.own = d.own.map(x => mapped(x, toOwner));
      }
    }
    let loss = 0;
    for (const i of shuffled(data.length, random)) {
      const { f, s, own, gold, weight } = data[i]!;
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
        for (const r of own[c]!) if (isKept(r)) b += O.w[r]! * scale;
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
        for (const r of own[c]!) if (isKept(r)) O.step(r, grad * scale + o.l2 * O.w[r]!, o.rate);
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
    net: { features: Table.of(index, trunk.E.w, D), bias: trunk.B.w, out: V.w, outBias: vb.w },
    owners: Table.of(ownerIndex, O.w, 1),
  };
}

/** What one example teaches one head: which outcomes are right. */
export interface Lesson {
  readonly head: number;
  readonly gold: readonly number[];
  readonly weight?: number;
}

export interface Example {
  readonly features: readonly number[];
  readonly group: number;
  readonly lessons: readonly Lesson[];
}

/**
 * Fits several questions about a message over one layer of hidden units.
 * @param heads how many outcomes each has; in the net they stand one after another
 */
export function fitHeads(examples: readonly Example[], heads: readonly number[], o: FitOptions): Net {
  const random = seeded(o.seed + 1);
  let index = vocabularyOf(
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
    if (epoch === o.epochs) {
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
  return { features: Table.of(index, trunk.E.w, D), bias: trunk.B.w, out: V.w, outBias: vb.w };
}
