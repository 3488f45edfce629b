import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import { isDay } from './predict.ts';
import { type ByPart, covAt, type Expected, type Learned } from './state.ts';

/** What the readings say of a rig, as factors on what was told, with the span that nine in ten lie in. */
export interface Findings {
  readonly readings: number;
  /** On the whole day's draw, by day and by night. */
  readonly draw: Range;
  readonly drawByDay: Range;
  readonly drawByNight: Range;
  /** On the label's capacity; exactly 1 where the readings can't tell it apart from the draw. */
  readonly capacity: Range;
  readonly sun: Range;
  /** On how long it lasts. */
  readonly lasts: Range;
  /** Share of the charge that was missing at the last reading. */
  readonly missing: Range;
}

/** Nine in ten of a normal distribution lie within this many standard deviations. */
const nineInTen = 1.645;
/** The draw is known by itself where it is surer than the capacity by this factor. */
const ownShare = 0.6;

/** A sum of parts of the state with its standard deviation. */
function sum({ mean, cov }: Learned, by: ByPart): { readonly value: number; readonly sd: number } {
  let [value, variance] = [0, 0];
  for (const [i, a] of by.entries()) {
    value += a * present(mean[i]);
    for (const [j, b] of by.entries()) variance += a * b * covAt(cov, i, j);
  }
  return { value, sd: Math.sqrt(Math.max(0, variance)) };
}

const factor = ({ value, sd }: { readonly value: number; readonly sd: number }): Range => ({
  value: Math.exp(value),
  low: Math.exp(value - nineInTen * sd),
  high: Math.exp(value + nineInTen * sd),
});

const asTold: Range = { value: 1, low: 1, high: 1 };

/** What is known by now, in the words of what was told. */
export function findings(learned: Learned, { useAh }: Expected): Findings {
  const all = useAh.reduce((total, ah) => total + ah, 0);
  const daily = useAh.reduce((total, ah, hour) => total + (isDay(hour) ? ah : 0), 0);
  // How much more of the use falls in the day than in the night, from -1 to 1.
  const tilt = all > 0 ? (2 * daily) / all - 1 : 0;
  const [draw, capacity] = [sum(learned, [0, 1, tilt, 0, 0]), sum(learned, [0, 0, 0, 1, 0])];
  const lasts = factor(sum(learned, [0, -1, -tilt, 1, 0]));
  // Per cent alone tell draw against capacity: the label is believed then, and the draw counted by it.
  const isOwn = draw.sd < ownShare * capacity.sd || capacity.sd < 0.08;
  const less = isOwn ? 0 : -1;
  const of = (by: ByPart): Range => factor(sum(learned, by));
  const { value, sd } = sum(learned, [1, 0, 0, 0, 0]);
  return {
    readings: learned.readings,
    draw: of([0, 1, tilt, less, 0]),
    drawByDay: of([0, 1, 1, less, 0]),
    drawByNight: of([0, 1, -1, less, 0]),
    capacity: isOwn ? factor(capacity) : asTold,
    sun: of([0, 0, 0, less, 1]),
    lasts,
    missing: {
      value,
      low: Math.max(0, value - nineInTen * sd),
      high: Math.min(1, value + nineInTen * sd),
    },
  };
}
