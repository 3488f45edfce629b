import type { Unit } from '#quantity/units.ts';
import { type State, wordAt } from '../state.ts';
import type { Token } from '../token.ts';
import { list } from '../words/list.ts';
import { unitLexicon } from './unit-words.ts';

interface BareTime {
  readonly unit: Unit;
  readonly value: number;
  readonly end: number;
  readonly isWeak: boolean;
}

const articles = list('a an the one this all whole full next each every per other');
/** What may stand before "a day" where it is a span of time and not "40 Ah a day". */
const spans = list(`
  for last lasts of through thru about only just after within it than then around roughly stay staying
  over nearly almost do take takes another maybe and or got
`);

/** Spans of time said without a number: "a weekend", "an hour", "for a day", "a whole week". */
export function bareTime(state: State, at: number, before: Token | undefined): BareTime | undefined {
  const word = wordAt(state, at);
  const isArticle = articles.has(word);
  const starts =
    word === 'weekend' ||
    word === 'long' ||
    word === 'bank' ||
    word === 'wkend' ||
    word === 'fortnight' ||
    isWeekAway(state, at, before);
  if (!isArticle && !starts) return undefined;
  if (word === 'each' || word === 'every' || word === 'per' || word === 'next' || word === 'other')
    return undefined;
  let from = isArticle ? at + 1 : at;
  if (wordAt(state, from) === 'whole' || wordAt(state, from) === 'full' || wordAt(state, from) === 'good')
    from++;
  const found = unitLexicon.find(state, from);
  if (found?.value.dimension !== 'time') return undefined;
  const { value: unit, length } = found;
  const end = from + length;
  // "An hours drive": the apostrophe is often left out.
  const isOwner =
    state.tokens[from]!.hasApostrophe || (word === 'an' && wordAt(state, end).startsWith('driv'));
  if (unit.factor < 1 || (wordAt(state, from).endsWith('s') && !isOwner)) return undefined;
  if (unit.factor >= 48) {
    if (unit.factor === 168 && !isArticle && word !== 'week') return undefined;
    if (before?.kind === 'number' || before?.kind === 'quantity') return undefined;
    return { unit, value: 1, end, isWeak: unit.factor !== 168 && unit.factor !== 336 };
  }
  if (word !== 'a' && word !== 'an' && word !== 'one') return undefined;
  const isHour = unit.factor === 1;
  const previous = before?.kind === 'word' ? before.text : '';
  const next = wordAt(state, end);
  if (isHour && previous.startsWith('driv')) return { unit, value: 1, end, isWeak: false };
  if (isHour && (next.startsWith('driv') || next === 'of')) return { unit, value: 1, end, isWeak: false };
  if (!before || spans.has(previous))
    return wordAt(state, at) === 'one' || previous !== ''
      ? { unit, value: 1, end, isWeak: false }
      : undefined;
  return undefined;
}

/** "week at the lake, …", "going away for week in october": an article left out. */
function isWeekAway(state: State, at: number, before: Token | undefined): boolean {
  if (wordAt(state, at) !== 'week') return false;
  const isOpening = !before || before.kind === 'sign' || (before.kind === 'word' && spans.has(before.text));
  return (
    isOpening &&
    /^(at|in|away|off|on|up|down|camping|camped|parked|near|by|round|around)$/.test(wordAt(state, at + 1))
  );
}
