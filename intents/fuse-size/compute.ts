import { present } from '#basics/present.ts';
import type { Assumption, Values } from '#engine/assumption.ts';
import { type FuseSource, type FuseType, fuseSource, fuseTypeFor, sourceOf } from '#engine/cable/breaking.ts';
import { choosePair, type Drop, dropOn, type Pair, type Run } from '#engine/cable/choose.ts';
import {
  behindController,
  type Circuit,
  type CircuitKind,
  circuitAssumptions,
  circuitCurrents,
  circuitKindOf,
  circuitUseOf,
  hasMotor,
} from '#engine/cable/circuit.ts';
import { circuitVoltage } from '#engine/cable/circuit-volts.ts';
import { type Conductor, conductorAssumptions, conductorOf } from '#engine/cable/conductor.ts';
import { fuseFor, largestFuseOn, type Protected, protect } from '#engine/cable/fuse.ts';
import { branchA, panelFuse } from '#engine/cable/fuse-kinds.ts';
import { carriesA, surroundingAssumptions } from '#engine/cable/surroundings.ts';
import { brightSunFactor, dropLimits, fuseFactor } from '#engine/cable/tables.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import type { Facts } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';

export { fuseFactor } from '#engine/cable/tables.ts';

type FuseKey = 'fuseRating' | 'current';

/** A fuse at the house battery. */
interface BankFuse {
  readonly ratingA: number;
  readonly type: FuseType;
  /** It sits on the bank itself and not in a block behind the main fuse. */
  readonly isMain: boolean;
}

export interface FuseSize extends Explored<FuseKey> {
  /** Absent: only the cable is known. */
  readonly kind?: CircuitKind;
  readonly conductor?: Conductor;
  /** What the cable may carry where it lies, A. */
  readonly carriesA?: number;
  readonly found: Protected;
  /** What kind of fuse it is, and what it sits on. */
  readonly type: FuseType;
  readonly source: FuseSource;
  /** Nominal, V. */
  readonly voltageV: number;
  /** It sits on the bank itself. */
  readonly isMain: boolean;
  /** 125 % of the current, A. */
  readonly leastA: number;
  readonly hasMotor: boolean;
  /** The largest fuse that the cable told may have, A. */
  readonly mostA?: number;
  /** The fuse spoken of, A. */
  readonly saidA?: number;
  /** The thinnest copper that the fuse spoken of guards, where no cable is told and this message speaks of it, mm². */
  readonly saidAreaMm2?: number;
  /** Rated current, where the fuse has to stand more of it, A. */
  readonly ratedA?: number;
  /** What the panels' label has, into a short, A. */
  readonly panelShortA?: number;
  /** Of panels and DC-DC chargers: the other fuse, at the house battery. */
  readonly atBank?: BankFuse;
  /** The cable that goes with it, where its length (one way, m) is told and its size is not. */
  readonly pair?: Pair & { readonly lengthM: number };
  /** What is lost on the cable told, where its length (one way, m) is told too. */
  readonly drop?: Drop & { readonly lengthM: number };
}

/** The fuse (A) for what hangs on it, never above what its cable carries. */
export function computeFuseSize(
  facts: Facts,
  setting: Pick<RequestContext, 'recalled' | 'mainsV'>,
): FuseSize {
  const kind = circuitKindOf(facts, setting.recalled);
  const conductor = conductorOf(facts.cable);
  const surroundings = conductor ? surroundingAssumptions(facts.ambientC) : [];
  const lies = likelyOf(surroundings);
  const voltageV = circuitVoltage(facts);
  const source = sourceOf(facts, voltageV);
  const shared = {
    conductor,
    carriesA: conductor && carriesA(conductor, lies),
    mostA: conductor && largestFuseOn(conductor, lies)?.ratingA,
    saidA: facts.fuseA,
    // `protect` takes what runs for long, and finds the fuse above it.
    saidAreaMm2:
      facts.fuseA === undefined || conductor || setting.recalled.has('fuseA')
        ? undefined
        : protect(facts.fuseA / fuseFactor).leastAreaMm2,
    source,
    voltageV,
  };
  if (kind === undefined) return { ...byCable(present(conductor), surroundings, source), ...shared };
  const circuit: Circuit = { kind, use: circuitUseOf(kind, facts), facts, voltageV, mainsV: setting.mainsV };
  const assumptions = [...circuitAssumptions(circuit), ...surroundings];
  const explored = explore<FuseKey>(assumptions, 'fuseRating', (values, trace) => {
    const { continuousA } = circuitCurrents(circuit, values, trace);
    const { fuse } = protect(continuousA, conductor, values, trace);
    return { fuseRating: fuse.ratingA, current: continuousA };
  });
  const likely = likelyOf(assumptions);
  const { ratedA, continuousA } = circuitCurrents(circuit, likely);
  // What a DC-DC charger takes in comes from the starter battery; the house bank is at its other end.
  const otherA = kind === 'solar' ? behindController(circuit) : continuousA > ratedA ? ratedA : undefined;
  const atBank = otherA === undefined ? undefined : bankFuse(fuseFor(otherA).ratingA, source);
  const found = protect(explored.figures.current.value, conductor, lies);
  return {
    ...explored,
    ...shared,
    kind,
    found,
    type: typeOf(kind, atBank ? fuseSource(voltageV) : source, found.wanted.ratingA),
    isMain: found.wanted.ratingA > branchA,
    leastA: fuseFactor * explored.figures.current.value,
    hasMotor: hasMotor(facts),
    ratedA: continuousA > ratedA ? ratedA : undefined,
    pair: conductor ? undefined : pairFor(circuit, likely),
    drop: conductor && dropFor(conductor, circuit, likely),
    panelShortA: kind === 'solar' ? continuousA / brightSunFactor : undefined,
    atBank,
  };
}

const typeOf = (kind: CircuitKind, source: FuseSource, ratingA: number): FuseType =>
  kind === 'solar' ? { kind: panelFuse, isTooStrong: false } : fuseTypeFor(ratingA, source);

/** A fuse of a rating (A) at a bank. */
const bankFuse = (ratingA: number, source: FuseSource): BankFuse => ({
  ratingA,
  type: fuseTypeFor(ratingA, source),
  isMain: ratingA > branchA,
});

/** How a circuit's cable is run, where its length is told. */
function runOf(circuit: Circuit, likely: Values): Run | undefined {
  const { lengthM: told, isRoundTrip } = circuit.facts.cable ?? {};
  if (told === undefined) return undefined;
  const { cableA, continuousA, ofV } = circuitCurrents(circuit, likely);
  return { lengthM: isRoundTrip ? told / 2 : told, currentA: cableA, continuousA, voltageV: ofV };
}

/** What is lost on a cable that is told whole. */
function dropFor(conductor: Conductor, circuit: Circuit, likely: Values): FuseSize['drop'] {
  const about = runOf(circuit, likely);
  if (!about) return undefined;
  const values = likelyOf(conductorAssumptions(conductor, circuit.facts.ambientC));
  return { ...dropOn(conductor, about, values), lengthM: about.lengthM };
}

/** The cable for a fuse's circuit, where its length is told. */
function pairFor(circuit: Circuit, likely: Values): FuseSize['pair'] {
  const about = runOf(circuit, likely);
  if (!about) return undefined;
  const { ambientC, cable } = circuit.facts;
  const taken = [...conductorAssumptions(undefined, ambientC), ...surroundingAssumptions(ambientC)];
  const values = {
    dropLimit: cable?.dropLimitPercent ?? dropLimits[circuit.use].value,
    ...likelyOf(taken),
  };
  return { ...choosePair(about, 'metric', values), lengthM: about.lengthM };
}

/** The largest fuse that a cable alone allows. */
function byCable(conductor: Conductor, surroundings: Assumption[], source: FuseSource) {
  const explored = explore<FuseKey>(surroundings, 'fuseRating', (values, trace) => ({
    fuseRating: largestFuseOn(conductor, values, trace)?.ratingA ?? 1,
    current: 0,
  }));
  const lies = likelyOf(surroundings);
  const fuse = largestFuseOn(conductor, lies) ?? protect(0.1).fuse;
  return {
    ...explored,
    found: { wanted: fuse, fuse, fits: true, leastAreaMm2: conductor.areaMm2 },
    type: fuseTypeFor(fuse.ratingA, source),
    isMain: fuse.ratingA > branchA,
    leastA: 0,
    hasMotor: false,
  };
}
