import { hasHours, isWhole } from '#engine/loads/reading.ts';
import type { Facts, Load, Stated } from '#rig/rig.ts';
import { cools, factsOf } from './facts.ts';

/** Whether a thing runs through the day by itself. */
export const isCooler = ({ name }: Load): boolean => cools(name);

const isFree = (load: Load): boolean => !isCooler(load) && !hasHours(load) && !isWhole(load);

/** Loads without hours of their own are on for the hours told, but for what cools. */
const onFor = (load: Load, hours: number): Load => (isFree(load) ? { ...load, hoursPerDay: hours } : load);

/** What runs, each thing for the hours told. */
export const runFor = (facts: Facts, hours: number): Facts =>
  facts.loads ? { ...facts, loads: facts.loads.map(load => onFor(load, hours)) } : facts;

/** What was asked of a day, for questions that go on for days: the hours told are those of each day, and no span. */
export function asHabit(stated: Stated): Stated {
  const { durationH, ...rest } = stated;
  if (durationH === undefined || durationH >= 24 || !rest.loads) return stated;
  const isOn = factsOf(rest).loads?.map(isFree) ?? [];
  if (!isOn.includes(true)) return stated;
  return {
    ...rest,
    loads: rest.loads.map((load, at) => (isOn[at] ? { ...load, hoursPerDay: durationH } : load)),
  };
}
