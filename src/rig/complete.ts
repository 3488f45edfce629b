import type { Battery, Facts, Load, Solar, Stated } from './rig.ts';

/** What a load of a name runs on where nobody said; undefined where that is not known either. */
export type SupplyOf = (name: string) => Load['supply'] | undefined;

/** Days told one by one as hours of driving a day; nothing where no day of them is driven or only the sky is told. */
function drivingOf({ days, drivingPlanH }: Stated): number[] | undefined {
  if (drivingPlanH || !days?.some(day => day.drivingH !== undefined)) return drivingPlanH;
  return days.map(day => day.drivingH ?? 0);
}

/** How full the one battery is by what a monitor counts, %. */
function levelOf({ batteries, chargeUsedAh, chargeLeftAh }: Stated): number | undefined {
  const house = batteries?.filter(battery => battery.role !== 'starter') ?? [];
  const [one] = house;
  if (house.length !== 1 || one?.capacityAh === undefined || one.stateOfChargePercent !== undefined)
    return undefined;
  const allAh = one.capacityAh * (one.count ?? 1);
  const leftAh = chargeUsedAh === undefined ? chargeLeftAh : allAh - chargeUsedAh;
  if (leftAh === undefined || allAh === 0) return undefined;
  return Math.min(100, Math.max(0, (100 * leftAh) / allAh));
}

/** Ah used, where there is any; a battery that is full wants none. */
const chargeUsedOf = ({ chargeUsedAh }: Stated): number | undefined =>
  chargeUsedAh !== undefined && chargeUsedAh > 0 ? chargeUsedAh : undefined;

/** What a monitor shows going out, as the one load, where nothing else is told of the use. */
function drawOf({ loads, dailyUseAh, dailyUseWh, netCurrentA }: Stated): Stated['loads'] {
  const isOut = netCurrentA !== undefined && netCurrentA < 0;
  if (!isOut || loads || dailyUseAh !== undefined || dailyUseWh !== undefined) return loads;
  return [{ name: 'load', currentA: -netCurrentA, isAverage: true }];
}

/** The sky of the last days of a plan, and of how many of them: "sun on friday, then cloud" is two of cloud. */
function skyOf({ days, sky, skyLastDays }: Stated): Pick<Facts, 'sky' | 'skyLastDays'> {
  const last = days?.at(-1)?.sky;
  if (sky !== undefined || !days || last === undefined) return { sky, skyLastDays };
  const before = days.findLastIndex(day => day.sky !== last);
  return before < 0 ? { sky: last } : { sky: last, skyLastDays: days.length - 1 - before };
}

/** A charger named and told again with its rating is one: "powered site, 18 A charger". */
function chargersOf({ chargers }: Stated): Stated['chargers'] {
  const isBare = (one: NonNullable<Stated['chargers']>[number]): boolean =>
    one.currentA === undefined && one.powerW === undefined;
  return chargers?.filter(
    one => !isBare(one) || !chargers.some(other => other.kind === one.kind && !isBare(other)),
  );
}

/** Without the keys that have no value. */
function withoutGaps(facts: Facts): Facts {
  const out: Record<string, unknown> = {};
  for (const key of Object.keys(facts) as (keyof Facts)[])
    if (facts[key] !== undefined) out[key] = facts[key];
  return out as Facts;
}

/**
 * What was told, ready for the engine: one of each where no count was told, each load on what it commonly runs on,
 * a plan of days as hours of driving and sky, a monitor's amp hours as a level and its current as a load. Nothing told
 * is changed, and what is there already stays.
 */
export function complete(stated: Stated, supplyOf: SupplyOf): Facts {
  const { batteries, solar, shade, days } = stated;
  const loads = drawOf(stated);
  const stateOfChargePercent = levelOf(stated);
  const facts: Facts = {
    ...stated,
    ...skyOf(stated),
    loads: loads?.map(
      (load): Load => ({
        count: 1,
        ...load,
        supply: load.supply ?? (load.build === 'household' ? 'ac' : supplyOf(load.name)) ?? 'dc',
      }),
    ),
    batteries: batteries?.map(
      (battery): Battery => ({
        count: 1,
        ...battery,
        ...(stateOfChargePercent !== undefined && battery.role !== 'starter' && { stateOfChargePercent }),
      }),
    ),
    chargers: chargersOf(stated),
    solar: solar?.map((panel): Solar => ({ count: 1, ...panel })),
    shade: shade === true ? 'half' : shade,
    drivingPlanH: drivingOf(stated),
    // Used up, of a battery whose size nobody told: what is to be put back.
    chargeNeededAh:
      stated.chargeNeededAh ?? (stateOfChargePercent === undefined ? chargeUsedOf(stated) : undefined),
    durationH: stated.durationH ?? (days?.length ? days.length * 24 : undefined),
  };
  return withoutGaps(facts);
}
