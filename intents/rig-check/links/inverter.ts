import type { Bank } from '#engine/battery/bank.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { explore, likelyOf } from '#engine/explore.ts';
import { batteryCurrentA, fitsRating, inverterFor, loadedVoltage } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { startingW, throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { isWhole } from '#engine/loads/reading.ts';
import type { Facts } from '#rig/rig.ts';
import { type At, type Link, single } from './link.ts';

/** The load against the inverter, and its current against what the battery gives; flat out where no load is told. */
export function inverterLinks(facts: Facts, bank: Bank, { mainsV }: At): Link[] {
  const loads = facts.loads?.filter(load => load.supply === 'ac' && !isWhole(load)) ?? [];
  const ratingW = facts.inverter?.powerW;
  if (ratingW === undefined) return [];
  const outlet = { loads, mainsV };
  const assumptions = [
    ...wattsAssumptions(outlet),
    inverterEfficiency,
    loadedVoltage(bank.voltageV, bank.isChemistryAssumed ? undefined : bank.chemistry === 'lfp'),
  ];
  const found = explore<'acLoad' | 'batteryCurrent'>(assumptions, 'batteryCurrent', (values, trace) => {
    // Without a load that is told, flat out.
    const acLoad = loads.length > 0 ? throughWatts(outlet, values, trace) : ratingW;
    return { acLoad, batteryCurrent: batteryCurrentA(acLoad, ratingW, values, trace) };
  });
  const likely = likelyOf(assumptions);
  const { acLoad, batteryCurrent } = found.figures;
  const limitA =
    facts.batteries?.find(b => b.maxCurrentA)?.maxCurrentA ?? limitsOf(bank, facts.ambientC).dischargeA;
  const isOver = fitsRating(acLoad.value, ratingW) === 'no';
  const fit: Link[] = [
    {
      part: 'inverter',
      share: ratingW / acLoad.value,
      name: 'acLoad',
      unit: 'W',
      explored: single(found, 'acLoad'),
      wanted: ratingW,
      mend: isOver ? inverterFor(acLoad.value, startingW(outlet, likely)) : undefined,
    },
  ];
  return [
    ...(loads.length > 0 ? fit : []),
    {
      part: 'battery-current',
      share: limitA / batteryCurrent.value,
      name: 'batteryCurrent',
      unit: 'A',
      explored: single(found, 'batteryCurrent'),
      wanted: limitA,
    },
  ];
}
