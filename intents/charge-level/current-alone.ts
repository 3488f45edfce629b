import type { Reply } from '#answer/reply.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Stated } from '#rig/rig.ts';

/** Less than this is nothing, A. */
const leastA = 0.05;

/** Words for a current read off a monitor by itself, which tells what goes in or out and not how full it is. */
export function answerCurrent({ netCurrentA, batteries }: Stated): Reply | undefined {
  if (netCurrentA === undefined || Math.abs(netCurrentA) < leastA) return undefined;
  const amps = `${significant(Math.abs(netCurrentA), 2)} A`;
  const capacityAh = batteries?.[0]?.capacityAh;
  const hourly =
    capacityAh === undefined
      ? ''
      : `, about ${decimals((100 * Math.abs(netCurrentA)) / capacityAh, 0)} % of its ${significant(capacityAh)} Ah`;
  return {
    headline:
      netCurrentA > 0
        ? `${amps} is going in: what charges it gives that much more than all that runs takes.`
        : `${amps} is going out: what runs takes that much more than comes in.`,
    lines: [
      `That is ${significant(Math.abs(netCurrentA), 2)} Ah an hour${hourly}.`,
      netCurrentA > 0
        ? 'It drops by itself as the battery fills. How full it is takes its volts at rest, or its percent.'
        : 'How full it is takes its volts at rest, or its percent.',
    ],
    verdict: null,
    next: ['12.5V agm at rest, how full?'],
  };
}
