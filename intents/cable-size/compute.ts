import { present } from '#basics/present.ts';
import type { Assumption } from '#engine/assumption.ts';
import { type FuseType, fuseSource, fuseTypeFor, sourceOf } from '#engine/cable/breaking.ts';
import { choosePair, type Drop, dropOn, type Pair, type Run } from '#engine/cable/choose.ts';
import {
  type Circuit,
  type CircuitKind,
  circuitAssumptions,
  circuitCurrents,
  circuitKindOf,
  circuitUseOf,
  startsForMinutes,
} from '#engine/cable/circuit.ts';
import { circuitVoltage } from '#engine/cable/circuit-volts.ts';
import {
  autoCableAreaMm2,
  type Conductor,
  conductorAssumptions,
  conductorOf,
  conductorsSold,
  gaugeFor,
  nearestGauge,
} from '#engine/cable/conductor.ts';
import { type Fuse, largestFuseOn, protect } from '#engine/cable/fuse.ts';
import { panelFuse } from '#engine/cable/fuse-kinds.ts';
import { bundleShareOf, carriesA, surroundingAssumptions } from '#engine/cable/surroundings.ts';
import { type CircuitUse, dropLimits } from '#engine/cable/tables.ts';
import { dcdcInputA } from '#engine/charging/charge.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import type { Range } from '#quantity/range.ts';
import type { Facts } from '#rig/rig.ts';
import { type PrintedStep, printStep } from '#rule/print.ts';
import type { RequestContext } from '../intent.ts';

type CableKey =
  | 'conductorArea'
  | 'voltageDrop'
  | 'voltageDropPercent'
  | 'fuseRating'
  | 'current'
  | 'continuous';

export interface CableSize extends Explored<CableKey> {
  readonly kind: CircuitKind;
  readonly use: CircuitUse;
  /** One way, m. */
  readonly lengthM: number;
  readonly isRoundTrip: boolean;
  /** What the drop is a share of, V. */
  readonly voltageV: number;
  /** What a DC-DC charger gives, A, where it takes in more. */
  readonly givesA?: number;
  /** What hangs on it draws most for minutes as it starts. */
  readonly isForStart: boolean;
  readonly limitPercent: number;
  readonly isLimitTold: boolean;
  /** As told, or as chosen. */
  readonly conductor: Conductor;
  readonly isGiven: boolean;
  /** The gauge (AWG = B&S) that does in its stead, or is nearest to the one told. */
  readonly gauge: number;
  /** What the conductor may carry, A, and the fuse of the circuit, A. */
  readonly carriesA: number;
  readonly fuseA: number;
  /** The fuse that the load asks for is no more than the conductor carries. */
  readonly doesFuseFit: boolean;
  readonly fuseType: FuseType;
  /** The size to take in a bundle of four to six, mm², where one is chosen. */
  readonly bundledAreaMm2?: number;
  /** Where the one told won't do: the square (mm²) and the gauge that do, by drop and by current. */
  readonly instead?: { readonly areaMm2: number; readonly gauge: number };
  readonly isByCurrent: boolean;
  readonly isTooMuch: boolean;
  /** "6 mm auto" beside "6 mm²": the drop on the real square, where both were named. */
  readonly square?: Drop & { readonly areaMm2: number };
  /** The same on auto cable of that number, where "6 mm" may be either. */
  readonly asAuto?: CableSize;
  /** Copper in auto cable of the trade size that sounds like the size told or chosen, mm². */
  readonly autoAreaMm2: number;
}

const isGaugeWord = (word: string): boolean => word === 'gauge' || word === 'awg';

/** A gauge where the person speaks in gauges. */
const unitOf = (
  facts: Facts,
  { parsed, units }: Pick<RequestContext, 'parsed' | 'units'>,
): 'metric' | 'gauge' =>
  (parsed.cues.has('bs-gauge') || units.cable === 'awg' || parsed.recognised.words.some(isGaugeWord)) &&
  facts.cable?.areaMm2 === undefined
    ? 'gauge'
    : 'metric';

/** Trade sizes of auto cable, mm. */
const autoSizes = { least: 2, most: 8 };

/**
 * Whether the size told may be the outside of auto cable, where people measure in metres: "6 mm", not "6 mm²".
 */
function isPerhapsAuto(
  { cable }: Facts,
  { parsed, units }: Pick<RequestContext, 'parsed' | 'units'>,
): boolean {
  const { areaMm2, autoCableMm } = cable ?? {};
  if (areaMm2 === undefined || autoCableMm !== undefined || units.length === 'ft' || units.cable === 'awg')
    return false;
  const isSold = areaMm2 >= autoSizes.least && areaMm2 <= autoSizes.most;
  const told = parsed.recognised.mentions.filter(m => m.kind === 'amount' && m.told === areaMm2);
  return isSold && told.some(m => m.unit === 'mm') && !told.some(m => m.unit === 'mm²');
}

/** The cable to take (mm²) for a run, or the drop (V, %) on the one that was told. */
export function computeCableSize(
  facts: Facts,
  setting: Pick<RequestContext, 'recalled' | 'parsed' | 'mainsV' | 'units'>,
): CableSize {
  const kind = present(circuitKindOf(facts, setting.recalled));
  const voltageV = circuitVoltage(facts);
  const use = circuitUseOf(kind, facts);
  const circuit: Circuit = { kind, use, facts, voltageV, mainsV: setting.mainsV };
  const cable = present(facts.cable);
  const lengthM = cable.isRoundTrip ? present(cable.lengthM) / 2 : present(cable.lengthM);
  const given = conductorOf(cable);
  const as = unitOf(facts, setting);
  const told = cable.dropLimitPercent;
  const usual = dropLimits[use];
  const limit: Assumption = { name: 'dropLimit', ...usual, unit: '%' };
  const assumptions = [
    ...conductorAssumptions(given ?? conductorsSold(as)[0], facts.ambientC),
    ...circuitAssumptions(circuit),
    ...(given ? [] : surroundingAssumptions(facts.ambientC)),
    ...(told === undefined && !given ? [limit] : []),
  ];
  const limitPercent = told ?? usual.value;
  const lies = likelyOf(surroundingAssumptions(facts.ambientC));
  let isByCurrent = false;
  let isTooMuch = false;
  let conductor = given;
  const main: CableKey = given ? 'voltageDrop' : 'conductorArea';
  const explored = explore<CableKey>(assumptions, main, (values, trace) => {
    const { cableA, continuousA, ofV } = circuitCurrents(circuit, values, trace);
    const about = { lengthM, currentA: cableA, continuousA, voltageV: ofV };
    if (given) {
      if (trace) conductorOf(cable, trace);
      const drop = dropOn(given, about, values, trace);
      const { fuse } = protect(continuousA, given, lies, trace);
      return asFigures({ ...drop, conductor: given, fuse }, about);
    }
    const pair = choosePair(about, as, { dropLimit: limitPercent, ...values }, trace);
    if (trace) ({ conductor, isByCurrent, isTooMuch } = pair);
    return asFigures(pair, about);
  });
  const { current, continuous } = explored.figures;
  const likely = likelyOf(assumptions);
  const { ratedA, cableA, ofV } = circuitCurrents(circuit, likely);
  const about = { lengthM, currentA: current.value, continuousA: continuous.value, voltageV: ofV };
  const bundled = { dropLimit: limitPercent, ...likely, bundleShare: bundleShareOf(4) };
  const fuse = protect(continuous.value, conductor, lies);
  const doing = (measure: 'metric' | 'gauge') =>
    choosePair(about, measure, { ...likely, ...lies, dropLimit: limitPercent });
  const does = given && doing('metric');
  return {
    ...explored,
    kind,
    use,
    lengthM,
    isRoundTrip: !!cable.isRoundTrip,
    voltageV: ofV,
    givesA: cableA > ratedA ? ratedA : undefined,
    isForStart: circuit.kind === 'loads' && facts.loads?.some(startsForMinutes) === true,
    limitPercent,
    isLimitTold: told !== undefined,
    conductor: present(conductor),
    isGiven: given !== undefined,
    gauge: given ? nearestGauge(given.areaMm2) : gaugeFor(present(conductor).areaMm2),
    carriesA: carriesA(present(conductor), lies),
    fuseA: fuse.wanted.ratingA,
    doesFuseFit: fuse.fits,
    fuseType:
      kind === 'solar'
        ? { kind: panelFuse, isTooStrong: false }
        : fuseTypeFor(
            fuse.wanted.ratingA,
            // Before a DC-DC charger it sits on the starter battery.
            cableA > ratedA ? fuseSource(voltageV) : sourceOf(facts, voltageV),
          ),
    bundledAreaMm2: given || isTooMuch ? undefined : choosePair(about, as, bundled).conductor.areaMm2,
    instead:
      does && !does.isTooMuch && does.conductor.areaMm2 > given.areaMm2 * 1.01
        ? { areaMm2: does.conductor.areaMm2, gauge: doing('gauge').conductor.size }
        : undefined,
    isByCurrent,
    isTooMuch,
    square:
      cable.autoCableMm !== undefined ? squareBeside(cable.areaMm2 ?? cable.autoCableMm, about) : undefined,
    asAuto: isPerhapsAuto(facts, setting)
      ? computeCableSize(
          { ...facts, cable: { ...cable, areaMm2: undefined, autoCableMm: cable.areaMm2 } },
          setting,
        )
      : undefined,
    autoAreaMm2: autoCableAreaMm2(cable.autoCableMm ?? present(conductor).areaMm2),
  };
}

/** What a DC-DC charger of a rating takes from its battery, A. */
export const takenByDcdcA = (ratedA: number): number => dcdcInputA(ratedA);

/** The next size up that is sold in the same measure; undefined beyond the thickest. */
export const nextThicker = ({ as, areaMm2 }: Conductor): Conductor | undefined =>
  conductorsSold(as === 'gauge' ? 'gauge' : 'metric').find(one => one.areaMm2 > areaMm2 * 1.01);

/** The next size down; undefined below the thinnest. */
export const nextThinner = ({ as, areaMm2 }: Conductor): Conductor | undefined =>
  conductorsSold(as === 'gauge' ? 'gauge' : 'metric').findLast(one => one.areaMm2 < areaMm2 * 0.99);

const asFigures = (pair: Drop & Pick<Pair, 'conductor' | 'fuse'>, about: Run) => ({
  conductorArea: pair.conductor.areaMm2,
  voltageDrop: pair.dropV,
  voltageDropPercent: pair.percent,
  fuseRating: pair.fuse.ratingA,
  current: about.currentA,
  continuous: about.continuousA,
});

/** The copper of auto cable by its trade size (mm), mm². */
export const copperOfAutoMm2 = (tradeMm: number): number => autoCableAreaMm2(tradeMm);

/** The drop on real mm², beside auto cable of the same number. */
function squareBeside(areaMm2: number, about: Parameters<typeof dropOn>[1]) {
  const conductor: Conductor = { areaMm2, as: 'metric', size: areaMm2 };
  const values = likelyOf(conductorAssumptions(conductor));
  return { areaMm2, ...dropOn(conductor, about, values) };
}

/** How far, one way (m), a conductor carries a current (A) until it loses so much of a circuit's volts. */
function farthest(conductor: Conductor, currentA: number, voltageV: number, wantedPercent?: number) {
  const values = likelyOf(conductorAssumptions(conductor));
  const { percent } = dropOn(conductor, { lengthM: 1, currentA, continuousA: currentA, voltageV }, values);
  const { low, high } = dropLimits.general;
  return {
    voltageV,
    wanted: wantedPercent && { percent: wantedPercent, lengthM: wantedPercent / percent },
    good: { percent: low, lengthM: low / percent },
    most: { percent: high, lengthM: high / percent },
  };
}

/** What a cable of a told size carries (A), the largest fuse that protects it, and how far it carries the current told. */
export function computeAmpacity(facts: Facts): {
  readonly areaMm2: number;
  readonly carries: Range;
  readonly far?: ReturnType<typeof farthest>;
  readonly fuse?: Fuse;
  readonly working: () => readonly PrintedStep[];
} {
  const conductor = present(conductorOf(facts.cable));
  const lies = surroundingAssumptions(facts.ambientC);
  const { figures, trace } = explore<'carries'>(lies, 'carries', (values, trace) => {
    if (trace) conductorOf(facts.cable, trace);
    return { carries: carriesA(conductor, values, trace) };
  });
  const likely = likelyOf(lies);
  // Nobody knows what insulation is on the reel; the better one carries more.
  const high = carriesA(conductor, likely, undefined, 105);
  const wantedA = facts.cable?.currentA;
  return {
    areaMm2: conductor.areaMm2,
    carries: { ...figures.carries, high },
    ...(wantedA && {
      far: farthest(conductor, wantedA, circuitVoltage(facts), facts.cable?.dropLimitPercent),
    }),
    fuse: largestFuseOn(conductor, likely),
    working: () => trace.steps.map(printStep),
  };
}
