import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { hasUse } from '../use.ts';
import { answerBatteryType } from './answer.ts';
import { computeBatteryType } from './compute.ts';

const takes = [
  'batteries',
  'ambientC',
  'depthOfDischargePercent',
] as const satisfies readonly (keyof Facts)[];

/** AGM or lithium. */
export const batteryType: Intent = {
  name: 'battery-type',
  title: 'AGM or lithium?',
  takes,
  needs: needs(takes, []),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const isLead = cues.has('agm') || cues.has('gel') || cues.has('flooded');
    const told = new Set((facts.batteries ?? []).map(b => b.chemistry).filter(c => c !== undefined));
    const areTwo = (isLead && cues.has('lfp')) || told.size > 1;
    if (areTwo) add('two kinds of battery', 3);
    if (areTwo && (cues.has('ask-which') || cues.has('ask-compare'))) add('asks which', 2);
    if (cues.has('ask-why') && (facts.batteries?.length || cues.has('battery')))
      add('asks why, of a battery', 2);
    if ((told.size > 0 || isLead || cues.has('lfp')) && cues.has('ask-compare')) add('compares a kind', 1);
    const isNamed = cues.has('battery') || isLead || cues.has('lfp');
    const isOpen =
      isNamed && cues.has('ask-which') && !facts.batteries?.some(b => b.capacityAh) && !facts.chargers;
    if (isOpen) add('asks which battery', 2.5);
    if (hasUse(facts) || cues.has('ask-how-long')) add('a load or a time', -2);
    if (facts.arrangement) add('says parallel or series', -2);
    if (cues.has('charge') || facts.volts !== undefined) add('of charging or volts', -2);
    if (cues.has('solar') || facts.solar?.length) add('speaks of solar', -2);
    if (said.conversion) add('is a conversion', -3);
    return found;
  },
  reply: (facts, setting) => answerBatteryType(computeBatteryType(facts), setting),
};
