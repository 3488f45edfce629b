import { readFileSync } from 'node:fs';
import { fold } from './fold.ts';
import type { Place } from './places.ts';

/** The table as one text, loaded at the first look-up: a part of the program, as its modules are. */
let table: string | undefined;

/** "US-TN" as country and state. */
export const regionOf = (code: string): Pick<Place, 'country' | 'state'> =>
  code.length > 2 ? { country: code.slice(0, 2), state: code.slice(3) } : { country: code };

/** All towns, a line each: name, country or country and state, latitude, longitude. */
export const worldTable = (): string => {
  table ??= readFileSync(new URL('./data/world.txt', import.meta.url), 'utf8');
  return table;
};

const lineAt = (text: string, position: number): { readonly from: number; readonly to: number } => {
  const from = text.lastIndexOf('\n', position - 1) + 1;
  const end = text.indexOf('\n', from);
  return { from, to: end < 0 ? text.length : end };
};

const keyOf = (line: string): string => fold(line.slice(0, line.indexOf('|')));

/**
 * Towns of the world called so, the largest first. Halves its way through the sorted table, so nothing is built
 * at loading.
 * @param key a folded name
 */
export function worldPlaces(key: string): readonly Place[] {
  if (key === '') return [];
  const text = worldTable();
  let [low, high] = [0, text.length];
  while (low < high) {
    const { from, to } = lineAt(text, (low + high) >> 1);
    if (keyOf(text.slice(from, to)) < key) low = to + 1;
    else high = from;
  }
  const places: Place[] = [];
  for (let { from, to } = lineAt(text, low); from < text.length; { from, to } = lineAt(text, to + 1)) {
    const line = text.slice(from, to);
    if (keyOf(line) !== key) break;
    const [name, country, latitude, longitude] = line.split('|') as [string, string, string, string];
    places.push({
      name,
      ...regionOf(country),
      latitudeDeg: Number(latitude),
      longitudeDeg: Number(longitude),
    });
  }
  return places;
}
