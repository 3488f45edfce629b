import type { Battery, Facts, Load, Solar, Stated } from './rig.ts';

/** What a load of a name runs on where nobody said; undefined where that is not known either. */
export type SupplyOf = (name: string) => Load['supply'] | undefined;

/** Days told one by one as hours of driving a day; nothing where no day of them is driven or only the sky is told. */
function drivingOf({ days, drivingPlanH }: Stated): number[] | undefined {
  if (drivingPlanH || !days?.some(day => day.drivingH !== undefined)) return drivingPlanH;
  return days.map(day => day.drivingH ?? 0);
}

/** The sky of the last days of a plan, and of how many of them: "sun on friday, then cloud" is two of cloud. */
function skyOf({ days, sky, skyLastDays }: Stated): Pick<Facts, 'sky' | 'skyLastDays'> {
  const last = days?.at(-1)?.sky;
  if (sky !== undefined || !days || last === undefined) return { sky, skyLastDays };
  const before = days.findLastIndex(day => day.sky !== last);
  return before < 0 ? { sky: last } : { sky: last, skyLastDays: days.length - 1 - before };
}

/**
 * What was told, ready for the engine: one of each where no count was told, each load on what it commonly runs on,
 * a plan of days as hours of driving and sky. Nothing told is changed, and what is there already stays.
 */
export function complete(stated: Stated, supplyOf: SupplyOf): Facts {
  const { loads, batteries, solar, shade, days } = stated;
  const facts: Facts = {
    ...stated,
    ...skyOf(stated),
    loads: loads?.map(
      (load): Load => ({ count: 1, ...load, supply: load.supply ?? supplyOf(load.name) ?? 'dc' }),
    ),
    batteries: batteries?.map((battery): Battery => ({ count: 1, ...battery })),
    solar: solar?.map((panel): Solar => ({ count: 1, ...panel })),
    shade: shade === true ? 'half' : shade,
    drivingPlanH: drivingOf(stated),
    durationH: stated.durationH ?? (days?.length ? days.length * 24 : undefined),
  };
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as Facts;
}
