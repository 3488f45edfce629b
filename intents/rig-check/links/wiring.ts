import { present } from '#basics/present.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { dropOn } from '#engine/cable/choose.ts';
import {
  type Circuit,
  circuitAssumptions,
  circuitCurrents,
  circuitKindOf,
  circuitUseOf,
} from '#engine/cable/circuit.ts';
import { conductorAssumptions, conductorOf, conductorsSold } from '#engine/cable/conductor.ts';
import { largestFuseOn } from '#engine/cable/fuse.ts';
import { carriesA } from '#engine/cable/surroundings.ts';
import { dropLimits } from '#engine/cable/tables.ts';
import { explore } from '#engine/explore.ts';
import type { Facts } from '#rig/rig.ts';
import { type At, constant, type Link } from './link.ts';

/** The next size sold, mm². */
const soldFrom = (areaMm2: number): number =>
  (conductorsSold('metric').find(sold => sold.areaMm2 >= areaMm2) ?? present(conductorsSold('metric').at(-1)))
    .areaMm2;

/** What it loses against what is plenty. */
export function cableLink(facts: Facts, bank: Bank, { mainsV }: At): Link | undefined {
  const conductor = conductorOf(facts.cable);
  const lengthM = facts.cable?.lengthM;
  if (!conductor || lengthM === undefined) return undefined;
  const kind = circuitKindOf(facts, new Set()) ?? 'loads';
  const use = circuitUseOf(kind, facts);
  const voltageV = bank.voltageV > 18 ? 24 : 12;
  const circuit: Circuit = { kind, use, facts, voltageV, mainsV };
  const assumptions = [...conductorAssumptions(conductor), ...circuitAssumptions(circuit)];
  const oneWayM = facts.cable?.isRoundTrip ? lengthM / 2 : lengthM;
  const explored = explore<'figure'>(assumptions, 'figure', (values, trace) => {
    const { cableA, continuousA } = circuitCurrents(circuit, values, trace);
    return {
      figure: dropOn(conductor, { lengthM: oneWayM, currentA: cableA, continuousA, voltageV }, values, trace)
        .dropV,
    };
  });
  const wanted = (dropLimits[use].value / 100) * voltageV;
  const lost = explored.figures.figure.value;
  const share = lost > 0 ? wanted / lost : Number.POSITIVE_INFINITY;
  return {
    part: 'cable',
    share,
    name: 'voltageDrop',
    unit: 'V',
    explored,
    wanted,
    mend: soldFrom(conductor.areaMm2 / share),
  };
}

/** A fuse larger than its cable carries protects nothing. */
export function fuseLink({ cable, fuseA }: Facts): Link | undefined {
  const conductor = conductorOf(cable);
  if (!conductor || fuseA === undefined) return undefined;
  const carried = carriesA(conductor);
  return {
    part: 'fuse',
    // Nothing is weaker than a cable that may burn.
    share: fuseA > carried ? 0.1 * (carried / fuseA) : carried / fuseA,
    name: 'fuseRating',
    unit: 'A',
    explored: constant(fuseA),
    wanted: carried,
    mend: largestFuseOn(conductor)?.ratingA,
  };
}
