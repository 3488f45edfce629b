import type { Facts, Stated } from '#rig/rig.ts';

/**
 * Amps told of a thing beside a 12 V cable or fuse are those of the battery's side, also of a kettle or a television,
 * unless it was told to run on mains or an inverter is known to feed it.
 */
export function ampsAtTwelve<N extends Facts>(facts: N, told: Stated): N {
  if (facts.inverter || !told.loads?.some(({ currentA, supply }) => currentA !== undefined && !supply))
    return facts;
  const isOfBattery = (name: string): boolean =>
    !!told.loads?.some(
      load => load.name === name && load.currentA !== undefined && load.supply === undefined,
    );
  return {
    ...facts,
    loads: facts.loads?.map(load => (isOfBattery(load.name) ? { ...load, supply: 'dc' as const } : load)),
  };
}
