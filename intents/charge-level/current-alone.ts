import type { Reply } from '#answer/reply.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';

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

/** Words that ask for the level, whatever else a screen shows. */
const asksLevel = ['how_full|full|how_flat|flat|percent|state_of_charge|soc|left|level|enough|ok|okay|good'];

/** A level by its volts with the current that was read beside them: first, where it is not the level that is asked for. */
export function withFlow(reply: Reply, facts: Facts, { parsed }: RequestContext): Reply {
  // As it is told now: one of before is no part of these volts.
  const netCurrentA = parsed.facts.netCurrentA === undefined ? undefined : facts.netCurrentA;
  const flow =
    netCurrentA !== undefined && netCurrentA < 0 ? answerCurrent({ ...facts, netCurrentA }) : undefined;
  if (!flow) return reply;
  const lines = reply.lines ?? [];
  return isSpotted(parsed.recognised.words, asksLevel) || reply.verdict
    ? { ...reply, lines: [...lines.slice(0, 1), flow.headline, ...lines.slice(1)] }
    : { ...reply, headline: flow.headline, lines: [reply.headline, ...lines] };
}
