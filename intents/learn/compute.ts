import { duration } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { type Bank, bankIn } from '#engine/battery/bank.ts';
import { restVoltsAt } from '#engine/battery/rest.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { likelyOf } from '#engine/explore.ts';
import { batteryPowerFor, inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { dayOf, useAssumptions } from '#engine/loads/model.ts';
import { dailyYield } from '#engine/solar/model.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { describeLoad } from '../describe.ts';
import { panelsW, sunOf } from '../sun.ts';
import { hasUse, useOf } from '../use.ts';

/** Numbers of the chat's own rig that a lesson may show. */
export type Live =
  | 'watts'
  | 'starter'
  | 'driving'
  | 'solar'
  | 'halfVolts'
  | 'types'
  | 'usable'
  | 'runTime'
  | 'inverter'
  | 'drop';

const ah = (value: number): string => `${decimals(value, 0)} Ah`;

function usable(bank: Bank): number {
  return usableCapacityAh({ bank, currentA: 0 }, likelyOf(bankAssumptions(bank)));
}

function perDay(facts: Facts, voltageV: number): number {
  const use = useOf(facts, voltageV);
  return dayOf(use, likelyOf(useAssumptions(use))).dailyUse;
}

/**
 * A line with a number from the rig, for a lesson; undefined where the rig doesn't tell enough.
 * @param at time of the message, for the sun of the month
 */
export function liveLine(kind: Live, facts: Facts, at: Date): string | undefined {
  const bank = bankIn(facts);
  const voltageV = bank?.voltageV ?? facts.systemVoltageV ?? 12;
  switch (kind) {
    case 'watts': {
      const load = facts.loads?.find(l => l.currentA !== undefined && l.supply === 'dc');
      if (!load) return undefined;
      return `Yours: ${describeLoad(load)} at ${decimals(voltageV, 1)} V is ${significant(present(load.currentA) * voltageV)} W.`;
    }
    case 'starter': {
      if (!hasUse(facts)) return undefined;
      return `Yours: you use about ${ah(perDay(facts, voltageV))} a day; a starter battery can spare some 20 Ah.`;
    }
    case 'driving': {
      const charger = facts.chargers?.find(c => c.kind === 'dcdc' && c.currentA !== undefined);
      if (!charger) return undefined;
      return `Yours: your ${significant(present(charger.currentA))} A DC-DC charger puts in up to ${ah(present(charger.currentA) * 2)} in two hours of driving.`;
    }
    case 'solar': {
      const powerW = panelsW(facts);
      if (powerW === undefined) return undefined;
      const made = dailyYield({ ...sunOf(facts, at), powerW, nominalVoltageV: voltageV });
      const where = facts.place === undefined ? '' : ` at ${facts.place}`;
      return `Yours: ${decimals(powerW, 0)} W make about ${ah(made.dailyYieldAh)} on an average day${where} now.`;
    }
    case 'halfVolts': {
      if (!bank || bank.chemistry === 'lfp') return undefined;
      const volts = (restVoltsAt(50, bank.chemistry) * bank.voltageV) / 12;
      return `Yours: half full, your battery rests at about ${decimals(volts, 1)} V.`;
    }
    case 'types':
    case 'usable':
      return bank
        ? `Yours: of your ${ah(bank.capacityAh)} about ${ah(usable(bank))} are for use.`
        : undefined;
    case 'runTime': {
      if (!bank || !hasUse(facts)) return undefined;
      const { runTime, dailyUse } = exploreRunTime({ bank, use: useOf(facts, bank.voltageV) }).figures;
      return `Yours: ${ah(dailyUse.value)} a day from your ${ah(bank.capacityAh)} last ${duration(runTime.value)}.`;
    }
    case 'inverter': {
      const powerW = facts.inverter?.powerW;
      if (powerW === undefined) return undefined;
      const { value: efficiency } = inverterEfficiency;
      const amps = batteryPowerFor({ loadW: powerW, ratingW: powerW, efficiency }) / voltageV;
      return `Yours: at its full ${decimals(powerW, 0)} W your inverter takes about ${decimals(amps, 0)} A from the battery.`;
    }
    case 'drop': {
      const load = facts.loads?.find(l => (l.currentA ?? 0) > 0 && l.supply === 'dc');
      if (!load) return undefined;
      return `Yours: 3 % of ${decimals(voltageV, 1)} V is ${plain(voltageV * 0.03)} V: no more may get lost on the way to your ${load.name}.`;
    }
  }
}
