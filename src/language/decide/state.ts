import * as slot from '../propose/slots.ts';
import { alike, all, nobody, pair, pairBefore, self } from '../propose/whose.ts';
import type { Mention } from '../recognise/mention.ts';
import type { Leaning } from './frame.ts';

const isIn = (...slots: readonly number[]): Uint8Array => {
  const out = new Uint8Array(slot.slots.length);
  for (const s of slots) out[s] = 1;
  return out;
};
/** Slots that make an entity wherever they stand, and those that do where nothing else owns them. */
const makes = {
  loads: isIn(slot.load),
  batteries: isIn(),
  panels: isIn(slot.solarPower),
  chargers: isIn(...Object.keys(slot.chargerKinds).map(Number)),
} as const;
const makesAlone = {
  loads: isIn(
    slot.loadCurrent,
    slot.loadPower,
    slot.loadCharge,
    slot.loadEnergy,
    slot.loadHours,
    slot.loadMinutes,
    slot.loadOnce,
    slot.loadDuty,
    slot.loadAverage,
    slot.loadStart,
    slot.count,
  ),
  batteries: isIn(
    slot.capacity,
    slot.batteryEnergy,
    slot.batteryChemistry,
    slot.batteryRole,
    slot.batteryLevel,
    slot.batteryVolts,
    slot.batteryUsedShare,
    slot.batteryAge,
    slot.batteryCount,
  ),
  panels: isIn(slot.solarController, slot.solarOpenVolts, slot.panelCount),
  chargers: isIn(slot.chargerCurrent, slot.chargerPower),
} as const;
type Entities = keyof typeof makes;

/** With one more, in order. */
function withOne(list: readonly number[], one: number): readonly number[] {
  const out = list.slice();
  let k = out.length;
  while (k > 0 && out[k - 1]! > one) {
    out[k] = out[k - 1]!;
    k--;
  }
  out[k] = one;
  return out;
}

const with1 = <T>(list: readonly T[], at: number, value: T): readonly T[] => {
  const out = list.slice();
  out[at] = value;
  return out;
};

/**
 * What is decided so far of one reading: for each mention its slot, owner and value. Never changed; a state made of
 * another shares with it what stayed the same. Plain arrays of small integers: copied in a fraction of the time that
 * typed ones take.
 */
export class State {
  readonly mentions: readonly Mention[];
  /** The slot of each mention; −1 where it is not decided. */
  readonly slots: readonly number[];
  readonly owners: readonly number[];
  readonly variants: readonly number[];
  readonly values: readonly number[];
  /** Mentions that have a slot, in order. */
  readonly told: readonly number[];
  readonly score: number;
  /** The least sure of its decisions, as a log-probability, and how many there were. */
  readonly least: number;
  readonly choices: number;
  /** What of the talk before the message may lean on. */
  readonly lean: Leaning;
  /** Which slots are filled, as bits. */
  readonly #low: number;
  readonly #middle: number;
  readonly #high: number;
  readonly #entities: Readonly<Record<Entities, readonly number[]>>;

  private constructor(
    before: State | undefined,
    mentions: readonly Mention[],
    lean: Leaning,
    at: number,
    s: number,
    owner: number,
    variant: number,
    value: number,
    score: number,
  ) {
    this.mentions = mentions;
    this.lean = lean;
    this.score = score;
    if (!before) {
      const n = mentions.length;
      this.slots = new Array<number>(n).fill(-1);
      this.owners = new Array<number>(n).fill(nobody);
      this.variants = new Array<number>(n).fill(-1);
      this.values = new Array<number>(n).fill(Number.NaN);
      this.told = [];
      this.least = 0;
      this.choices = 0;
      this.#low = 0;
      this.#middle = 0;
      this.#high = 0;
      this.#entities = { loads: [], batteries: [], panels: [], chargers: [] };
      return;
    }
    this.least = Math.min(before.least, score - before.score);
    this.choices = before.choices + (score === before.score ? 0 : 1);
    this.slots = with1(before.slots, at, s);
    this.owners = owner === nobody ? before.owners : with1(before.owners, at, owner);
    this.variants = variant === -1 ? before.variants : with1(before.variants, at, variant);
    this.values = Number.isNaN(value) ? before.values : with1(before.values, at, value);
    this.told = s > 0 ? withOne(before.told, at) : before.told;
    const bit = s > 0 ? 1 << (s % 32) : 0;
    this.#low = before.#low | (s < 32 ? bit : 0);
    this.#middle = before.#middle | (s >= 32 && s < 64 ? bit : 0);
    this.#high = before.#high | (s >= 64 ? bit : 0);
    this.#entities = before.#entitiesWith(at, s, owner);
  }

  static empty(mentions: readonly Mention[], lean: Leaning = 'whole'): State {
    return new State(undefined, mentions, lean, -1, -1, nobody, -1, Number.NaN, 0);
  }

  /** With one more mention decided. */
  with(at: number, s: number, owner: number, variant: number, value: number, score: number): State {
    return new State(this, this.mentions, this.lean, at, s, owner, variant, value, score);
  }

  #entitiesWith(at: number, s: number, owner: number): Readonly<Record<Entities, readonly number[]>> {
    if (s <= 0) return this.#entities;
    for (const kind of ['loads', 'batteries', 'panels', 'chargers'] as const)
      if (makes[kind][s] === 1 || ((owner === self || owner === alike) && makesAlone[kind][s] === 1))
        return { ...this.#entities, [kind]: withOne(this.#entities[kind], at) };
    return this.#entities;
  }

  /** Mentions that are loads: things taken for one, and draws without a name. */
  loads(): readonly number[] {
    return this.#entities.loads;
  }

  /** Mentions that make a battery: by its Ah or Wh, else by a kind or a role that stands alone. */
  batteries(): readonly number[] {
    return this.#entities.batteries;
  }

  panels(): readonly number[] {
    return this.#entities.panels;
  }

  chargers(): readonly number[] {
    return this.#entities.chargers;
  }

  /** Whether a load of the same kind is told before this mention. */
  hasLoadLike(at: number): boolean {
    const m = this.mentions[at]!;
    for (const i of this.told) {
      if (i >= at) return false;
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
    if (!this.has(s)) return false;
    for (const i of this.told)
      if (
        this.slots[i] === s &&
        (this.owners[i] === owner ||
          this.owners[i] === all ||
          i === owner ||
          (this.owners[i] === pair && pairBefore(this.loads(), i)?.includes(owner)))
      )
        return true;
    return false;
  }

  /** Whether a slot without an owner is filled already. */
  has(s: number): boolean {
    return ((s < 32 ? this.#low : s < 64 ? this.#middle : this.#high) & (1 << (s % 32))) !== 0;
  }
}
