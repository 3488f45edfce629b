import type { Answer } from '#answer/answer.ts';
import type { Chart } from '#answer/chart/chart.ts';
import { draw } from '#answer/chart/draw.ts';
import { present } from '#basics/present.ts';
import { captionOf } from '#telegram/ui/caption.ts';

const near = (a: number, b: number, off: number): boolean => Math.abs(a - b) <= off;

/** The days, from 1, that an answer tells in one line with their like. */
const daysTogether = (text: string): ReadonlySet<number> =>
  new Set(
    [...text.matchAll(/^Days (\d+)–(\d+): out/gm)].flatMap(([, first, last]) =>
      Array.from({ length: Number(last) - Number(first) + 1 }, (_, i) => Number(first) + i),
    ),
  );

/** The value of a figure of an answer. */
const figureOf = ({ figures }: Answer, name: string): number => Number(figures[name]?.value);

/** All words of a drawing, in the order they stand in, without the breaks of its lines. */
const wordsOf = (chart: Chart): string =>
  draw(chart)
    .marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
    .join(' ')
    .replace(/\s+/g, ' ');

/** Where a line between points stands at an hour, %. */
function levelAt(points: readonly { readonly atH: number; readonly percent: number }[], atH: number): number {
  const after = points.findIndex(point => point.atH >= atH);
  const [a, b] = [present(points[Math.max(0, after - 1)]), present(points[after])];
  return b.atH === a.atH
    ? b.percent
    : a.percent + ((b.percent - a.percent) * (atH - a.atH)) / (b.atH - a.atH);
}

/** What of a picture differs from the answer that it stands with: figures, marks, and words. */
export function disagreements(chart: Chart, answer: Answer): string[] {
  const found: string[] = [];
  const must = (holds: boolean, what: string): void => {
    if (!holds) found.push(what);
  };
  const [drawn, caption] = [wordsOf(chart), captionOf(chart)];
  const first = present(answer.text.split('\n')[0]).replace(/\.$/, '');
  must(drawn.includes(chart.title), `the title is not drawn whole: ${chart.title}`);
  must(caption.includes(chart.title), 'the words below have another title');
  switch (chart.kind) {
    case 'charge': {
      must(first.startsWith(chart.title), `title and first line differ: ${chart.title} / ${first}`);
      must(drawn.includes(chart.mark.says), 'what is marked is not drawn');
      must(caption.toLowerCase().includes(chart.mark.says.toLowerCase()), 'what is marked is not said');
      const level = levelAt(chart.points, chart.mark.atH);
      must(near(level, chart.mark.percent, 1), `the mark is off its line: ${chart.mark.percent} / ${level}`);
      must(drawn.includes(`stay above ${Math.round(chart.limitPercent)} %`), 'the limit is not named');
      if (answer.intent === 'run-time') {
        must(near(chart.mark.atH, figureOf(answer, 'runTime'), 0.01), 'the run time is another one');
        must(near(chart.mark.percent, chart.limitPercent, 0.01), 'it does not end at its limit');
      } else {
        const lowest = Math.min(...chart.points.map(point => point.percent));
        must(near(lowest, figureOf(answer, 'lowestCharge'), 1), `lowest ${lowest}`);
        must(
          near(present(chart.points.at(-1)).percent, figureOf(answer, 'endCharge'), 1),
          'it ends otherwise',
        );
        // The figure that stands in the mark stands in the first line.
        const told = /\d+ %|(day \d+|[A-Z]\w+day),? [\w ]+/.exec(chart.mark.says)?.[0] ?? '';
        must(first.includes(told), `the first line lacks “${told}”`);
      }
      if (chart.before) must(caption.includes(chart.before.says), 'the line before is not said');
      break;
    }
    case 'bars': {
      const sum = chart.bars.reduce((all, bar) => all + bar.value, 0);
      must(near(sum, figureOf(answer, 'dailyUse'), 0.01 * sum), `the bars come to ${sum}`);
      for (const bar of chart.bars) must(caption.includes(bar.name), `${bar.name} is not said`);
      break;
    }
    case 'claims':
      must(near(chart.value, figureOf(answer, 'answer'), 0.01 * chart.value), 'the result is another one');
      must(first.startsWith(chart.title), 'title and first line differ');
      break;
    case 'months': {
      const { value, low, high } = present(chart.months[chart.month - 1]);
      const told = answer.figures.dailyYield as { readonly low: number; readonly high: number } | undefined;
      must(near(value, figureOf(answer, 'dailyYield'), 1e-6), 'the month asked for has another value');
      must(
        near(low, told?.low ?? Number.NaN, 1e-6) && near(high, told?.high ?? Number.NaN, 1e-6),
        'its range',
      );
      break;
    }
    case 'plan': {
      const lowest = Math.min(...chart.days.map(day => day.lowestPercent));
      must(near(lowest, figureOf(answer, 'lowestCharge'), 1), `lowest ${lowest}`);
      must(
        near(present(chart.days.at(-1)).endPercent, figureOf(answer, 'endCharge'), 1),
        'it ends otherwise',
      );
      // Days that are alike stand in one line: "Days 3–5: out".
      for (const [i, { name }] of chart.days.entries())
        must(
          answer.text.includes(`${name}: out`) || daysTogether(answer.text).has(i + 1),
          `${name} is not in the answer`,
        );
      break;
    }
    case 'wiring': {
      const leads = [...chart.branches.flatMap(({ boxes }) => boxes.map(({ lead }) => lead)), chart.main];
      for (const lead of leads) {
        if (!lead) continue;
        must(drawn.includes(`${lead.areaMm2} mm², ${lead.lengthM} m`), `${lead.areaMm2} mm² is not drawn`);
        must(caption.includes(`${lead.areaMm2} mm², ${lead.lengthM} m`), `${lead.areaMm2} mm² is not said`);
        if (lead.fuseA !== undefined) must(drawn.includes(`fuse ${lead.fuseA} A`), `fuse ${lead.fuseA}`);
      }
      for (const caution of chart.cautions) must(drawn.includes(caution), `not drawn: ${caution}`);
      must(/not a plan/.test(drawn), 'it is taken for a plan');
      if (answer.intent === 'cable-size') {
        must(near(present(leads[0]).areaMm2, figureOf(answer, 'conductorArea'), 1e-6), 'another cable');
        must(near(present(present(leads[0]).fuseA), figureOf(answer, 'fuseRating'), 1e-6), 'another fuse');
      }
    }
  }
  return found;
}
