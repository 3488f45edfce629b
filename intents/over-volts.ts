import type { Reply } from '#answer/reply.ts';
import { decimals } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';

/** Above this, V of a 12 V battery on charge, it is too much for its kind. Makers' sheets that agree (common practice). */
const mostV: Readonly<Record<Chemistry, number>> = {
  lfp: 14.6,
  agm: 14.9,
  gel: 14.5,
  flooded: 15.2,
  'lead-acid': 15.2,
};
/** The same where nobody told the kind, V. */
const unknownV = 15;
/** Above this no battery is on such a system, V: a reading of something else. */
const beyondV = 16.5;

const named: Readonly<Record<Chemistry, string>> = {
  lfp: 'lithium',
  agm: 'AGM',
  gel: 'gel',
  flooded: 'a wet battery',
  'lead-acid': 'a lead battery',
};

/** What is said of a battery that is charged with too many volts; undefined: it isn't. */
export function overVolts({ volts, batteries = [], systemVoltageV = 12 }: Facts): Reply | undefined {
  const blocks = systemVoltageV > 18 ? 2 : 1;
  const kind = batteries.find(({ chemistry }) => chemistry)?.chemistry;
  const most = (kind ? mostV[kind] : unknownV) * blocks;
  if (volts === undefined || volts <= most || volts > beyondV * blocks) return undefined;
  const read = `Too high: ${decimals(volts, 2)} V`;
  return {
    headline: kind
      ? `${read} is more than the ${decimals(most, 1)} V that ${named[kind]} stands. Stop that charging.`
      : `${read} is more than most batteries stand. Stop that charging.`,
    lines: [
      'Set the charger or controller to the battery’s type, equalising and repair modes off; no such setting, don’t use it.',
      'Only with the engine on? Then its regulator is at fault: see an auto electrician.',
      'A battery that got hot, swollen or smelly is never charged again.',
    ],
    verdict: null,
    cautions: kind === 'lfp' ? ['bypass-bms'] : ['battery-gas'],
  };
}
