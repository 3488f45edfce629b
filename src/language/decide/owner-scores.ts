import type { Candidates } from '../propose/candidates.ts';
import * as slot from '../propose/slots.ts';
import { Decided } from './decided.ts';
import type { Frame } from './frame.ts';
import { begun, ended, mix } from './hash.ts';
import { IntMap } from './int-map.ts';
import {
  decidedReasons,
  groupMark,
  isOwned,
  placeReasons,
  type Reasons,
  slotMark,
  type ValueReasons,
  valueReasons,
} from './owner-features.ts';
import { State } from './state.ts';
import type { Table } from './table.ts';

/** Reasons kept with the first half of their mixing done, for slots and for groups of slots. */
class KeptReasons implements Reasons {
  readonly #ofSlot: number[] = [];
  readonly #ofGroup: number[] = [];
  readonly #sums = new Map<number, number>();

  put(template: number, filling: number): void {
    this.#ofSlot.push(begun(template, filling));
    this.#ofGroup.push(begun(template + 1, filling));
  }

  /** Their weight for a slot and its group; the group's is the same for many slots. */
  weightFor(s: number, table: Table): number {
    const group = groupMark(s);
    let sum = this.#sums.get(group);
    if (sum === undefined) {
      sum = 0;
      for (const half of this.#ofGroup) sum += table.weight(ended(half, group));
      this.#sums.set(group, sum);
    }
    const mark = slotMark(s);
    for (const half of this.#ofSlot) sum += table.weight(ended(half, mark));
    return sum;
  }
}

/** Reasons weighed as they come. */
class WeighedReasons implements ValueReasons {
  readonly #table: Table;
  #slot = 0;
  #group = 0;
  sum = 0;

  constructor(table: Table) {
    this.#table = table;
  }

  start(s: number): void {
    this.#slot = slotMark(s);
    this.#group = groupMark(s);
    this.sum = 0;
  }

  put(template: number, filling: number): void {
    this.sum += this.#table.weight(ended(begun(template, filling), this.#slot));
    this.sum += this.#table.weight(ended(begun(template + 1, filling), this.#group));
  }

  putForAll(template: number, filling: number): void {
    this.sum += this.#table.weight(mix(template, filling));
  }
}

/** Numbers kept of a candidate: the part that stays, what was decided when it was weighed last (two), the whole then. */
const partsOf = 4;

/** The candidates of the mention at hand, numbered, and what is kept of them; `by` numbers whose they are: who weighed last. */
const kept = { by: 0, index: new IntMap(128), parts: new Int32Array(128 * partsOf) };
let made = 0;

/** One number for a slot, an owner (from −5 on) and a variant (from −2 on), spread over its low bits. */
function keyOf(s: number, owner: number, variant: number): number {
  const h = Math.imul(((owner + 5) * 64 + variant + 2) * 128 + s, 0x9e3779b1);
  return h ^ (h >>> 15);
}

/** Weights of owners and values. What no decision changes is weighed once; the rest again only where it changed. */
export class OwnerScores {
  readonly #table: Table;
  readonly #frame: Frame;
  readonly #decided: Decided;
  readonly #reasons: WeighedReasons;
  readonly #places = new Map<number, KeptReasons>();
  readonly #number = ++made;
  #at = -1;

  constructor(table: Table, frame: Frame) {
    this.#table = table;
    this.#frame = frame;
    this.#decided = new Decided(frame, State.empty(frame.mentions), 0);
    this.#reasons = new WeighedReasons(table);
  }

  turnTo(state: State, at: number): void {
    this.#decided.turnTo(state, at);
    if (at === this.#at && kept.by === this.#number) return;
    this.#at = at;
    kept.by = this.#number;
    kept.index.clear();
    this.#places.clear();
  }

  /** The weight of a candidate, in units of the table's scale. */
  of(candidates: Candidates, k: number): number {
    const s = candidates.slots[k]!;
    const owner = candidates.owners[k]!;
    const variant = candidates.variants[k]!;
    const key = keyOf(s, owner, variant);
    const { index } = kept;
    let n = index.get(key);
    const isNew = n < 0;
    if (isNew) {
      n = index.size;
      index.set(key, n);
      if ((n + 1) * partsOf > kept.parts.length) {
        const wider = new Int32Array(kept.parts.length * 2);
        wider.set(kept.parts);
        kept.parts = wider;
      }
      kept.parts[n * partsOf] = this.#lasting(s, owner, variant, candidates.values[k]!);
    }
    const { parts } = kept;
    const from = n * partsOf;
    const decided = this.#decided;
    const isOfOther = isOwned(s) && owner >= 0;
    const has = isOfOther ? decided.has(owner) : 0;
    const around = isOfOther
      ? decided.thingsTo(owner) +
        4 * (decided.lastSide(s) + 1) +
        16 * decided.others(s) +
        64 * (decided.lastOwner === owner ? 1 : decided.lastOwner < 0 ? 2 : 0) +
        256 * decided.isClaimant(owner)
      : isOwned(s)
        ? Math.min(4, decided.loads) + 8 * Math.min(4, decided.batteries)
        : decided.isFilled(s)
          ? 1
          : 0;
    if (isNew || parts[from + 1] !== has || parts[from + 2] !== around) {
      this.#reasons.start(s);
      decidedReasons(this.#frame, decided, this.#at, s, owner, this.#reasons);
      parts[from + 1] = has;
      parts[from + 2] = around;
      parts[from + 3] = parts[from]! + this.#reasons.sum;
    }
    return parts[from + 3]!;
  }

  #lasting(s: number, owner: number, variant: number, value: number): number {
    const at = this.#at;
    this.#reasons.start(s);
    valueReasons(this.#frame, at, s, owner, variant, value, this.#reasons);
    if (!isOwned(s)) return this.#reasons.sum;
    const { group } = slot.slots[s]!;
    const key = owner * 4 + (group === 'claim' ? 1 : group === 'count' ? 2 : 0);
    let reasons = this.#places.get(key);
    if (!reasons) {
      reasons = new KeptReasons();
      placeReasons(this.#frame, at, owner, group, reasons);
      this.#places.set(key, reasons);
    }
    return this.#reasons.sum + reasons.weightFor(s, this.#table);
  }
}
