import type { Candidate } from '../propose/candidates.ts';
import * as slot from '../propose/slots.ts';
import { all, pair } from '../propose/whose.ts';
import type { Mention } from '../recognise/mention.ts';
import { sayingVerbs } from '../words/en/people.ts';
import type { Decided } from './decided.ts';
import type { Features } from './feature-list.ts';
import { classAt as at, breaks, bucket, type Frame, size } from './frame.ts';
import { hashText, mix } from './hash.ts';

/** Where reasons go. */
export interface Reasons {
  /** As two features, one with the slot and one with the group of slots. */
  put(template: number, filling: number): void;
}

/** Where reasons of a value go. */
export interface ValueReasons extends Reasons {
  /** As one feature, the same for all slots: what few messages show is learned of all of them together. */
  putForAll(template: number, filling: number): void;
}

const groups = slot.slots.map(s => hashText(s.group));
const spans = hashText('hours');

/** What a feature of a slot's owner is mixed with: the slot, and its group. */
export const slotMark = (s: number): number => s + 1;
export const groupMark = (s: number): number => groups[s]!;

/** Whether a slot belongs to something. */
export const isOwned = (s: number): boolean => {
  const row = slot.slots[s]!;
  return row.owner !== undefined || row.isMaker === true;
};

/** What speaks for an owner and a value: where it stands, what stands between. */
export function ownerFeatures(f: Frame, decided: Decided, i: number, c: Candidate, out: Features): void {
  const reasons: ValueReasons = {
    put: (template, filling) => {
      out.push(mix(template, filling, slotMark(c.slot)));
      out.push(mix(template + 1, filling, groupMark(c.slot)));
    },
    putForAll: (template, filling) => void out.push(mix(template, filling)),
  };
  valueReasons(f, i, c.slot, c.owner, c.variant, c.value, reasons);
  if (isOwned(c.slot)) placeReasons(f, i, c.owner, slot.slots[c.slot]!.group, reasons);
  decidedReasons(f, decided, i, c.slot, c.owner, reasons);
}

/** Of the value: which of several is meant, how likely it is in its slot. */
export function valueReasons(
  f: Frame,
  i: number,
  s: number,
  owner: number,
  variant: number,
  value: number,
  out: ValueReasons,
): void {
  const m = f.mentions[i]!;
  if (m.variants.length > 0) variantReasons(f, i, variant, out);
  if (variant !== -1) {
    const told = variant >= 0 ? m.variants[variant]! : undefined;
    out.put(200, mix(0, told ? hashText(told.why) : spans, f.cls[i]!));
    if (told?.why === 'times') {
      // The count that stands nearest is the likeliest; how far is told apart to 14 only.
      const count = told.count ?? 0;
      let far = 99;
      for (let j = Math.max(0, i - 14); j <= Math.min(f.mentions.length - 1, i + 14); j++) {
        const o = f.mentions[j]!;
        if (j !== i && (o.told === count || (count === 2 && o.text === 'twice')))
          far = Math.min(far, Math.abs(j - i));
      }
      out.put(202, mix(0, bucket(far)));
    }
  }
  const much = size(Math.abs(value));
  out.put(204, mix(0, much));
  if (owner >= 0 && slot.slots[s]!.group === 'load' && isOwned(s))
    out.put(250, mix(0, hashText(f.mentions[owner]!.key), much));
}

const plain = hashText('plain');

/** Which of a mention's values is taken, of which it has, as a hash. */
export function choiceOfValue(m: Mention, variant: number): number {
  const taken = variant >= 0 ? hashText(m.variants[variant]!.why) : variant === -1 ? plain : spans;
  let offered = 0;
  for (const { why } of m.variants) offered |= hashText(why);
  return mix(0, taken, offered);
}

/** Which of several values is meant, whatever the slot: "50 to 60 Ah" is 55, "from 50 to 80 %" is not 65. */
function variantReasons(f: Frame, i: number, variant: number, out: ValueReasons): void {
  const m = f.mentions[i]!;
  const choice = choiceOfValue(m, variant);
  out.putForAll(264, mix(0, choice, m.dimension ? hashText(m.dimension) : 0));
  out.putForAll(265, mix(0, choice, f.cls[i]!));
  for (const d of [-4, -3, -2, -1, 1]) out.putForAll(266, mix(0, mix(0, choice, d), at(f, i + d)));
}

/** Of the place of an owner, whatever is decided: how far, on which side, what stands between and around. */
export function placeReasons(f: Frame, i: number, o: number, group: string, out: Reasons): void {
  if (o < 0) {
    out.put(210, mix(0, o + 10));
    out.put(214, mix(0, o + 10, at(f, i + 1)));
    out.put(216, mix(0, o + 10, at(f, i - 1)));
    if (o === all || o === pair)
      for (let d = -4; d <= 4; d++) if (d !== 0) out.put(218, mix(0, at(f, i + d)));
    return;
  }
  const isLeft = o < i ? 1 : 0;
  const [from, to] = isLeft ? [o, i] : [i, o];
  const dir = isLeft * 10;
  const kind = f.ownerKind[o]!;
  const { figures, commas, stops, ands } = between(f, from, to);
  const lines = f.clause[from] === f.clause[to] ? 0 : 1;
  out.put(220, mix(0, dir + bucket(to - from), kind));
  out.put(224, mix(0, dir + Math.min(commas, 3), Math.min(stops, 2) * 4 + Math.min(ands, 2)));
  out.put(226, mix(0, dir + lines, Math.min(figures, 3)));
  if (to - from <= 4) for (let j = from + 1; j < to; j++) out.put(228, mix(0, dir, f.cls[j]!));
  if (to - from === 2) out.put(230, mix(0, dir, f.cls[from + 1]!));
  if (to - from === 1) out.put(232, mix(0, dir, kind));
  out.put(234, mix(0, dir, at(f, i + 1)));
  out.put(236, mix(0, dir, at(f, i - 1)));
  // Whether it is the nearest of its kind on its side.
  const owner = f.mentions[o]!;
  let isNearest = 1;
  for (let j = from + 1; j < to; j++) if (f.mentions[j]!.kind === owner.kind) isNearest = 0;
  out.put(248, mix(0, isNearest * 2 + isLeft, kind));
  if (group === 'claim') {
    const next = f.mentions[o + 1];
    const isSaid = next && (sayingVerbs.has(next.text) || next.text === ':');
    out.put(252, mix(0, isSaid ? 1 : 0, dir));
    out.put(254, mix(0, at(f, o + 1), dir));
    out.put(256, mix(0, at(f, o - 1), dir));
    out.put(260, mix(0, f.cls[o]!, dir));
  }
  if (group === 'count') out.put(262, mix(0, kind, to - from));
}

const joins: ReadonlySet<string> = new Set(['and', 'plus', '+', '&', 'with']);

/** Figures between a mention and its owner. */
function figuresBetween(f: Frame, from: number, to: number): number {
  let figures = 0;
  for (let j = from + 1; j < to; j++) {
    const { kind } = f.mentions[j]!;
    if (kind === 'amount' || kind === 'number') figures++;
  }
  return figures;
}

function between(f: Frame, from: number, to: number) {
  let commas = 0;
  let stops = 0;
  let ands = 0;
  for (let j = from + 1; j < to; j++) {
    const b = f.mentions[j]!;
    if (b.kind === 'amount' || b.kind === 'number') continue;
    if (b.text === ',') commas++;
    else if (b.kind === 'sign' && breaks.has(b.text)) stops++;
    else if (joins.has(b.text)) ands++;
  }
  return { figures: figuresBetween(f, from, to), commas, stops, ands };
}

/** Of what is decided already: what the owner has, where its neighbours went. */
export function decidedReasons(
  f: Frame,
  decided: Decided,
  i: number,
  s: number,
  o: number,
  out: Reasons,
): void {
  const row = slot.slots[s]!;
  if (!isOwned(s)) {
    if (decided.isFilled(s)) out.put(206, mix(0, 1));
    return;
  }
  if (o < 0) {
    const { group } = row;
    const count =
      row.owner === 'load' || group === 'load' ? decided.loads : group === 'battery' ? decided.batteries : 0;
    out.put(212, mix(0, o + 10, Math.min(4, count)));
    return;
  }
  const isLeft = o < i ? 1 : 0;
  const dir = isLeft * 10;
  const has = decided.has(o);
  out.put(
    222,
    mix(0, dir + Math.min(figuresBetween(f, Math.min(o, i), Math.max(o, i)), 3), decided.thingsTo(o)),
  );
  out.put(238, mix(0, has === 0 ? 0 : 1, dir));
  out.put(240, mix(0, has));
  out.put(242, mix(0, decided.lastSide(s) + 1, isLeft));
  out.put(244, mix(0, decided.lastOwner === o ? 1 : decided.lastOwner === -9 ? 2 : 0, dir));
  out.put(246, mix(0, decided.others(s), dir));
  if (row.group === 'claim') out.put(258, mix(0, decided.isClaimant(o), dir));
}
