import { Lexicon } from '../lexicon.ts';
import { isStop, markKnown, quantityAt, type State, type Thing, textAt, wordAt } from '../state.ts';
import { type Modifier, modifiers as table } from '../words/en/modifiers.ts';

export const modifierLexicon = new Lexicon<Modifier>();
for (const row of table) for (const phrase of row.phrases) modifierLexicon.add(phrase, row);

/** Sky, shade, mount, alternator, series or parallel, sources ruled out, averages, temperature. */
export function modifiers(state: State): void {
  const { facts } = state;
  const without = new Set<NonNullable<typeof facts.without>[number]>();
  for (let i = 0; i < state.tokens.length; i++) {
    if (state.tokens[i]!.kind !== 'word') continue;
    const found = modifierLexicon.find(state, i);
    if (!found) continue;
    const { value, length } = found;
    markKnown(state, i, i + length);
    if (value.isAverage) average(state, i, i + length);
    if (value.without) without.add(value.without);
    if (value.facts) set(state, value.facts, i, length);
    i += length - 1;
  }
  if (without.has('solar') && wordsSay(state, 'no', 'battery')) without.add('battery');
  if (without.size > 0) facts.without = [...without];
  flat(state);
}

const wordsSay = (state: State, a: string, b: string): boolean =>
  state.tokens.some((_, i) => wordAt(state, i) === a && wordAt(state, i + 1) === b);

function set(state: State, facts: NonNullable<Modifier['facts']>, at: number, length: number): void {
  if (facts.sky && isNegated(state, at)) return;
  if (facts.sky === 'sunny' && state.facts.sky) return;
  if (facts.sky) lastDays(state, at);
  if (facts.arrangement && state.facts.arrangement && state.facts.arrangement !== facts.arrangement) {
    state.facts.arrangement = undefined;
    return;
  }
  if (facts.mount && state.facts.mount === 'tilted') return;
  if (facts.shade && length === 1 && state.facts.shade) return;
  Object.assign(state.facts, facts);
}

const isNegated = (state: State, at: number): boolean =>
  /^(no|not|isnt|without|never)$/.test(wordAt(state, at - 1));

/** "the last two days are overcast": for how many days, from the end, the sky word is. */
function lastDays(state: State, at: number): void {
  for (let i = at - 1; i >= at - 7 && i >= 0 && !isStop(textAt(state, i)); i--) {
    if (wordAt(state, i) !== 'last' && wordAt(state, i) !== 'final') continue;
    const quantity = quantityAt(state, i + 1);
    if (quantity?.unit.factor === 24) {
      state.facts.skyLastDays = Math.max(1, Math.round(quantity.value / 24));
      quantity.taken = 'sky';
    } else if (wordAt(state, i + 1) === 'day') state.facts.skyLastDays = 1;
    return;
  }
}

/** The nearest load in the sentence averages: the one just before, else the one just behind. */
function average(state: State, at: number, end: number): void {
  const next = quantityAt(state, end) ?? quantityAt(state, end + 1);
  const isNext = next && (next.unit.dimension === 'current' || next.unit.dimension === 'power');
  const loads = state.things.filter(one => one.kind === 'load' && (one.currentA > 0 || one.powerW > 0));
  const value = isNext ? next.value : Number.NaN;
  const own = loads.find(
    one => (one.currentA === value || one.powerW === value) && Math.abs(one.at - at) < 12,
  );
  const target: Thing | undefined =
    own ??
    loads.findLast(one => one.at < at && state.sentences[one.at] === state.sentences[at]) ??
    loads.find(one => one.at > at && one.at - at < 8);
  if (target) target.isAverage = true;
  else for (const load of state.things) if (load.kind === 'load' && !load.isDropped) load.isAverage = true;
}

/** "160W flat": how the panel lies, not how full anything is. */
function flat(state: State): void {
  for (let i = 1; i < state.tokens.length; i++)
    if (wordAt(state, i) === 'flat' && quantityAt(state, i - 1)?.taken === 'solar')
      state.facts.mount ??= 'flat';
}
