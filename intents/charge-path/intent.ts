import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerChargePath } from './answer.ts';
import { computeChargePath } from './compute.ts';

const takes = [
  'batteries',
  'alternator',
  'cable',
  'solar',
  'volts',
] as const satisfies readonly (keyof Facts)[];

/** Isolator or DC-DC charger. */
export const chargePath: Intent = {
  name: 'charge-path',
  title: 'Isolator or DC-DC charger?',
  takes,
  needs: needs(takes, []),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const kinds = new Set(facts.chargers?.map(c => c.kind));
    const isDcdc = cues.has('dcdc') || kinds.has('dcdc');
    const isIsolator = cues.has('isolator') || kinds.has('isolator');
    const isRated = facts.chargers?.some(c => c.currentA !== undefined || c.powerW !== undefined);
    if (isDcdc && isIsolator) add('an isolator and a DC-DC charger', 4.5);
    if ((isDcdc || isIsolator) && (cues.has('ask-which') || cues.has('ask-compare')))
      add('asks which charger', 2);
    const isAlternator = cues.has('smart-alternator') || cues.has('alternator') || !!facts.alternator;
    const isDriven = isAlternator || cues.has('drive');
    if (isDriven && cues.has('charge') && cues.has('ask-which') && !isRated)
      add('asks what to charge with on the road', 4);
    if ((isDcdc || isIsolator) && isAlternator) add('a charger and the alternator', 3);
    if ((isDcdc || isIsolator) && !isRated && (cues.has('ask-can-it') || cues.has('ask-what-size')))
      add('asks whether such a charger is needed', 2);
    if ((isDcdc || isIsolator) && !isRated && cues.has('starter')) add('from the starter battery', 2);
    if ((isDcdc || isIsolator) && cues.has('ask-why')) add('asks why such a charger', 1);
    if (cues.has('ask-how-long')) add('asks how long', -4);
    if (isRated && !(isDcdc && isIsolator)) add('a charger with a rating', -3);
    if (facts.targetChargePercent !== undefined || facts.chargeNeededAh !== undefined)
      add('a charge to reach', -3);
    for (const cue of ['cable', 'fuse', 'generator', 'learn', 'ask-what-is'] as const)
      if (cues.has(cue)) add(`speaks of ${cue}`, -3);
    if (cues.has('own-statement') && !cues.has('question-mark') && !cues.has('ask-which') && !isAlternator)
      add('tells the rig', -3);
    return found;
  },
  reply: facts => answerChargePath(computeChargePath(facts)),
};
