import type { Range } from '#quantity/range.ts';
import type { Heard } from './dispute.ts';

/** What comes of an argument: nearest claim first. */
export interface Judgement {
  readonly ranked: readonly Heard[];
  /** Claims within the range: those that may be right. */
  readonly fair: readonly Heard[];
  /** Not even the nearest is anywhere near. */
  readonly isNeither: boolean;
}

/** Beyond the range by more than this factor nobody is called right. */
const nearBy = 1.3;

/** How far apart two amounts are, as a factor's logarithm: half is as far off as double. */
const apart = (a: number, b: number): number => Math.abs(Math.log(Math.max(a, 1e-9) / Math.max(b, 1e-9)));

/** How far a claim is outside of the range; 0 within. */
const outside = (value: number, { low, high }: Range): number =>
  value < low ? apart(value, low) : value > high ? apart(value, high) : 0;

/** A hair of tolerance: claims are round numbers. */
const rounding = 0.02;

/** Ranks claims by how near they are to the answer. */
export function judge(claims: readonly Heard[], answer: Range): Judgement {
  const ranked = [...claims].sort((a, b) => apart(a.value, answer.value) - apart(b.value, answer.value));
  return {
    ranked,
    fair: ranked.filter(c => outside(c.value, answer) <= rounding),
    isNeither: ranked.length > 0 && ranked.every(c => outside(c.value, answer) > Math.log(nearBy)),
  };
}
