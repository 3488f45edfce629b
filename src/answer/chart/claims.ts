import { scaleLinear } from 'd3-scale';
import { present } from '#basics/present.ts';
import type { ClaimsChart } from './chart.ts';
import { backed, type Drawing, edge, type Mark, rect, stroke, text, width } from './drawing.ts';
import { framed, headOf } from './frame.ts';
import { drawnNames, fitted, widthOf } from './letters.ts';
import { amount, whole } from './words.ts';

/** People that fit; the words below name all. */
const most = 8;
const step = 40;
const size = 13;

/** Claims: the answer's range as a band down the picture, each person's number on a line of its own. */
export function drawClaims(chart: ClaimsChart): Drawing {
  const head = headOf(chart);
  const claims = chart.claims.slice(0, most);
  const names = drawnNames(claims.map(claim => claim.who)).map(name => fitted(name, 110, size, 600));
  const left = edge + Math.max(40, ...names.map(name => widthOf(name, size, 600))) + 12;
  const right = width - edge - 8;
  const all = [chart.low, chart.high, chart.value, ...claims.map(claim => claim.value)];
  const x = scaleLinear([Math.min(0, ...all), Math.max(...all) * 1.04 || 1], [left, right]);
  const top = head.bottom + 24;
  const bottom = top + claims.length * step + 6;
  const middle = (at: number, words: string, points: number, weight: 400 | 600 = 400): number => {
    const half = widthOf(words, points, weight) / 2;
    return Math.min(right + 8 - half, Math.max(left - 8 + half, at));
  };
  const result = `worked out: ${amount(chart.value, chart.unit)}`;
  const widest = Math.max(...x.ticks(5).map(tick => widthOf(whole(tick), 11))) + 10;
  const many = Math.max(1, Math.min(5, Math.floor((right - left) / widest)));
  const ticks = x
    .ticks(many)
    .map(tick => ({ at: x(tick), words: whole(tick) }))
    .filter(({ at, words }) => at + widthOf(words, 11) / 2 <= right + 8)
    .filter(({ at, words }, i, all) => i === 0 || at - present(all[i - 1]).at >= widthOf(words, 11) + 6);
  const marks: Mark[] = [
    rect(x(chart.low), top, Math.max(3, x(chart.high) - x(chart.low)), bottom - top, {
      fill: 'good',
      opacity: 0.22,
    }),
    stroke([x(chart.value), top], [x(chart.value), bottom], 'good', { thick: 2 }),
    text(middle(x(chart.value), result, 12, 600), top - 8, result, {
      size: 12,
      weight: 600,
      ink: 'good',
      anchor: 'middle',
    }),
    stroke([left, bottom], [right, bottom], 'quiet'),
    ...ticks.flatMap(({ at, words }): Mark[] => [
      stroke([at, bottom], [at, bottom + 4], 'quiet'),
      text(at, bottom + 16, words, { ink: 'quiet', anchor: 'middle' }),
    ]),
    text(right, bottom + 32, chart.unit, { ink: 'quiet', anchor: 'end' }),
    ...claims.flatMap((claim, i): Mark[] => {
      const y = top + step * i + 26;
      const words = amount(claim.value, chart.unit);
      return [
        stroke([left, y], [right, y], 'grid'),
        text(left - 12, y + 4.5, present(names[i]), { size, weight: 600, anchor: 'end' }),
        { kind: 'circle', x: x(claim.value), y, r: 6, fill: 'line' },
        ...backed(
          text(middle(x(claim.value), words, 12, 600), y - 10, words, {
            size: 12,
            weight: 600,
            anchor: 'middle',
          }),
        ),
      ];
    }),
  ];
  const rest = chart.claims.length - claims.length;
  if (rest > 0) marks.push(text(edge, bottom + 32, `and ${rest} more below`, { ink: 'quiet' }));
  return framed(head, marks, bottom + 42);
}
