import type { InputRichMessage, RichBlockTableCell } from 'grammy/types';
import type { WorkingStep } from '#answer/answer.ts';
import type { Chart } from '#answer/chart/chart.ts';
import { english } from '#answer/speech.ts';
import { linesOf, rowsOf } from './caption.ts';

const cell = (text: string, more: Partial<RichBlockTableCell> = {}): RichBlockTableCell => ({
  text,
  align: 'left',
  valign: 'top',
  ...more,
});

/** Telegram's limit of blocks in a rich message is 500, table rows included. */
const mostRows = 400;

/** "usable" out of "usable = capacity × depth = 100 Ah × 0.5". */
const symbolOf = (formula: string): string => formula.split(' = ')[0] ?? '';
const sumOf = (formula: string): string => formula.split(' = ').slice(1).join('\n= ');

const wellFormed = (text: string): string => text.toWellFormed() || '–';

/** A title, lines below it, and a table whose first row are heads and whose last column are numbers. */
function table(
  title: string,
  lines: readonly string[],
  rows: readonly (readonly string[])[],
): InputRichMessage {
  const cells = rows.slice(0, mostRows).map((row, at) =>
    row.map((text, column) => {
      const align = column > 0 && column === row.length - 1 ? { align: 'right' as const } : {};
      return cell(wellFormed(text), at === 0 ? { is_header: true, ...align } : align);
    }),
  );
  return {
    blocks: [
      { type: 'paragraph', text: { type: 'bold', text: wellFormed(title) } },
      ...lines.map(text => ({ type: 'paragraph' as const, text: wellFormed(text) })),
      { type: 'table', cells, is_bordered: true, is_compact: true },
    ],
    skip_entity_detection: true,
  };
}

/** The working as a table: what is worked out, by which sum, and what comes out. */
export const workingTable = (title: string, steps: readonly WorkingStep[]): InputRichMessage =>
  table(
    title,
    [],
    [
      ['What', 'How', 'Comes to'],
      ...steps.map(({ formula, value, unit }) => [
        symbolOf(formula),
        sumOf(formula),
        `${english.significant(value, 4)} ${unit}`.trim(),
      ]),
    ],
  );

/** The numbers of a picture as a table, for where pictures are refused. */
export const chartTable = (chart: Chart): InputRichMessage => {
  const lines = [chart.note, ...linesOf(chart)].filter(line => line.trim() !== '');
  // The rows say what lists would.
  return table(
    chart.title,
    chart.kind === 'charge' ? lines : lines.slice(0, chart.note === '' ? 0 : 1),
    rowsOf(chart),
  );
};
