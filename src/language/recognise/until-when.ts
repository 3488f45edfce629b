import type { Token } from '../lex/lex.ts';
import { dayTimes, weekdays } from '../words/en/calendar.ts';
import { plainWords } from '../words/en/common.ts';
import { amountAt } from './amounts.ts';
import { clockAt } from './clock.ts';
import type { Phrases } from './unit-at.ts';

/** Things whose name says until when as well. */
const alsoUntil: ReadonlySet<string> = new Set(['till']);
/** What stands before the thing, and not before a time. */
const beforeThing: ReadonlySet<string> = new Set(
  'the a an my our your his her their its one each cash card shop with and & + plus , : ; ('.split(' '),
);

/** Whether a word that names a thing says until when instead: "ok till 7", "till the sun is up"; "a till, 15 W" is one. */
export function isUntil(
  tokens: readonly Token[],
  phrases: Phrases,
  words: readonly string[],
  at: number,
): boolean {
  if (!alsoUntil.has(words[at] ?? '') || at + 1 >= tokens.length) return false;
  const next = words[at + 1] ?? '';
  if (clockAt(tokens, words, at + 1) || Object.hasOwn(weekdays, next) || Object.hasOwn(dayTimes, next))
    return true;
  if (at === 0 || beforeThing.has(words[at - 1] ?? '')) return false;
  const amount = amountAt(tokens, phrases, at + 1);
  if (amount)
    return amount.kind === 'number' || amount.dimension === 'time' || amount.dimension === 'percent';
  return plainWords.has(next);
}
