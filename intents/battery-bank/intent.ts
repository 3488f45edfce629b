import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent } from '../intent.ts';
import { needBattery } from '../needs.ts';
import { answerBatteryBank, joinedInWords } from './answer.ts';
import { bankAsides } from './asides-table.ts';
import { type BankFacts, computeBatteryBank, joinedAsAsked } from './compute.ts';
import { joiningAsides } from './joining-table.ts';

/** What most campers have, common practice. */
const usualAh = 100;

const bank: Intent<BankFacts> = defineIntent<BankFacts>({
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
    const parsed = bank.needs.safeParse({ ...told, batteries }).data;
    if (!parsed) return undefined;
    const facts = joinedAsAsked(parsed, setting.parsed.recognised.words);
    const joined = computeBatteryBank(facts);
    const reply = answerBatteryBank(facts, joined, setting);
    const size = { name: 'batteryCapacity', value: usualAh, unit: 'Ah', why: 'each, as you told no size' };
    return { ...reply, headline: joinedInWords(facts, joined), assumed: [size, ...(reply.assumed ?? [])] };
  },
  reply: (told, setting) => {
    const facts = joinedAsAsked(told, setting.parsed.recognised.words);
    return answerBatteryBank(facts, computeBatteryBank(facts), setting);
  },
});

/** Two batteries in parallel or series, and what people ask beside that. */
export const batteryBank = withAsides(bank, [...joiningAsides, ...bankAsides], () => false);
