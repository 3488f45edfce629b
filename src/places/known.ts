import { americas } from './data/americas.ts';
import { australia } from './data/australia.ts';
import { europe } from './data/europe.ts';
import { islands } from './data/islands.ts';
import { mountains } from './data/mountains.ts';
import { rest } from './data/rest.ts';
import { fold } from './fold.ts';
import type { Place } from './places.ts';

/** A name that stands for another: "the alice", "nz". Shown under the first name of its row. */
const isNickname = (other: string): boolean => /^(~|the )|^.{1,3}$/.test(other);

const titled = (name: string): string =>
  name.replace(/(^|[ -])([a-z])/g, (_, gap: string, letter: string) => gap + letter.toUpperCase());

/** Reads a table of rows `name/~other name latitude longitude` under `=COUNTRY` lines. */
function readTable(table: string, add: (name: string, place: Place) => void): void {
  let country = '';
  for (const line of table.split('\n')) {
    if (line.startsWith('=')) country = line.slice(1);
    const end = line.lastIndexOf(' ');
    const middle = line.lastIndexOf(' ', end - 1);
    if (middle < 0) continue;
    const latitudeDeg = Number(line.slice(middle, end));
    const longitudeDeg = Number(line.slice(end));
    const names = line.slice(0, middle).split('/');
    const first = (names[0] as string).replace('~', '');
    names.forEach((other, i) => {
      const name = i === 0 || isNickname(other) ? first : titled(other);
      const place = { name, country, latitudeDeg, longitudeDeg };
      if (other.startsWith('~')) add(other.slice(1), { ...place, isWord: true });
      else add(other, place);
    });
  }
}

/** The places that campers name most, by every folded name; the first of a table wins, Australia first. */
export const known: ReadonlyMap<string, readonly Place[]> = (() => {
  const byName = new Map<string, Place[]>();
  const add = (name: string, place: Place) => {
    const key = fold(name);
    const others = byName.get(key);
    if (!others) byName.set(key, [place]);
    else if (!others.some(other => other.latitudeDeg === place.latitudeDeg)) others.push(place);
  };
  for (const table of [australia, islands, europe, americas, rest, mountains]) readTable(table, add);
  return byName;
})();

/** How many words the longest known name has that starts with a word. */
export const wordsFrom: ReadonlyMap<string, number> = (() => {
  const most = new Map<string, number>();
  for (const name of known.keys()) {
    const gap = name.indexOf(' ');
    const first = gap < 0 ? name : name.slice(0, gap);
    const count = gap < 0 ? 1 : name.split(' ').length;
    if (count > (most.get(first) ?? 0)) most.set(first, count);
  }
  return most;
})();
