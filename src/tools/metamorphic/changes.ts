import { present } from '#basics/present.ts';
import { numeralAt } from '#language/lex/numbers.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { unitLexicon } from '#language/recognise/units.ts';
import { inAnotherUnit } from './units.ts';

/** A change that must not change what a message says. */
export interface Change {
  readonly says: string;
  /** Whether amounts keep the unit in which they are told: where not, claims and conversions are other ones. */
  readonly keepsUnits: boolean;
  /** The message changed, in the `n`-th way; undefined where it has nothing to change. */
  readonly apply: (text: string, n: number) => string | undefined;
}

const openings = [
  'Hi all, hope you can help: ',
  'Sorry to bother you, but ',
  'Good evening everyone, quick question. ',
  'Hello there, if you have a moment: ',
  'Thanks for having me here. ',
];

/** What a clause that stands first can't begin with: it leans on the one before. */
const leaning =
  /^(?:and|but|so|or|then|it|its|that|thats|this|these|those|they|which|because|if|also|plus|with|for|at|on|no|not|same|both|each|they|he|she|about|per|a day|in|until|till|to|of)\b/i;

/** Sentences of a message, each with its sign at its end. */
const sentencesOf = (text: string): string[] =>
  (text.match(/[^.?!\n]+(?:[.](?=\d)[^.?!\n]+)*[.?!]*/g) ?? []).map(s => s.trim()).filter(Boolean);

function turned(text: string): string | undefined {
  const sentences = sentencesOf(text);
  if (sentences.length > 1) {
    const last = present(sentences.at(-1));
    if (leaning.test(last) || sentences.some(s => /^(?:sorry|no wait|actually|correction)\b/i.test(s)))
      return undefined;
    const first = /[.?!]$/.test(last) ? last : `${last}.`;
    return [first, ...sentences.slice(0, -1)].join(' ');
  }
  const parts = text.split(/, /);
  const last = present(parts.at(-1));
  if (parts.length < 2 || !last.endsWith('?') || leaning.test(last)) return undefined;
  return `${last} ${parts.slice(0, -1).join(', ')}`;
}

/** Kinds of mentions whose words are names: a slip in one makes another name. */
const names: ReadonlySet<string> = new Set(['person', 'place', 'noun', 'clock', 'month', 'weekday']);
const leastLetters = 4;
const slips: readonly ((word: string, at: number) => string)[] = [
  (word, at) => word.slice(0, at) + present(word[at + 1]) + present(word[at]) + word.slice(at + 2),
  (word, at) => word.slice(0, at) + word.slice(at + 1),
  (word, at) => word.slice(0, at + 1) + word.slice(at),
];

/** One slip inside a word of four letters or more that is no unit, no number and no name. */
function slipped(text: string, n: number): string | undefined {
  const { tokens, words, mentions } = recognise(text);
  const phrases = { length: words.length, wordAt: (i: number) => words[i] ?? '' };
  const open = mentions.flatMap(m => {
    const isFigure = m.kind === 'amount' || m.kind === 'number' || m.kind === 'rate';
    if (names.has(m.kind) || isFigure) return [];
    return Array.from({ length: m.to - m.from }, (_, k) => m.from + k);
  });
  const spans = open.flatMap(i => {
    const { kind, start, end } = present(tokens[i]);
    const raw = text.slice(start, end);
    const isOpen = kind === 'word' && /^[a-z]+$/i.test(raw) && raw.length >= leastLetters;
    return isOpen && !unitLexicon.find(phrases, i) && !numeralAt(tokens, i) ? [{ raw, start, end }] : [];
  });
  if (spans.length === 0) return undefined;
  const { raw, start, end } = present(spans[(n * 7) % spans.length]);
  const at = 1 + ((n * 5) % (raw.length - 2));
  const made = present(slips[n % slips.length])(raw, at);
  return made === raw ? undefined : text.slice(0, start) + made + text.slice(end);
}

function otherUnit(text: string, n: number): string | undefined {
  const { tokens, mentions } = recognise(text);
  const told = mentions.flatMap(m => {
    const said = inAnotherUnit(m);
    return said === undefined
      ? []
      : [{ said, start: present(tokens[m.from]).start, end: present(tokens[m.to - 1]).end }];
  });
  if (told.length === 0) return undefined;
  const { said, start, end } = present(told[n % told.length]);
  return text.slice(0, start) + said + text.slice(end);
}

const unlessSame = (text: string, changed: string): string | undefined =>
  changed === text ? undefined : changed;

export const changes = {
  politeOpening: {
    says: 'a polite opening',
    keepsUnits: true,
    apply: (text, n) => present(openings[n % openings.length]) + text,
  },
  turnedRound: { says: 'clauses turned round', keepsUnits: true, apply: turned },
  slip: { says: 'one slip in a word', keepsUnits: true, apply: slipped },
  noPunctuation: {
    says: 'punctuation off',
    keepsUnits: true,
    apply: text => unlessSame(text, text.replace(/[,.?!;:]+(?=\s|$)/g, '')),
  },
  capitals: {
    says: 'all capitals, or none',
    keepsUnits: true,
    apply: (text, n) => unlessSame(text, n % 2 === 0 ? text.toUpperCase() : text.toLowerCase()),
  },
  otherUnit: { says: 'another unit of the same amount', keepsUnits: false, apply: otherUnit },
} satisfies Record<string, Change>;

export type ChangeName = keyof typeof changes;
export const changeNames = Object.keys(changes) as ChangeName[];
