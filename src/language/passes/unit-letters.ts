import type { Unit } from '#quantity/units.ts';
import { type State, wordAt } from '../state.ts';
import type { Token } from '../token.ts';
import { list } from '../words/list.ts';
import { ampHour, unit } from './unit-words.ts';

const minute = unit('min');
const percent = unit('%');
const cableWords = list('cable wire run drop awg mm2 b&s length lead metre away gauge mm cabling wiring');
/** After these a lone "a" is an article: "2 a day", "4 a 2a fridge". */
const dayWords = list(`
  day night week nite year month weekend bit lot few couple big small new the my piece side head good long
`);

/** Letters and words that are units only in some company; undefined where they are none. */
export function letter(
  state: State,
  at: number,
  number: Token,
  found: Unit,
  after: Unit | undefined,
): Unit | undefined {
  const token = state.tokens[at]!;
  const next = wordAt(state, at + 1);
  switch (token.text) {
    case 'a':
      if (token.isGlued || token.raw === 'A')
        return token.isGlued &&
          token.raw === 'a' &&
          next === 'day' &&
          !/\./.test(number.text) &&
          number.value < 4
          ? undefined
          : found;
      return dayWords.has(next) || state.tokens[at + 1]?.kind === 'number' || next === 'a'
        ? undefined
        : found;
    case 'm':
      if (after) return minute;
      return hasCableTalk(state) || token.raw === 'M' ? found : isTimeTalk(state, at) ? minute : found;
    case "'":
      if (!token.isGlued || (state.tokens[at + 1]?.isGlued && state.tokens[at + 1]?.kind === 'word'))
        return possessive(state, at);
      return found;
    case '"':
      return token.isGlued ? found : undefined;
    case 's':
      if (state.tokens[at + 1]?.kind === 'number' && state.tokens[at + 1]!.isGlued) return undefined; // "2s2p"
      return token.isGlued ? (token.hasApostrophe || number.value >= 70 ? ampHour : found) : undefined;
    case 'c':
    case 'f':
    case 'l':
    case 'g':
    case 'd':
    case 'h':
    case 'v':
    case 'w':
      return token.isGlued ||
        token.raw === token.raw.toUpperCase() ||
        token.text === 'h' ||
        token.text === 'w' ||
        token.text === 'v'
        ? found
        : undefined;
    case 'square':
    case 'squares':
    case 'square ':
      return next === 'metre' || next === 'meter' ? undefined : found;
    case 'kilo':
    case 'pounds':
    case 'month':
    case 'night':
      return found;
    case 'bs':
    case 'pc':
      return token.isGlued
        ? token.text === 'pc'
          ? percent
          : found
        : token.text === 'bs'
          ? found
          : undefined;
    case 'second':
    case 'weekend':
    case 'nd':
    case 'ton':
      return token.text === 'second' && !token.isGlued && /^(batt|alternator|panel|one|hand)/.test(next)
        ? undefined
        : found;
    case 'gauge':
      return found;
    case 'degrees':
    case 'degree':
    case 'deg':
    case '°':
      return number.value > 55 ? unit('°F') : found;
    case 'mil':
    case 'ins':
    case 'star':
    case 'cell':
    case 'cells':
    case 'stars':
      return found;
    case 'sleep':
      return undefined;
    default:
      return found;
  }
}

/** "three 100's": batteries by their Ah. */
const possessive = (state: State, at: number): Unit | undefined =>
  wordAt(state, at + 1) === 's' ? ampHour : undefined;

/** Whether the message speaks of cables, so that "m" is metres; worked out once. */
export function hasCableTalk(state: State): boolean {
  if (state.cableTalk === undefined)
    state.cableTalk = state.tokens.some(token => token.kind === 'word' && cableWords.has(token.text));
  return state.cableTalk;
}

/** Whether a lone "m" near `at` is likely minutes: hours, "each", "a day" or a kettle stand by. */
function isTimeTalk(state: State, at: number): boolean {
  for (let i = Math.max(0, at - 6); i < Math.min(state.tokens.length, at + 5); i++)
    if (
      i !== at &&
      /^(h|hr|hrs|hours|day|daily|kettle|microwave|toaster|pump|boil|twice|times)$/.test(wordAt(state, i))
    )
      return true;
  return false;
}
