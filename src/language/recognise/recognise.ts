import { present } from '#basics/present.ts';
import { lex, type Token } from '../lex/lex.ts';
import { plainWords } from '../words/en/common.ts';
import { coarseCluster, fineCluster } from '../words/learned.ts';
import { alternatorTold } from './alternator.ts';
import { amountAt } from './amounts.ts';
import { batteriesPlaced } from './battery-place.ts';
import { clockAt } from './clock.ts';
import { matterOf } from './courtesy.ts';
import { dutyAt } from './duty.ts';
import { joined } from './joined.ts';
import { headNouns, knownWords, mended, nameLexicon, usedWords } from './lexicons.ts';
import { make } from './make.ts';
import { type Mention, shaped } from './mention.ts';
import { monthAt } from './month-at.ts';
import { isSureSlip } from './near.ts';
import { panelLabelTold } from './panel-label.ts';
import { isWhere, longPlaceAt, placeAt, placePreps, whereabouts } from './place-at.ts';
import { rateAt } from './rates.ts';
import { type Phrases, phrasesOf } from './unit-at.ts';
import { isUntil } from './until-when.ts';
import { withoutAt } from './without.ts';

/** A message as mentions, in order; nothing of it is left out but the courtesies around it. */
export interface Recognised {
  readonly text: string;
  readonly tokens: readonly Token[];
  /** The words of the tokens, slips mended; '' for numbers. */
  readonly words: readonly string[];
  readonly mentions: readonly Mention[];
}

/** What a word may name besides a place that has its name: weather ("in Bright"), not months or amounts. */
const yields: ReadonlySet<string> = new Set(['sky', 'mount', 'shade', 'level', 'average', 'battery', 'role']);
/** Kinds of words that may mean their fact or something else. */
const colours: ReadonlySet<Mention['kind']> = new Set(['arrangement', 'mount', 'without', 'shade', 'sky']);

/** What a lexicon knows of the words from a token on. */
function nameAt(
  phrases: Phrases,
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
): Mention | undefined {
  let found = nameLexicon.find(phrases, at);
  if (!found) return undefined;
  // "Under load" tells how volts were taken, and names no thing.
  if (words[at - 1] === 'under' && /^loads?$/.test(words[at]!) && found.length === 1) return undefined;
  // A name ends with its line: "mixed" and "Sun" of the next one are no "mixed sun".
  for (let i = at + 1; i < at + found.length; i++)
    if (present(tokens[i]).isNewLine) {
      found = nameLexicon.find({ length: i, wordAt: index => (index < i ? phrases.wordAt(index) : '') }, at);
      if (!found) return undefined;
      break;
    }
  const { value: entry, length } = found;
  const text = words.slice(at, at + length).join(' ');
  const cls =
    entry.kind === 'thing'
      ? entry.isWeak && length === 1
        ? 'thing?'
        : 'thing'
      : entry.kind === 'month'
        ? entry.isWeak
          ? 'month?'
          : 'month'
        : entry.kind === 'weekday'
          ? 'weekday'
          : entry.kind === 'clock'
            ? `clock:${entry.key}`
            : entry.kind === 'person'
              ? entry.key
              : entry.key
                ? `${entry.kind}${entry.isWeak && colours.has(entry.kind) ? '?' : ''}:${entry.key}`
                : entry.kind;
  return make(entry.kind, entry.key, at, at + length, {
    cls,
    text,
    value: entry.value ?? Number.NaN,
    supply: entry.supply,
    unit: entry.name,
  });
}

/** Somebody named with what is theirs or what they are at: "Lee's called 3 days", "Ned's guess". */
function ownerAt(text: string, tokens: readonly Token[], at: number): Mention | undefined {
  const token = present(tokens[at]);
  if (!/['’]s$/i.test(text.slice(token.start, token.end))) return undefined;
  const stem = token.text.slice(0, -1);
  const found = nameLexicon.find({ length: 1, wordAt: index => (index === 0 ? stem : '') }, 0);
  return found?.value.kind === 'person'
    ? make('person', found.value.key, at, at + 1, { cls: found.value.key, text: token.text })
    : undefined;
}

/** Whether what names a person or a thing stands where its namesake among the places would: "near Mobile". */
function mayBePlace(
  inPlaces: readonly string[],
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
  { kind, key, cls, to }: Mention,
): boolean {
  if (kind === 'person' && key === 'name') return isWhere(words, at, to);
  return cls === 'thing?' && to === at + 1 && isWhere(words, at, to) && !!placeAt(inPlaces, tokens, at);
}

/** The one that takes more tokens; of equal ones the first. */
const longer = (a: Mention | undefined, b: Mention | undefined): Mention | undefined =>
  b && (!a || b.to > a.to) ? b : a;

const isNoun = (token: Token, word: string): boolean =>
  token.kind === 'word' && word.length > 1 && (!knownWords.has(word) || headNouns.has(word));

const needsRaw: ReadonlySet<string> = new Set(['noun', 'place', 'person']);
const rawOf = (text: string, tokens: readonly Token[], m: Mention): string =>
  text
    .slice(present(tokens[m.from]).start, present(tokens[m.to - 1]).end)
    .toLowerCase()
    .replace(/['’]s$/, '');

/** Everything that a message mentions. Linear: each token is looked at from a bounded number of places. */
export function recognise(text: string): Recognised {
  const tokens = lex(text);
  const words = tokens.map(token =>
    token.kind === 'number' ? '' : token.kind === 'sign' ? token.text : (mended(token.text) ?? token.text),
  );
  const plain = tokens.map(token => (token.kind === 'word' ? token.text : ''));
  // A comma stands between a town and its state.
  const inPlaces = tokens.map((token, i) => (token.text === ',' ? ',' : plain[i]!));
  // Only a sure slip is no name, and none with a capital inside a sentence or "in" before it.
  const asNoun = (i: number): string =>
    i > 0 && (present(tokens[i]).isCapital || placePreps.has(words[i - 1]!))
      ? plain[i]!
      : isSureSlip(plain[i]!, words[i]!)
        ? words[i]!
        : plain[i]!;
  const phrases = phrasesOf(tokens, words);
  const mentions: Mention[] = [];
  const [start, end] = matterOf(words);
  let at = start;
  while (at < end) {
    const token = present(tokens[at]);
    const before = mentions.at(-1);
    let best = longer(withoutAt(words, tokens, at, before), clockAt(tokens, words, at));
    best = longer(best, rateAt(words, at, before));
    best = longer(best, dutyAt(tokens, phrases, at));
    best = longer(best, amountAt(tokens, phrases, at));
    best = longer(best, monthAt(tokens, words, at));
    if (token.kind === 'word' || token.kind === 'sign') {
      const name = isUntil(tokens, phrases, words, at)
        ? undefined
        : (nameAt(phrases, tokens, words, at) ?? ownerAt(text, tokens, at));
      const place =
        token.kind === 'word' &&
        (!name ||
          name.cls === 'thing?' ||
          name.kind === 'noun' ||
          (yields.has(name.kind) &&
            (whereabouts.has(words[at - 1]!) || (token.isCapital && words[at - 1] === 'to'))))
          ? placeAt(inPlaces, tokens, at)
          : name && longPlaceAt(inPlaces, tokens, at, name);
      const isPlaceFirst = name !== undefined && yields.has(name.kind);
      best = longer(longer(best, isPlaceFirst ? place : name), isPlaceFirst ? name : place);
    }
    if (!best) {
      const word = words[at]!;
      if (isNoun(token, asNoun(at))) {
        // Unknown words side by side are one name: "telescope mount".
        let to = at + 1;
        while (
          to < tokens.length &&
          to - at < 3 &&
          isNoun(tokens[to]!, asNoun(to)) &&
          !present(tokens[to]).isNewLine
        )
          to++;
        const name = plain.slice(at, to).join(' ');
        best = make('noun', name, at, to, {
          cls: token.isCapital ? 'Noun' : 'noun',
          text: name,
          fine: fineCluster(words[to - 1]!),
          coarse: coarseCluster(words[to - 1]!),
        });
      } else {
        const isSign = token.kind === 'sign';
        const fine = isSign ? -1 : fineCluster(word);
        best = make(isSign ? 'sign' : 'word', word, at, at + 1, {
          cls: isSign
            ? word
            : usedWords.has(word) || plainWords.has(word)
              ? word
              : fine >= 0
                ? `c${fine}`
                : '?',
          text: word,
          fine,
          coarse: isSign ? -1 : coarseCluster(word),
        });
      }
    }
    const isNewLine = token.isNewLine && at > 0;
    if (mayBePlace(inPlaces, tokens, words, at, best))
      best = { ...best, isLed: true, ...(best.kind === 'thing' ? { raw: best.text } : {}) };
    mentions.push(
      needsRaw.has(best.kind) || best.cls === '?' || isNewLine
        ? {
            ...best,
            raw:
              best.raw ??
              (needsRaw.has(best.kind) || best.cls === '?' ? rawOf(text, tokens, best) : undefined),
            ...(isNewLine ? { isNewLine } : {}),
          }
        : best,
    );
    at = best.to;
  }
  return {
    text,
    tokens,
    words,
    mentions: joined(batteriesPlaced(alternatorTold(panelLabelTold(mentions, tokens)))).map(shaped),
  };
}
