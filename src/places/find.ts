import { fold } from './fold.ts';
import { known, wordsFrom } from './known.ts';
import type { Place } from './places.ts';
import { startsTown, worldPlaces } from './world.ts';

/** No known name has more words. */
const mostWords = 4;

export interface Found {
  readonly place: Place;
  /** How many words the name takes. */
  readonly length: number;
}

/**
 * The longest name of a place that starts at word `at`, in constant time.
 * @param words lower-case words of a message
 * @param isWorldwide also looks among the towns of the world, which are loaded at the first such call (some ms).
 *   Only for words that must be a place ("camped near …"): small towns are called like everything else
 */
export function findPlace(words: readonly string[], at: number, isWorldwide = false): Found | undefined {
  // Few words start a name. What folds to nothing or to several words is looked up whatever it starts with.
  const first = fold(words[at] ?? '');
  const isOneWord = first !== '' && !first.includes(' ');
  const longest = isWorldwide || !isOneWord ? mostWords : (wordsFrom.get(first) ?? 0);
  const most = Math.min(longest, words.length - at);
  const names: string[] = [];
  for (let length = 1; length <= most; length++) names.push(fold(words.slice(at, at + length).join(' ')));
  for (let length = most; length > 0; length--) {
    const place = known.get(names[length - 1] as string)?.[0];
    if (place) return { place, length };
  }
  if (!isWorldwide || (isOneWord && !startsTown(first))) return undefined;
  for (let length = most; length > 0; length--) {
    const place = worldPlaces(names[length - 1] as string)[0];
    if (place) return { place, length };
  }
  return undefined;
}

/** All places of a name: those that campers name most first, then towns of the world by population. */
export function placesNamed(name: string): readonly Place[] {
  const key = fold(name);
  const first = known.get(key) ?? [];
  return [...first, ...worldPlaces(key).filter(town => !first.some(place => isNear(place, town)))];
}

/** The places that a name leaves open: one alone where it is a name that campers use, else all towns so called. */
export function placesOfOneName(name: string): readonly Place[] {
  const key = fold(name);
  return known.get(key)?.slice(0, 1) ?? worldPlaces(key);
}

/** The likeliest place of a name, or undefined. */
export function placeByName(name: string): Place | undefined {
  const key = fold(name);
  return known.get(key)?.[0] ?? worldPlaces(key)[0];
}

/** The same place told twice: within a degree. */
const isNear = (a: Place, b: Place): boolean =>
  Math.abs(a.latitudeDeg - b.latitudeDeg) < 1 && Math.abs(a.longitudeDeg - b.longitudeDeg) < 1;
