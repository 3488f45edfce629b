import type { Reply } from '#answer/reply.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Facts, Load } from '#rig/rig.ts';
import type { RequestContext } from '../../intent.ts';
import { isSpotted } from '../../spotting.ts';
import { answerSolarSize } from '../answer.ts';
import { computeSolarSize } from '../compute.ts';

/** What nearly every camp runs. */
const usual: Load[] = [
  { name: 'fridge', count: 1, supply: 'dc' },
  { name: 'lights', count: 2, supply: 'dc' },
  { name: 'phone', count: 2, supply: 'dc' },
];
/** Panels are sold in steps; a ballpark in these is as close as it gets, W. */
const stepW = 50;

const ofWeekend = ['weekend|weekends|friday_to_sunday|couple_of_days|two_days|two_nights'];

/** A panel for what nearly every camp runs, where nothing is told, so that a beginner gets a number before the question. */
export function forUsualCamp(facts: Facts, setting: RequestContext): Reply | undefined {
  if (facts.loads?.length || setting.owner !== undefined || setting.parsed.hazards.length > 0)
    return undefined;
  const known = { ...facts, loads: [...usual] };
  const result = computeSolarSize(known, setting);
  const { panelPower, dailyUse } = result.figures;
  if (!Number.isFinite(panelPower.value)) return undefined;
  const reply = answerSolarSize(known, result, setting);
  const watts = significant(Math.ceil(panelPower.value / stepW) * stepW);
  return {
    ...reply,
    headline: `About ${watts} W for a usual fridge, a few lights and phones: about ${plain(dailyUse.value)} Ah a day.`,
    lines: [
      ...(isSpotted(setting.parsed.recognised.words, ofWeekend)
        ? ['A weekend may do without: a full battery of 100 Ah lithium or 160 Ah AGM runs that for two days.']
        : []),
      ...(reply.lines ?? []).slice(1, 3),
      'What do you run? That changes this most.',
    ],
    verdict: null,
    next: ['fridge 1.2A', '40Ah a day'],
  };
}
