import { span } from '#answer/say.ts';
import { blocksOf, chargeAtRest } from '#engine/battery/rest.ts';
import type { Range } from '#quantity/range.ts';
import type { Chemistry } from '#rig/rig.ts';
import type { Trace } from '#rule/trace.ts';
import type { ReadTwice } from './read-twice.ts';
import { chemistryName } from './words.ts';

/** A meter and a battery that is not quite at rest are off by about so many points of charge. Common practice. */
const readingPoints = 5;

const held = (points: number): number => Math.min(100, Math.max(0, points));

/**
 * Points of charge (%) between two rested volts, the higher first. On lead-acid one table holds for both, so that its
 * doubt mostly cancels; lithium's volts leave the whole of both spans open.
 */
export function pointsBetween(upperV: number, lowerV: number, chemistry: Chemistry, trace?: Trace): Range {
  const [upper, lower] = [
    chargeAtRest(upperV, chemistry, trace, blocksOf(upperV)),
    chargeAtRest(lowerV, chemistry, trace, blocksOf(upperV)),
  ];
  const value = upper.value - lower.value;
  const all = [value, upper.low - lower.low, upper.high - lower.high];
  return chemistry === 'lfp'
    ? { value, low: held(upper.low - lower.high), high: held(upper.high - lower.low) }
    : { value, low: held(Math.min(...all) - readingPoints), high: held(Math.max(...all) + readingPoints) };
}

/** How full it likely is by rested volts, %. */
export const percentAtRest = (volts: number, chemistry: Chemistry): number =>
  chargeAtRest(volts, chemistry).value;

/** Lead-acid at rest reads no more, V a 12 V block: both over it, and nobody said which kind, it is likely lithium. */
const leadFullV = 12.9;

/** The kind that volts were read off: as told, else by the volts. */
export const kindRead = ({ chemistry, first, later }: ReadTwice): Chemistry =>
  chemistry ?? (Math.min(first, later) / blocksOf(first) >= leadFullV ? 'lfp' : 'lead-acid');

/** The same in words. */
export const kindSaid = ({ chemistry }: ReadTwice): string =>
  chemistry ? chemistryName(chemistry) : 'lead-acid (you didn’t say which)';

/** A number with no doubt in it. */
export const exact = (value: number): Range => ({ value, low: value, high: value });

/** A range by a factor. */
export const times = ({ value, low, high }: Range, by: number): Range => ({
  value: value * by,
  low: low * by,
  high: high * by,
});

/** " (18–34 Ah)", where the ends differ. */
export const within = ({ low, high }: Range, unit: string): string =>
  high - low < 0.5 ? '' : ` (${span(low, high, unit)})`;
