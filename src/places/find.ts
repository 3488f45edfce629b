import { fold } from './fold.ts';
import { known, wordsFrom } from './known.ts';
import type { Place } from './places.ts';
import { hintAt, isPart, liesIn, type Region, regionsNamed } from './regions.ts';
import { namesakesOf, startsTown, worldPlaces } from './world.ts';

/** No known name has more words. */
const mostWords = 4;

export interface Found {
  readonly place: Place;
  /** How many words the name takes, a state or country after it counted. */
  readonly length: number;
  /** How many of them are its own. */
  readonly own: number;
}

/**
 * The longest name of a place that starts at word `at`, in constant time, and the state or country that follows it
 * where there is a place of that name: "london, ontario", "erwin tn".
 * @param words lower-case words of a message
 * @param isWorldwide also looks among the towns of the world, which are loaded at the first such call (some ms).
 *   Only for words that must be a place ("camped near …"): small towns are called like everything else
 */
export function findPlace(words: readonly string[], at: number, isWorldwide = false): Found | undefined {
  // Few words start a name. What folds to nothing or to several words is looked up whatever it starts with.
  const first = fold(words[at] ?? '');
  const isOneWord = first !== '' && !first.includes(' ');
  const longest = isWorldwide || !isOneWord ? mostWords : (wordsFrom.get(first) ?? 0);
  const names: string[] = [];
  const end = Math.min(words.length, at + longest);
  // A name ends with a comma, and before what is no word.
  for (let length = 1; at + length <= end && isPart(words[at + length - 1]); length++)
    names.push(fold(words.slice(at, at + length).join(' ')));
  for (let length = names.length; length > 0; length--) {
    const place = known.get(names[length - 1] as string)?.[0];
    if (place) return withRegion({ place, length, own: length }, names[length - 1] as string, words, at);
  }
  if (!isWorldwide || (isOneWord && !startsTown(first))) return undefined;
  for (let length = names.length; length > 0; length--) {
    const place = worldPlaces(names[length - 1] as string)[0];
    if (place) return withRegion({ place, length, own: length }, names[length - 1] as string, words, at);
  }
  return undefined;
}

/** The place of that name in the region named after it, where there is one. */
function withRegion(found: Found, name: string, words: readonly string[], at: number): Found {
  const hint = hintAt(words, at + found.length);
  const place = hint && placesNamed(name, hint.regions)[0];
  return place ? { place, length: found.length + hint.length, own: found.own } : found;
}

/** What tells places of one name apart: a region's name or code, regions, or a place that the talk is near. */
export type Where = string | readonly Region[] | Pick<Place, 'latitudeDeg' | 'longitudeDeg'>;

/**
 * All places of a name: those that campers name most first, then towns of the world by population. The name may end
 * with a state or country.
 * @param hint leaves only those of a region; near a place, puts the nearest first
 */
export function placesNamed(name: string, hint?: Where): readonly Place[] {
  const all = allNamed(name);
  if (hint === undefined) return all;
  if (typeof hint === 'string') return inRegions(all, regionsNamed(hint));
  if (!('latitudeDeg' in hint)) return inRegions(all, hint);
  return [...all].sort((a, b) => apart(a, hint) - apart(b, hint));
}

/** Those of some regions, the ones known to lie in a state before those that are only near it. */
function inRegions(places: readonly Place[], regions: readonly Region[]): readonly Place[] {
  const there = places.filter(place => liesIn(place, regions));
  const isSure = ({ country, state }: Place): boolean =>
    regions.some(region => region.country === country && region.state === state);
  return [...there.filter(isSure), ...there.filter(place => !isSure(place))];
}

function allNamed(name: string): readonly Place[] {
  const key = fold(name);
  const whole = ofKey(key);
  if (whole.length > 0) return whole;
  const words = name.toLowerCase().replaceAll(',', ' , ').split(' ').filter(Boolean);
  for (let length = Math.min(mostWords, words.length - 1); length > 0; length--) {
    const hint = hintAt(words, length);
    if (!hint || length + hint.length !== words.length) continue;
    const places = inRegions(ofKey(fold(words.slice(0, length).join(' '))), hint.regions);
    if (places.length > 0) return places;
  }
  return [];
}

/** Campers' places first, each with the state of its town; then the other towns. */
function ofKey(key: string): readonly Place[] {
  const towns = [...worldPlaces(key), ...namesakesOf(key)];
  const first = (known.get(key) ?? []).map(place => {
    const state = towns.find(town => town.country === place.country && isNear(place, town))?.state;
    return state === undefined ? place : { ...place, state };
  });
  return [...first, ...towns.filter(town => !first.some(place => isNear(place, town)))];
}

/** The places that a name leaves open: one alone where it is a name that campers use, else all towns so called. */
export function placesOfOneName(name: string): readonly Place[] {
  const all = allNamed(name);
  return known.has(fold(name)) ? all.slice(0, 1) : all;
}

/** The likeliest place of a name, which may end with a state or country; undefined where there is none. */
export const placeByName = (name: string): Place | undefined => allNamed(name)[0];

/**
 * Whether a name stands in other countries too, or in other states of the same one, than the likeliest place of it:
 * then an answer says which one was taken. Not where the name told it ("london, ontario").
 */
export function namesakes(name: string): { readonly inCountries: boolean; readonly inStates: boolean } {
  const [first, ...all] = allNamed(name);
  const others = all.filter(other => !other.isMinor);
  return {
    inCountries: others.some(other => other.country !== first?.country),
    inStates: others.some(other => other.country === first?.country && !isNear(other, first)),
  };
}

/** Within so many degrees of where the talk is, the nearest place of a name is meant. */
const aboutDeg = 1.5;

/**
 * The place of a name that a talk leads to: among several, the nearest close to where the talk is, else the first in
 * its country; undefined where that is the likeliest anyhow, or none lies there.
 * @param name without a state or country after it
 */
export function placeInTalk(name: string, talk: Place): Place | undefined {
  const key = fold(name);
  const all = ofKey(key);
  const there = all.filter(place => place.country === talk.country);
  const isLikeliest = all[0] === undefined || (there[0] === all[0] && known.has(key));
  if (all.length < 2 || there.length === 0 || isLikeliest) return undefined;
  const about = there.filter(place => apart(place, talk) < aboutDeg);
  const taken = about.sort((a, b) => apart(a, talk) - apart(b, talk))[0] ?? there[0];
  return taken === all[0] ? undefined : taken;
}

const apart = (a: Place, b: Pick<Place, 'latitudeDeg' | 'longitudeDeg'>): number => {
  const east = Math.abs(a.longitudeDeg - b.longitudeDeg);
  const width = Math.cos((a.latitudeDeg * Math.PI) / 180);
  return Math.hypot(a.latitudeDeg - b.latitudeDeg, Math.min(east, 360 - east) * width);
};

/** The same place told twice: within a degree. */
const isNear = (a: Place, b: Place): boolean =>
  Math.abs(a.latitudeDeg - b.latitudeDeg) < 1 && Math.abs(a.longitudeDeg - b.longitudeDeg) < 1;
