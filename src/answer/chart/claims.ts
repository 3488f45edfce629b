import { scaleLinear } from 'd3-scale';
import { significant } from '#quantity/round.ts';
import type { ClaimsChart } from './chart.ts';
import { frame, height, ink, inner, label, safe, width } from './frame.ts';

const most = 6;

/** Claims as SVG: the answer's range as a band down the picture, each person's number on a line of its own. */
export function drawClaims(chart: ClaimsChart): string {
  const claims = chart.claims.slice(0, most);
  const all = [chart.low, chart.high, chart.value, ...claims.map(claim => claim.value)];
  const reach = Math.max(...all);
  const x = scaleLinear([Math.min(0, ...all), reach * 1.08], [170, width - 60]).nice(6);
  const [top, bottom] = [inner.top + 26, height - inner.bottom];
  const step = (bottom - top) / Math.max(1, claims.length);
  const unit = safe(chart.unit);
  const body = [
    `<rect x="${x(chart.low).toFixed(1)}" y="${top}" width="${Math.max(3, x(chart.high) - x(chart.low)).toFixed(1)}" height="${bottom - top}" fill="${ink.good}" opacity="0.22"/>`,
    `<line x1="${x(chart.value)}" x2="${x(chart.value)}" y1="${top}" y2="${bottom}" stroke="${ink.good}" stroke-width="3"/>`,
    label(x(chart.value), top - 10, `worked out: ${significant(chart.value)} ${unit}`, {
      weight: 600,
      fill: '#00684c',
      anchor: x(chart.value) > width - 200 ? 'end' : x(chart.value) < 280 ? 'start' : 'middle',
    }),
    ...x.ticks(6).map(tick => {
      const at = x(tick);
      return `<line x1="${at}" x2="${at}" y1="${bottom}" y2="${bottom + 6}" stroke="${ink.quiet}"/>${label(at, bottom + 24, significant(tick), { anchor: 'middle', fill: ink.quiet })}`;
    }),
    label(width - 24, bottom + 44, unit, { anchor: 'end', fill: ink.quiet }),
    ...claims.map((claim, i) => {
      const y = top + step * (i + 0.5);
      const at = x(claim.value);
      return [
        `<line x1="170" x2="${width - 60}" y1="${y}" y2="${y}" stroke="${ink.grid}"/>`,
        label(158, y + 6, safe(claim.who, 16), { size: 17, weight: 600, anchor: 'end' }),
        `<circle cx="${at.toFixed(1)}" cy="${y.toFixed(1)}" r="9" fill="${ink.line}"/>`,
        label(at, y - 16, `${significant(claim.value)} ${unit}`, {
          weight: 600,
          anchor: 'middle',
          halo: true,
        }),
      ].join('\n');
    }),
  ];
  return frame(chart, body.join('\n'));
}
