import { scaleLinear } from 'd3-scale';
import type { MonthsChart } from './chart.ts';
import { boxOf, type Drawing, doMeet, edge, type Mark, rect, stroke, text, width } from './drawing.ts';
import { framed, headOf } from './frame.ts';
import { amount, monthOf, whole } from './words.ts';

const tall = 170;

/** What panels make a day, a column a month with its range, and the day's use as a line. */
export function drawMonths(chart: MonthsChart): Drawing {
  const head = headOf(chart);
  const legend = head.bottom + 14;
  const top = legend + 22;
  const bottom = top + tall;
  const step = (width - 2 * edge) / chart.months.length;
  const most = Math.max(...chart.months.map(month => month.high), chart.use ?? 0, 1e-9);
  const y = scaleLinear([0, most], [bottom, top]);
  const columns = chart.months.flatMap(({ value, low, high }, i): Mark[] => {
    const x = edge + i * step;
    const isAsked = i + 1 === chart.month;
    const weight = isAsked ? 600 : 400;
    return [
      rect(x + 3, y(value), step - 6, bottom - y(value), {
        round: 2,
        fill: 'sun',
        ...(!isAsked && { opacity: 0.55 }),
      }),
      stroke([x + step / 2, y(low)], [x + step / 2, y(high)], 'quiet', { thick: 1.5 }),
      text(x + step / 2, bottom + 15, monthOf(i), { size: 11.5, anchor: 'middle', weight }),
      text(x + step / 2, bottom + 31, whole(value), { size: 11.5, anchor: 'middle', weight }),
    ];
  });
  const marks: Mark[] = [
    ...columns,
    stroke([edge, bottom], [width - edge, bottom], 'quiet'),
    text(edge, legend, `${chart.unit} a day; the stroke is the range`, { ink: 'quiet' }),
  ];
  if (chart.use !== undefined) {
    const at = y(chart.use);
    const says = `you use ${amount(chart.use, chart.unit)}`;
    const words = text(width - edge, legend, says, { weight: 600, ink: 'limit', anchor: 'end' });
    const isFree = !marks.some(mark => mark.kind === 'text' && doMeet(boxOf(mark), boxOf(words), 4));
    marks.push(
      stroke([edge, at], [width - edge, at], 'limit', { thick: 2, dash: '6 4' }),
      isFree ? words : { ...words, y: legend + 15 },
    );
  }
  return framed(head, marks, bottom + 42);
}
