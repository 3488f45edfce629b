import type { Stated } from './rig.ts';

/** No camper's battery bank has so many volts: from here on they are those of mains, V. Common practice. */
const mainsFromV = 90;

/** The mains volts told as the system's ("12 amps at 120V"), V: of what runs on mains, whatever the battery has. */
export const mainsVoltsIn = ({ systemVoltageV }: Stated): number | undefined =>
  (systemVoltageV ?? 0) >= mainsFromV ? systemVoltageV : undefined;

/** Facts in which mains volts are not taken for the battery's. */
export function withoutMainsVolts<F extends Stated>(facts: F): F {
  if (mainsVoltsIn(facts) === undefined) return facts;
  const { systemVoltageV: _mains, ...rest } = facts;
  return rest as F;
}
