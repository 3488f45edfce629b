import { applianceOf } from '#catalog/appliances.ts';
import type { Facts, Load } from '#rig/rig.ts';

/** Whether a draw was told and no time: what a thing takes all day is not what it is used for. */
const lacksHours = (load: Load): boolean =>
  (load.currentA ?? load.powerW) !== undefined &&
  load.isAverage !== true &&
  (load.hoursPerDay ?? load.minutesPerDay ?? load.hoursOnce) === undefined;

/** The hours a day that a thing is usually on; undefined where it is always on, or its kind isn't known. */
function usualHours({ name }: Load): number | undefined {
  const row = applianceOf(name);
  if (!row || row.setPointC !== undefined) return undefined;
  const [, hours] = row.hoursPerDay;
  return hours < 24 ? hours : undefined;
}

/** The facts with usual hours for what was told with a draw alone, and the names of those things. */
export function withUsualHours(facts: Facts): { readonly facts: Facts; readonly timed: readonly string[] } {
  const timed: string[] = [];
  const loads = facts.loads?.map(load => {
    const hoursPerDay = lacksHours(load) ? usualHours(load) : undefined;
    if (hoursPerDay === undefined) return load;
    timed.push(load.name);
    return { ...load, hoursPerDay };
  });
  return { facts: loads ? { ...facts, loads } : facts, timed };
}
