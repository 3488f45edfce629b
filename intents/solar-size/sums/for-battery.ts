import type { Reply } from '#answer/reply.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { RequestContext } from '../../intent.ts';
import { answerSolarSize } from '../answer.ts';
import { computeSolarSize } from '../compute.ts';

/** Shares of a battery that are used a day and put back: all that is for use of it takes two days. Common practice. */
const daily = { lfp: 0.4, lead: 0.25 } as const;

/** A panel by the battery alone, where nothing tells what runs: half of what is for use of it put back each day. */
export function forBattery(facts: Facts, setting: RequestContext): Reply | undefined {
  const bank = bankIn(facts);
  if (!bank || facts.loads?.length) return undefined;
  const dailyUseAh = bank.capacityAh * (bank.chemistry === 'lfp' ? daily.lfp : daily.lead);
  const known = { ...facts, dailyUseAh };
  const reply = answerSolarSize(known, computeSolarSize(known, setting), setting);
  return {
    ...reply,
    lines: [
      `That puts back ${plain(dailyUseAh)} Ah a day, half of what is for use of your battery.`,
      'What does it run? That changes this most.',
    ],
    verdict: null,
    next: ['a fridge and lights', '30Ah a day'],
  };
}
