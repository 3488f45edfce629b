import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { findPlace, placeByName, placesNamed, placesOfOneName } from '#places/find.ts';
import { fold } from '#places/fold.ts';
import { known } from '#places/known.ts';
import { worldPlaces } from '#places/world.ts';
import { read } from '../house/source.ts';

const words = (text: string) => text.split(' ');

describe('a name in a message', () => {
  test.for<[message: string, at: number, name: string, country: string, length: number]>([
    ['dubbo in april', 0, 'Dubbo', 'AU', 1],
    ['off to the alice tomorrow', 2, 'Alice Springs', 'AU', 2],
    ['byron bay in march', 0, 'Byron Bay', 'AU', 2],
    ['byron in march', 0, 'Byron', 'AU', 1],
    ['up the kimberley', 1, 'Kimberley', 'AU', 2],
    ["on k'gari", 1, "K'gari", 'AU', 1],
    ['mt isa', 0, 'Mt Isa', 'AU', 2],
    ['brittany in may', 0, 'Brittany', 'FR', 1],
    ['bavaria', 0, 'Bavaria', 'DE', 1],
    ['tuscany', 0, 'Tuscany', 'IT', 1],
    ['the lake district in june', 0, 'Lake District', 'GB', 3],
    ['salt lake city in july', 0, 'Salt Lake City', 'US', 3],
    ['new mexico', 0, 'New Mexico', 'US', 2],
    ['new zealand', 0, 'New Zealand', 'NZ', 2],
    ['south island', 0, 'South Island', 'NZ', 2],
    ['kwazulu natal', 0, 'Kwazulu Natal', 'ZA', 2],
    ['etosha', 0, 'Etosha', 'NA', 1],
    ['são paulo', 0, 'Sao Paulo', 'BR', 2],
  ])('%s, word %d: %s', ([message, at, name, country, length]) => {
    expect(findPlace(words(message), at)).toMatchObject({ place: { name, country }, length });
  });

  test('takes the longest name', () => {
    expect(present(findPlace(words('york'), 0)).place.country).toBe('GB');
    expect(findPlace(words('new york'), 0)).toMatchObject({ place: { country: 'US' }, length: 2 });
    expect(findPlace(words('the nullarbor plain'), 1)).toMatchObject({ length: 2 });
  });

  test.for([
    'orange',
    'bath',
    'nice',
    'reading',
    'mobile',
    'hay',
    'young',
    'kent',
    'turkey',
    'alice',
    'act',
    'wa',
    'buffalo',
    'split',
    'phoenix',
  ])('%s is an everyday word too', name => {
    expect(present(findPlace([name], 0)).place.isWord).toBe(true);
  });

  test.for(['dubbo', 'birdsville', 'ireland', 'utah', 'melbourne', 'darwin', 'sydney', 'france'])(
    '%s is none',
    name => {
      expect(present(findPlace([name], 0)).place.isWord).toBeUndefined();
    },
  );

  test.for([
    'fridge',
    'solar',
    'lithium',
    'panel',
    'march',
    'may',
    'sun',
    'battery',
    'amp',
    'watt',
    'anderson',
    'winter',
  ])('%s is no place, also where all towns of the world are asked', name => {
    expect(findPlace([name], 0)).toBeUndefined();
    expect(findPlace([name], 0, true)).toBeUndefined();
  });

  test('at the end of a message or beyond it there is nothing', () => {
    expect(findPlace(['the'], 0)).toBeUndefined();
    expect(findPlace(['dubbo'], 1)).toBeUndefined();
    expect(findPlace([], 0, true)).toBeUndefined();
  });
});

describe('towns of the world', () => {
  test.for<[name: string, country: string, latitude: number, longitude: number]>([
    ['zwolle', 'NL', 52.5, 6.1],
    ['saint malo', 'FR', 48.6, -2.0],
    ['Ålesund', 'NO', 62.5, 6.2],
    ['nashua', 'US', 42.8, -71.5],
    ['gobabis', 'NA', -22.4, 19.0],
  ])('%s lies in %s', ([name, country, latitude, longitude]) => {
    expect(findPlace(words(fold(name)), 0)).toBeUndefined();
    const { place } = present(findPlace(words(fold(name)), 0, true));
    expect(place.country).toBe(country);
    expect(Math.abs(place.latitudeDeg - latitude)).toBeLessThan(0.3);
    expect(Math.abs(place.longitudeDeg - longitude)).toBeLessThan(0.3);
  });

  test('several of one name are all there, the largest first', () => {
    expect(placesNamed('Perth').map(p => p.country)).toEqual(expect.arrayContaining(['AU', 'GB']));
    expect(present(placeByName('perth')).country).toBe('AU');
    expect(placesOfOneName('perth')).toHaveLength(1);
    expect(placesOfOneName('springfield').length).toBeGreaterThan(2);
  });

  test('the table is sorted, so that halving finds every row', () => {
    const rows = read('src/places/data/world.txt').trimEnd().split('\n');
    const keys = rows.map(row => fold(present(row.split('|')[0])));
    expect(rows.length).toBeGreaterThan(40_000);
    expect(keys.every((key, i) => i === 0 || present(keys[i - 1]) <= key)).toBe(true);
    for (const i of [0, 1, 2, 777, 25_000, rows.length - 2, rows.length - 1])
      expect(worldPlaces(present(keys[i]))).toContainEqual(
        expect.objectContaining({ name: present(rows[i]).split('|')[0] }),
      );
    expect(worldPlaces('zzzzz')).toEqual([]);
    expect(worldPlaces('aaaa no such place')).toEqual([]);
    expect(worldPlaces('')).toEqual([]);
  });
});

describe('the table of campers’ places', () => {
  const all = [...known].flatMap(([key, places]) => places.map(place => [key, place] as const));
  test('has over two thousand names, of places that are on earth', () => {
    expect(known.size).toBeGreaterThan(2000);
    for (const [key, place] of all) {
      expect(key).toMatch(/^[a-z0-9][a-z0-9 ]*$/);
      expect(key.split(' ').length, key).toBeLessThanOrEqual(4);
      expect(Math.abs(place.latitudeDeg), key).toBeLessThanOrEqual(90);
      expect(Math.abs(place.longitudeDeg), key).toBeLessThanOrEqual(180);
      expect(place.country, key).toMatch(/^[A-Z]{2}$/);
    }
  });

  test('Australia and New Zealand lie where they lie', () => {
    for (const [key, { country, latitudeDeg, longitudeDeg }] of all) {
      if (country === 'AU')
        expect(
          latitudeDeg < -10 && latitudeDeg > -44 && longitudeDeg > 112 && longitudeDeg < 168.5,
          key,
        ).toBe(true);
      if (country === 'NZ')
        expect(latitudeDeg < -34 && latitudeDeg > -47.5 && longitudeDeg > 166, key).toBe(true);
    }
  });

  /** Regions and nicknames that share their name with a town elsewhere in the same country. */
  const namesakes = [
    ...[
      'blue ridge',
      'california',
      'darling downs',
      'delaware',
      'flinders',
      'fraser',
      'girraween',
      'indiana',
      'iowa',
    ],
    ...[
      'ivanhoe',
      'lamington',
      'louisiana',
      'mojave',
      'mount rainier',
      'mpumalanga',
      'nevada',
      'oregon',
      'roussillon',
    ],
    ...['shenandoah', 'sun valley', 'the rock', 'washington', 'wyoming', 'zion'],
  ];

  test('agrees with GeoNames within a degree and a half on all towns but namesakes', () => {
    let compared = 0;
    const far = all.filter(([key, place]) => {
      const same = worldPlaces(key).filter(town => town.country === place.country);
      compared += same.length > 0 ? 1 : 0;
      return (
        same.length > 0 &&
        !same.some(
          town =>
            Math.abs(town.latitudeDeg - place.latitudeDeg) < 1.5 &&
            Math.abs(town.longitudeDeg - place.longitudeDeg) < 1.5,
        )
      );
    });
    expect(compared).toBeGreaterThan(500);
    expect(far.map(([key]) => key).sort()).toEqual(namesakes);
  });
});

test.for([
  ['Saint-Malô', 'saint malo'],
  ["K'gari", 'kgari'],
  ['St. Ives', 'st ives'],
  ['Tromsø', 'tromso'],
  ['DUBBO', 'dubbo'],
])('%s is looked up as %s', ([name, key]) => {
  expect(fold(present(name))).toBe(key);
});
