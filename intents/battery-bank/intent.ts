import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { needBattery, needs } from '../needs.ts';
import { hasUse } from '../use.ts';
import { answerBatteryBank } from './answer.ts';
import { type BankFacts, computeBatteryBank } from './compute.ts';

const takes = [
  'batteries',
  'arrangement',
  'systemVoltageV',
  'depthOfDischargePercent',
] as const satisfies readonly (keyof Facts)[];

/** Two batteries in parallel or series. */
export const batteryBank: Intent<BankFacts> = {
  name: 'battery-bank',
  title: 'Batteries in parallel or series',
  takes,
  needs: needs(takes, [needBattery]) as Intent<BankFacts>['needs'],
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const sized = (facts.batteries ?? []).filter(b => b.capacityAh !== undefined || b.energyWh !== undefined);
    const count = sized.reduce((sum, b) => sum + b.count, 0);
    if (facts.arrangement !== undefined) add('says parallel or series', 3);
    else if (cues.has('series') || cues.has('parallel')) add('speaks of parallel or series', 2);
    if (cues.has('bank')) add('speaks of a bank', 1);
    if (count > 1) add('more than one battery', 2);
    if (hasUse(facts)) add('a load', -3);
    if (cues.has('ask-how-long') || cues.has('charge')) add('asks of running or charging', -3);
    if (cues.has('solar') || facts.solar?.length) add('speaks of solar', -3);
    if (cues.has('ask-which') && new Set(facts.batteries?.map(b => b.chemistry)).size > 1)
      add('asks which of two kinds', -3);
    return found;
  },
  reply: (facts, setting) => answerBatteryBank(facts, computeBatteryBank(facts), setting),
};
