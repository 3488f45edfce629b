import * as slot from '../propose/slots.ts';
import type { Frame } from './frame.ts';
import type { State } from './state.ts';

/** What a state has decided, gathered once for all candidates of a mention. */
export class Decided {
  readonly #frame: Frame;
  #state: State;
  /** Slots that an owner has, as bits. */
  readonly #has: Int32Array;
  readonly #isClaimant: Uint8Array;
  /** Things between a mention and its owner, plus one; 0 where they are not counted yet. */
  readonly #between: Uint8Array;
  readonly #counted: number[] = [];
  /** For each slot how many have it of an owner, and whether the last of them stands before it (1) or not (0). */
  readonly #others = new Int32Array(slot.slots.length);
  readonly #lastSide = new Int8Array(slot.slots.length).fill(-1);
  #at: number;
  /** The owner of the figure before, −9 where there is none. */
  lastOwner = -9;
  loads = 0;
  batteries = 0;

  constructor(frame: Frame, state: State, at: number) {
    const n = frame.mentions.length;
    this.#frame = frame;
    this.#has = new Int32Array(n);
    this.#isClaimant = new Uint8Array(n);
    this.#between = new Uint8Array(n);
    this.#state = state;
    this.#at = at;
    this.#gather();
  }

  /** Turns to another state or mention. */
  turnTo(state: State, at: number): void {
    for (const j of this.#state.told) {
      const owner = this.#state.owners[j]!;
      this.#has[j] = 0;
      if (owner >= 0) {
        this.#has[owner] = 0;
        this.#isClaimant[owner] = 0;
      }
      this.#others[this.#state.slots[j]!] = 0;
      this.#lastSide[this.#state.slots[j]!] = -1;
    }
    for (const owner of this.#counted) this.#between[owner] = 0;
    this.#counted.length = 0;
    this.#state = state;
    this.#at = at;
    this.#gather();
  }

  #gather(): void {
    const { told, slots, owners } = this.#state;
    this.lastOwner = -9;
    for (let k = 0; k < told.length; k++) {
      const j = told[k]!;
      const s = slots[j]!;
      const owner = owners[j]!;
      const bit = 1 << (s % 24);
      this.#has[j]! |= bit;
      if (owner < 0) continue;
      if (owner !== j) this.#has[owner]! |= bit;
      this.#others[s]!++;
      this.#lastSide[s] = owner < j ? 1 : 0;
      if (j < this.#at) this.lastOwner = owner;
      if (slot.claims.has(s)) this.#isClaimant[owner] = 1;
    }
    this.loads = this.#state.loads().length;
    this.batteries = this.#state.batteries().length;
  }

  /** Slots that an owner has, as bits. */
  has(owner: number): number {
    return this.#has[owner]!;
  }

  isClaimant(owner: number): number {
    return this.#isClaimant[owner]!;
  }

  isFilled(s: number): boolean {
    return this.#state.has(s);
  }

  /** How many figures have that slot of some owner, 3 at most. */
  others(s: number): number {
    return Math.min(this.#others[s]!, 3);
  }

  lastSide(s: number): number {
    return this.#lastSide[s]!;
  }

  /** Things between the mention and an owner that were not taken for nothing, 3 at most. */
  thingsTo(owner: number): number {
    const known = this.#between[owner]!;
    if (known > 0) return known - 1;
    const { isAnchor } = this.#frame;
    const to = Math.max(owner, this.#at);
    let things = 0;
    for (let j = Math.min(owner, this.#at) + 1; j < to && things < 3; j++)
      if (isAnchor[j] && this.#state.slots[j] !== slot.none) things++;
    this.#between[owner] = things + 1;
    this.#counted.push(owner);
    return things;
  }
}
