import { listIn } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { type Bank, bankOf } from '#engine/battery/bank.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import type { Site } from '#engine/charging/generator.ts';
import { heightOf } from '#engine/solar/air.ts';
import type { SolarCase } from '#engine/solar/model.ts';
import { placesOfOneName } from '#places/find.ts';
import { monthNames } from '#quantity/month-names.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import type { RequestContext } from './intent.ts';
import { learnedAssumption } from './learned.ts';
import { namesakes, placeLately } from './place-named.ts';
import { regionName, regionTaken, unknownPlace, written } from './which-place.ts';

/** The facts that tell where and when, and so how warm it is, for `takes`. */
export const whereFacts = [
  'place',
  'latitudeDeg',
  'longitudeDeg',
  'altitudeM',
  'month',
] as const satisfies readonly (keyof Facts)[];

/** The facts that bear on the sun, for `takes`. */
export const sunFacts = [
  'solar',
  'mount',
  ...whereFacts,
  'sky',
  'shade',
  'peakSunHours',
  'ambientC',
  'batteries',
  'arrangement',
  'systemVoltageV',
] as const satisfies readonly (keyof Facts)[];

/** What the sun of every answer hangs on where its hours aren't told, for `alsoHangsOn`. */
export const whereSunHangsOn = ({ peakSunHours }: Stated): readonly string[] =>
  peakSunHours === undefined ? ['place', 'month'] : [];

/** Rating (W) of all panels together, where any was told. */
export function panelsW(facts: Facts): number | undefined {
  const told = facts.solar?.filter(panel => panel.powerW !== undefined) ?? [];
  return told.length === 0
    ? undefined
    : told.reduce((sum, { count, powerW }) => sum + count * present(powerW), 0);
}

/** Where the facts are: by coordinates where there are some, else the place by its name; and its height as told. */
export function whereOf(facts: Facts): Pick<SolarCase, 'latitudeDeg' | 'longitudeDeg' | 'heightM'> {
  const found =
    facts.latitudeDeg === undefined && facts.place !== undefined ? placeLately(facts.place) : undefined;
  return {
    latitudeDeg: facts.latitudeDeg ?? found?.latitudeDeg,
    longitudeDeg: facts.latitudeDeg === undefined ? found?.longitudeDeg : facts.longitudeDeg,
    heightM: facts.altitudeM,
  };
}

/** The height (m) and air (°C) that an engine runs in: as told, the height else by the place. */
export const siteOf = (facts: Facts): Site => ({
  altitudeM: heightOf(whereOf(facts)),
  ambientC: facts.ambientC,
});

/** How many 12 V the battery is made of, as far as it was told: 24 V is two. */
export function blocksOf({ batteries = [], arrangement, systemVoltageV }: Facts): number {
  const isHouse = (role?: string) => role !== 'starter';
  const house = batteries.filter(battery => isHouse(battery.role));
  const volts = systemVoltageV ?? bankOf(house, arrangement)?.voltageV ?? house[0]?.voltageV ?? 12;
  return Math.max(1, Math.round(volts / 12.4));
}

/** Nominal volts of the battery that panels charge: of its size where that is told, else of its kind and the system. */
export const nominalVOf = (facts: Facts, bank: Bank | undefined, { chemistry }: SolarCase): number =>
  bank?.voltageV ?? chemistryRow(chemistry ?? 'agm').nominalV * blocksOf(facts);

/** The sun of a question: where it is, and the month of the message where none was said. */
export function sunOf(facts: Facts, at: Date): SolarCase {
  return {
    ...whereOf(facts),
    month: facts.month ?? at.getUTCMonth() + 1,
    isMonthTold: facts.month !== undefined,
    mount: facts.mount,
    controller: facts.solar?.find(panel => panel.controller)?.controller,
    panels: facts.solar,
    blocks: blocksOf(facts),
    chemistry: facts.batteries?.find(battery => battery.role !== 'starter' && battery.chemistry)?.chemistry,
    sky: facts.sky,
    shade: facts.shade,
    peakSunHours: facts.peakSunHours,
    ambientC: facts.ambientC,
    learned: learnedAssumption('learnedSun', facts),
  };
}

/** " in Darwin in August", " in full cloud", or nothing. */
export function whereAndWhen(facts: Facts, sun: SolarCase, words: Speech = english): string {
  if (facts.peakSunHours !== undefined || sun.latitudeDeg === undefined) return '';
  const month = words.say(`month-${sun.month}`, present(monthNames[present(sun.month) - 1]));
  const place = facts.place === undefined ? undefined : written(facts.place);
  if (place === undefined && facts.longitudeDeg === undefined) {
    const latitude = words.decimals(Math.abs(sun.latitudeDeg), 1);
    const side = sun.latitudeDeg < 0 ? 'S' : 'N';
    return ` ${words.say('at-latitude-in-month', 'at {latitude}° {side} in {month}', { latitude, side, month })}`;
  }
  if (place === undefined) return ` ${words.say('there-in-month', 'there in {month}', { month })}`;
  const region = facts.latitudeDeg === undefined ? regionTaken(present(facts.place), words) : undefined;
  return region === undefined
    ? ` ${words.say('in-place-in-month', 'in {place} in {month}', { place, month })}`
    : ` ${words.say('in-place-of-region', 'in {place} ({region}) in {month}', { place, region, month })}`;
}

const skies = { sunny: 'clear sky', mixed: 'average weather', overcast: 'full cloud all day' } as const;

/** What the sun was worked out with: "That's with panels lying flat and average weather: about 6 hours' worth of full sun a day." */
export function describeSun(
  facts: Facts,
  sun: SolarCase,
  peakSunHours: number,
  words: Speech = english,
): string {
  const { say } = words;
  const isTold = facts.peakSunHours !== undefined;
  const isPlain = isTold && sun.sky !== 'overcast';
  const hours = words.plain(peakSunHours);
  const sky = sun.sky ?? 'mixed';
  const parts = [
    isTold
      ? ''
      : sun.mount === 'tilted'
        ? say('panels-tilted', 'panels angled at the sun')
        : say('panels-flat', 'panels lying flat'),
    sun.controller === 'pwm'
      ? say('controller-pwm', 'a PWM controller')
      : say('controller-mppt', 'an MPPT controller'),
    isPlain ? '' : say(`sky-${sky}`, skies[sky]),
  ];
  const all = listIn(parts.filter(Boolean), words);
  return isPlain
    ? say('with-sun', 'That’s with {all} and {hours} hours’ worth of full sun a day.', { all, hours })
    : say('reckoned-with', 'That’s with {all}: about {hours} hours’ worth of full sun a day.', {
        all,
        hours,
      });
}

/** What the line of `describeSun` says of what was taken for granted: the sky, and the controller. */
export const saidOfSun: readonly string[] = ['clearness', 'overcastClearness', 'controllerEfficiency'];

/** What would make the figure better: a place, or which of several places of a name was taken. */
export function sunHint(facts: Facts, sun: SolarCase, words: Speech = english): string | undefined {
  const { place } = facts;
  if (facts.peakSunHours !== undefined) return undefined;
  if (place !== undefined && sun.latitudeDeg === undefined) return unknownPlace(place, words);
  if (sun.latitudeDeg === undefined && sun.isMonthTold) {
    const text = 'Without a place that is a wide guess: {month} is summer or winter. Where are you?';
    const month = words.say(`month-${sun.month}`, present(monthNames[present(sun.month) - 1]));
    return words.say('month-without-place', text, { month });
  }
  if (sun.latitudeDeg === undefined)
    return words.say('tell-the-place', 'Tell me the place and month for a closer figure.');
  const [first, second] = place === undefined ? [] : placesOfOneName(place);
  if (!first || !second) return undefined;
  const region = regionName(first, namesakes(place as string).inStates, words);
  const gaps = { place: first.name, region };
  return words.say(
    'took-place',
    'I took {place} in {region}; there are others: add the state or country.',
    gaps,
  );
}

/** Facts that memory filled in read "your 200 W". */
export const whosePanels = (setting: Pick<RequestContext, 'recalled' | 'owner'>): string =>
  setting.recalled.has('solar') ? (setting.owner ? `${setting.owner}'s ` : 'your ') : '';
