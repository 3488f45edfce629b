import { type State, wordAt } from '../state.ts';
import { list } from '../words/list.ts';

const leads = list('at in to its hits below is');
const cold = list('overnight at in outside tonight out or oot this here there now today');
/** No camp is colder, °C below zero. */
const coldest = 40;

/** Of several temperatures the hottest or coldest is not ours to choose: the first counts. */
export function temperature(state: State): void {
  coldNumber(state);
  for (const quantity of state.quantities) {
    if (quantity.taken || quantity.unit.dimension !== 'temperature') continue;
    const near = [-3, -2, -1, 1, 2, 3].map(step => wordAt(state, quantity.at + step));
    quantity.taken = 'ambient';
    if (
      near.some(word =>
        /^(tilt|tilted|angle|angled|latitude|lat|south|north|fridge|set|facing)$/.test(word),
      ) &&
      quantity.unit.symbol === '°C'
    )
      continue;
    if (quantity.value < -60 || quantity.value > 70) continue;
    if (state.facts.ambientC === undefined) state.facts.ambientC = Math.round(quantity.value * 10) / 10;
  }
}

/** "charge it at -5", "minus 3 overnight": degrees without the word. */
function coldNumber(state: State): void {
  const { tokens } = state;
  for (let i = 1; i < tokens.length; i++) {
    const number = tokens[i]!;
    const sign = tokens[i - 1]!;
    if (number.kind !== 'number' || number.value > coldest) continue;
    const next = wordAt(state, i + 1);
    const isMinus = sign.text === 'minus' && (cold.has(next) || i + 1 === tokens.length);
    const isSigned = sign.text === '-' && number.isGlued && !sign.isGlued && leads.has(wordAt(state, i - 2));
    if (!isMinus && !isSigned) continue;
    state.facts.ambientC ??= -number.value;
    number.isKnown = true;
  }
}
