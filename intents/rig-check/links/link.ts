import { present } from '#basics/present.ts';
import type { Explored } from '#engine/explore.ts';
import { explore } from '#engine/explore.ts';
import type { RequestContext } from '../../intent.ts';

/** A part of a rig as far as it was checked. */
export type Part =
  | 'battery'
  | 'solar'
  | 'driving'
  | 'inverter'
  | 'battery-current'
  | 'charger'
  | 'charge-limit'
  | 'alternator'
  | 'isolator'
  | 'cable'
  | 'fuse';

export interface Link {
  readonly part: Part;
  /** What there is against what is asked of it: 1 just does. */
  readonly share: number;
  /** The figure that shows it, and what it should be, in its unit. */
  readonly name:
    | 'runTime'
    | 'dailyYield'
    | 'dailyGain'
    | 'acLoad'
    | 'batteryCurrent'
    | 'chargerCurrent'
    | 'inputCurrent'
    | 'voltageDrop'
    | 'fuseRating';
  readonly unit: string;
  readonly explored: Explored<'figure'>;
  readonly wanted: number;
  /** What a full battery gives at these draws, Ah. */
  readonly holdsAh?: number;
  /** The size that would mend it, in the unit that the thing is sold by. */
  readonly mend?: number;
  /** What else comes in a day, Ah, besides what the link is about. */
  readonly besidesAh?: number;
}

export type At = Pick<RequestContext, 'at' | 'mainsV'>;

export const single = (found: Explored<string>, key: string): Explored<'figure'> => ({
  figures: { figure: present(found.figures[key]) },
  ranked: found.ranked,
  trace: found.trace,
});

/** A figure that was told. */
export const constant = (value: number): Explored<'figure'> =>
  explore([], 'figure', () => ({ figure: value }));
