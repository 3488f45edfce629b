import * as slot from '../propose/slots.ts';
import type { Features } from './feature-list.ts';
import { classAt as at, bucket, type Frame } from './frame.ts';
import { hashText, mix } from './hash.ts';
import type { State } from './state.ts';

/** Of a load: whether its amps or its watts are told, and whether they are many. */
export function drawOf(state: State, i: number): number {
  let draw = 0;
  for (const j of state.told) {
    if (state.owners[j] !== i && j !== i) continue;
    if (state.slots[j] === slot.loadCurrent) draw |= 1;
    if (state.slots[j] === slot.loadPower)
      draw |= 2 + (state.values[j]! > 400 ? 4 : 0) + (state.values[j]! > 100 ? 8 : 0);
  }
  return draw;
}

/** What speaks for a load running on mains through an inverter or at a site. */
export function supplyFeatures(f: Frame, draw: number, i: number, out: Features): void {
  const m = f.mentions[i]!;
  const known = hashText(m.supply ?? '-');
  const key = hashText(m.key);
  let mains = 0;
  let near = 99;
  for (let j = 0; j < f.mentions.length; j++) {
    const o = f.mentions[j]!;
    if (
      o.kind === 'inverter' ||
      o.kind === 'wave' ||
      o.kind === 'mains' ||
      (o.kind === 'amount' && o.unit === 'V' && o.value >= 100)
    ) {
      mains |= o.kind === 'inverter' || o.kind === 'wave' ? 1 : 2;
      near = Math.min(near, Math.abs(j - i));
    }
  }
  out.push(mix(400, known));
  out.push(mix(401, known, mains));
  out.push(mix(402, known, mains * 100 + bucket(near)));
  out.push(mix(403, known, draw));
  out.push(mix(404, mix(0, known, draw), mains));
  out.push(mix(405, key));
  out.push(mix(406, key, mains > 0 ? 1 : 0));
  out.push(mix(407, m.coarse ?? -1, mains > 0 ? 1 : 0));
  for (const q of f.questions) {
    out.push(mix(408, q, known));
    out.push(mix(409, q, mains));
  }
  for (const c of f.context) out.push(mix(410, c, known));
  for (let d = 1; d <= 3; d++) {
    out.push(mix(411, at(f, i + d), d));
    out.push(mix(412, at(f, i - d), d));
  }
}
