import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import type { Chemistry } from '#rig/rig.ts';
import type { Trace } from '#rule/trace.ts';
import { chargingAboveV, type RestRow, restVolts } from './rest-table.ts';
import { chemistryRow } from './tables.ts';

/** How many 12 V blocks in series a reading (V) belongs to: 6 V gives ½, 25 V gives 2, 52 V gives 4. */
export function blocksOf(volts: number): number {
  if (volts > 0 && volts < 7.8) return 0.5;
  return volts <= 17 ? 1 : 2 * Math.round(volts / 25.2);
}

/** Percent at which a column of the table reads `volts`; 0 below it, 100 above it. */
function percentAt(table: readonly RestRow[], column: 1 | 2 | 3, volts: number): number {
  let a: RestRow | undefined;
  for (const b of table) {
    if (b[column] >= volts)
      return a ? a[0] + ((b[0] - a[0]) * (volts - a[column])) / (b[column] - a[column]) : 0;
    a = b;
  }
  return 100;
}

/** Whether volts are too high for a battery at rest: a charger, the alternator or the sun holds them up. */
export const isOnCharge = (volts: number, chemistry: Chemistry, blocks = blocksOf(volts)): boolean =>
  volts / blocks > chargingAboveV[chemistry];

/**
 * State of charge (%) by resting volts: the likely one and the span of published tables. At 25 °C, hours
 * after charge and load. Without `blocks` (12 V ones in series) 6, 12, 24 and 48 V are told apart by the reading.
 */
export function chargeAtRest(
  volts: number,
  chemistry: Chemistry,
  trace?: Trace,
  blocks = blocksOf(volts),
): Range {
  const blockV = volts / blocks;
  const table = restVolts[chemistry];
  const value = percentAt(table, 2, blockV);
  trace?.lookup({
    name: 'stateOfCharge',
    says: `how full at rest, from the table of ${chemistry === 'lead-acid' ? 'lead-acid' : chemistryRow(chemistry).name} volts, ${Math.round(blockV * 100) / 100} V`,
    value,
    unit: '%',
    source: 'published resting voltages, common practice',
  });
  return {
    value,
    low: Math.min(value, percentAt(table, 3, blockV)),
    high: Math.max(value, percentAt(table, 1, blockV)),
  };
}

/** Resting volts (of a 12 V block) at a state of charge (%): the same table read the other way. */
export function restVoltsAt(percent: number, chemistry: Chemistry): number {
  let a: RestRow | undefined;
  for (const b of restVolts[chemistry]) {
    if (b[0] >= percent) return a ? a[2] + ((b[2] - a[2]) * (percent - a[0])) / (b[0] - a[0]) : b[2];
    a = b;
  }
  return present(a, 'a row of resting volts')[2];
}

const curves = new Map<Chemistry, Float64Array>();

/** Resting volts of a 12 V block at 0, 1, … 100 % of charge, for loops. */
export function restCurve(chemistry: Chemistry): Float64Array {
  const known = curves.get(chemistry);
  if (known) return known;
  const made = Float64Array.from({ length: 101 }, (_, percent) => restVoltsAt(percent, chemistry));
  curves.set(chemistry, made);
  return made;
}
