import { answerAside, asideIn, asideOf, needsBeside } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent } from '../intent.ts';
import { hasCapacity, needBattery } from '../needs.ts';
import { answerBatteryBank, joinedInWords } from './answer.ts';
import { bankAsides } from './asides-table.ts';
import { type BankFacts, computeBatteryBank, joinedAsAsked } from './compute.ts';

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
    const parsed = batteryBank.needs.safeParse({ ...told, batteries }).data;
    const ready = parsed && joinedAsAsked(parsed, setting.parsed.recognised.words);
    const reply = ready && batteryBank.reply(ready, setting);
    const size = { name: 'batteryCapacity', value: usualAh, unit: 'Ah', why: 'each, as you told no size' };
    return (
      reply && {
        ...reply,
        headline: joinedInWords(ready, computeBatteryBank(ready)),
        assumed: [size, ...(reply.assumed ?? [])],
      }
    );
  },
  subjectIn: words => asideIn(words, bankAsides)?.name,
  needsOn: needsBeside(bankAsides, [needBattery]),
  reply: (told, setting) => {
    const aside = asideOf(bankAsides, setting, { hasOwnFigures: false, canSum: hasCapacity(told) });
    if (aside) return answerAside(aside, told);
    const facts = joinedAsAsked(told, setting.parsed.recognised.words);
    return answerBatteryBank(facts, computeBatteryBank(facts), setting);
  },
});
