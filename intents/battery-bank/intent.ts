import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needBattery, needs } from '../needs.ts';
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
  reply: (facts, setting) => answerBatteryBank(facts, computeBatteryBank(facts), setting),
};
