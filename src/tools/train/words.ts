import { lex } from '#language/lex/lex.ts';
import type { Group } from './groups.ts';

/** A word too many at the end of a name: "fridge a" takes the article of "fridge a 12 V one" for its own. */
const tails = / (?:[a-z]|as|like|than)$/;
/** What stands before a name that is no part of it. */
const articles = /^(?:my|our|the|a|an|his|her|their|your) /;
const leastVocabulary = 3;
const leastNames = 2;
const leastHeads = 4;
/** Who claims something may be called so; as names they would stand everywhere. */
const pronouns: ReadonlySet<string> = new Set(
  'you your they them he him she her it we us everyone everybody both others another the other one somebody'.split(
    ' ',
  ),
);

/** What the labelled messages teach of words: those said in several meanings, names of things and of people in more than one. */
export function wordsOf(
  groups: readonly Group[],
  known: (name: string) => boolean,
): { vocabulary: string[]; things: string[]; people: string[]; nouns: string[] } {
  const words = new Map<string, number>();
  const things = new Map<string, number>();
  const people = new Map<string, number>();
  /** What names of things end in: "box" is nobody, whatever the box says. */
  const heads = new Map<string, number>();
  const add = (map: Map<string, number>, keys: Iterable<string>): void => {
    for (const key of keys) map.set(key, (map.get(key) ?? 0) + 1);
  };
  const nouns = new Set<string>();
  const fold = (name: unknown): string =>
    lex(String(name))
      .map(t => t.text)
      .join(' ');
  for (const group of groups) {
    add(
      words,
      new Set(
        group.wordings.flatMap(w =>
          lex(w)
            .filter(t => t.kind === 'word')
            .map(t => t.text),
        ),
      ),
    );
    const loads = (group.states.loads ?? []) as { name?: string }[];
    add(
      things,
      new Set(loads.flatMap(l => (l.name ? [fold(l.name).replace(articles, '').replace(/s$/, '')] : []))),
    );
    add(heads, new Set(loads.flatMap(l => (l.name ? [fold(l.name).split(' ').at(-1)!] : []))));
    for (const l of loads) if (l.name) for (const t of lex(l.name)) if (t.kind === 'word') nouns.add(t.text);
    if (group.states.place) for (const t of lex(String(group.states.place))) nouns.add(t.text);
    const claims = (group.states.claims ?? []) as { who?: string }[];
    add(
      people,
      new Set(claims.flatMap(c => (c.who && c.who !== 'i' ? [fold(c.who).replace(articles, '')] : []))),
    );
  }
  const kept = (map: Map<string, number>, least: number): string[] =>
    [...map]
      .filter(([, n]) => n >= least)
      .map(([w]) => w)
      .sort();
  const generic = new Set([
    'load',
    'stuff',
    'thing',
    'everything',
    'gear',
    'battery',
    'charger',
    'inverter',
    'it',
    'one',
    'other',
    'rest',
    'charging',
    'the load',
    // What draws, in a manner of speaking: where people are, and parts of things.
    ...'boat van camper caravan tent house car truck ute trailer yacht string organ mask handheld'.split(' '),
  ]);
  return {
    vocabulary: kept(words, leastVocabulary),
    things: kept(things, leastNames).filter(
      name => !known(name) && !generic.has(name) && name.length > 1 && !tails.test(name),
    ),
    nouns: [...nouns].sort(),
    people: kept(people, leastNames).filter(
      name => !known(name) && !pronouns.has(name) && name.length > 1 && (heads.get(name) ?? 0) < leastHeads,
    ),
  };
}
