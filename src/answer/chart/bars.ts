import { scaleLinear } from 'd3-scale';
import { significant } from '#quantity/round.ts';
import type { BarsChart } from './chart.ts';
import { frame, height, ink, inner, label, safe, width } from './frame.ts';

const most = 9;
const names = 200;

/** The bars that fit; what doesn't is summed as "others". */
function shownBars(bars: BarsChart['bars']): BarsChart['bars'] {
  const sorted = [...bars].sort((a, b) => b.value - a.value);
  if (sorted.length <= most) return sorted;
  const rest = sorted.slice(most - 1);
  return [
    ...sorted.slice(0, most - 1),
    { name: 'others', value: rest.reduce((sum, bar) => sum + bar.value, 0) },
  ];
}

/** A day's use as SVG: a bar a load, biggest first, each with its number. */
export function drawBars(chart: BarsChart): string {
  const bars = shownBars(chart.bars);
  const top = inner.top + 4;
  const step = Math.min(60, (height - top - 24) / Math.max(1, bars.length));
  const x = scaleLinear([0, Math.max(...bars.map(bar => bar.value), 1e-9)], [names, width - 130]);
  const body = bars.map((bar, i) => {
    const y = top + i * step;
    const middle = y + step / 2 + 5;
    return [
      label(names - 12, middle, safe(bar.name, 22), { size: 16, anchor: 'end' }),
      `<rect x="${names}" y="${(y + step * 0.15).toFixed(1)}" width="${Math.max(2, x(bar.value) - names).toFixed(1)}" height="${(step * 0.7).toFixed(1)}" rx="4" fill="${ink.line}"/>`,
      label(x(bar.value) + 10, middle, `${significant(bar.value)} ${safe(chart.unit)}`, {
        size: 16,
        weight: 600,
      }),
    ].join('\n');
  });
  return frame(chart, body.join('\n'));
}
