import { present } from '#basics/present.ts';
import { before } from './tables.ts';

/**
 * What is held of a rig: a Gaussian over five numbers, in this order. All but the first are logarithms of a factor on
 * what was told, so that 0 is "as told" and no factor falls below nought.
 */
export const parts = ['missing', 'draw', 'byDay', 'capacity', 'sun'] as const;
export type Part = (typeof parts)[number];
/** A number for each part, in their order. */
export type ByPart = readonly [missing: number, draw: number, byDay: number, capacity: number, sun: number];
export const size = parts.length;
/** Numbers in the upper triangle of the covariance, row after row. */
const covSize = (size * (size + 1)) / 2;

/** A reading that fitted nothing: it is believed if the next one agrees with it. */
interface Odd {
  /** ms since 1970. */
  readonly at: number;
  /** Share missing that it told. */
  readonly missing: number;
}

/** What has been learnt of a rig: plain numbers, of a fixed size. */
export interface Learned {
  /** Time of the last reading, ms since 1970. */
  readonly at: number;
  readonly mean: ByPart;
  readonly cov: readonly number[];
  /** Readings that were taken. */
  readonly readings: number;
  readonly odd?: Odd;
}

/** What the engine expects of a rig as told, for each hour of its day (24 numbers each). */
export interface Expected {
  /** On the label, Ah. */
  readonly capacityAh: number;
  /** Use, Ah. */
  readonly useAh: readonly number[];
  /** Sun that gets into the battery, Ah; all 0 without a panel. */
  readonly sunAh: readonly number[];
  /** Nothing in it switches on and off by itself: a glance at the amps tells the draw. */
  readonly isSteady?: boolean;
  /** Where its clock is, degrees east; default 0. */
  readonly longitudeDeg?: number;
}

/** Place of an entry of the covariance in its triangle. */
export const place = (i: number, j: number): number =>
  i <= j ? i * size - (i * (i - 1)) / 2 + j - i : place(j, i);

/** An entry of the covariance. */
export const covAt = (cov: readonly number[], i: number, j: number): number =>
  present(cov[place(i, j)], 'entry of a covariance');

/** A number for each part, made of its place. */
export const byPart = (of: (i: number) => number): ByPart => [of(0), of(1), of(2), of(3), of(4)];

/** Nothing learnt yet. @param at ms since 1970 */
export function unlearned(at: number): Learned {
  const cov = Array<number>(covSize).fill(0);
  for (const [i, part] of parts.entries()) cov[place(i, i)] = before[part].sd ** 2;
  return { at, mean: byPart(i => before[parts[i] ?? 'missing'].mean), cov, readings: 0 };
}

/** The same with some parts as unknown as before: the gear they are about is another now. */
export function without(learned: Learned, gone: readonly Part[]): Learned {
  if (gone.length === 0) return learned;
  const mean: [...ByPart] = [...learned.mean];
  const cov = [...learned.cov];
  for (const part of gone) {
    const i = parts.indexOf(part);
    mean[i] = before[part].mean;
    for (let j = 0; j < size; j++) cov[place(i, j)] = i === j ? before[part].sd ** 2 : 0;
  }
  return { at: learned.at, mean, cov, readings: learned.readings };
}
