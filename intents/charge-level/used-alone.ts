import type { Reply } from '#answer/reply.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Stated } from '#rig/rig.ts';

const usualAh = 100;

/** Words for the amp hours that a counter shows as gone, on a battery whose size nobody told; undefined where none are. */
export function answerUsed({ chargeUsedAh, batteries }: Stated): Reply | undefined {
  const isSized = batteries?.some(({ capacityAh }) => capacityAh !== undefined);
  if (chargeUsedAh === undefined || chargeUsedAh <= 0 || isSized) return undefined;
  const used = `${significant(chargeUsedAh)} Ah`;
  return {
    headline: `${used} have gone out since it was last full: its label less ${used} is what it still holds.`,
    lines: [
      ...(chargeUsedAh < usualAh
        ? [
            `Of ${usualAh} Ah that leaves ${decimals(usualAh - chargeUsedAh, 0)} %: stop at 50 % on lead-acid, at 20 % on lithium.`,
          ]
        : []),
      'How big is it, and which kind?',
    ],
    verdict: null,
    next: ['100Ah AGM', '100Ah lithium'],
  };
}
