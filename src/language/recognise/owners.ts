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

/** Whose gear is spoken of: "me" for the speaker, "us" for the chat, a name known here or said with "'s rig". */
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
      // Apostrophes are folded away: "sam's" is "sams".
      const name = known.has(word)
        ? word
        : word.endsWith('s') &&
            (known.has(word.slice(0, -1)) || (given.has(word.slice(0, -1)) && gear.has(next)))
          ? word.slice(0, -1)
          : undefined;
      if (name && (word !== name || gear.has(next))) add(name);
    }
  });
  return { owner: owners[0], owners };
}
