import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { sunOf, whereAndWhen } from '#intents/sun.ts';
import { findPlace, namesakes, placeByName, placesNamed } from '#places/find.ts';
import { fold } from '#places/fold.ts';
import { hintAt, regionsNamed, stateName } from '#places/regions.ts';
import { read } from '../house/source.ts';

const words = (text: string) => text.replace(',', ' ,').split(' ');
const english = new Intl.DisplayNames(['en'], { type: 'region' });

describe('a state or country after a name', () => {
  test.for<[said: string, country: string, state: string | undefined, latitude: number, words: number]>([
    ['london ontario', 'CA', 'ON', 43.0, 2],
    ['london, ontario in june', 'CA', 'ON', 43.0, 3],
    ['london', 'GB', undefined, 51.5, 1],
    ['erwin tn', 'US', 'TN', 36.1, 2],
    ['erwin, north carolina', 'US', 'NC', 35.3, 4],
    ['perth scotland', 'GB', undefined, 56.4, 2],
    ['perth wa', 'AU', 'WA', -31.9, 2],
    ['ballarat victoria', 'AU', 'VIC', -37.6, 2],
    ['springfield, or', 'US', 'OR', 44.0, 3],
    ['portland oregon', 'US', 'OR', 45.5, 2],
    ['portland, maine', 'US', 'ME', 43.7, 3],
    ['paris, texas', 'US', 'TX', 33.7, 3],
    ['sun valley, nevada', 'US', 'NV', 39.6, 4],
  ])('%s', ([said, country, state, latitude, length]) => {
    const found = present(findPlace(words(said), 0, true));
    expect(found.place).toMatchObject({ country, latitudeDeg: latitude });
    expect(found.place.state).toBe(state);
    expect(found.length).toBe(length);
    // The words that were taken lead back to the place.
    expect(placeByName(words(said).slice(0, length).join(' '))).toEqual(
      length === 1 ? expect.objectContaining({ country }) : found.place,
    );
  });

  test('without a place of that name there the region is another word', () => {
    expect(present(findPlace(words('dubbo texas'), 0)).length).toBe(1);
    expect(placeByName('dubbo texas')).toBeUndefined();
    expect(present(findPlace(words('melbourne maine'), 0)).length).toBe(1);
  });

  test('codes that are words need a comma', () => {
    expect(hintAt(words('springfield or shepparton'), 1)).toBeUndefined();
    expect(hintAt(words('springfield, or'), 1)).toMatchObject({ length: 2 });
    expect(present(findPlace(words('london in june'), 0)).length).toBe(1);
  });

  test('a number ends a name', () => {
    expect(present(findPlace(['victoria', ',', 'british', 'columbia', ',', ''], 0)).length).toBe(4);
    expect(present(findPlace(['gunnedah', '', 'solar'], 0, true)).length).toBe(1);
  });

  test('regions by name and code', () => {
    expect(regionsNamed('wa')).toEqual([
      { country: 'US', state: 'WA' },
      { country: 'AU', state: 'WA' },
    ]);
    expect(regionsNamed('Deutschland')).toEqual([]);
    expect(regionsNamed('germany')).toEqual([{ country: 'DE' }]);
    expect(regionsNamed('uk')).toEqual([{ country: 'GB' }]);
    expect(stateName({ country: 'US', state: 'TN' })).toBe('Tennessee');
    expect(stateName({ country: 'FR' })).toBeUndefined();
  });

  test('the talk’s own place tells too: the nearest first', () => {
    expect(present(placesNamed('perth', { latitudeDeg: 55.9, longitudeDeg: -3.2 })[0]).country).toBe('GB');
    expect(present(placesNamed('perth', { latitudeDeg: -33.9, longitudeDeg: 151.2 })[0]).country).toBe('AU');
    expect(placesNamed('perth', 'scotland').map(p => p.country)).toEqual(['GB']);
    expect(placesNamed('perth', 'france')).toEqual([]);
  });
});

describe('names that stand in several countries', () => {
  const rows = read('src/places/data/world.txt')
    .trimEnd()
    .split('\n')
    .map(line => line.split('|') as [string, string]);
  const countries = new Map<string, Set<string>>();
  for (const [name, code] of rows) {
    const key = fold(name);
    countries.set(key, (countries.get(key) ?? new Set()).add(code.slice(0, 2)));
  }
  const shared = [...countries].filter(([, all]) => all.size > 1).map(([key]) => key);
  // Spread over the alphabet.
  const two = Array.from({ length: 200 }, (_, i) => present(shared[Math.floor((i * shared.length) / 200)]));

  test('there are many', () => {
    expect(shared.length).toBeGreaterThan(1000);
    expect(new Set(two).size).toBe(200);
  });

  test.for(two)('%s: the country that was taken is said, and each can be told', name => {
    expect(namesakes(name).inCountries).toBe(true);
    const place = present(placeByName(name));
    const at = new Date('2026-06-15');
    const said = whereAndWhen({ place: name }, sunOf({ place: name }, at));
    const taken = [present(english.of(place.country)), stateName(place)].filter(
      region => region !== undefined,
    );
    expect(
      taken.some(region => said.includes(`(${region})`)),
      said,
    ).toBe(true);
    for (const country of present(countries.get(name))) {
      const told = `${name}, ${present(english.of(country)).toLowerCase()}`;
      expect(placeByName(told)?.country, told).toBe(country);
      // The place itself may be called as a country is: what is held is the region in brackets.
      expect(whereAndWhen({ place: told }, sunOf({ place: told }, at))).not.toContain(
        `(${english.of(place.country === country ? 'ZZ' : place.country)})`,
      );
    }
  });
});
