import { defineIntent } from '../define-intent.ts';
import { needBattery } from '../needs.ts';
import { answerBatteryBank } from './answer.ts';
import { type BankFacts, computeBatteryBank } from './compute.ts';

/** Two batteries in parallel or series. */
export const batteryBank = defineIntent<BankFacts>({
  name: 'battery-bank',
  title: 'Batteries in parallel or series',
  takes: ['batteries', 'arrangement', 'systemVoltageV', 'depthOfDischargePercent'],
  needs: [needBattery],
  reply: (facts, setting) => answerBatteryBank(facts, computeBatteryBank(facts), setting),
});
