import { present } from '#basics/present.ts';
import { eachHour } from '../hours.ts';
import { levelAfter } from './rules.ts';
import { type ByPart, covAt, type Expected, type Learned, parts, place, size } from './state.ts';
import { before, dayToDay, flatAt, longestGapDays, wanders } from './tables.ts';

/** Hours of the day: from six to six by the sun. */
export const isDay = (hour: number): boolean => hour >= 6 && hour < 18;

const hourMs = 3600_000;
const dayHours = 24;

/** Hour of the sun's clock (0–24) at a moment. */
export function hourAt(at: number, longitudeDeg = 0): number {
  const hour = (at / hourMs + longitudeDeg / 15) % dayHours;
  return hour < 0 ? hour + dayHours : hour;
}

/** A density, and what lies below, of the standard normal distribution (Abramowitz & Stegun 26.2.17, to 1e-7). */
const density = (z: number): number => Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
function below(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    density(z) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
}

/**
 * A level past a bound is at the bound, and what hung on it hangs on it by less.
 * @param side 1: no lower than the bound, -1: no higher
 * @param nearSd standard deviations from the bound within which it may be past it
 */
function cutAt(bound: number, side: 1 | -1, nearSd: number, mean: [...ByPart], cov: number[]): void {
  const sd = Math.sqrt(covAt(cov, 0, 0));
  const from = side * (mean[0] - bound);
  const z = from / sd;
  if (z > nearSd) return;
  const [isWithin, peak] = [below(z), density(z)];
  const kept = from * isWithin + sd * peak;
  const square = (from * from + covAt(cov, 0, 0)) * isWithin + from * sd * peak;
  mean[0] = bound + side * kept;
  cov[0] = Math.max(1e-5, square - kept * kept);
  for (let j = 1; j < size; j++) cov[place(0, j)] = covAt(cov, 0, j) * isWithin;
}

/** The estimate carried forward to a moment by the engine's expectation, hour by hour, with what is not known of it. */
export function predict(learned: Learned, expected: Expected, at: number): Learned {
  const hours = (at - learned.at) / hourMs;
  if (hours <= 0) return learned;
  const mean: [...ByPart] = [...learned.mean];
  const cov = [...learned.cov];
  const days = hours / dayHours;
  for (let i = 1; i < size; i++)
    cov[place(i, i)] = covAt(cov, i, i) + days * wanders[parts[i] as keyof typeof wanders] ** 2;
  if (days > longestGapDays) {
    mean[0] = before.missing.mean;
    for (let j = 0; j < size; j++) cov[place(0, j)] = j === 0 ? before.missing.sd ** 2 : 0;
    return { ...learned, at, mean, cov };
  }
  const step = levelAfter.direct();
  const { capacityAh, useAh, sunAh } = expected;
  const total = (all: readonly number[]): number => all.reduce((sum, ah) => sum + ah, 0);
  const [dayUse, daySun] = [total(useAh), total(sunAh)];
  const [factor, byDay, held, sun] = [mean[1], mean[2], Math.exp(mean[3]), Math.exp(mean[4])];
  const slope: [...ByPart] = [0, 0, 0, 0, 0];
  eachHour(hourAt(learned.at, expected.longitudeDeg), hours, (hour, span) => {
    const side = isDay(hour) ? 1 : -1;
    const drawn = Math.exp(factor + side * byDay);
    const [use, shone] = [present(useAh[hour]) * span, present(sunAh[hour]) * span];
    const was = mean[0];
    mean[0] = step(was, drawn, use, sun, shone, held, capacityAh);
    const holds = held * capacityAh;
    slope[1] = (drawn * use) / holds;
    slope[2] = side * slope[1];
    slope[3] = was - mean[0];
    slope[4] = (-sun * shone) / holds;
    spread(cov, slope);
    // One day is not like another: sun goes up and down together all day, use less so.
    cov[0] =
      covAt(cov, 0, 0) +
      ((dayToDay.use * drawn) ** 2 * use * dayUse + (dayToDay.sun * sun) ** 2 * shone * daySun) / holds ** 2;
    // What is full takes no more, and what is flat gives no more.
    if (shone > 0) cutAt(0, 1, 3, mean, cov);
    cutAt(flatAt, -1, 1, mean, cov);
  });
  return { ...learned, at, mean, cov };
}

/** F P Fᵀ, where only the level changes: by `slope` for a little of each of the others. */
function spread(cov: number[], slope: ByPart): void {
  let own = covAt(cov, 0, 0);
  for (let j = 1; j < size; j++) {
    let sum = covAt(cov, 0, j);
    for (let i = 1; i < size; i++) sum += present(slope[i]) * covAt(cov, i, j);
    own += present(slope[j]) * (covAt(cov, 0, j) + sum);
    cov[place(0, j)] = sum;
  }
  cov[0] = own;
}
