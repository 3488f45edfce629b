import { type Appliance, appliances, type Named, untypical } from './appliances-table.ts';

export type { Appliance, Named } from './appliances-table.ts';

/** All things that use power, each with its names: for whoever looks for them in a text. */
export const things: readonly Named[] = [...appliances, ...untypical];

const byName = new Map<string, Appliance>();
for (const row of appliances) for (const name of [row.id, ...row.names]) byName.set(name, row);
const unlike = new Map<string, Named>();
for (const row of untypical) for (const name of [row.id, ...row.names]) unlike.set(name, row);

/**
 * The row for a load's name: by its own or another name of it, else by the longest name that stands in it, whole
 * words ("coffee machine 2", "our old fridge"); the later one where two are as long, as English names end in what
 * they are. Undefined where none is typical.
 */
export function applianceOf(name: string): Appliance | undefined {
  const exact = byName.get(name);
  if (exact || unlike.has(name)) return exact;
  const parts = name.split(/[ -]+/);
  for (let length = parts.length; length > 0; length--)
    for (let at = parts.length - length; at >= 0; at--) {
      const words = parts.slice(at, at + length).join(' ');
      // "Rice cookers" are told by the one.
      const row = byName.get(words) ?? byName.get(words.replace(/s$/, ''));
      if (row) return row;
    }
  return compound(parts.at(-1)!);
}

/** "headlight", "smartphone", "straighteners": a word that ends in a row's name, or is its plural. */
function compound(word: string): Appliance | undefined {
  const one = word.length > 4 ? word.replace(/s$/, '') : word;
  let best: string | undefined;
  for (const name of byName.keys())
    if (name.length > 3 && one.endsWith(name) && name.length > (best?.length ?? 0)) best = name;
  return best === undefined ? undefined : byName.get(best);
}

/** What a thing of a name commonly runs on; undefined where the catalogue doesn't know it. */
export const supplyOf = (name: string): Named['supply'] | undefined =>
  (unlike.get(name) ?? applianceOf(name))?.supply;

const isTypical = (row: Named): row is Appliance => 'hoursPerDay' in row;

/** Whether nobody ever switches it off: it runs day and night unless told otherwise; a thing that the catalogue doesn't know doesn't. */
export const isAlwaysOn = (row: Named | undefined): boolean =>
  row !== undefined && isTypical(row) && row.hoursPerDay[0] === 24;
