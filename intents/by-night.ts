import { applianceOf } from '#catalog/appliances.ts';
import { hasHours } from '#engine/loads/reading.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { spotted } from './spotting.ts';

/** A night, for which a thing is told to run "all night": from dusk to the morning, h. Common practice. */
export const nightLongH = 10;

const throughTheNight: readonly string[] = [
  'all_night',
  'overnight',
  'over_night',
  'through_the_night',
  'the_night',
];

/** Whether the words speak of a night as the time that something runs. */
export const isAllNight = (words: readonly string[]): boolean =>
  spotted(words, throughTheNight, one => [one]) !== undefined;

/** A thing told by its draw alone is on all the time, but for "all night" it is on for a night; what cools stays on. */
const isNightly = (load: Load, isAlone: boolean): boolean =>
  (load.currentA !== undefined || (isAlone && load.powerW !== undefined)) &&
  load.dutyPercent === undefined &&
  !hasHours(load) &&
  applianceOf(load.name)?.setPointC === undefined;

/** The facts with the hours of a night for what is told to run all night. */
export function byNight<F extends Facts>(facts: F, words: readonly string[]): F {
  const { loads = [] } = facts;
  const isOn = (load: Load): boolean => isNightly(load, loads.length === 1);
  if (!isAllNight(words) || !loads.some(isOn)) return facts;
  return {
    ...facts,
    loads: loads.map(load => (isOn(load) ? { ...load, hoursPerDay: nightLongH } : load)),
  };
}
