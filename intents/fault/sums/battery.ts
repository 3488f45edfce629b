import { present } from '#basics/present.ts';
import { loadedVoltageV } from '#engine/battery/limits.ts';
import { chargeAtRest, isOnCharge, restVoltsAt } from '#engine/battery/rest.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { ageAssumption, bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { explore, likelyOf } from '#engine/explore.ts';
import { batteryCurrentA, loadedVoltage } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { dailyUseAh, useAssumptions, usePerLoad } from '#engine/loads/model.ts';
import { decimals, plain } from '#quantity/round.ts';
import { batteryAir } from '../../battery-air.ts';
import { figure } from '../../figures.ts';
import { hasUse, useOf } from '../../use.ts';
import { blocksIn, type FaultCase, type Finding } from './finding.ts';

/** How full a battery is that reads so at rest. */
export function levelFinding({ told, bank, facts }: FaultCase): Finding | undefined {
  const { volts, voltsTaken } = told;
  if (volts === undefined || voltsTaken === 'load' || voltsTaken === 'charging') return undefined;
  const chemistry = bank?.chemistry ?? facts.batteries?.find(b => b.chemistry)?.chemistry ?? 'lead-acid';
  const blocks = blocksIn({ bank, facts });
  if (voltsTaken !== 'rest' && isOnCharge(volts, chemistry, blocks)) return undefined;
  const level = chargeAtRest(volts, chemistry, undefined, blocks);
  const lowPercent = 100 * (1 - chemistryRow(chemistry).depth[0]);
  return {
    by: 'battery',
    isCause: level.value < lowPercent,
    says: `At rest ${decimals(volts, 2)} V is about ${decimals(level.value, 0)} % full${level.value < lowPercent ? ': low' : ''}.`,
    figures: { stateOfCharge: figure(level, '%') },
  };
}

/** A day's use against what the battery gives. */
export function dayFinding({ facts, bank, mainsV, at }: FaultCase): Finding | undefined {
  if (!bank || !hasUse(facts)) return undefined;
  const use = useOf(facts, bank.voltageV, mainsV, at);
  const explored = explore<'dailyUse' | 'usableCapacity'>(
    [...bankAssumptions(bank, undefined, batteryAir(facts, at)), ...useAssumptions(use)],
    'dailyUse',
    (values, trace) => ({
      dailyUse: dailyUseAh(use, values, trace),
      usableCapacity: usableCapacityAh({ bank, currentA: 0, temperatureC: facts.ambientC }, values, trace),
    }),
  );
  const { dailyUse, usableCapacity } = explored.figures;
  const isCause = dailyUse.value > usableCapacity.value;
  const gives = `You use about ${plain(dailyUse.value)} Ah a day of about ${plain(usableCapacity.value)} Ah`;
  return {
    by: 'battery',
    isCause,
    says: `${gives}: ${isCause ? 'it is too small for a day by itself' : 'from full it should last the night'}.`,
    ...(isCause && {
      likely: `Most likely the battery runs out: about ${plain(dailyUse.value)} Ah a day from ${plain(usableCapacity.value)} Ah.`,
    }),
    figures: {
      dailyUse: figure(dailyUse, 'Ah'),
      usableCapacity: figure(usableCapacity, 'Ah'),
    },
    explored,
  };
}

/** What years have left of it. */
export function ageFinding({ bank }: FaultCase): Finding | undefined {
  if (bank?.ageYears === undefined) return undefined;
  const explored = explore<'capacity'>([ageAssumption(bank)], 'capacity', values => ({
    capacity: bank.capacityAh * present(values.age),
  }));
  const { capacity } = explored.figures;
  const isCause = capacity.value < 0.8 * bank.capacityAh;
  return {
    by: 'battery',
    isCause,
    says: `At ${plain(bank.ageYears)} years about ${plain(capacity.value)} of its ${plain(bank.capacityAh)} Ah are usually left.`,
    figures: { capacity: figure(capacity, 'Ah') },
    explored,
  };
}

/** How far under what is reckoned a reading points at the battery, V of a 12 V block. Common practice. */
const shortV = 0.4;

/** What a sound battery, half full, reads under this load. */
export function sagFinding(about: FaultCase): Finding | undefined {
  const { facts, told, bank, mainsV } = about;
  const loads = told.loads ?? [];
  const outlet = {
    loads: loads.filter(load => load.supply === 'ac'),
    mainsV,
  };
  if (!bank || loads.length === 0) return undefined;
  const blocks = blocksIn(about);
  const use = useOf({ ...facts, loads }, bank.voltageV, mainsV);
  const isMains = outlet.loads.length > 0;
  const assumptions = isMains
    ? [
        ...wattsAssumptions(outlet),
        inverterEfficiency,
        loadedVoltage(bank.voltageV, bank.chemistry === 'lfp'),
      ]
    : useAssumptions(use);
  const explored = explore<'loadVoltage' | 'current'>(assumptions, 'loadVoltage', (values, trace) => {
    const current = isMains
      ? batteryCurrentA(throughWatts(outlet, values, trace), facts.inverter?.powerW, values, trace)
      : usePerLoad(use, values).reduce((sum, part) => sum + part.currentA, 0);
    const restV = blocks * restVoltsAt(50, bank.chemistry);
    return {
      current,
      loadVoltage: loadedVoltageV({ bank, restV, currentA: current }, trace),
    };
  });
  const { loadVoltage, current } = explored.figures;
  const isRead = told.volts !== undefined && told.voltsTaken !== 'rest';
  const isShort = isRead && present(told.volts) < loadVoltage.value - shortV * blocks;
  const sound = `A sound, half full battery reads about ${decimals(loadVoltage.value, 1)} V at ${plain(current.value)} A`;
  return {
    by: 'battery',
    ...(isRead && { isCause: isShort }),
    says: isRead
      ? `${sound}: ${decimals(present(told.volts), 2)} V is ${isShort ? 'low, worn, or measured behind a thin cable' : 'no fault by itself'}.`
      : `${sound}.`,
    figures: { loadVoltage: figure(loadVoltage, 'V') },
    explored,
  };
}

/** How much of the time a thing that cools runs in the heat told. */
export function dutyFinding({ facts, mainsV, at }: FaultCase): Finding | undefined {
  if (facts.ambientC === undefined || !facts.loads?.length) return undefined;
  const use = useOf(facts, 12, mainsV, at);
  const likely = likelyOf(useAssumptions(use));
  const part = usePerLoad(use, likely).find(({ duty }) => duty < 1);
  if (!part) return undefined;
  const percent = 100 * part.duty;
  return {
    says: `At ${decimals(facts.ambientC, 0)} °C a ${part.load.name} like that runs about ${decimals(percent, 0)} % of the time when sound.`,
    figures: {
      duty: figure(
        {
          value: percent,
          low: 0.8 * percent,
          high: Math.min(100, 1.2 * percent),
        },
        '%',
      ),
    },
  };
}
