import { chargeRow } from '#engine/battery/charge-table.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Chemistry } from '#rig/rig.ts';

/** So far round its float volts a charger may hold a battery, and so far off its absorption volts, V. Common practice. */
const slackV = { float: 0.31, below: 0.15, above: 0.1 } as const;

/**
 * Whether volts while it charges are as they should be, and which stage shows them; undefined where they are not.
 * @param blocks of 12 V in series
 */
export function stageSaid(volts: number, chemistry: Chemistry, blocks: number): string | undefined {
  const { absorptionV, floatV } = chargeRow(chemistry);
  const [, low, high] = absorptionV;
  const one = volts / blocks;
  const read = `${significant(volts, 4)} V`;
  const float = `${decimals(floatV * blocks, 1)} V`;
  if (one > high + slackV.above || one < floatV - 2 * slackV.float) return undefined;
  if (one >= low - slackV.below)
    return `All fine: ${read} is absorption, which fills it up; once full it falls to about ${float}.`;
  return Math.abs(one - floatV) <= slackV.float
    ? `All fine: ${read} is float, which keeps a full one full, or it is still on its way up.`
    : `All fine: ${read} is bulk, still on its way up to ${decimals(low * blocks, 1)} V or so.`;
}
