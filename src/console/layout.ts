import { stripVTControlCharacters, styleText } from 'node:util';
import type { Answer } from '#answer/answer.ts';

/** How a terminal shows things. */
export interface Look {
  readonly columns: number;
  readonly isColoured: boolean;
}

const widest = 88;

const bold = (text: string, look: Look): string =>
  look.isColoured ? styleText('bold', text, { validateStream: false }) : text;
const faint = (text: string, look: Look): string =>
  look.isColoured ? styleText('dim', text, { validateStream: false }) : text;

/** Wraps a line at spaces; a word longer than the line stands alone. */
export function wrap(line: string, columns: number, indent = ''): string {
  const lines: string[] = [];
  let current = '';
  for (const word of line.split(' ')) {
    if (current !== '' && indent.length + current.length + 1 + word.length > columns) {
      lines.push(indent + current);
      current = word;
    } else current = current === '' ? word : `${current} ${word}`;
  }
  return [...lines, indent + current].join('\n');
}

/** An answer for the terminal: its first line bold, the rest indented, the next questions numbered. */
export function layout(answer: Pick<Answer, 'text' | 'next'>, look: Look): string {
  const columns = Math.min(look.columns - 1, widest);
  // Somebody's words may hold control codes; a terminal must not act on them.
  const safe = stripVTControlCharacters(answer.text).replace(/[^\P{Cc}\n]/gu, ' ');
  const [first = '', ...rest] = safe.split('\n');
  const lines = [
    bold(wrap(first, columns, '  '), look),
    ...rest.map(line => wrap(line, columns, '  ').trimEnd()),
  ];
  const next = answer.next.map((text, index) => faint(wrap(`${index + 1}  ${text}`, columns, '  '), look));
  return `\n${lines.join('\n')}\n${next.length > 0 ? `\n${next.join('\n')}\n` : ''}\n`;
}
