import { present } from '#basics/present.ts';
import type { Load } from '#rig/rig.ts';
import { builtAs } from '../loads/build.ts';
import { dutyAt, usualCooler } from '../loads/cooler.ts';
import type { Day, LoadUse } from '../loads/model.ts';
import { dailySwing, eveningHour } from './tables.ts';

/** Hours of a day. */
export const dayHours = 24;
const flat: readonly number[] = Array<number>(dayHours).fill(1 / dayHours);

/** Shares of a day (24, sum 1) of a thing that is on for `hours`, split evenly over the hours it is switched on at. */
export function sharesOf(switchedOn: readonly number[], hours: number): readonly number[] {
  if (hours >= dayHours || hours <= 0) return flat;
  const shares = Array<number>(dayHours).fill(0);
  const eachH = hours / switchedOn.length;
  for (const start of switchedOn)
    for (let h = Math.floor(start); h < start + eachH; h++) {
      const overlap = Math.min(h + 1, start + eachH) - Math.max(h, start);
      shares[h % dayHours] = present(shares[h % dayHours]) + overlap / hours;
    }
  return shares;
}

/** Air temperature (°C) in an hour of the day, about a mean. */
const airAt = (hour: number, meanC: number): number =>
  meanC + dailySwing.kelvin * Math.cos((2 * Math.PI * (hour + 0.5 - dailySwing.peakHour)) / dayHours);

/** Days of compressors made lately: a trip asks for the same few some fifty times. */
const made = new Map<string, readonly number[]>();
const mostMade = 64;

/** Shares of a day of a compressor: more in the heat, by the same law as its duty. */
export function coolerShares(setPointC: number, meanC: number): readonly number[] {
  const key = `${setPointC} ${meanC}`;
  const known = made.get(key);
  if (known) return known;
  if (made.size >= mostMade) made.clear();
  const shares = newShares(setPointC, meanC);
  made.set(key, shares);
  return shares;
}

function newShares(setPointC: number, meanC: number): readonly number[] {
  const cooler = usualCooler(setPointC);
  const duties = flat.map((_, hour) => dutyAt(cooler, airAt(hour, meanC)));
  const sum = duties.reduce((a, b) => a + b, 0);
  return duties.map(duty => duty / sum);
}

function sharesFor(load: Load, hours: number, meanC: number): readonly number[] {
  // A household fridge has its own set point, a three-way one heats all day.
  const { row } = builtAs(load);
  if (row?.setPointC !== undefined) return coolerShares(row.setPointC, meanC);
  return sharesOf(row?.switchedOnAt ?? [eveningHour], hours);
}

/**
 * What everything takes (Ah at the nominal voltage) in each hour of a day: 24 numbers that sum to the day's use.
 * @param meanC mean air temperature of the day, for what cools
 * @param isCounted which parts of the day's use count; all where the use is one number
 */
export function useByHour(
  day: Day,
  meanC: number,
  isCounted: (part: LoadUse) => boolean = () => true,
): readonly number[] {
  if (day.parts.length === 0) return flat.map(share => share * day.dailyUse);
  const byHour = Array<number>(dayHours).fill(0);
  for (const part of day.parts) {
    if (!isCounted(part)) continue;
    const shares = sharesFor(part.load, part.hours, meanC);
    for (let hour = 0; hour < dayHours; hour++)
      byHour[hour] = present(byHour[hour]) + present(shares[hour]) * part.chargeAh;
  }
  return byHour;
}
