import { scaleLinear } from 'd3-scale';
import { present } from '#basics/present.ts';
import type { BarsChart } from './chart.ts';
import { type Drawing, edge, type Mark, rect, text, width } from './drawing.ts';
import { framed, headOf } from './frame.ts';
import { drawnNames, fitted, widthOf } from './letters.ts';
import { amount, shownBars } from './words.ts';

const step = 30;
const mostNamePx = 130;
const size = 13;

/** A day's use: a bar a load, biggest first, each with its number. */
export function drawBars(chart: BarsChart): Drawing {
  const head = headOf(chart);
  const bars = shownBars(chart.bars);
  const names = drawnNames(bars.map(bar => bar.name)).map(name => fitted(name, mostNamePx, size));
  const values = bars.map(bar => amount(bar.value, chart.unit));
  const left = edge + Math.max(...names.map(name => widthOf(name, size))) + 8;
  const right = width - edge - Math.max(...values.map(value => widthOf(value, size, 600))) - 8;
  const x = scaleLinear([0, Math.max(...bars.map(bar => bar.value), 1e-9)], [left, right]);
  const marks = bars.flatMap((bar, i): Mark[] => {
    const y = head.bottom + 6 + i * step;
    return [
      rect(left, y, Math.max(2, x(bar.value) - left), 20, { round: 3, fill: 'line' }),
      text(left - 8, y + 14.5, present(names[i]), { size, anchor: 'end' }),
      text(Math.max(left + 2, x(bar.value)) + 7, y + 14.5, present(values[i]), { size, weight: 600 }),
    ];
  });
  return framed(head, marks, head.bottom + 6 + bars.length * step + 4);
}
