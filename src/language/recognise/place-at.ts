import { present } from '#basics/present.ts';
import { type Found, findPlace } from '#places/find.ts';
import type { Token } from '../lex/lex.ts';
import { months } from '../words/en/calendar.ts';
import { knownWords, leastPlace, placeMeant } from './lexicons.ts';
import { make } from './make.ts';
import type { Mention } from './mention.ts';

/** Words that lead to places. */
export const placePreps: ReadonlySet<string> = new Set([
  'in',
  'at',
  'near',
  'around',
  'to',
  'from',
  'for',
  'outside',
  'round',
  'up',
  'on',
  'by',
  'via',
  'past',
  'of',
  'into',
  'over',
  'down',
  'across',
  'through',
]);
/** Words after which a name is where somebody is. */
export const whereabouts: ReadonlySet<string> = new Set(['in', 'at', 'near', 'around', 'outside']);
const notPlaces: ReadonlySet<string> = new Set(['total', 'all', 'series', 'parallel', 'winter', 'summer']);

const beforeMonths: ReadonlySet<string> = new Set([',', 'in', 'this']);
/** What stands before a clause. */
const starts: ReadonlySet<string> = new Set([',', '.', '?', '!', ':', ';', '(', '-']);

/** "…, april", "… in april": what stands before is likely a place. */
const isBeforeMonth = (words: readonly string[], at: number): boolean =>
  Object.hasOwn(months, words[beforeMonths.has(words[at] ?? '') ? at + 1 : at] ?? '');
/** Whether a name stands where a place would: after "in", before a month. */
export const isWhere = (words: readonly string[], at: number, end: number): boolean =>
  placePreps.has(words[at - 1] ?? '') || isBeforeMonth(words, end);

/** A place named at a token: known ones anywhere, towns of the world only where a word or a capital leads there. */
export function placeAt(words: readonly string[], tokens: readonly Token[], at: number): Mention | undefined {
  const token = present(tokens[at]);
  const before = words[at - 1] ?? '';
  const lead = before === 'the' ? (words[at - 2] ?? '') : before;
  const isLed = placePreps.has(lead);
  const isName =
    token.isCapital &&
    at > 0 &&
    !token.isNewLine &&
    present(tokens[at - 1]).text !== '.' &&
    present(tokens[at - 1]).text !== '?' &&
    present(tokens[at - 1]).text !== '!';
  // "Reading, May", "sandwich in april": an everyday word that opens a clause before a month.
  const isTitle =
    (at === 0 || token.isNewLine || starts.has(before)) &&
    (isBeforeMonth(words, at + 1) ||
      (token.isCapital && tokens[at + 1]?.isCapital && isBeforeMonth(words, at + 2))) &&
    !Object.hasOwn(months, words[at] ?? '');
  const isUnknown =
    !knownWords.has(words[at]!) ||
    isTitle ||
    (token.isCapital
      ? whereabouts.has(before) || isBeforeMonth(words, at + 1)
      : before === 'in' && isBeforeMonth(words, at + 1));
  const found = findPlace(words, at, isUnknown && (isLed || isName || token.isCapital || isTitle));
  if (notPlaces.has(words[at]!) && found?.own !== 2) return undefined;
  if (!found)
    return isUnknown &&
      (whereabouts.has(lead) || isBeforeMonth(words, at + 1) || isBeforeMonth(words, at + 2))
      ? misspelt(words, at)
      : undefined;
  if (found.place.isWord && !isLed && !isTitle) return undefined;
  return placeOf(words, at, found);
}

function placeOf(words: readonly string[], at: number, { length }: Found): Mention {
  const name = words.slice(at, at + length).join(' ');
  return make('place', name, at, at + length, { cls: 'place', text: name });
}

/** A place whose name begins with that of a person or a thing and has more words: "Alice Springs", "Mount Isa". */
export function longPlaceAt(
  words: readonly string[],
  tokens: readonly Token[],
  at: number,
  name: Mention,
): Mention | undefined {
  if (name.kind !== 'person' && name.kind !== 'thing') return undefined;
  const token = present(tokens[at]);
  const found = findPlace(words, at, token.isCapital && whereabouts.has(words[at - 1] ?? ''));
  return found && found.own > name.to - at ? placeOf(words, at, found) : undefined;
}

/** A place that campers know, with one slip in its name: "kalamatta", "coober peddy". */
function misspelt(words: readonly string[], at: number): Mention | undefined {
  // "IN JUNE" is no Injune.
  if (placePreps.has(words[at] ?? '')) return undefined;
  for (const length of [2, 1]) {
    const name = words.slice(at, at + length).join(' ');
    const meant = name.length >= leastPlace && words[at] !== ',' ? placeMeant(name) : undefined;
    if (meant !== undefined)
      return make('place', meant, at, at + length, { cls: 'place', text: meant, raw: meant });
  }
  return undefined;
}
