import { givenNames } from '../words/en/names.ts';

const given: ReadonlySet<string> = new Set(givenNames);
const gear: ReadonlySet<string> = new Set([
  'rig',
  'setup',
  'set',
  'battery',
  'batteries',
  'fridge',
  'system',
  'solar',
  'panel',
  'panels',
  'van',
  'bank',
  'inverter',
  'gear',
  'kit',
  'lithium',
  'agm',
  'camper',
  'boat',
  'trailer',
  'caravan',
  'ute',
  'truck',
  'bus',
  'motorhome',
]);
const own: ReadonlySet<string> = new Set(['my', 'mine', 'mines']);
const shared: ReadonlySet<string> = new Set(['our', 'ours']);

/** What leads to whose it is: "the one from Sam", "the rig of Sam". */
const leading: ReadonlySet<string> = new Set(['from', 'of']);
/** What somebody is said to do with gear: "what's Sam got". */
const having: ReadonlySet<string> = new Set([
  'got',
  'has',
  'have',
  'had',
  'own',
  'owns',
  'bringing',
  'brings',
  'running',
  'runs',
]);
/** Said later in the message, these are of the person named before: "how would Jo get on with hers". */
const belonging: ReadonlySet<string> = new Set(['hers', 'his', 'theirs']);

/** A known name that a word is, or is a form of: apostrophes are folded away, "sam's" is "sams". */
export function knownName(word: string, known: Pick<ReadonlySet<string>, 'has'>): string | undefined {
  if (known.has(word)) return word;
  if (word.endsWith('s') && known.has(word.slice(0, -1))) return word.slice(0, -1);
  return word.endsWith('es') && known.has(word.slice(0, -2)) ? word.slice(0, -2) : undefined;
}

/**
 * Whose gear is spoken of: "me" for the speaker, "us" for the chat, a name known here or said with "'s rig". Of several
 * a name goes first: "Jude's van, not mine".
 */
export function ownersIn(
  words: readonly string[],
  people: readonly string[],
): { readonly owner?: string; readonly owners: readonly string[] } {
  const known = new Set(people.map(name => name.toLowerCase()));
  const owners: string[] = [];
  const add = (name: string): void => {
    if (!owners.includes(name)) owners.push(name);
  };
  words.forEach((word, i) => {
    const next = words[i + 1] ?? '';
    if (word === 'mine' || word === 'mines') add('me');
    else if (own.has(word) && (next === 'rig' || next === 'setup' || next === 'gear' || next === 'system'))
      add('me');
    else if (word === 'ours') add('us');
    else if (shared.has(word) && (next === 'rig' || next === 'setup' || next === 'gear' || next === 'system'))
      add('us');
    else {
      const stem = word.endsWith('s') ? word.slice(0, -1) : '';
      const name = knownName(word, known) ?? (given.has(stem) && gear.has(next) ? stem : undefined);
      const isLed = leading.has(words[i - 1] ?? '');
      // Looked up of a name alone, which few words are.
      const isOwning = (): boolean =>
        having.has(next) ||
        (next === 'is' && having.has(words[i + 2] ?? '')) ||
        words.some((later, k) => k > i && belonging.has(later));
      if (name && (word !== name || gear.has(next) || isLed || isOwning())) add(name);
    }
  });
  const named = owners.find(owner => owner !== 'me' && owner !== 'us');
  return { owner: named ?? owners[0], owners };
}
