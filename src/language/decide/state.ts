import { all, nobody, self } from '../propose/candidates.ts';
import * as slot from '../propose/slots.ts';
import type { Mention } from '../recognise/mention.ts';

/** What is decided so far of one reading: for each mention its slot, owner and value. Copied on write. */
export class State {
  readonly mentions: readonly Mention[];
  readonly slots: Int16Array;
  readonly owners: Int16Array;
  readonly variants: Int8Array;
  readonly values: Float64Array;
  score = 0;
  /** The least sure of its decisions, as a log-probability, and how many there were. */
  least = 0;
  choices = 0;
  /** Something was spoken of before that a figure alone may be of. */
  readonly hasTalk: boolean;
  #loads: number[] | undefined;

  private constructor(
    hasTalk: boolean,
    mentions: readonly Mention[],
    slots: Int16Array,
    owners: Int16Array,
    variants: Int8Array,
    values: Float64Array,
  ) {
    this.hasTalk = hasTalk;
    this.mentions = mentions;
    this.slots = slots;
    this.owners = owners;
    this.variants = variants;
    this.values = values;
  }

  static empty(mentions: readonly Mention[], hasTalk = false): State {
    const n = mentions.length;
    return new State(
      hasTalk,
      mentions,
      new Int16Array(n).fill(-1),
      new Int16Array(n).fill(nobody),
      new Int8Array(n).fill(-1),
      new Float64Array(n).fill(Number.NaN),
    );
  }

  /** With one more mention decided. */
  with(at: number, s: number, owner: number, variant: number, value: number, score: number): State {
    const next = new State(
      this.hasTalk,
      this.mentions,
      this.slots.slice(),
      this.owners.slice(),
      this.variants.slice(),
      this.values.slice(),
    );
    next.slots[at] = s;
    next.owners[at] = owner;
    next.variants[at] = variant;
    next.values[at] = value;
    next.score = score;
    next.least = Math.min(this.least, score - this.score);
    next.choices = this.choices + (score === this.score ? 0 : 1);
    return next;
  }

  /** Mentions that are loads: things taken for one, and draws without a name. */
  loads(): readonly number[] {
    if (!this.#loads) {
      const out: number[] = [];
      for (let i = 0; i < this.slots.length; i++) {
        const s = this.slots[i]!;
        if (
          s === slot.load ||
          (this.owners[i] === self &&
            (s === slot.loadCurrent ||
              s === slot.loadPower ||
              s === slot.loadCharge ||
              s === slot.loadEnergy ||
              s === slot.loadHours ||
              s === slot.loadMinutes ||
              s === slot.loadOnce))
        )
          out.push(i);
      }
      this.#loads = out;
    }
    return this.#loads;
  }

  #where(test: (s: number, i: number) => boolean): number[] {
    const out: number[] = [];
    for (let i = 0; i < this.slots.length; i++) if (test(this.slots[i]!, i)) out.push(i);
    return out;
  }

  /** Mentions that make a battery: by its Ah or Wh, else by a kind or a role that stands alone. */
  batteries(): number[] {
    const sized = this.#where(
      (s, i) => (s === slot.capacity || s === slot.batteryEnergy) && this.owners[i] === self,
    );
    const made = this.#where(
      (s, i) =>
        (s === slot.batteryChemistry ||
          s === slot.batteryRole ||
          s === slot.batteryLevel ||
          s === slot.batteryVolts ||
          s === slot.batteryUsedShare ||
          s === slot.batteryAge) &&
        this.owners[i] === self,
    );
    return [...sized, ...made].sort((a, b) => a - b);
  }

  panels(): number[] {
    return this.#where(
      (s, i) =>
        s === slot.solarPower ||
        ((s === slot.solarController || s === slot.solarOpenVolts) && this.owners[i] === self),
    );
  }

  chargers(): number[] {
    return this.#where(
      (s, i) =>
        slot.chargerKinds[s] !== undefined ||
        ((s === slot.chargerCurrent || s === slot.chargerPower) && this.owners[i] === self),
    );
  }

  /** Whether a load of the same kind is told before this mention. */
  hasLoadLike(at: number): boolean {
    const m = this.mentions[at]!;
    for (let i = 0; i < at; i++) {
      const other = this.mentions[i]!;
      if (m.kind === 'charger' || m.kind === 'mains') {
        if (slot.chargerKinds[this.slots[i]!]) return true;
      } else if (
        this.slots[i] === slot.load &&
        (other.key === m.key || m.kind === 'noun' || other.text.includes(m.text))
      )
        return true;
    }
    return false;
  }

  /** Whether an owner has that slot filled already. */
  isTaken(owner: number, s: number): boolean {
    for (let i = 0; i < this.slots.length; i++)
      if (this.slots[i] === s && (this.owners[i] === owner || this.owners[i] === all || i === owner))
        return true;
    return false;
  }

  /** Whether a slot without an owner is filled already. */
  has(s: number): boolean {
    return this.slots.includes(s);
  }
}
