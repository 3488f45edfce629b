import type { ChargeChart, ChargePoint } from '#answer/chart/chart.ts';
import type { Reply } from '#answer/reply.ts';
import { duration } from '#answer/say.ts';
import { describeRig } from '../describe.ts';
import type { RequestContext } from '../intent.ts';
import { wantedTime } from '../words.ts';
import { type ChargeSpan, computeRunTime, type RunTime, type RunTimeFacts, spanOf } from './compute.ts';

const held = (percent: number): number => Math.min(100, Math.max(0, percent));

/** The charge after so many hours of a use that takes it from full to its limit in `lastsH`. */
const after = ({ fromPercent, limitPercent }: ChargeSpan, lastsH: number, atH: number): number =>
  held(fromPercent - ((fromPercent - limitPercent) * atH) / Math.max(lastsH, 1e-6));

/**
 * The charge over the time wanted, or until it is used up, at the average use that the answer goes by: the line meets
 * the limit at the run time, the band at its low and its high end.
 */
export function runTimeChart(
  facts: RunTimeFacts,
  result: RunTime,
  setting: RequestContext,
  title: string,
): Reply['chart'] {
  const { value, low, high } = result.figures.runTime;
  const span = spanOf(facts, result);
  if (value <= 0 || !Number.isFinite(value) || span.fromPercent <= span.limitPercent) return undefined;
  return () => {
    const wantedH = facts.durationH;
    const turned = setting.before?.() as RunTimeFacts | undefined;
    const before = turned && beforeOf(turned, setting);
    const endH = Math.max(
      1.15 * value,
      Math.min(1.05 * high, 1.5 * value),
      wantedH ?? 0,
      before?.lastsH ?? 0,
    );
    const lastH = 1.04 * endH;
    const drawn = (atH: number): ChargePoint => ({
      atH,
      percent: after(span, value, atH),
      lowPercent: after(span, low, atH),
      highPercent: after(span, high, atH),
    });
    // Straight lines: their ends, where they meet the limit, and where they come to nothing.
    const empty = (lastsH: number): number =>
      (lastsH * span.fromPercent) / (span.fromPercent - span.limitPercent);
    const turns = [0, low, value, high, empty(low), empty(value), empty(high), lastH];
    const hours = [...new Set(turns)].filter(atH => atH <= lastH).sort((a, b) => a - b);
    const chart: ChargeChart = {
      kind: 'charge',
      title: title.replace(/\.$/, ''),
      note: `${describeRig(facts).join(', ')}. Drawn at the average use.`,
      points: hours.map(drawn),
      limitPercent: span.limitPercent,
      mark: { atH: value, percent: span.limitPercent, says: duration(value) },
      ...(wantedH !== undefined &&
        wantedH <= lastH && { wanted: { atH: wantedH, says: `wanted: ${wantedTime(wantedH)}` } }),
      ...(before && { before: { points: before.points, mark: before.mark, says: before.says } }),
    };
    return chart;
  };
}

/** The line of the question before a "what if", and what was said of it. */
function beforeOf(facts: RunTimeFacts, setting: RequestContext) {
  const result = computeRunTime(facts, setting);
  const lastsH = result.figures.runTime.value;
  const span = spanOf(facts, result);
  if (!(lastsH > 0 && Number.isFinite(lastsH))) return undefined;
  const mark = { atH: lastsH, percent: span.limitPercent };
  return { lastsH, says: duration(lastsH), mark, points: [{ atH: 0, percent: span.fromPercent }, mark] };
}
