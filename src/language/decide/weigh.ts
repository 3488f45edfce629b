import type { Candidates } from '../propose/candidates.ts';
import * as slot from '../propose/slots.ts';
import { decidedAround, surroundings } from './context-features.ts';
import { scratch } from './feature-list.ts';
import type { Frame } from './frame.ts';
import { type Model, score, unitsFor } from './model.ts';
import { OwnerScores } from './owner-scores.ts';
import { Slab } from './slab.ts';
import type { State } from './state.ts';

/** Scores of the slots of a mention, as some surroundings speak for them; worked out when they are asked for. */
interface SlotScores {
  /** What the states that have these scores have decided around. */
  readonly around: Int32Array;
  readonly units: Float64Array;
  readonly scores: Float64Array;
}

/** What is worked out once of a mention for all states. */
interface Place {
  /** Sum of the rows that no decision changes. */
  readonly sum: Int32Array;
  readonly known: SlotScores[];
}

/** How many surroundings a message asks for, about. */
const usualScores = 16;

/**
 * Weighs what a mention may be. The states of a beam differ in little, so that most of the work is done once a
 * mention: the surroundings are summed once, and states that decided alike around it share their scores.
 */
export class Weigher {
  readonly #model: Model;
  readonly #frame: Frame;
  readonly #places: (Place | undefined)[];
  #owners: OwnerScores | undefined;
  readonly #sum: Int32Array;
  readonly #slab: Slab;
  /** Log-probabilities of the candidates weighed last. */
  weights: Float64Array = new Float64Array(16);

  constructor(model: Model, frame: Frame) {
    this.#model = model;
    this.#frame = frame;
    this.#places = new Array<Place | undefined>(frame.mentions.length);
    this.#sum = new Int32Array(model.slots.bias.length);
    this.#slab = new Slab(usualScores * (model.slots.bias.length + slot.slots.length));
  }

  #placeAt(at: number): Place {
    const known = this.#places[at];
    if (known) return known;
    const sum = new Int32Array(this.#sum.length);
    surroundings(this.#frame, at, scratch.clear());
    this.#model.slots.features.add(scratch, sum);
    const place = { sum, known: [] };
    this.#places[at] = place;
    return place;
  }

  #slotScores(state: State, at: number): SlotScores {
    const place = this.#placeAt(at);
    const features = scratch.clear();
    decidedAround(this.#frame, state, at, features);
    for (const known of place.known) if (features.equals(known.around)) return known;
    const { slots } = this.#model;
    this.#sum.set(place.sum);
    slots.features.add(features, this.#sum);
    const units = this.#slab.take(this.#sum.length);
    unitsFor(slots, this.#sum, units);
    const scores = this.#slab.take(slot.slots.length).fill(Number.NaN);
    const found = { around: features.taken(), units, scores };
    place.known.push(found);
    return found;
  }

  /** Works out the log-probabilities of the candidates of one mention, into `weights`. */
  weigh(state: State, at: number, candidates: Candidates): void {
    const { slots, owners } = this.#model;
    const { count } = candidates;
    if (this.weights.length < count) this.weights = new Float64Array(count * 2);
    const out = this.weights;
    const { units, scores } = this.#slotScores(state, at);
    this.#owners ??= new OwnerScores(owners, this.#frame);
    this.#owners.turnTo(state, at);
    let top = -Infinity;
    for (let k = 0; k < count; k++) {
      const s = candidates.slots[k]!;
      if (Number.isNaN(scores[s]!)) scores[s] = score(slots, units, s);
      let weight = scores[s]!;
      if (s !== slot.none) weight += owners.scale * this.#owners.of(candidates, k);
      out[k] = weight;
      if (weight > top) top = weight;
    }
    let sum = 0;
    for (let k = 0; k < count; k++) sum += Math.exp(out[k]! - top);
    const norm = top + Math.log(sum);
    for (let k = 0; k < count; k++) out[k]! -= norm;
  }
}
