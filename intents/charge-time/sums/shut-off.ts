import type { Reply } from '#answer/reply.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { RequestContext } from '../../intent.ts';

/** Between these a 12 V lithium is shut off by its BMS, or its cells are spoilt, V. Cells of 2.5 V, as makers' sheets have it. */
const shut = { aboveV: 5, belowV: 10 } as const;

/** Whether a lithium may be charged that shows hardly any volts now; undefined: it doesn't. */
export function shutOffLithium(
  { batteries = [], volts }: Facts,
  { recalled }: RequestContext,
): Reply | undefined {
  const isLithium = batteries.some(({ chemistry }) => chemistry === 'lfp');
  if (!isLithium || volts === undefined || recalled.has('volts')) return undefined;
  if (volts <= shut.aboveV || volts >= shut.belowV) return undefined;
  return {
    headline: `At ${plain(volts)} V its BMS has shut it off: only gently, a few amps, with a lithium charger that wakes it.`,
    lines: [
      'Those volts may be only what leaks past. Still under 10 V after half an hour? Stop: its cells are spoilt.',
      'No boost of a lead charger. Swollen, hot or smelly: leave it off, outdoors, and have it tested.',
    ],
    verdict: 'tight',
    cautions: ['lithium-cold'],
    next: ['what is a BMS?'],
  };
}
