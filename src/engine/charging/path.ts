import { present } from '#basics/present.ts';
import type { Chemistry } from '#rig/rig.ts';
import type { Bank } from '../battery/bank.ts';
import { chemistryRow } from '../battery/tables.ts';
import { dcdcSizesA, longRunM } from './tables.ts';

/** What bears on the choice between an isolator and a DC-DC charger; everything may be missing. */
export interface PathCase {
  readonly house?: Chemistry;
  readonly starter?: Chemistry;
  readonly alternator?: 'smart' | 'fixed';
  /** From the starter battery, one way, m. */
  readonly lengthM?: number;
  /** A panel shall charge through the same box. */
  readonly hasSolar?: boolean;
}

/** A reason for one of the two, as a code; the answer has the sentence. */
type PathReason =
  | 'lithium'
  | 'smart-alternator'
  | 'unlike-lead'
  | 'long-run'
  | 'fixed-alternator'
  | 'same-kind'
  | 'short-run'
  | 'alternator-unknown'
  | 'solar-input';

export interface Path {
  readonly recommendation: 'dcdc' | 'isolator';
  /** Strongest first; all speak for the recommendation. */
  readonly reasons: readonly PathReason[];
}

const isLead = (kind: Chemistry): boolean => kind !== 'lfp';

/**
 * Isolator or DC-DC charger (common practice): a plain relay only joins what likes the same voltage, on an
 * alternator that holds it, over a short run; everything else wants a charger of its own. With nothing known
 * of the alternator a DC-DC charger is right on either kind.
 */
export function recommendPath(about: PathCase): Path {
  const { house, starter = 'flooded', alternator, lengthM } = about;
  const forDcdc: PathReason[] = [];
  const forIsolator: PathReason[] = [];
  if (house === 'lfp' && isLead(starter)) forDcdc.push('lithium');
  if (alternator === 'smart') forDcdc.push('smart-alternator');
  if (house === 'gel') forDcdc.push('unlike-lead');
  if (lengthM !== undefined && lengthM > longRunM) forDcdc.push('long-run');
  if (alternator === 'fixed') forIsolator.push('fixed-alternator');
  if (house !== undefined && isLead(house) === isLead(starter)) forIsolator.push('same-kind');
  if (lengthM !== undefined && lengthM <= longRunM) forIsolator.push('short-run');
  if (forDcdc.length === 0 && alternator === undefined) forDcdc.push('alternator-unknown');
  if (forDcdc.length === 0) return { recommendation: 'isolator', reasons: forIsolator };
  if (about.hasSolar) forDcdc.push('solar-input');
  return { recommendation: 'dcdc', reasons: forDcdc };
}

/** The usual DC-DC charger for a bank, A: what its chemistry stands at most, and about a fifth of it as a rule. */
export function dcdcSizeFor(bank: Bank): number {
  const wantedA = Math.min(0.25, chemistryRow(bank.chemistry).chargeC) * bank.capacityAh;
  const fitting = dcdcSizesA.filter(size => size <= Math.max(wantedA, dcdcSizesA[0]));
  return present(fitting.at(-1));
}
