import { defineIntent } from '../define-intent.ts';
import type { Intent } from '../intent.ts';
import { needBattery } from '../needs.ts';
import { answerBatteryBank } from './answer.ts';
import { type BankFacts, computeBatteryBank } from './compute.ts';

/** What most campers have, common practice. */
const usualAh = 100;

/** Two batteries in parallel or series. */
export const batteryBank: Intent<BankFacts> = defineIntent<BankFacts>({
  name: 'battery-bank',
  title: 'Batteries in parallel or series',
  takes: ['batteries', 'arrangement', 'systemVoltageV', 'depthOfDischargePercent'],
  needs: [needBattery],
  // How to join two is told without their size.
  guess: (told, setting) => {
    const [first, ...others] = told.batteries ?? [];
    const count = first?.count ?? 1;
    if (!first || others.length > 0 || count < 2) return undefined;
    const batteries = [{ ...first, capacityAh: usualAh }];
    const ready = batteryBank.needs.safeParse({ ...told, batteries }).data;
    const reply = ready && batteryBank.reply(ready, setting);
    const size = { name: 'batteryCapacity', value: usualAh, unit: 'Ah', why: 'each, as you told no size' };
    return reply && { ...reply, assumed: [size, ...(reply.assumed ?? [])] };
  },
  reply: (facts, setting) => answerBatteryBank(facts, computeBatteryBank(facts), setting),
});
