import { present } from '#basics/present.ts';
import { type Bank, bankIn, bankOf } from '#engine/battery/bank.ts';
import { bankCharge, bankVolts } from '#engine/battery/rules.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { dailyEnergy } from '#engine/loads/rules.ts';
import type { Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';

/** Facts that have a battery. */
export type BankFacts = Facts & { readonly batteries: NonNullable<Facts['batteries']> };

export interface JoinedBank {
  readonly explored: Explored<'usableCapacity' | 'energy'>;
  readonly bank: Bank;
  /** The same batteries joined the other way, where that is possible. */
  readonly otherWay?: Bank;
}

/** Notes how the label of the whole came about. */
function joined(bank: Bank, trace: Trace): void {
  const n_s = bank.inSeries ?? 1;
  const n_p = bank.count / n_s;
  if (!bank.isMixed) run(bankCharge, { n_p, C: bank.capacityAh / n_p }, trace);
  run(bankVolts, { n_s, V: bank.voltageV / n_s }, trace);
}

/** "Do two 12 volts make 24": joined in series, where the words name the volts that makes and nothing else says how. */
export function joinedAsAsked(facts: BankFacts, words: readonly string[]): BankFacts {
  const [first, ...others] = facts.batteries;
  const { count, voltageV = 12 } = present(first);
  const isAsked =
    facts.arrangement === undefined &&
    others.length === 0 &&
    count > 1 &&
    words.includes(`${count * voltageV}`) &&
    words.includes('make');
  return isAsked ? { ...facts, arrangement: 'series' } : facts;
}

/** What batteries joined together come to: Ah, V and what is usable (Ah, Wh). */
export function computeBatteryBank(facts: BankFacts): JoinedBank {
  const bank = present(bankIn(facts));
  const explored = explore<'usableCapacity' | 'energy'>(
    bankAssumptions(bank, facts.depthOfDischargePercent),
    'usableCapacity',
    (values, trace) => {
      if (trace) joined(bank, trace);
      const usableCapacity = usableCapacityAh({ bank, currentA: 0 }, values, trace);
      return { usableCapacity, energy: run(dailyEnergy, { Q: usableCapacity, V: bank.voltageV }, trace) };
    },
  );
  const otherWay =
    bank.count > 1 ? bankOf(facts.batteries, (bank.inSeries ?? 1) > 1 ? 'parallel' : 'series') : undefined;
  return { explored, bank, otherWay };
}
