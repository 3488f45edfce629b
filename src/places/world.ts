import { readFileSync } from 'node:fs';
import { namesakes } from './data/namesakes.ts';
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

interface Line {
  readonly from: number;
  readonly to: number;
  readonly key: string;
}

/** Lines that many searches meet: those at which stretches of the table longer than this are halved. */
const longStretch = 1024;
const met = new Map<number, Line>();

function middleLine(text: string, low: number, high: number): Line {
  const middle = (low + high) >> 1;
  const known = met.get(middle);
  if (known) return known;
  const { from, to } = lineAt(text, middle);
  const line = { from, to, key: keyOf(text.slice(from, to)) };
  if (high - low > longStretch) met.set(middle, line);
  return line;
}

/** Where the first line starts whose key is not less. */
function positionOf(text: string, key: string): number {
  let [low, high] = [0, text.length];
  while (low < high) {
    const line = middleLine(text, low, high);
    if (line.key < key) low = line.to + 1;
    else high = line.from;
  }
  return low;
}

/** Whether some town's folded name starts so. */
export function startsTown(start: string): boolean {
  const text = worldTable();
  const { from, to } = lineAt(text, positionOf(text, start));
  return from < text.length && keyOf(text.slice(from, to)).startsWith(start);
}

const keyOf = (line: string): string => fold(line.slice(0, line.indexOf('|')));

/**
 * Towns of the world called so, the largest first. Halves its way through the sorted table, so nothing is built
 * at loading.
 * @param key a folded name
 */
export function worldPlaces(key: string): readonly Place[] {
  if (key === '') return [];
  const text = worldTable();
  const places: Place[] = [];
  for (
    let { from, to } = lineAt(text, positionOf(text, key));
    from < text.length;
    { from, to } = lineAt(text, to + 1)
  ) {
    const line = text.slice(from, to);
    if (keyOf(line) !== key) break;
    places.push(placeOf(line));
  }
  return places;
}

function placeOf(line: string): Place {
  const [name, country, latitude, longitude] = line.split('|') as [string, string, string, string];
  return { name, ...regionOf(country), latitudeDeg: Number(latitude), longitudeDeg: Number(longitude) };
}

let shared: Map<string, Place[]> | undefined;

/** Towns of a folded name that campers use for another place, and that the table lacks; the largest first. */
export function namesakesOf(key: string): readonly Place[] {
  if (!shared) {
    shared = new Map();
    for (const line of namesakes.trim().split('\n')) {
      const isMinor = line.startsWith('~');
      const place = placeOf(isMinor ? line.slice(1) : line);
      const name = fold(place.name);
      shared.set(name, [...(shared.get(name) ?? []), isMinor ? { ...place, isMinor } : place]);
    }
  }
  return shared.get(key) ?? [];
}
