import { type Quantity, quantityAt, type State, wordAt } from '../state.ts';
import { list } from '../words/list.ts';

const backWords = list('back replace replenish restore recover missing refill');

/** Another quantity stands nearer to the word. */
const isOther = (state: State, quantity: Quantity, at: number): boolean => {
  const step = quantity.at < at ? 1 : -1;
  for (let i = quantity.at + step; i !== at; i += step) if (state.tokens[i]?.kind === 'quantity') return true;
  for (let i = at; Math.abs(i - at) <= Math.abs(quantity.at - at); i += step)
    if (quantityAt(state, i)?.unit.dimension === 'charge' && quantity.unit.dimension === 'current')
      return true;
  return (
    quantity.unit.dimension === 'charge' &&
    quantity.at > at &&
    quantityAt(state, at - 1)?.unit.dimension === 'charge'
  );
};

/** "put 40ah back", "replace 35 Ah", "to put back 60 Ah": charge that has to go in, not the size of a battery. */
export function isPutBack(state: State, quantity: Quantity): boolean {
  if (
    quantity.unit.dimension === 'charge' ||
    quantity.unit.dimension === 'energy' ||
    quantity.unit.dimension === 'current'
  ) {
    if (wordAt(state, quantity.at - 1) === 'down' && quantity.unit.dimension === 'charge') return true;
    for (let i = Math.max(0, quantity.at - 3); i < quantity.at + 3; i++)
      if (i !== quantity.at && backWords.has(wordAt(state, i)) && !isOther(state, quantity, i)) return true;
  }
  return false;
}
