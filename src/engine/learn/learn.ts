import { present } from '#basics/present.ts';
import { dust } from '../grain.ts';
import { predict } from './predict.ts';
import { type RigReading, type Seen, seenIn } from './reading.ts';
import { readingWeight, surprise } from './rules.ts';
import { type ByPart, byPart, covAt, type Expected, type Learned, place, unlearned } from './state.ts';
import { rough, surprising } from './tables.ts';

/** What became of a reading. */
export type TaughtBy =
  /** It fits, and was learnt from. */
  | 'taken'
  /** It fits nothing that is known: nothing was learnt. */
  | 'odd'
  /** It agrees with an odd one before: the level was moved there, and nothing else. */
  | 'moved'
  /** It held nothing to learn from, or came late. */
  | 'nothing';

export interface Lesson {
  readonly learned: Learned;
  readonly taken: TaughtBy;
  /** What the level was expected to be, share missing, and how sure (a standard deviation). */
  readonly expected: { readonly missing: number; readonly sd: number };
}

/** The variance of what is expected of a number, and how it hangs together with each part of the state. */
function hanging({ cov }: Learned, slope: ByPart): { readonly own: number; readonly with: ByPart } {
  const along = byPart(i => slope.reduce((sum, by, j) => sum + covAt(cov, i, j) * by, 0));
  return { own: along.reduce((sum, x, i) => sum + x * present(slope[i]), 0), with: along };
}

/** How far a number is from what was expected, in standard deviations. */
function oddity(learned: Learned, seen: Seen): number {
  const P = Math.max(dust ** 2, hanging(learned, seen.slope).own);
  return surprise.evaluate({ z: seen.value, h: seen.expected, P, R: seen.variance });
}

/** No more is missing than all, and no less than nothing. */
const within = ([missing, ...rest]: ByPart): ByPart => [Math.min(1, Math.max(0, missing)), ...rest];

/** The estimate after one number: what surprises counts for less (Huber's weights). */
function updated(learned: Learned, seen: Seen): Learned {
  const { own, with: along } = hanging(learned, seen.slope);
  if (own < dust ** 2) return learned;
  const off = oddity(learned, seen);
  const trust = off > surprising.less ? surprising.less / off : 1;
  const weight = trust * readingWeight.evaluate({ P: own, R: seen.variance });
  const gap = seen.value - seen.expected;
  const cov = [...learned.cov];
  for (const [i, a] of along.entries())
    for (const [j, b] of along.entries())
      if (j >= i) cov[place(i, j)] = covAt(cov, i, j) - (weight * a * b) / own;
  const mean = byPart(i => present(learned.mean[i]) + (weight * present(along[i]) * gap) / own);
  return { ...learned, mean: within(mean), cov };
}

/** Twice what a gauge is rough by, as a variance: one reading may be a point or two off, and late. */
const anew = (2 * rough.percent) ** 2;

/**
 * The level put anew where a reading has it, as if nothing had been known of it: no surer than the reading is, or than
 * twice what a gauge is rough by. It hangs on nothing but what the reading is told by: Ah on what the battery holds.
 */
function movedTo(
  learned: Learned,
  missing: number,
  { slope, variance }: Pick<Seen, 'slope' | 'variance'>,
): Learned {
  const [, ...others] = learned.mean;
  const by = byPart(i => (i === 0 ? 0 : -present(slope[i]) / slope[0]));
  const { own, with: along } = hanging(learned, by);
  const cov = [...learned.cov];
  for (const [j, a] of along.entries())
    cov[place(0, j)] = j === 0 ? own + Math.max(anew, variance / slope[0] ** 2) : a;
  return { ...learned, mean: [missing, ...others], cov };
}

/**
 * What is known of a rig after a reading. Pure: state in, reading in, state out; the time comes with the reading.
 * A recursive estimate (an extended Kalman filter) over the engine's own expectation: it knows the level, the draw by
 * day and by night, the capacity and the sun, each with its uncertainty and how they hang together.
 */
export function learn(known: Learned | undefined, reading: RigReading, expected: Expected): Lesson {
  const start = known ?? unlearned(reading.at);
  const ahead = predict(start, expected, reading.at);
  const told = { missing: ahead.mean[0], sd: Math.sqrt(Math.max(0, covAt(ahead.cov, 0, 0))) };
  const seen = seenIn(reading, ahead.mean, expected);
  const [first] = seen;
  if (!first || reading.at < start.at) return { learned: start, taken: 'nothing', expected: told };
  const isLevel = first.what === 'level';
  const moved = (): Lesson => {
    const missing = present(first.missing);
    const [, ...others] = ahead.mean;
    const there = present(seenIn(reading, [missing, ...others], expected)[0]);
    const { odd: _odd, ...rest } = movedTo(ahead, missing, there);
    return { learned: { ...rest, readings: start.readings + 1 }, taken: 'moved', expected: told };
  };
  if (isLevel && known && isCharged(start, ahead, first, expected)) return moved();
  const isOdd = isLevel && oddity(ahead, first) > surprising.odd;
  if (!isOdd) {
    let next = updated(ahead, first);
    // The second number of a reading is looked at in the light of the first.
    for (const one of seenIn(reading, next.mean, expected).slice(1)) next = updated(next, one);
    const { odd: _odd, ...rest } = next;
    return { learned: { ...rest, readings: start.readings + 1 }, taken: 'taken', expected: told };
  }
  if (start.odd && agrees(start, start.odd, reading.at, present(first.missing), expected)) return moved();
  const odd = { at: reading.at, missing: present(first.missing) };
  return { learned: { ...ahead, odd }, taken: 'odd', expected: told };
}

/**
 * Whether something charged it that nobody told of: it is fuller than expected, past what is surprising, or fuller than
 * it was with no sun to fill it. That is likelier than that all of it drew so much less, so nothing is learnt of the draw.
 */
function isCharged(start: Learned, ahead: Learned, seen: Seen, { sunAh }: Expected): boolean {
  const missing = present(seen.missing);
  const isFuller = missing < ahead.mean[0];
  const isFilled = sunAh.every(ah => ah === 0) && start.mean[0] - missing > surprising.rise;
  return isFuller && (isFilled || oddity(ahead, seen) > surprising.charged);
}

/** Whether a level is where an odd reading before leads to. */
function agrees(
  start: Learned,
  odd: NonNullable<Learned['odd']>,
  at: number,
  missing: number,
  expected: Expected,
): boolean {
  const from = movedTo({ ...start, at: odd.at }, odd.missing, { slope: [1, 0, 0, 0, 0], variance: anew });
  const there = predict(from, expected, at);
  return Math.abs(there.mean[0] - missing) < 2.5 * Math.sqrt(covAt(there.cov, 0, 0) + anew);
}
