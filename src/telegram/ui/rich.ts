import type { InputRichMessage, RichBlockTableCell } from 'grammy/types';
import type { WorkingStep } from '#answer/answer.ts';
import { english } from '#answer/speech.ts';

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

/** The working as a table: what is worked out, by which sum, and what comes out. */
export function workingTable(title: string, steps: readonly WorkingStep[]): InputRichMessage {
  const head = ['What', 'How', 'Comes to'].map(text => cell(text, { is_header: true }));
  const rows = steps
    .slice(0, mostRows)
    .map(({ formula, value, unit }) => [
      cell(symbolOf(formula).toWellFormed() || '–'),
      cell(sumOf(formula).toWellFormed() || '–'),
      cell(`${english.significant(value, 4)} ${unit}`.trim(), { align: 'right' }),
    ]);
  return {
    blocks: [
      { type: 'paragraph', text: { type: 'bold', text: title } },
      { type: 'table', cells: [head, ...rows], is_bordered: true, is_compact: true },
    ],
    skip_entity_detection: true,
  };
}
