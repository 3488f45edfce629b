import { present } from '#basics/present.ts';
import { hourOfDay } from '../clock.ts';
import type { ChargeChart } from './chart.ts';
import { type Mark, stroke, text } from './drawing.ts';
import { widthOf } from './letters.ts';

type Scale = (value: number) => number;
/** Where a plot stands, and its scales. */
export interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly lastH: number;
  readonly x: Scale;
  readonly y: Scale;
}

type Clock = NonNullable<ChargeChart['clock']>;

/** The nights between the start and the end, as hours from the start. */
export function nightsOf({ clock }: ChargeChart, { lastH }: Plot): [number, number][] {
  if (!clock) return [];
  const found: [number, number][] = [];
  for (let day = -1; day * 24 < lastH + 24; day++) {
    const from = Math.max(0, day * 24 + clock.nightFrom - clock.startHour);
    const to = Math.min(lastH, (day + 1) * 24 + clock.nightTo - clock.startHour);
    if (to > from) found.push([from, to]);
  }
  return found;
}

const short = (name: string): string => (/^\p{L}{6,}$/u.test(name) ? name.slice(0, 3) : name);

/** Hours where there is room, and the names of the days below, each in the middle of its day. */
export function daysBelow({ startHour, dayNames }: Clock, { x, lastH, left, right, bottom }: Plot): Mark[] {
  const found: Mark[] = [];
  const hourPx = x(1) - x(0);
  const step = [6, 12].find(hours => hours * hourPx >= 44) ?? 24;
  for (let hour = Math.ceil(startHour / step) * step; hour - startHour <= lastH; hour += step) {
    const at = x(hour - startHour);
    const isMidnight = hour % 24 === 0;
    found.push(stroke([at, bottom], [at, bottom + (isMidnight ? 34 : 5)], isMidnight ? 'grid' : 'quiet'));
    const words = hourOfDay(hour);
    const half = widthOf(words, 11) / 2;
    if (!isMidnight && step < 24 && at - half >= left && at + half <= right)
      found.push(text(at, bottom + 16, words, { anchor: 'middle', ink: 'quiet' }));
  }
  let free = left;
  dayNames.forEach((name, day) => {
    const from = x(Math.max(0, day * 24 - startHour));
    const to = x(Math.min(lastH, (day + 1) * 24 - startHour));
    const words = short(name);
    const half = widthOf(words, 12, 600) / 2;
    const at = (from + to) / 2;
    if (to <= from || at - half < free || at + half > right + 4) return;
    // A day too short for its name goes without; of many, as many are named as there is room for.
    if (to - from < 2 * half && to - from < 20 * hourPx) return;
    found.push(text(at, bottom + 32, words, { size: 12, weight: 600, anchor: 'middle' }));
    free = at + half + 6;
  });
  return found;
}

/** Hours from now, or days where they are many. */
export function hoursBelow({ x, lastH, left, right, bottom }: Plot): Mark[] {
  const isDays = lastH > 72;
  const steps = isDays ? [24, 48, 96, 168, 336, 672] : [1, 2, 3, 6, 12, 24];
  const step =
    steps.find(hours => x(hours) - x(0) >= 50) ??
    present(steps.at(-1)) * Math.ceil(lastH / present(steps.at(-1)) / 6);
  const found: Mark[] = [];
  for (let atH = 0; atH <= lastH; atH += step) {
    const at = x(atH);
    const count = isDays ? atH / 24 : atH;
    const words = atH === 0 ? 'now' : isDays ? `${count} ${count === 1 ? 'day' : 'days'}` : `${count} h`;
    const half = widthOf(words, 11) / 2;
    found.push(stroke([at, bottom], [at, bottom + 5], 'quiet'));
    if (at + half <= right + 10)
      found.push(
        text(Math.max(left + half - 10, at), bottom + 18, words, { anchor: 'middle', ink: 'quiet' }),
      );
  }
  return found;
}
