import { Table, type Net } from '#language/decide/model.ts';
import type { Choice } from './dataset.ts';
import { Parameters, seeded } from './net.ts';

/** Features seen in at least `least` groups, numbered. */
export function vocabularyOf(lists: Iterable<readonly [group: number, features: readonly number[]]>, least: number): Map<number, number> {
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
  const kept = [...counts].filter(([, c]) => c.n >= least).map(([f]) => f).sort((a, b) => a - b);
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

export interface FitOptions {
  readonly units: number;
  readonly epochs: number;
  readonly rate: number;
  readonly l2: number;
  readonly drop: number;
  readonly least: number;
  readonly leastOwner: number;
  readonly seed: number;
  /** From which share of the epochs on the weights are averaged. */
  readonly average?: number;
  /** Rows of owners are dropped with this chance. */
  readonly dropOwner?: number;
}

function* shuffled(n: number, random: () => number): Generator<number> {
  const order = Int32Array.from({ length: n }, (_, i) => i);
  for (let i = n - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  yield* order;
}

/** Fits the roles and their owners: a log-linear choice among the candidates of each mention over hidden units. */
export function fitSlots(choices: readonly Choice[], outcomes: number, o: FitOptions): { readonly net: Net; readonly owners: Table } {
  const random = seeded(o.seed);
  const index = vocabularyOf(choices.map(c => [c.group, c.context] as const), o.least);
  const ownerIndex = vocabularyOf(choices.flatMap(c => c.owners.map(own => [c.group, own] as const)), o.leastOwner);
  const D = o.units;
  const E = new Parameters(index.size * D, 0.03, random);
  const B = new Parameters(D, 0, random);
  const V = new Parameters(outcomes * D, 0.1, random);
  const vb = new Parameters(outcomes, 0, random);
  const O = new Parameters(ownerIndex.size, 0, random);
  const data = choices.map(c => ({ f: rows(index, c.context), s: Int16Array.from(c.slots), own: c.owners.map(x => rows(ownerIndex, x)), gold: c.gold }));
  const h = new Float32Array(D);
  const dh = new Float32Array(D);
  const mask = new Uint8Array(512);
  const dropped = Math.round((o.dropOwner ?? 0) * 1000);
  const keep = 1 / (1 - (o.dropOwner ?? 0));
  for (let epoch = 0; epoch < o.epochs; epoch++) {
    let loss = 0;
    for (const i of shuffled(data.length, random)) {
      const { f, s, own, gold } = data[i]!;
      h.set(B.w);
      const scale = 1 / (1 - o.drop);
      for (let k = 0; k < f.length; k++) {
        mask[k] = random() >= o.drop ? 1 : 0;
        if (!mask[k]) continue;
        const from = f[k]! * D;
        for (let d = 0; d < D; d++) h[d]! += E.w[from + d]! * scale;
      }
      for (let d = 0; d < D; d++) h[d] = Math.tanh(h[d]!);
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
        const r = own[c]!;
        for (let k = 0; k < r.length; k++) if (!dropped || ((r[k]! * 2654435761 + i * 40503 + epoch * 977) >>> 0) % 1000 >= dropped) b += O.w[r[k]!]! * keep;
        z[c] = b;
        if (b > top) top = b;
      }
      let sum = 0;
      for (let c = 0; c < n; c++) sum += z[c] = Math.exp(z[c]! - top);
      let right = 0;
      for (const g of gold) right += z[g]!;
      loss -= Math.log(Math.max(1e-12, right / sum));
      dh.fill(0);
      const bySlot = new Map<number, number>();
      for (let c = 0; c < n; c++) {
        const p = z[c]! / sum;
        const q = gold.includes(c) ? z[c]! / right : 0;
        const grad = p - q;
        if (Math.abs(grad) < 1e-5) continue;
        bySlot.set(s[c]!, (bySlot.get(s[c]!) ?? 0) + grad);
        const r = own[c]!;
        for (let k = 0; k < r.length; k++) if (!dropped || ((r[k]! * 2654435761 + i * 40503 + epoch * 977) >>> 0) % 1000 >= dropped) O.step(r[k]!, grad * keep + o.l2 * O.w[r[k]!]!, o.rate);
      }
      for (const [t, grad] of bySlot) {
        const from = t * D;
        vb.step(t, grad, o.rate);
        for (let d = 0; d < D; d++) {
          dh[d]! += grad * V.w[from + d]!;
          V.step(from + d, grad * h[d]! + o.l2 * V.w[from + d]!, o.rate);
        }
      }
      for (let d = 0; d < D; d++) {
        dh[d]! *= 1 - h[d]! * h[d]!;
        B.step(d, dh[d]!, o.rate);
      }
      for (let k = 0; k < f.length; k++) {
        if (!mask[k]) continue;
        const from = f[k]! * D;
        for (let d = 0; d < D; d++) E.step(from + d, dh[d]! * scale + o.l2 * E.w[from + d]!, o.rate);
      }
    }
    if (epoch >= o.epochs * (o.average ?? 0.4)) for (const p of [E, B, V, vb, O]) p.note();
    if (process.env.VERBOSE) console.error(`slots epoch ${epoch + 1}: loss ${(loss / data.length).toFixed(4)}; ${index.size} features, ${ownerIndex.size} of owners`);
  }
  for (const p of [E, B, V, vb, O]) p.settle();
  return { net: { features: new Table(index, E.w, D), bias: B.w, out: V.w, outBias: vb.w }, owners: new Table(ownerIndex, O.w, 1) };
}

export interface Labelled {
  readonly features: readonly number[];
  /** Outcomes that are right. */
  readonly gold: readonly number[];
  readonly group: number;
  readonly weight?: number;
}

/** Fits the choice of the question. */
export function fitClasses(examples: readonly Labelled[], outcomes: number, o: FitOptions): Net {
  const random = seeded(o.seed + 1);
  const index = vocabularyOf(examples.map(e => [e.group, e.features] as const), o.least);
  const D = o.units;
  const E = new Parameters(index.size * D, 0.03, random);
  const B = new Parameters(D, 0, random);
  const V = new Parameters(outcomes * D, 0.1, random);
  const vb = new Parameters(outcomes, 0, random);
  const data = examples.map(e => ({ f: rows(index, e.features), gold: e.gold, weight: e.weight ?? 1 }));
  const h = new Float32Array(D);
  const dh = new Float32Array(D);
  const z = new Float64Array(outcomes);
  let mask = new Uint8Array(4096);
  for (let epoch = 0; epoch < o.epochs; epoch++) {
    let loss = 0;
    for (const i of shuffled(data.length, random)) {
      const { f, gold, weight } = data[i]!;
      if (f.length > mask.length) mask = new Uint8Array(f.length * 2);
      h.set(B.w);
      const scale = 1 / (1 - o.drop);
      for (let k = 0; k < f.length; k++) {
        mask[k] = random() >= o.drop ? 1 : 0;
        if (!mask[k]) continue;
        const from = f[k]! * D;
        for (let d = 0; d < D; d++) h[d]! += E.w[from + d]! * scale;
      }
      for (let d = 0; d < D; d++) h[d] = Math.tanh(h[d]!);
      let top = -Infinity;
      for (let c = 0; c < outcomes; c++) {
        let b = vb.w[c]!;
        for (let d = 0; d < D; d++) b += V.w[c * D + d]! * h[d]!;
        z[c] = b;
        if (b > top) top = b;
      }
      let sum = 0;
      for (let c = 0; c < outcomes; c++) sum += z[c] = Math.exp(z[c]! - top);
      let right = 0;
      for (const g of gold) right += z[g]!;
      loss -= Math.log(Math.max(1e-12, right / sum));
      dh.fill(0);
      for (let c = 0; c < outcomes; c++) {
        const grad = (z[c]! / sum - (gold.includes(c) ? z[c]! / right : 0)) * weight;
        if (Math.abs(grad) < 1e-5) continue;
        vb.step(c, grad, o.rate);
        for (let d = 0; d < D; d++) {
          dh[d]! += grad * V.w[c * D + d]!;
          V.step(c * D + d, grad * h[d]! + o.l2 * V.w[c * D + d]!, o.rate);
        }
      }
      for (let d = 0; d < D; d++) {
        dh[d]! *= 1 - h[d]! * h[d]!;
        B.step(d, dh[d]!, o.rate);
      }
      for (let k = 0; k < f.length; k++) {
        if (!mask[k]) continue;
        const from = f[k]! * D;
        for (let d = 0; d < D; d++) E.step(from + d, dh[d]! * scale + o.l2 * E.w[from + d]!, o.rate);
      }
    }
    if (epoch >= o.epochs * (o.average ?? 0.4)) for (const p of [E, B, V, vb]) p.note();
    if (process.env.VERBOSE) console.error(`intents epoch ${epoch + 1}: loss ${(loss / data.length).toFixed(4)}; ${index.size} features`);
  }
  for (const p of [E, B, V, vb]) p.settle();
  return { features: new Table(index, E.w, D), bias: B.w, out: V.w, outBias: vb.w };
}
