import { scratch } from './feature-list.ts';
import type { Frame } from './frame.ts';
import { type Model, probabilities } from './model.ts';
import type { State } from './state.ts';
import { drawOf, supplyFeatures } from './supply-features.ts';

/** Which loads of a state run on mains; asked once for a load and its draw. */
export class MainsLoads {
  readonly #model: Model;
  readonly #frame: Frame;
  readonly #known = new Map<number, boolean>();

  constructor(model: Model, frame: Frame) {
    this.#model = model;
    this.#frame = frame;
  }

  of(state: State): ReadonlySet<number> {
    const out = new Set<number>();
    for (const i of state.loads()) {
      const draw = drawOf(state, i);
      const key = i * 16 + draw;
      let isOnMains = this.#known.get(key);
      if (isOnMains === undefined) {
        supplyFeatures(this.#frame, draw, i, scratch.clear());
        isOnMains = probabilities(this.#model.supply, scratch, 2)[1]! > 0.5;
        this.#known.set(key, isOnMains);
      }
      if (isOnMains) out.add(i);
    }
    return out;
  }
}
