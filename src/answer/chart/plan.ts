import { scaleLinear } from 'd3-scale';
import { present } from '#basics/present.ts';
import type { PlanChart } from './chart.ts';
import { type Drawing, edge, type Mark, rect, stroke, text, width } from './drawing.ts';
import { framed, headOf } from './frame.ts';
import { fitted, widthOf } from './letters.ts';
import type { Ink } from './theme.ts';
import { percent, whole } from './words.ts';

const step = 50;
const nameSize = 13;
type Day = PlanChart['days'][number];

const sources: readonly (readonly [key: 'sunAh' | 'drivingAh' | 'pluggedAh', says: string, ink: Ink])[] = [
  ['sunAh', 'sun', 'sun'],
  ['drivingAh', 'driving', 'good'],
  ['pluggedAh', 'plugged in', 'before'],
];
const inOf = (day: Day): number => day.sunAh + day.drivingAh + day.pluggedAh;

/** A trip, a row a day: what is on offer against what goes out, and how low it gets. */
export function drawPlan(chart: PlanChart): Drawing {
  const head = headOf(chart);
  const names = chart.days.map(day => fitted(day.name, 84, nameSize, 600));
  const lows = chart.days.map(day => percent(day.lowestPercent));
  const left = edge + Math.max(...names.map(name => widthOf(name, nameSize, 600))) + 10;
  const right = width - edge - 62;
  const most = Math.max(...chart.days.flatMap(day => [day.outAh, inOf(day)]), 1e-9);
  const room = Math.max(
    ...chart.days.flatMap(day => [day.outAh, inOf(day)].map(ah => widthOf(`${whole(ah)} ${chart.unit}`, 11))),
  );
  const x = scaleLinear([0, most], [left, right - room - 6]);
  const keys = legend(chart, head.bottom + 14);
  const top = head.bottom + 34;
  const rows = chart.days.flatMap((day, i): Mark[] => {
    const y = top + i * step;
    const isLow = day.lowestPercent < chart.limitPercent - 0.5;
    let from = left;
    const parts = sources.flatMap(([key, , ink]): Mark[] => {
      const wide = x(day[key]) - left;
      from += wide;
      return wide > 0 ? [rect(from - wide, y + 6, wide, 13, { fill: ink })] : [];
    });
    return [
      stroke([edge, y], [width - edge, y], 'grid'),
      text(edge, y + 24, present(names[i]), { size: nameSize, weight: 600 }),
      ...parts,
      text(Math.max(from, left) + 5, y + 16.5, `${whole(inOf(day))} ${chart.unit}`, { ink: 'quiet' }),
      rect(left, y + 23, x(day.outAh) - left, 13, { fill: 'line' }),
      text(x(day.outAh) + 5, y + 33.5, `${whole(day.outAh)} ${chart.unit}`, { ink: 'quiet' }),
      text(width - edge, y + 18, present(lows[i]), {
        size: 14,
        weight: 600,
        anchor: 'end',
        ink: isLow ? 'limit' : 'text',
      }),
      text(width - edge, y + 35, `ends ${percent(day.endPercent)}`, { ink: 'quiet', anchor: 'end' }),
    ];
  });
  const bottom = top + chart.days.length * step;
  const foot = [`stay above ${percent(chart.limitPercent)}`, chart.cut].filter(Boolean).join('; ');
  return framed(
    head,
    [...keys, ...rows, text(width - edge, bottom + 12, foot, { weight: 600, ink: 'limit', anchor: 'end' })],
    bottom + 24,
  );
}

/** Only the sources that there are. */
function legend({ days }: PlanChart, y: number): Mark[] {
  let x = edge;
  const there = sources.filter(([key]) => days.some(day => day[key] > 0));
  const keys = [...there.map(([, says, ink]) => [says, ink] as const), ['out', 'line'] as const].flatMap(
    ([says, ink]): Mark[] => {
      const at = x;
      x += 14 + widthOf(says, 11) + 12;
      return [rect(at, y - 9, 10, 10, { fill: ink, round: 2 }), text(at + 14, y, says)];
    },
  );
  return [...keys, text(width - edge, y, 'lowest', { ink: 'quiet', anchor: 'end' })];
}
