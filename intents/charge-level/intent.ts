import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { hasUse } from '../use.ts';
import { answerChargeLevel } from './answer.ts';
import { computeChargeLevel } from './compute.ts';

const takes = [
  'volts',
  'voltsTaken',
  'batteries',
  'chargeUsedAh',
  'chargeLeftAh',
  'arrangement',
  'systemVoltageV',
  'depthOfDischargePercent',
] as const satisfies readonly (keyof Facts)[];

/** It reads 12.2 V: how full is it. */
export const chargeLevel: Intent = {
  name: 'charge-level',
  title: 'How full is my battery?',
  takes,
  needs: needs(takes, [
    {
      anyOf: ['volts', 'batteries'],
      ask: 'the volts it reads at rest, and its type (say “AGM reads 12.4V”)',
      holds: facts =>
        facts.volts !== undefined || !!facts.batteries?.some(b => b.stateOfChargePercent !== undefined),
    },
  ]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    if (facts.volts !== undefined) add('a voltage was read', 3);
    if (cues.has('ask-charge-level')) add('asks how full', 3);
    if (cues.has('rest-reading') || facts.voltsTaken !== undefined) add('says how it was read', 1);
    if (facts.volts !== undefined && (cues.has('full') || cues.has('flat-battery')))
      add('volts, full or flat', 1);
    const isPart = facts.batteries?.some(b => b.stateOfChargePercent !== undefined) && !hasUse(facts);
    if (isPart) add('a battery part full', 1);
    if (isPart && cues.has('ask-how-much')) add('asks how much, of a battery part full', 2);
    if (hasUse(facts) && facts.volts === undefined) add('a load', -2);
    if (cues.has('ask-how-long') || cues.has('last')) add('asks how long', -2);
    if (cues.has('cable') || cues.has('ask-drop')) add('speaks of cable or drop', -3);
    if (facts.chargers?.length && facts.volts === undefined) add('a charger', -2);
    if (said.conversion) add('is a conversion', -3);
    return found;
  },
  reply: (facts, setting) => answerChargeLevel(facts, computeChargeLevel(facts, setting), setting),
};
