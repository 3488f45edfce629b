import { present } from '#basics/present.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '#engine/charging/source.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { dailyYield, panelPowerFor, solarAssumptions, storedOf } from '#engine/solar/model.ts';
import type { Facts } from '#rig/rig.ts';
import { batteryAir, batteryOnCharge } from '../../battery-air.ts';
import { panelsW, sunOf } from '../../sun.ts';
import { useOf } from '../../use.ts';
import { type At, type Link, single } from './link.ts';

/** What a battery should carry with nothing coming in, h: a day where something charges it, two where not. Common practice. */
const autonomyH = { charged: 24, alone: 48 } as const;

/** How long it carries a day's use by itself. */
export function batteryLink(facts: Facts, bank: Bank, { at, mainsV }: At): Link {
  const found = exploreRunTime({
    bank,
    use: useOf(facts, bank.voltageV, mainsV, at),
    assumptions: bankAssumptions(bank, undefined, batteryAir(facts, at)),
    temperatureC: facts.ambientC,
  });
  const isCharged = !!facts.solar?.length || !!facts.chargers?.length;
  const wanted = isCharged ? autonomyH.charged : autonomyH.alone;
  const share = found.figures.runTime.value / wanted;
  const mend = share > 0 ? bank.capacityAh / share : undefined;
  return {
    part: 'battery',
    share,
    name: 'runTime',
    unit: 'h',
    explored: single(found, 'runTime'),
    wanted,
    mend,
    holdsAh: found.figures.usableCapacity.value,
  };
}

/** What the drive brings a day, Ah; undefined where nothing was told of driving or of what charges then. */
function drivenAh(facts: Facts, bank: Bank): Explored<'figure'> | undefined {
  const charger = facts.chargers?.find(c => c.kind === 'dcdc' || c.kind === 'isolator');
  const hours = facts.drivingHoursPerDay;
  if (!charger || hours === undefined || hours === 0) return undefined;
  const source: Source = {
    ...charger,
    alternator: facts.alternator,
    row: chargeRow(bank.chemistry),
    blocks: Math.max(1, Math.round(bank.voltageV / 12.4)),
  };
  return explore<'figure'>(sourceAssumptions(source), 'figure', (values, trace) => ({
    figure: sourceCurrentA(source, values, trace) * hours,
  }));
}

/** The drive against a day's use, where there is no sun to share it. */
export function drivingLink(facts: Facts, bank: Bank, { at, mainsV }: At): Link | undefined {
  const explored = drivenAh(facts, bank);
  if (!explored || panelsW(facts) !== undefined) return undefined;
  const use = useOf(facts, bank.voltageV, mainsV, at);
  const wanted = dailyUseAh(use, likelyOf(useAssumptions(use)));
  const brings = explored.figures.figure.value;
  return {
    part: 'driving',
    share: wanted > 0 ? brings / wanted : Number.POSITIVE_INFINITY,
    name: 'dailyGain',
    unit: 'Ah',
    explored,
    wanted,
    mend: brings > 0 ? (present(facts.drivingHoursPerDay) * wanted) / brings : undefined,
  };
}

/** What the panels make against what is used. */
export function solarLink(facts: Facts, bank: Bank, setting: At): Link | undefined {
  const powerW = panelsW(facts);
  if (powerW === undefined) return undefined;
  const sun = sunOf(facts, setting.at);
  const use = useOf(facts, bank.voltageV, setting.mainsV, setting.at);
  const panel = { ...sun, powerW, nominalVoltageV: bank.voltageV, chemistry: bank.chemistry };
  const assumptions = [
    ...solarAssumptions(sun),
    ...storageAssumptions(bank.chemistry, bank.isChemistryAssumed),
    ...batteryOnCharge(facts, bank, setting.at),
    ...useAssumptions(use),
  ];
  const explored = explore<'figure'>(assumptions, 'figure', (values, trace) => ({
    figure: dailyYield(panel, values, trace).dailyYieldAh,
  }));
  const likely = likelyOf(assumptions);
  const used = dailyUseAh(use, likely);
  // What the drive brings the sun needn't.
  const besidesAh = drivenAh(facts, bank)?.figures.figure.value;
  const wanted = Math.max(0, used - (besidesAh ?? 0)) / storedOf(1, panel, likely);
  const { panelPowerW } = panelPowerFor(Math.max(0, used - (besidesAh ?? 0)), panel, likely);
  const share = wanted > 0 ? explored.figures.figure.value / wanted : Number.POSITIVE_INFINITY;
  return {
    part: 'solar',
    share,
    name: 'dailyYield',
    unit: 'Ah',
    explored,
    wanted,
    mend: panelPowerW,
    besidesAh,
  };
}
