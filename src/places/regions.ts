import { countryNicknames, states, wordCodes } from './data/regions.ts';
import { fold } from './fold.ts';
import { known } from './known.ts';
import type { Place } from './places.ts';

/** A country, or a state of one. */
export interface Region {
  /** ISO 3166-1 alpha-2. */
  readonly country: string;
  /** ISO 3166-2 without the country: "TN". */
  readonly state?: string;
}

/** No name of a region has more words. */
const mostWords = 4;

let named: ReadonlyMap<string, readonly Region[]> | undefined;
const stateNames = new Map<string, string>();

/** Regions by every name and code, made at the first look-up. */
function regions(): ReadonlyMap<string, readonly Region[]> {
  if (named) return named;
  const found = new Map<string, Region[]>();
  const add = (name: string, region: Region) => {
    const key = fold(name);
    found.set(key, [...(found.get(key) ?? []), region]);
  };
  let country = '';
  for (const line of states.trim().split('\n'))
    if (line.startsWith('=')) country = line.slice(1);
    else
      for (const entry of line.split('/')) {
        const [state, name] = [entry.slice(0, entry.indexOf(' ')), entry.slice(entry.indexOf(' ') + 1)];
        add(name, { country, state });
        add(state, { country, state });
        stateNames.set(`${country}-${state}`, name);
      }
  const english = new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' });
  const letters = Array.from({ length: 26 }, (_, i) => String.fromCharCode(65 + i));
  for (const first of letters)
    for (const second of letters) {
      const code = first + second;
      const name = english.of(code);
      // A code of a former country stands for that of today.
      if (name !== undefined && new Intl.Locale(`und-${code}`).region === code) add(name, { country: code });
    }
  for (const [name, code] of Object.entries(countryNicknames)) add(name, { country: code });
  named = found;
  return found;
}

/** The name of a place's state, "Tennessee", where its country is told by states. */
export function stateName({ country, state }: Region): string | undefined {
  regions();
  return state === undefined ? undefined : stateNames.get(`${country}-${state}`);
}

/** Regions of a name or code; none where it is none. */
export const regionsNamed = (name: string): readonly Region[] => regions().get(fold(name)) ?? [];

export interface Hint {
  readonly regions: readonly Region[];
  /** How many words it takes, a comma before it counted. */
  readonly length: number;
}

/** Whether a word can be part of a name: no comma, and no number, which stands as nothing among words. */
export const isPart = (word: string | undefined): boolean =>
  word !== undefined && word !== '' && word !== ',';

/** The longest region that is named from word `at` on, after a comma or not: ", ontario", "tn". */
export function hintAt(words: readonly string[], at: number): Hint | undefined {
  const comma = words[at] === ',' ? 1 : 0;
  const from = at + comma;
  for (let length = Math.min(mostWords, words.length - from); length > 0; length--) {
    if (!words.slice(from, from + length).every(isPart)) continue;
    const name = words.slice(from, from + length).join(' ');
    if (!comma && wordCodes.has(name)) continue;
    const found = regionsNamed(name);
    if (found.length > 0) return { regions: found, length: length + comma };
  }
  return undefined;
}

/** A campers' place without a state of its own lies in a state whose middle is so near, degrees. */
const stateDeg = 6;

function isNearState(place: Place, region: Region): boolean {
  const middle = known.get(fold(stateName(region) ?? ''))?.find(({ country }) => country === region.country);
  return (
    middle !== undefined &&
    Math.abs(middle.latitudeDeg - place.latitudeDeg) < stateDeg &&
    Math.abs(middle.longitudeDeg - place.longitudeDeg) < stateDeg
  );
}

/** Whether a place lies in one of the regions. */
export const liesIn = (place: Place, within: readonly Region[]): boolean =>
  within.some(
    region =>
      region.country === place.country &&
      (region.state === undefined ||
        region.state === place.state ||
        (place.state === undefined && isNearState(place, region))),
  );
