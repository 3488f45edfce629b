import { present } from '#basics/present.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Values } from '../assumption.ts';
import { nearlyRound } from '../grain.ts';
import { type Conductor, conductorsSold } from './conductor.ts';
import { fuseLeast } from './rules.ts';
import { carriesA } from './surroundings.ts';
import { bladeColours, fuseFactor, fuseSeries } from './tables.ts';

/** A standard fuse. */
export interface Fuse {
  readonly ratingA: number;
  /** "blade", "small bolt-down". */
  readonly series: string;
  /** Of a blade fuse. */
  readonly colour?: string;
}

const fuseOf = (ratingA: number): Fuse => ({
  ratingA,
  series: fuseSeries.find(s => s.ratingsA.includes(ratingA))?.name ?? 'bolt-down',
  colour: bladeColours[ratingA],
});

/** Every rating that is sold, small to large, A. */
export const fuseRatingsA: readonly number[] = [...new Set(fuseSeries.flatMap(s => s.ratingsA))].sort(
  (a, b) => a - b,
);

/** The next standard rating above 125 % of a continuous current (A); beyond the series, in steps of 100 A. */
export function fuseFor(continuousA: number, trace?: Trace): Fuse {
  const least = run(fuseLeast, { k_f: fuseFactor, I: continuousA }, trace);
  // A grain of grace, so that 125 % of a round number is round in binary too.
  const ratingA = fuseRatingsA.find(a => a >= least * (1 - nearlyRound)) ?? Math.ceil(least / 100) * 100;
  trace?.lookup({
    name: 'fuseRating',
    says: `next standard rating from ${Math.round(least * 10) / 10} A`,
    value: ratingA,
    unit: 'A',
    source: 'ISO 8820-3 blades, bolt-down series',
  });
  return fuseOf(ratingA);
}

/** The largest standard fuse that a conductor may have where it lies: never above what it carries. Undefined for hair-thin wire. */
export function largestFuseOn(conductor: Conductor, values?: Values, trace?: Trace): Fuse | undefined {
  const carried = carriesA(conductor, values, trace);
  const ratingA = fuseRatingsA.filter(a => a <= carried).at(-1);
  return ratingA === undefined ? undefined : fuseOf(ratingA);
}

/** A fuse between its load and its cable. */
export interface Protected {
  /** As large as the load asks for. */
  readonly wanted: Fuse;
  /** As the cable allows: never more than it carries. Without a cable, the one wanted. */
  readonly fuse: Fuse;
  /** There is a rating that holds the load and protects the cable. */
  readonly fits: boolean;
  /** The smallest metric size that carries the fuse wanted, mm². */
  readonly leastAreaMm2: number;
}

/** The fuse for a continuous current (A) on a conductor, where told. Takes the assumptions of `surroundingAssumptions`, if any. */
export function protect(
  continuousA: number,
  conductor?: Conductor,
  values?: Values,
  trace?: Trace,
): Protected {
  const wanted = fuseFor(continuousA, trace);
  const sold = conductorsSold('metric');
  const leastAreaMm2 = (sold.find(c => carriesA(c, values) >= wanted.ratingA) ?? present(sold.at(-1)))
    .areaMm2;
  if (conductor === undefined) return { wanted, fuse: wanted, fits: true, leastAreaMm2 };
  const largest = largestFuseOn(conductor, values, trace);
  const fits = (largest?.ratingA ?? 0) >= wanted.ratingA;
  return { wanted, fuse: fits ? wanted : (largest ?? fuseOf(present(fuseRatingsA[0]))), fits, leastAreaMm2 };
}
