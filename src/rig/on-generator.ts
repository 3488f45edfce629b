import type { Charger, Stated } from './rig.ts';

const isAmpsOnly = ({ kind, currentA, powerW }: Charger): boolean =>
  kind === 'generator' && currentA !== undefined && powerW === undefined;

/** "The generator with a 30 A charger": the amps are its charger's, whichever of the two they were told with. */
export function withChargerOn(facts: Stated): Stated {
  if (!facts.chargers?.some(isAmpsOnly)) return facts;
  const chargers = facts.chargers.flatMap((one): Charger[] => {
    if (!isAmpsOnly(one)) return [one];
    const { currentA, ...generator } = one;
    return [generator, { kind: 'mains', currentA }];
  });
  return { ...facts, chargers };
}
