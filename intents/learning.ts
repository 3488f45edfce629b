import { present } from '#basics/present.ts';
import { isOnCharge } from '#engine/battery/rest.ts';
import { type Findings, findings } from '#engine/learn/findings.ts';
import { type Lesson, learn } from '#engine/learn/learn.ts';
import type { RigReading } from '#engine/learn/reading.ts';
import { type Expected, type Learned, type Part, without } from '#engine/learn/state.ts';
import type { LearnedFactor, LearnedOfRig, Rig, Stated } from '#rig/rig.ts';
import { factsOf } from './facts.ts';
import { readBlocks } from './level.ts';
import { expectedOfRig, markOf } from './rig-expected.ts';

/** What is kept of a rig: what was learnt, and of which gear. */
export type Kept = Learned & {
  readonly gear: readonly number[];
  readonly said?: readonly [draw: number, sun: number] | undefined;
};

const bare = ({ batteries }: Stated) =>
  batteries?.map(({ stateOfChargePercent: _level, ...battery }) => battery);

const gearKeys: readonly (readonly (keyof Rig)[])[] = [
  ['loads', 'dailyUseAh', 'dailyUseWh', 'inverter'],
  ['batteries', 'arrangement', 'systemVoltageV'],
  ['solar', 'mount', 'place', 'latitudeDeg', 'longitudeDeg'],
];

const partOf = (facts: Stated, key: keyof Rig): unknown => (key === 'batteries' ? bare(facts) : facts[key]);

/** Marks of loads, battery and panels. */
const gearOf = (rig: Rig): number[] =>
  gearKeys.map(keys => markOf(keys.map(key => partOf(rig, key) ?? null)));

/** Whether what a question goes by is this part of the rig's gear, so far as it goes by any of it. */
function isOfRig(facts: Stated, rig: Rig, part: number): boolean {
  const told = present(gearKeys[part]).filter(key => facts[key] !== undefined);
  return told.length > 0 && told.every(key => markOf(partOf(facts, key)) === markOf(partOf(rig, key)));
}

const partsOf: readonly (readonly Part[])[] = [['draw', 'byDay'], ['capacity'], ['sun']];

/** What was learnt, as far as it is of the gear that is there now. */
function ofGear(kept: Kept, gear: readonly number[]): Learned {
  const { gear: _gear, said: _said, ...learned } = kept;
  return without(
    learned,
    partsOf.flatMap((parts, i) => (kept.gear[i] === gear[i] ? [] : parts)),
  );
}

/** What of a message is a reading of this rig; undefined where it tells none, or tells of other gear. */
export function readingIn(told: Stated, rig: Rig, at: Date): RigReading | undefined {
  const { batteries = [], loads, dailyUseAh, dailyUseWh, solar } = told;
  if (loads || solar || dailyUseAh !== undefined || dailyUseWh !== undefined || batteries.length > 1)
    return undefined;
  const [battery] = batteries;
  const house = rig.batteries?.filter(one => one.role !== 'starter') ?? [];
  const chemistry = house.find(one => one.chemistry)?.chemistry;
  const isOther =
    battery?.role === 'starter' ||
    (battery?.capacityAh !== undefined && !house.some(one => one.capacityAh === battery.capacityAh)) ||
    (battery?.chemistry !== undefined && battery.chemistry !== chemistry);
  if (isOther) return undefined;
  const blocks = told.volts === undefined ? undefined : readBlocks(factsOf(rig), told.volts);
  const isRested = told.volts !== undefined && told.voltsTaken === 'rest' && chemistry !== undefined;
  const reading = {
    percent: battery?.stateOfChargePercent,
    restVolts: isRested && !isOnCharge(present(told.volts), chemistry, blocks) ? told.volts : undefined,
    usedAh: told.chargeUsedAh,
    leftAh: told.chargeLeftAh,
    netA: told.netCurrentA,
  };
  const isAny = Object.values(reading).some(value => value !== undefined);
  return isAny ? { at: at.getTime(), chemistry, blocks, ...reading } : undefined;
}

/** Readings closer than this tell nothing new, ms. */
const leastGapMs = 20 * 60_000;

/** A reading learnt from: what is kept after it, and what became of it. */
export interface Taught {
  readonly kept: Kept;
  readonly taken: Lesson['taken'];
  /** How full it was expected to be, %. */
  readonly expectedPercent: number;
  readonly found: Findings;
  readonly expected: Expected;
}

/** Learns from a reading of a rig; undefined where there is nothing to learn. */
export function learnFrom(
  kept: Kept | undefined,
  rig: Rig,
  reading: RigReading,
  at: Date,
): Taught | undefined {
  const expected = expectedOfRig(rig, at);
  if (!expected || (kept && reading.at - kept.at < leastGapMs)) return undefined;
  const gear = gearOf(rig);
  const lesson = learn(kept && ofGear(kept, gear), reading, expected);
  return {
    kept: { ...lesson.learned, gear, ...(kept?.said && { said: kept.said }) },
    taken: lesson.taken,
    expectedPercent: 100 * (1 - lesson.expected.missing),
    found: findings(lesson.learned, expected),
    expected,
  };
}

/** Readings before anything is gone by, and how wide its span may be at most: to be said, and to reckon with. */
const enough = {
  said: { readings: 3, span: 2, sunSpan: 2.6 },
  gone: { readings: 2, span: 3.8, sunSpan: 3.2 },
} as const;

const within = (factor: LearnedFactor, span: number): LearnedFactor | undefined =>
  factor.high / factor.low <= span ? factor : undefined;

/** What is sure enough to go by. */
export function sureOf(
  { readings, draw, byDay, capacity, sun }: Findings,
  hasSun: boolean,
  { readings: least, span, sunSpan }: (typeof enough)[keyof typeof enough] = enough.said,
): LearnedOfRig | undefined {
  const sure = within(draw, span);
  if (readings < least || !sure) return undefined;
  return {
    readings,
    draw: sure,
    byDay,
    capacity: within(capacity, span),
    sun: hasSun ? within(sun, sunSpan) : undefined,
  };
}

/**
 * How far the draw of the days to come is off the usual, whatever is known of a rig, as a logarithm at nine in ten:
 * some degrees of air at 3 % of a fridge's duty each, lids opened, evenings longer and shorter. Common practice.
 */
const daysToCome = 0.2;

/** A factor with what nobody can know of the days to come. */
function ahead({ value, low, high }: LearnedFactor): LearnedFactor {
  const wider = (end: number): number => Math.hypot(Math.log(end / value), daysToCome);
  return { value, low: value * Math.exp(-wider(low)), high: value * Math.exp(wider(high)) };
}

/** What was learnt of a rig that is sure enough to go by, of the gear that it was learnt of and no other. */
export function learnedNow(kept: Kept, rig: Rig, facts: Stated, at: Date): LearnedOfRig | undefined {
  const expected = expectedOfRig(rig, at);
  if (!expected) return undefined;
  const hasSun = expected.sunAh.some(ah => ah > 0);
  const sure = sureOf(findings(ofGear(kept, gearOf(rig)), expected), hasSun, enough.gone);
  if (!sure) return undefined;
  const found = {
    readings: sure.readings,
    ...(sure.draw && isOfRig(facts, rig, 0) && { draw: ahead(sure.draw), byDay: sure.byDay }),
    capacity: isOfRig(facts, rig, 1) ? sure.capacity : undefined,
    sun: isOfRig(facts, rig, 2) ? sure.sun : undefined,
  };
  return found.draw || found.capacity || found.sun ? found : undefined;
}
