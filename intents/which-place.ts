import { english, type Speech } from '#answer/speech.ts';
import { placeInTalk } from '#places/find.ts';
import { nearestTown } from '#places/near.ts';
import type { Place } from '#places/places.ts';
import { stateName } from '#places/regions.ts';
import type { Stated } from '#rig/rig.ts';
import type { RequestContext } from './intent.ts';
import { namesakes, placeLately } from './place-named.ts';

// Which of several places of a name an answer is for: taken by the talk, else the likeliest, and never in silence.

/** A place as a name is written: what people type small gets its capitals. */
export const written = (place: string): string =>
  place === place.toLowerCase()
    ? place
        .split(' ')
        .map(word => (smallWords.has(word) ? word : word.charAt(0).toUpperCase() + word.slice(1)))
        .join(' ')
    : place;
const smallWords: ReadonlySet<string> = new Set([
  'the',
  'of',
  'and',
  'de',
  'del',
  'la',
  'du',
  'in',
  'on',
  'upon',
]);

/** Where a talk is, as far as its facts tell. */
function spotOf({ place, latitudeDeg, longitudeDeg }: Where): Place | undefined {
  if (latitudeDeg === undefined || longitudeDeg === undefined)
    return place === undefined ? undefined : placeLately(place);
  return nearestTown(latitudeDeg, longitudeDeg)?.place;
}

type Where = Pick<Stated, 'place' | 'latitudeDeg' | 'longitudeDeg'>;

/** Facts with their place told apart. */
export const toldApart = (told: Stated, talk: readonly (Where | undefined)[]): Stated =>
  told.place === undefined ? told : { ...told, place: placeToldApart(told.place, talk) };

/**
 * A place told with the state or country that the talk leads to, where its name stands for several: "lincoln" after
 * "springfield, illinois" → "lincoln, illinois". Else as told.
 * @param talk where the talk and the rigs of the chat are, what was said last first
 */
function placeToldApart(place: string, talk: readonly (Where | undefined)[]): string {
  const { inCountries, inStates } = namesakes(place);
  if (!inCountries && !inStates) return place;
  const spot = talk.map(one => one && spotOf(one)).find(one => one !== undefined);
  const taken = spot && placeInTalk(place, spot);
  if (!taken) return place;
  const told = [stateName(taken), countryName(taken.country, english.language)]
    .filter(region => region !== undefined)
    .map(region => `${place}, ${place === place.toLowerCase() ? region.toLowerCase() : region}`);
  const isTaken = (name: string): boolean => {
    const found = placeLately(name);
    return found?.latitudeDeg === taken.latitudeDeg && found.longitudeDeg === taken.longitudeDeg;
  };
  return told.find(isTaken) ?? place;
}

/**
 * For an answer that hangs on a place: which of several was taken, or that it isn't known; nothing where the answer
 * says so by itself. Said once, when the place is told.
 * @param said the answer
 */
export function placeNote(
  { place, latitudeDeg }: Pick<Stated, 'place' | 'latitudeDeg'>,
  { recalled }: Pick<RequestContext, 'recalled'>,
  said: string,
  words: Speech = english,
): string | undefined {
  if (place === undefined || latitudeDeg !== undefined || recalled.has('place')) return undefined;
  const unknown = placeLately(place) ? undefined : unknownPlace(place, words);
  if (unknown !== undefined) return said.includes(unknown) ? undefined : unknown;
  const region = regionTaken(place, words);
  if (region === undefined || said.includes(region)) return undefined;
  return words.say('reckoned-for', 'Based on {place} ({region}).', { place: written(place), region });
}

/** That a place isn't known. */
export const unknownPlace = (place: string, words: Speech): string =>
  words.say('unknown-place', "I don't know where {place} is; a bigger town nearby would help.", {
    place: written(place),
  });

/** The state or country of a place by name, where the name stands in others too and doesn't tell: never the wrong one in silence. */
export function regionTaken(name: string, words: Speech): string | undefined {
  const { inCountries, inStates } = namesakes(name);
  const place = placeLately(name);
  return place && (inCountries || inStates) ? regionName(place, inStates, words) : undefined;
}

/** The state of a place where states tell places of its name apart, else its country. */
export const regionName = (place: Place, isByState: boolean, words: Speech): string =>
  (isByState ? stateName(place) : undefined) ?? countryName(place.country, words.language);

const countryNames = new Map<string, Intl.DisplayNames>();

function countryName(code: string, language: string): string {
  const names = countryNames.get(language) ?? new Intl.DisplayNames([language], { type: 'region' });
  countryNames.set(language, names);
  return names.of(code) ?? code;
}
