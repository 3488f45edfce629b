import { present } from '#basics/present.ts';
import { offeredCurrentA } from './charge-volts.ts';
import type { Charging } from './charging.ts';
import { missingAfterH } from './fill.ts';

/**
 * Places of the numbers of one step. They stand in an array of plain numbers, so that a loop over hours makes nothing:
 * numbers that go through a call would each be put on the heap.
 */
export const place = {
  /** In: Ah missing, A offered as amps, W offered (less what loads take), h. */
  missingAh: 0,
  offeredA: 1,
  powerW: 2,
  hours: 3,
  /** Out: what the offer comes to, A, and the Ah missing after it. */
  currentA: 4,
  leftAh: 5,
} as const;

/** The numbers of a step, all nought. */
export const newStep = (): Float64Array => new Float64Array(6);

/** Charges a battery for some hours (one at most, so that its volts hardly move). */
export function chargeStep(battery: Charging, step: Float64Array): void {
  const missingAh = present(step[place.missingAh]);
  const currentA = offeredCurrentA(
    battery,
    missingAh,
    present(step[place.offeredA]),
    present(step[place.powerW]),
  );
  step[place.currentA] = currentA;
  step[place.leftAh] = missingAfterH(battery, missingAh, currentA, present(step[place.hours]));
}
