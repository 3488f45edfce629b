import { withoutMainsVolts } from './mains.ts';
import { type Rig, rigSchema, type Stated } from './rig.ts';

/** What of stated facts a rig keeps: gear, daily use, place. */
export const gearKeys = Object.keys(rigSchema.shape) as readonly (keyof Rig)[];

/** The part of the facts that a rig keeps. */
export function gearIn(told: Stated): Rig {
  const facts = withoutMainsVolts(told);
  return Object.fromEntries(
    gearKeys.flatMap(key => (facts[key] === undefined ? [] : [[key, facts[key]]])),
  ) as Rig;
}

/** Whether anything of a rig is there. */
export const hasGear = (gear: Rig): boolean => Object.keys(gear).length > 0;
