import { describe, expect, test } from 'vitest';
import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { namesakes, placeByName, placesNamed } from '#places/find.ts';
import { fold } from '#places/fold.ts';
import type { Place } from '#places/places.ts';
import { stateName } from '#places/regions.ts';
import { read } from '../house/source.ts';
import { randomFrom } from '../ranges/random.ts';
import { talk } from './talk.ts';

/**
 * 200 names of towns that stand in several countries or states, drawn by a seed: whatever tells them apart, and where
 * nothing does, no answer is for one of them without saying which.
 */

const english = new Intl.DisplayNames(['en'], { type: 'region' });
const regionsOf = (place: Place): string[] =>
  [stateName(place), english.of(place.country)].filter(name => name !== undefined);

/** Names of several towns, as they are written. */
function sharedNames(): string[] {
  const lines = [
    ...read('src/places/data/world.txt').split('\n'),
    ...present(read('src/places/data/namesakes.ts').split('`')[1]).replaceAll('~', '').split('\n'),
  ];
  const byKey = new Map<string, { readonly name: string; readonly regions: Set<string> }>();
  for (const line of lines.filter(Boolean)) {
    const [name, region] = line.split('|') as [string, string];
    const one = byKey.get(fold(name)) ?? { name, regions: new Set() };
    one.regions.add(region);
    byKey.set(fold(name), one);
  }
  return [...byKey.values()].filter(({ regions }) => regions.size > 1).map(({ name }) => name);
}

const shared = sharedNames();
const random = randomFrom(200);
const drawn = new Set<string>();
while (drawn.size < 200) drawn.add(present(shared[Math.floor(random.even(0, shared.length))]));
const names = [...drawn].filter(name => {
  const { inCountries, inStates } = namesakes(name);
  return inCountries || inStates;
});

const sun = (place: string) => `200 W of solar in ${place} in June, how much a day?` as const;
const ask = (text: string): Answer => talk([`ann: ${text}`]).last;
const isForNoPlace = /Tell me the place|wide guess|don't know where/;
const placeIn = (answer: Answer): string | undefined => answer.understood.place;

/** The place that an answer was reckoned for, by the words in which it names it. */
function nameOfSpot(text: string): string | undefined {
  return / in ([^\n]+?) in June\./.exec(text)?.[1];
}

test('there are thousands of such names; but for a few far smaller ones all of those drawn are told apart', () => {
  expect(shared.length).toBeGreaterThan(2000);
  expect(names.length).toBeGreaterThan(190);
});

describe('nothing tells which: the answer says which was taken', () => {
  test.for(names)('%s', name => {
    const answer = ask(sun(name));
    const taken = placeByName(placeIn(answer) ?? '');
    if (taken === undefined) {
      // Not read as a place that is known: then the answer is for none.
      expect(answer.text).toMatch(isForNoPlace);
      return;
    }
    expect(
      regionsOf(taken).some(region => nameOfSpot(answer.text)?.includes(region)),
      answer.text,
    ).toBe(true);
    // Where the place is in no figure's words, a line says it.
    const run = ask(`100 Ah AGM, 45 W fridge in ${name} in June, how long?`);
    if (placeIn(run) !== undefined)
      expect(
        regionsOf(taken).some(region => run.text.includes(region)),
        run.text,
      ).toBe(true);
  });
});

describe('its state or country after it: that one', () => {
  test.for(names)('%s', name => {
    for (const place of placesNamed(name)) {
      const told = `${name}, ${present(regionsOf(place)[0])}`;
      const answer = ask(sun(told));
      if (placeIn(answer) === undefined) continue;
      const taken = present(placeByName(present(placeIn(answer))), told);
      expect(taken.country, `${told}: ${answer.text}`).toBe(place.country);
      // A name that is also a person's or a thing's may go unread: then it is the state that was told.
      const isRegion = regionsOf(place).includes(taken.name);
      if (!isRegion) expect(taken.state, told).toBe(place.state);
    }
  });
});

/** A town of each country by which a talk may be there. */
const townIn = (place: Place): Partial<Record<string, string>> => ({
  [place.country]: { US: 'Denver', CA: 'Calgary', AU: 'Dubbo', GB: 'Leeds', NZ: 'Rotorua', ZA: 'Pretoria' }[
    place.country
  ],
});

describe('the talk or the chat’s rig is in a country: the one there, named', () => {
  test.for(names)('%s', name => {
    for (const place of placesNamed(name)) {
      const town = townIn(place)[place.country];
      if (town === undefined) continue;
      const first = emptyMemory();
      const chat = { ...first, rigs: { '': { place: town.toLowerCase() } } };
      const ways = [
        talk([`ann: ${sun(town)}`, `ann: ${sun(name)}`]).last,
        talk([`ann: ${sun(name)}`], { memory: chat }).last,
      ];
      for (const answer of ways) {
        const spot = nameOfSpot(answer.text);
        if (spot === undefined) {
          expect(answer.text).toMatch(isForNoPlace);
          continue;
        }
        const inCountry = placesNamed(name).filter(one => one.country === place.country);
        expect(
          inCountry.flatMap(regionsOf).some(region => spot.includes(region)),
          answer.text,
        ).toBe(true);
      }
    }
  });
});
