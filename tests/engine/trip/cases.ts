import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { simulate, type Trip, type TripResult, tripAssumptions } from '#engine/trip/model.ts';
import type { Chemistry } from '#rig/rig.ts';

/** A trip with a steady use, changed where a test says so. */
export function tripWith(
  changes: Partial<Trip> & { readonly ah?: number; readonly chemistry?: Chemistry; readonly useAh?: number },
): Trip {
  const { ah = 100, chemistry = 'agm', useAh = 24, ...rest } = changes;
  const bank = present(bankOf([{ count: 1, capacityAh: ah, chemistry }]));
  return {
    bank,
    use: { loads: [], dailyUseAh: useAh, voltageV: bank.voltageV },
    durationH: 72,
    ...rest,
  };
}

/** The likely value of every assumption of a trip. */
export const likelyOf = (trip: Trip): Record<string, number> =>
  Object.fromEntries(tripAssumptions(trip).map(a => [a.name, a.value]));

export const likelyRun = (trip: Trip): TripResult => simulate(trip, likelyOf(trip));
