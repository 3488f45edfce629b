import { baseSymbol } from '#quantity/units.ts';
import { quantityAt, type State, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';

const starters = list('sorry oops whoops meant typo correction scratch soz mean wrong mistake err nope ment');
const afterNo = list('its it thats make , i should sorry');
const named = list('load battery solar charger inverter');
/** Longer messages tell more than a slip. */
const mostTokens = 12;

interface Figure {
  readonly value: number;
  /** In short; '' where none was said. */
  readonly unit: string;
}

/** "75 not 57", "its 100 not 120", "*75", "I meant 75 Ah": the wrong number and the right one. */
export function corrections(state: State): void {
  if (!contrast(state) && !otherKind(state)) single(state);
}

/** "its an agm not lithium", "not gel, agm": the kind that it isn't goes. */
function otherKind(state: State): boolean {
  if (state.tokens.length > mostTokens) return false;
  const kinds = state.things.filter(one => one.gear?.chemistry !== undefined);
  const wrong = kinds.find(one => {
    const before = /^(a|an)$/.test(wordAt(state, one.at - 1)) ? one.at - 2 : one.at - 1;
    return wordAt(state, before) === 'not';
  });
  const isTold = kinds.some(one => one.gear!.chemistry !== wrong?.gear?.chemistry);
  if (!wrong || !isTold) return false;
  wrong.isDropped = true;
  state.cues.add('correction');
  return true;
}

function figureAt(state: State, at: number): Figure | undefined {
  const quantity = quantityAt(state, at);
  if (quantity?.taken) return undefined;
  if (quantity) {
    const { dimension, symbol } = quantity.unit;
    const isKept = dimension === 'temperature' || dimension === 'distance' || dimension === 'other';
    return { value: quantity.value, unit: isKept ? symbol : baseSymbol[dimension] };
  }
  const token = state.tokens[at];
  return token?.kind === 'number' ? { value: token.value, unit: '' } : undefined;
}

/** "75 not 57", "75 instead of 57", "not 57 but 75". */
function contrast(state: State): boolean {
  for (let i = 0; i < state.tokens.length; i++) {
    const word = wordAt(state, i);
    const length =
      word === 'not'
        ? 1
        : (word === 'instead' && wordAt(state, i + 1) === 'of') ||
            (word === 'rather' && wordAt(state, i + 1) === 'than')
          ? 2
          : 0;
    if (length === 0) continue;
    const right = figureAt(state, i - 1);
    const wrong = figureAt(state, i + length) ?? figureAt(state, i + length + 1);
    if (right && wrong) {
      correct(state, right, wrong, [i - 1, i + length, i + length + 1]);
      return true;
    }
    const first = figureAt(state, i + 1);
    const isJoined = wordAt(state, i + 2) === 'but' || textAt(state, i + 2) === ',';
    const next = isJoined ? (figureAt(state, i + 3) ?? figureAt(state, i + 4)) : undefined;
    if (word === 'not' && first && next) {
      correct(state, next, first, [i + 1, i + 3, i + 4]);
      return true;
    }
  }
  return false;
}

/** "*75", "sorry 75ah", "no, its 100": one figure and a word of regret. */
function single(state: State): void {
  const { tokens } = state;
  if (tokens.length > mostTokens || state.cues.has('stop')) return;
  const isStarred = tokens[0]?.text === '*' || tokens.at(-1)?.text === '*';
  const isSorry = tokens.some(
    (token, i) =>
      token.kind === 'word' &&
      starters.has(token.text) &&
      (token.text !== 'mean' || wordAt(state, i - 1) === 'i'),
  );
  const isNo = wordAt(state, 0) === 'no' && afterNo.has(textAt(state, textAt(state, 1) === ',' ? 2 : 1));
  if (!isStarred && !isSorry && !isNo) return;
  const figures = tokens.map((_, i) => i).filter(i => figureAt(state, i));
  const at = figures[0];
  if (at === undefined || figures.length > 1 || /^(stays|still)$/.test(wordAt(state, at - 1))) return;
  state.cues.add('correction');
  if (!state.things.some(one => named.has(one.kind))) correct(state, figureAt(state, at)!, undefined, [at]);
}

function correct(state: State, right: Figure, wrong: Figure | undefined, used: readonly number[]): void {
  const unit = right.unit || wrong?.unit || '';
  // "3 days not 2": both are days, though only one says so.
  const scale = (figure: Figure): number =>
    unit === 'h' && figure.unit === '' ? figure.value * scaleOf(state, used) : figure.value;
  state.corrections.push({
    ...(wrong ? { from: scale(wrong) } : {}),
    to: scale(right),
    ...(unit ? { unit } : {}),
  });
  state.cues.add('correction');
  for (const at of used) {
    const quantity = quantityAt(state, at);
    if (quantity && !quantity.taken) quantity.taken = 'correction';
    if (state.tokens[at]?.kind === 'number') state.tokens[at]!.isKnown = true;
  }
}

const scaleOf = (state: State, used: readonly number[]): number => {
  for (const at of used) {
    const quantity = quantityAt(state, at);
    if (quantity) return quantity.unit.factor;
  }
  return 1;
};
