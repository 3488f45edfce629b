import { scaleLinear } from 'd3-scale';
import { area, curveLinear, curveMonotoneX, line } from 'd3-shape';
import { daysBelow, hoursBelow, nightsOf, type Plot } from './charge-time.ts';
import type { ChargeChart } from './chart.ts';
import {
  type Box,
  backed,
  boxOf,
  type Drawing,
  edge,
  type Mark,
  placed,
  rect,
  stroke,
  text,
  width,
} from './drawing.ts';
import { framed, headOf, textBoxes } from './frame.ts';
import { fitted, widthOf } from './letters.ts';
import { percent } from './words.ts';

const left = 50;
const right = width - edge;
const tall = 190;

/** The battery's charge over the hours: nights shaded, the limit dashed, what the title tells of ringed. */
export function drawCharge(chart: ChargeChart): Drawing {
  const head = headOf(chart);
  const keys = legend(chart, head.bottom + 13);
  const top = head.bottom + (keys.length > 0 ? 26 : 8);
  const lastH = Math.max(chart.points.at(-1)?.atH ?? 1, chart.wanted?.atH ?? 0);
  const plot: Plot = {
    left,
    right,
    top,
    bottom: top + tall,
    lastH,
    x: scaleLinear([0, lastH], [left, right]),
    y: scaleLinear([0, 100], [top + tall, top]),
  };
  const times = chart.clock ? daysBelow(chart.clock, plot) : hoursBelow(plot);
  const back: Mark[] = [
    ...nightsOf(chart, plot).map(([from, to]) =>
      rect(plot.x(from), top, plot.x(to) - plot.x(from), tall, { fill: 'night' }),
    ),
    ...[0, 25, 50, 75, 100].flatMap((level): Mark[] => [
      stroke([left, plot.y(level)], [right, plot.y(level)], 'grid'),
      text(left - 6, plot.y(level) + 4, percent(level), { anchor: 'end', ink: 'quiet' }),
    ]),
    ...lines(chart, plot),
    ...times,
  ];
  const marks = [...back, ...keys, ...labels(chart, plot, textBoxes(back))];
  const foot = chart.cut ? [text(right, plot.bottom + 52, chart.cut, { ink: 'quiet', anchor: 'end' })] : [];
  return framed(head, [...marks, ...foot], plot.bottom + (chart.cut ? 62 : chart.clock ? 44 : 30));
}

/** The band, the line before a "what if", the line, and the limit. */
function lines(chart: ChargeChart, { x, y }: Plot): Mark[] {
  const bend = chart.clock ? curveMonotoneX : curveLinear;
  const band = area<ChargeChart['points'][number]>(
    p => x(p.atH),
    p => y(p.lowPercent),
    p => y(p.highPercent),
  ).curve(bend);
  const path = line<{ readonly atH: number; readonly percent: number }>(
    p => x(p.atH),
    p => y(p.percent),
  )
    .curve(bend)
    .digits(1);
  const limit = y(chart.limitPercent);
  return [
    { kind: 'path', d: band.digits(1)([...chart.points]) ?? '', fill: 'line', opacity: 0.2 },
    stroke([left, limit], [right, limit], 'limit', { thick: 1.5, dash: '6 4' }),
    { kind: 'path', d: path([...chart.points]) ?? '', stroke: 'line', thick: 2.5 },
    // On top: where only the battery changed both fall alike, and the old one stops sooner or later.
    ...(chart.before
      ? [
          {
            kind: 'path' as const,
            d: path([...chart.before.points]) ?? '',
            stroke: 'before' as const,
            thick: 2,
            dash: '2 3',
          },
        ]
      : []),
    ...(chart.wanted
      ? [
          stroke([x(chart.wanted.atH), y(100)], [x(chart.wanted.atH), y(0)], 'good', {
            thick: 1.5,
            dash: '1 3',
          }),
        ]
      : []),
  ];
}

/** "now" and "before: …", where there is a before. */
function legend({ before }: ChargeChart, y: number): Mark[] {
  if (!before) return [];
  return [
    stroke([edge, y - 4], [edge + 18, y - 4], 'line', { thick: 2.5 }),
    text(edge + 23, y, 'now'),
    stroke([edge + 58, y - 4], [edge + 76, y - 4], 'before', { thick: 2, dash: '2 3' }),
    text(edge + 81, y, fitted(`before: ${before.says}`, width - 2 * edge - 81, 11)),
  ];
}

/** The labels in the plot, each where it covers no other. */
function labels(chart: ChargeChart, plot: Plot, written: readonly Box[]): Mark[] {
  const within: Box = { left: plot.left + 2, right: plot.right, top: plot.top, bottom: plot.bottom };
  const taken: Box[] = [...written];
  const found: Mark[] = [];
  const put = (places: Parameters<typeof placed>[0]): void => {
    const mark = placed(places, taken, within);
    if (!mark) return;
    taken.push(boxOf(mark));
    found.push(...backed(mark));
  };
  const { mark, wanted } = chart;
  const night = nightsOf(chart, plot).find(([from, to]) => plot.x(to) - plot.x(from) >= 36);
  const [cx, cy] = [plot.x(mark.atH), plot.y(mark.percent)];
  const half = widthOf(mark.says, 12, 600) / 2;
  const middle = Math.min(within.right - half - 2, Math.max(within.left + half + 2, cx));
  const says = (y: number, x = middle) => text(x, y, mark.says, { size: 12, weight: 600, anchor: 'middle' });
  put([19, -12, 35, -28, 51, -44, 67, -60].map(by => says(cy + by)));
  const limit = `stay above ${percent(chart.limitPercent)}`;
  const at = plot.y(chart.limitPercent);
  const style = { weight: 600, ink: 'limit' } as const;
  put(
    [at + 14, at - 5, at + 28, at - 19].flatMap(y => [
      text(within.left + 3, y, limit, style),
      text(within.right - 3, y, limit, { ...style, anchor: 'end' as const }),
    ]),
  );
  if (wanted) {
    const x = plot.x(wanted.atH);
    put(
      [plot.top + 13, plot.top + 29, plot.top + 45].flatMap(y => [
        text(x - 5, y, wanted.says, { weight: 600, ink: 'good', anchor: 'end' }),
        text(x + 5, y, wanted.says, { weight: 600, ink: 'good' }),
      ]),
    );
  }
  const old = chart.before?.mark;
  const rings: Mark[] = [
    ...(old && old.atH <= plot.lastH
      ? [
          {
            kind: 'circle',
            x: plot.x(old.atH),
            y: plot.y(old.percent),
            r: 4.5,
            fill: 'ground',
            stroke: 'before',
            thick: 2,
          } as const,
        ]
      : []),
    { kind: 'circle', x: cx, y: cy, r: 5, fill: 'ground', stroke: 'line', thick: 2.5 },
  ];
  if (night)
    put([
      text((plot.x(night[0]) + plot.x(night[1])) / 2, plot.bottom - 6, 'night', {
        ink: 'quiet',
        anchor: 'middle',
      }),
    ]);
  return [...found, ...rings];
}
