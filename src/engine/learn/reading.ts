import { present } from '#basics/present.ts';
import type { Chemistry } from '#rig/rig.ts';
import { chargeAtRest } from '../battery/rest.ts';
import { hourAt, isDay } from './predict.ts';
import type { ByPart, Expected } from './state.ts';
import { rough } from './tables.ts';

/** Something read off a rig at a moment. */
export interface RigReading {
  /** ms since 1970. */
  readonly at: number;
  /** How full, %. */
  readonly percent?: number;
  /** Volts at rest, of the whole battery. */
  readonly restVolts?: number;
  /** 12 V blocks in series that they are of; absent: by the volts. */
  readonly blocks?: number;
  readonly chemistry?: Chemistry;
  readonly usedAh?: number;
  readonly leftAh?: number;
  /** Into the battery; minus is out of it. */
  readonly netA?: number;
}

/** One number of a reading beside what is expected of it: the expectation, how it hangs on the state, and its variance. */
export interface Seen {
  readonly what: 'level' | 'amps';
  readonly value: number;
  readonly expected: number;
  readonly slope: ByPart;
  readonly variance: number;
  /** What it says is missing, as a share. */
  readonly missing?: number;
}

const level = (missing: number, mean: ByPart, sd: number): Seen => ({
  what: 'level',
  value: missing,
  expected: mean[0],
  slope: [1, 0, 0, 0, 0],
  variance: (missing > nearlyFlat ? sd + rough.flat : sd) ** 2,
  missing,
});

/** Nearly flat, a cut-out may have stopped all draw: how far down it went tells less of what was drawn. */
const nearlyFlat = 0.9;

/** What is left by the counter in a lithium battery, which knows what its cells hold (common practice). */
function leftOf(leftAh: number, mean: ByPart, { capacityAh }: Expected): Seen {
  const held = Math.exp(mean[3]) * capacityAh;
  const expected = (1 - mean[0]) * held;
  return {
    what: 'level',
    value: leftAh,
    expected,
    slope: [-held, 0, 0, expected, 0],
    variance: rough.usedAh ** 2 + (rough.leftShare * capacityAh) ** 2,
    missing: Math.min(1, Math.max(0, 1 - leftAh / held)),
  };
}

/** What is missing by amp hours counted: these know nothing of what the battery really holds. */
function counted(usedAh: number, mean: ByPart, { capacityAh }: Expected): Seen {
  const held = Math.exp(mean[3]) * capacityAh;
  const expected = mean[0] * held;
  return {
    what: 'level',
    value: usedAh,
    expected,
    slope: [held, 0, 0, expected, 0],
    variance: rough.usedAh ** 2 + (rough.usedShare * capacityAh) ** 2,
    missing: Math.min(1, Math.max(0, usedAh / held)),
  };
}

/** What flows at a glance. */
function flowing({ netA, at }: RigReading, mean: ByPart, expected: Expected): Seen | undefined {
  if (netA === undefined) return undefined;
  const hour = Math.floor(hourAt(at, expected.longitudeDeg));
  const side = isDay(hour) ? 1 : -1;
  const out = Math.exp(mean[1] + side * mean[2]) * present(expected.useAh[hour]);
  const sun = Math.exp(mean[4]) * present(expected.sunAh[hour]);
  // A full battery takes what it likes.
  if (sun > 0 && mean[0] < 0.1) return undefined;
  const share = expected.isSteady ? rough.steadyAmps : rough.cyclingAmps;
  return {
    what: 'amps',
    value: netA,
    expected: sun - out,
    slope: [0, -out, -side * out, 0, sun],
    variance: (share * out) ** 2 + (rough.sunAmps * sun) ** 2 + rough.leastAmps ** 2,
  };
}

/** The numbers of a reading, the level first: one of it, the surest. */
export function seenIn(reading: RigReading, mean: ByPart, expected: Expected): Seen[] {
  const { percent, restVolts, chemistry, blocks, usedAh, leftAh } = reading;
  const found: (Seen | undefined)[] = [];
  if (usedAh !== undefined) found.push(counted(usedAh, mean, expected));
  else if (percent !== undefined) found.push(level(1 - percent / 100, mean, rough.percent));
  else if (leftAh !== undefined && chemistry === 'lfp') found.push(leftOf(leftAh, mean, expected));
  // On lead a counter is set by the label.
  else if (leftAh !== undefined) found.push(counted(expected.labelAh - leftAh, mean, expected));
  else if (restVolts !== undefined) {
    const { value, low, high } = chargeAtRest(restVolts, chemistry ?? 'agm', undefined, blocks);
    found.push(level(1 - value / 100, mean, Math.max(rough.restVolts, (high - low) / 100 / rough.restSpan)));
  }
  found.push(flowing(reading, mean, expected));
  return found.filter(one => one !== undefined);
}
