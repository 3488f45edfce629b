import type { Stated } from '#rig/rig.ts';
import type { Frame } from '../memory.ts';

/** Whether a question was whether some volts on charge are right. */
export const isOfChargeVolts = ({ intent, facts, asked }: Frame): boolean =>
  asked === undefined &&
  (intent === 'fault' || intent === 'charge-level') &&
  facts.volts !== undefined &&
  facts.voltsTaken === 'charging';

/** Whether some facts tell of a battery what kind it is, and no volts. */
export function tellsKind({ batteries = [], systemVoltageV: _volts, ...rest }: Stated): boolean {
  const [one, other] = batteries;
  return one?.chemistry !== undefined && !other && Object.keys(rest).length === 0;
}
