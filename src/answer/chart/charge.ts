import { scaleLinear } from 'd3-scale';
import { area, curveMonotoneX, line } from 'd3-shape';
import type { ChargeChart } from './chart.ts';
import { frame, height, ink, inner, label, safe, width } from './frame.ts';

/** Dusk and dawn as the picture shades them, hours of the day. */
const nightFrom = 19;
const nightTo = 6;

const bottom = height - inner.bottom;

/** The battery's charge over the days as SVG: nights shaded, the limit dashed, the lowest point ringed. */
export function drawCharge(chart: ChargeChart): string {
  const last = chart.points.at(-1)?.atH ?? 1;
  const x = scaleLinear([0, last], [inner.left, width - inner.right]);
  const y = scaleLinear([0, 100], [bottom, inner.top]);
  const body = [
    ...nights(chart, last).map(([from, to]) => night(x(from), x(to))),
    ...y
      .ticks(5)
      .map(
        percent =>
          `<line x1="${inner.left}" x2="${width - inner.right}" y1="${y(percent)}" y2="${y(percent)}" stroke="${ink.grid}"/>` +
          label(inner.left - 10, y(percent) + 5, `${percent} %`, { anchor: 'end', fill: ink.quiet }),
      ),
    band(chart, x, y),
    limit(chart, y),
    curve(chart, x, y),
    lowest(chart, x, y),
    ...hours(chart, last, x),
  ];
  return frame(chart, body.join('\n'));
}

type Scale = (value: number) => number;
type Point = ChargeChart['points'][number];

/** The nights between the start and `last`, as hours from the start. */
function nights({ startHour }: ChargeChart, last: number): [number, number][] {
  const found: [number, number][] = [];
  for (let day = -1; day * 24 < last + 24; day++) {
    const from = Math.max(0, day * 24 + nightFrom - startHour);
    const to = Math.min(last, (day + 1) * 24 + nightTo - startHour);
    if (to > from) found.push([from, to]);
  }
  return found;
}

const night = (from: number, to: number): string => {
  const shade = `<rect x="${from.toFixed(1)}" y="${inner.top}" width="${(to - from).toFixed(1)}" height="${bottom - inner.top}" fill="${ink.night}" opacity="0.1"/>`;
  const word =
    to - from > 44
      ? label((from + to) / 2, inner.top + 16, 'night', { size: 12, anchor: 'middle', fill: ink.quiet })
      : '';
  return shade + word;
};

function band(chart: ChargeChart, x: Scale, y: Scale): string {
  const shape = area<Point>(
    p => x(p.atH),
    p => y(p.lowPercent),
    p => y(p.highPercent),
  ).curve(curveMonotoneX);
  return `<path d="${shape([...chart.points])}" fill="${ink.line}" opacity="0.18"/>`;
}

function curve(chart: ChargeChart, x: Scale, y: Scale): string {
  const path = line<Point>(
    p => x(p.atH),
    p => y(p.percent),
  ).curve(curveMonotoneX);
  return `<path d="${path([...chart.points])}" fill="none" stroke="${ink.line}" stroke-width="3.5" stroke-linejoin="round"/>`;
}

function limit({ limitPercent }: ChargeChart, y: Scale): string {
  const at = y(limitPercent);
  return (
    `<line x1="${inner.left}" x2="${width - inner.right}" y1="${at}" y2="${at}" stroke="${ink.limit}" stroke-width="2.5" stroke-dasharray="8 5"/>` +
    label(inner.left + 8, at + 18, `stay above ${Math.round(limitPercent)} %`, {
      weight: 600,
      fill: ink.limit,
      halo: true,
    })
  );
}

/** A ring and "lowest 38 % · Sat 7:00", turned inward near an edge. */
function lowest(chart: ChargeChart, x: Scale, y: Scale): string {
  const low = chart.points.reduce((a, b) => (b.percent < a.percent ? b : a), chart.points[0]!);
  const [cx, cy] = [x(low.atH), y(low.percent)];
  const anchor = cx > width - 170 ? 'end' : cx < inner.left + 110 ? 'start' : 'middle';
  const above = cy > bottom - 40;
  const text = `lowest ${Math.round(low.percent)} % · ${safe(dayOf(chart, low.atH), 12)} ${clock(chart, low.atH)}`;
  return (
    `<circle cx="${cx.toFixed(1)}" cy="${cy.toFixed(1)}" r="7" fill="#fff" stroke="${ink.line}" stroke-width="3"/>` +
    label(cx, above ? cy - 16 : cy + 26, text, { size: 15, weight: 600, anchor, halo: true })
  );
}

const hourOf = ({ startHour }: ChargeChart, atH: number): number => startHour + atH;
const dayOf = (chart: ChargeChart, atH: number): string => {
  const day = Math.floor(hourOf(chart, atH) / 24);
  return chart.dayNames[day] ?? `day ${day + 1}`;
};
const clock = (chart: ChargeChart, atH: number): string => {
  const hour = Math.round(hourOf(chart, atH)) % 24;
  return `${String(hour).padStart(2, '0')}:00`;
};

/** Ticks at midnights with the day's name, and every six or twelve hours where there is room. */
function hours(chart: ChargeChart, last: number, x: Scale): string[] {
  const found: string[] = [];
  const step = last <= 80 ? 6 : last <= 200 ? 12 : 24;
  const first = Math.ceil(chart.startHour / step) * step;
  const everyDay = Math.ceil(last / 24 / 12);
  for (let hour = first; hour - chart.startHour <= last; hour += step) {
    const at = x(hour - chart.startHour);
    const isMidnight = hour % 24 === 0;
    found.push(`<line x1="${at}" x2="${at}" y1="${bottom}" y2="${bottom + 6}" stroke="${ink.quiet}"/>`);
    if (step < 24)
      found.push(label(at, bottom + 21, `${hour % 24}`, { size: 12, anchor: 'middle', fill: ink.quiet }));
    if (isMidnight && (hour / 24) % everyDay === 0)
      found.push(
        label(at, bottom + 40, safe(dayOf(chart, hour - chart.startHour), 10), {
          weight: 600,
          anchor: at > width - 60 ? 'end' : 'middle',
        }),
      );
  }
  return found;
}
