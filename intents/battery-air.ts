import { present } from '#basics/present.ts';
import type { Assumption } from '#engine/assumption.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { batteryTemperature, type Stand } from '#engine/battery/temperature.ts';
import { knownAge } from '#engine/battery/usable.ts';
import type { Facts } from '#rig/rig.ts';
import { whereOf } from './sun.ts';

/** Words by which people say where a battery stands. */
const standWords: readonly (readonly [stand: Stand, phrases: readonly string[]])[] = [
  ['engine', ['engine bay', 'under the bonnet', 'under bonnet', 'under the hood', 'beside the engine']],
  ['outside', ['on the drawbar', 'on the a frame', 'battery outside', 'outside locker', 'under the chassis']],
  [
    'inside',
    ['in the cab', 'in the cabin', 'under the bed', 'under the seat', 'inside the van', 'battery inside'],
  ],
];

/** Where the battery stands, by the words of a message; undefined where they don't tell. */
export function whereItStands(words: readonly string[]): Stand | undefined {
  const text = ` ${words.join(' ')} `;
  return standWords.find(([, phrases]) => phrases.some(phrase => text.includes(` ${phrase} `)))?.[0];
}

/**
 * The battery's temperature as it has to be taken, where nobody told it: by place, month, height and where it stands.
 * @param at time of the message, for the month where none was said
 */
export function batteryAir(facts: Facts, at?: Date, words: readonly string[] = []): Assumption | undefined {
  if (facts.ambientC !== undefined) return undefined;
  const month = facts.month ?? (at && at.getUTCMonth() + 1);
  return batteryTemperature({ ...whereOf(facts), month }, whereItStands(words));
}

/**
 * What bears on how a battery takes charge, as far as it is known: its age, and its temperature where that or the place
 * was told.
 * @param at time of the message, for the month where none was said
 */
export function batteryOnCharge(facts: Facts, bank: Bank | undefined, at?: Date): Assumption[] {
  return [...(bank ? knownAge(bank) : []), ...knownTemperature(facts, at)];
}

/** The battery's temperature, as told or by a place that is known; nothing where neither is. */
export function knownTemperature(facts: Facts, at?: Date): Assumption[] {
  const told = facts.ambientC;
  const name = 'batteryTemperature';
  if (told !== undefined)
    return [{ name, value: told, low: told, high: told, unit: '°C', why: 'as you said' }];
  if (whereOf(facts).latitudeDeg === undefined && facts.altitudeM === undefined) return [];
  return [present(batteryAir(facts, at))];
}
