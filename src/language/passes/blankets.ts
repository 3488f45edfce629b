import { quantityAt, type State, wordAt } from '../state.ts';
import { list } from '../words/list.ts';

const foldable = new Set(['blanket', 'portable', 'foldable', 'folding', 'suitcase']);
const folding = list('folding foldable fold solar');
/** A blanket of more watts than any bed wants is a folding panel. */
const leastPanelW = 80;

/** A blanket that folds, or lies under the sun, is a panel. */
export function blankets(state: State): void {
  const isSunny = state.cues.has('solar') || state.cues.has('sun') || state.cues.has('ask-yield');
  for (const one of state.things) {
    if (!foldable.has(one.name) || one.powerW > 0) continue;
    const watts = quantityAt(state, one.at - 1) ?? quantityAt(state, one.end);
    const isBig = watts?.unit.dimension === 'power' && watts.value >= leastPanelW;
    if (!isSunny && !isBig && !folding.has(wordAt(state, one.at - 1))) continue;
    one.kind = 'solar';
    state.cues.add('solar');
  }
}
