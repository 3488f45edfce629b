import { things } from '#catalog/appliances.ts';
import { type Gear, gear } from '#catalog/gear-table.ts';
import { known as places } from '#places/known.ts';
import { dayTimes, doubtfulDays, doubtfulMonths, months, weekdays } from '../words/en/calendar.ts';
import { genericNouns, plainWords, thingsFirst, weakNames } from '../words/en/common.ts';
import { ordinals } from '../words/en/day-plans.ts';
import { everyday } from '../words/en/everyday.ts';
import {
  alwaysPhrases,
  emptyPhrases,
  fillPhrases,
  fullPhrases,
  halfPhrases,
  morePhrases,
} from '../words/en/levels.ts';
import { modifiers } from '../words/en/modifiers.ts';
import { givenNames } from '../words/en/names.ts';
import { kin, kinPhrases } from '../words/en/people.ts';
import { learnedWords } from '../words/learned.ts';
import { Lexicon } from './lexicon.ts';
import type { MentionKind } from './mention.ts';
import { Near } from './near.ts';

/** What a phrase of a lexicon names. */
export interface Entry {
  readonly kind: MentionKind;
  readonly key: string;
  /** Of a thing: the first name of its row, and where it runs. */
  readonly name?: string;
  readonly supply?: 'dc' | 'ac';
  /** It is an everyday word as well. */
  readonly isWeak?: boolean;
  readonly value?: number;
}

/** Of one word its owner's form too: "the genny's" is lexed as "gennys". */
const plural = (name: string): string[] =>
  /[^aeiou]y$/.test(name)
    ? [`${name.slice(0, -1)}ies`, `${name}s`]
    : /(?:s|x|ch|sh)$/.test(name)
      ? [`${name}es`]
      : [`${name}s`];

const lexicon = new Lexicon<Entry>();
const add = (name: string, entry: Entry): void => {
  lexicon.add(name, entry);
  for (const many of plural(name)) lexicon.add(many, entry);
};

const heads = new Set<string>();
const headOf = (name: string): void => {
  const words = name.split(' ');
  if (words.length > 1) heads.add(words.at(-1)!);
};
for (const name of learnedWords.things) headOf(name);
for (const row of things) for (const name of row.names) headOf(name);

for (const name of learnedWords.things) add(name, { kind: 'thing', key: name, name });
for (const row of things)
  for (const name of [row.id, ...row.names])
    add(name, { kind: 'thing', key: row.id, name: row.id, supply: row.supply, isWeak: weakNames.has(name) });
for (const name of genericNouns)
  lexicon.add(name, { kind: 'thing', key: 'load', name: 'load', isWeak: true });
for (const name of [...learnedWords.people, ...givenNames])
  if (!thingsFirst.has(name)) lexicon.add(name, { kind: 'person', key: 'name' });
for (const name of [...kin, ...kinPhrases]) lexicon.add(name, { kind: 'person', key: 'kin' });
for (const [name, value] of Object.entries(months))
  lexicon.add(name, { kind: 'month', key: String(value), value, isWeak: doubtfulMonths.has(name) });
for (const [name, value] of Object.entries(weekdays))
  lexicon.add(name, { kind: 'weekday', key: name, value, isWeak: doubtfulDays.has(name) });
for (const [name, value] of Object.entries(dayTimes))
  lexicon.add(name, { kind: 'clock', key: name, value, isWeak: true });
for (const row of gear as readonly Gear[])
  for (const name of row.names) {
    const entry: Entry = row.chemistry
      ? { kind: 'chemistry', key: row.chemistry }
      : row.role
        ? { kind: 'role', key: row.role }
        : row.controller
          ? { kind: 'controller', key: row.controller }
          : row.wave
            ? { kind: 'wave', key: row.wave }
            : row.kind === 'charger'
              ? { kind: 'charger', key: row.charger ?? 'any' }
              : row.kind === 'other'
                ? {
                    kind: row.cues.includes('alternator')
                      ? 'alternator'
                      : row.cues.includes('monitor')
                        ? 'monitor'
                        : row.cues.includes('bms')
                          ? 'bms'
                          : row.cues.includes('controller')
                            ? 'regulator'
                            : 'mains',
                    key: row.cues.includes('smart-alternator') ? 'smart' : '',
                  }
                : row.kind === 'battery' && row.cues.includes('power-station')
                  ? { kind: 'station', key: '' }
                  : { kind: row.kind as MentionKind, key: row.cues.includes('auto-cable') ? 'auto' : '' };
    add(name, entry);
  }
// A lead is a cable, and lead is what old batteries are of.
lexicon.add('lead', { kind: 'cable', key: 'lead-acid' });
lexicon.add('battery lead', { kind: 'cable', key: 'lead-acid' });
for (const row of modifiers)
  for (const phrase of row.phrases) {
    const f = row.facts ?? {};
    const entry: Entry = row.without
      ? { kind: 'without', key: row.without }
      : row.isAverage
        ? { kind: 'average', key: '', value: 24 }
        : f.sky
          ? { kind: 'sky', key: f.sky }
          : f.shade
            ? { kind: 'shade', key: f.shade === true ? '' : f.shade }
            : f.mount
              ? { kind: 'mount', key: f.mount }
              : f.alternator
                ? { kind: 'alternator', key: f.alternator }
                : { kind: 'arrangement', key: f.arrangement! };
    lexicon.add(phrase, row.isWeak ? { ...entry, isWeak: true } : entry);
  }

for (const name of emptyPhrases) lexicon.add(name, { kind: 'level', key: '0', value: 0 });
for (const name of halfPhrases) lexicon.add(name, { kind: 'level', key: '50', value: 50 });
for (const name of fillPhrases) lexicon.add(name, { kind: 'level', key: 'fill', value: 100 });
for (const name of alwaysPhrases) lexicon.add(name, { kind: 'always', key: '', value: 24 });
for (const name of ['wet', 'wet deep cycle', 'wet lead', 'wet batteries'])
  lexicon.add(name, { kind: 'chemistry', key: 'flooded' });
for (const name of morePhrases.flat) lexicon.add(name, { kind: 'mount', key: 'flat' });
for (const name of morePhrases.tilted) lexicon.add(name, { kind: 'mount', key: 'tilted' });
for (const name of morePhrases.house) lexicon.add(name, { kind: 'role', key: 'house', isWeak: true });
for (const name of fullPhrases) lexicon.add(name, { kind: 'level', key: '100', value: 100 });
for (const [sky, phrases] of Object.entries(morePhrases.sky))
  for (const phrase of phrases) lexicon.add(phrase, { kind: 'sky', key: sky });

const asPhrases = (word: string) => ({ length: 1, wordAt: (i: number) => (i === 0 ? word : '') });

/** Every phrase that names something, longest first. */
export const nameLexicon = lexicon;

const vocabulary = new Set<string>();
lexicon.vocabulary(vocabulary);
const namedWords: ReadonlySet<string> = new Set(learnedWords.nouns);
for (const word of learnedWords.vocabulary) if (!namedWords.has(word)) vocabulary.add(word);
for (const word of [...plainWords, ...everyday, ...Object.keys(ordinals)]) vocabulary.add(word);

const common: ReadonlySet<string> = new Set([...plainWords, ...everyday, ...Object.keys(ordinals)]);
/** What a thing of several words is at its heart ("milk frother", "ice chest"): alone it is a thing as well. */
export const headNouns: ReadonlySet<string> = new Set(
  [...heads].filter(word => !common.has(word) && lexicon.find(asPhrases(word), 0) === undefined),
);

/** Every word that is known, in some lexicon or by use. */
export const knownWords: ReadonlySet<string> = vocabulary;
export const usedWords: ReadonlySet<string> = new Set(learnedWords.vocabulary);

/** Letters of a word in which a slip is looked for, and in which any slip is taken for one. */
const leastSlip = 4;
const leastTypo = 5;
/** Names are never what a slip was meant for. */
const neverMeant: ReadonlySet<string> = new Set([
  ...givenNames,
  ...learnedWords.people,
  ...learnedWords.nouns.filter(noun => !usedWords.has(noun)),
]);
let near: Near | undefined;
/** Words of the names of places: "alice", "springs". */
let placeWords: ReadonlySet<string> | undefined;
/** Letters of a place's name in which a slip is looked for. */
export const leastPlace = 6;
let nearPlaces: Near | undefined;
/** The place that campers know by name that a misspelt one stands for, or undefined. */
export function placeMeant(name: string): string | undefined {
  nearPlaces ??= new Near(
    [...places.keys()].filter(known => known.length >= leastPlace),
    leastPlace,
  );
  return nearPlaces.find(name);
}

/** The known word that a misspelt one stands for, or undefined. */
export function mended(word: string): string | undefined {
  // A word that others use is no slip of another, though as a noun it may name a thing nobody knows.
  if (word.length < leastSlip || vocabulary.has(word) || usedWords.has(word)) return undefined;
  placeWords ??= new Set([...places.keys()].flatMap(name => name.split(' ')));
  if (placeWords.has(word)) return undefined;
  near ??= new Near(
    [...vocabulary].filter(known => known.length >= leastSlip && !neverMeant.has(known)),
    leastTypo,
  );
  return near.find(word);
}
