import { applianceOf } from '#catalog/appliances.ts';
import { dropOn } from '#engine/cable/choose.ts';
import {
  type Circuit,
  type CircuitKind,
  circuitAssumptions,
  circuitCurrents,
  circuitUseOf,
} from '#engine/cable/circuit.ts';
import { conductorAssumptions, conductorOf, conductorsSold } from '#engine/cable/conductor.ts';
import { dropLimits, fuseFactor } from '#engine/cable/tables.ts';
import { explore } from '#engine/explore.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { figure } from '../../figures.ts';
import { blocksIn, type FaultCase, type Finding, thing } from './finding.ts';

/** From this loss on (V at 12 V) things that cool or cut out early mind it. Common practice. */
const muchV = 0.4;

const isKnown = ({ loads = [] }: Facts): boolean =>
  loads.length > 0 && loads.every(load => load.currentA ?? load.powerW ?? applianceOf(load.name));

function kindOf(told: Facts): CircuitKind | undefined {
  if (told.cable?.currentA !== undefined) return 'told';
  if (told.inverter?.powerW !== undefined) return 'inverter';
  return isKnown(told) ? 'loads' : undefined;
}

/** What the cable told loses while the load runs. */
export function dropFinding(about: FaultCase): Finding | undefined {
  const { told, mainsV } = about;
  const conductor = conductorOf(told.cable);
  const lengthM = told.cable?.lengthM;
  const kind = kindOf(told);
  if (!conductor || lengthM === undefined || kind === undefined) return undefined;
  const blocks = blocksIn(about);
  const voltageV = blocks > 1 ? 24 : 12;
  const circuit: Circuit = {
    kind,
    use: 'general',
    facts: told,
    voltageV,
    mainsV,
  };
  const assumptions = [...conductorAssumptions(conductor), ...circuitAssumptions(circuit)];
  const oneWayM = told.cable?.isRoundTrip ? lengthM / 2 : lengthM;
  const explored = explore<'voltageDrop' | 'current'>(assumptions, 'voltageDrop', (values, trace) => {
    const { cableA, continuousA } = circuitCurrents(circuit, values, trace);
    const run = { lengthM: oneWayM, currentA: cableA, continuousA, voltageV };
    return {
      voltageDrop: dropOn(conductor, run, values, trace).dropV,
      current: cableA,
    };
  });
  const { voltageDrop, current } = explored.figures;
  const isCause = voltageDrop.value >= muchV * blocks;
  const allowedV = (dropLimits[circuitUseOf(kind, told)].value / 100) * voltageV;
  const wantedMm2 = (conductor.areaMm2 * voltageDrop.value) / Math.min(allowedV, muchV * blocks);
  const sold = conductorsSold('metric').find(({ areaMm2 }) => areaMm2 >= wantedMm2);
  const cure = sold ? `${plain(sold.areaMm2)} mm² cures it` : 'it wants a shorter run';
  const lost = `That cable loses about ${plain(voltageDrop.value)} V at ${plain(current.value)} A`;
  return {
    by: 'cable',
    isCause,
    says: `${lost}: ${isCause ? cure : 'thick enough, so look at its joints'}.`,
    ...(isCause && {
      likely: `Most likely the cable: it loses about ${plain(voltageDrop.value)} V at ${plain(current.value)} A.`,
      mend: `${cure}, with a fuse to suit.`,
    }),
    figures: { voltageDrop: figure(voltageDrop, 'V') },
    explored,
  };
}

/** A fuse told against what hangs on it. */
export function fuseFinding(about: FaultCase): Finding | undefined {
  const { told, mainsV } = about;
  const loads = told.loads?.filter(load => load.supply === 'dc') ?? [];
  const { fuseA } = told;
  const facts = { ...told, loads };
  if (fuseA === undefined || !isKnown(facts)) return undefined;
  const circuit: Circuit = {
    kind: 'loads',
    use: 'general',
    facts,
    voltageV: blocksIn(about) > 1 ? 24 : 12,
    mainsV,
  };
  const explored = explore<'current'>(circuitAssumptions(circuit), 'current', (values, trace) => ({
    current: circuitCurrents(circuit, values, trace).continuousA,
  }));
  const { current } = explored.figures;
  const holdsA = fuseA / fuseFactor;
  const isCause = current.value > holdsA;
  const draws = `about ${plain(current.value)} A runs through it (${thing(loads)})`;
  const over = `a ${significant(fuseA)} A fuse holds about ${plain(holdsA)} A for long`;
  return {
    by: 'fuse',
    isCause,
    says: isCause
      ? `${draws}, and ${over}: a cable and fuse of its own, sized together, mend it.`
      : `${draws}, and ${over}: so it’s no plain overload.`,
    figures: { current: figure(current, 'A') },
    explored,
  };
}
