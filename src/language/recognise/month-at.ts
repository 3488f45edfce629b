import type { Token } from '../lex/lex.ts';
import { make } from './make.ts';
import type { Mention } from './mention.ts';

/** A month told by its number: "month 12", "month: 3". */
export function monthAt(tokens: readonly Token[], words: readonly string[], at: number): Mention | undefined {
  if (words[at] !== 'month') return undefined;
  const end = words[at + 1] === ':' ? at + 2 : at + 1;
  const value = tokens[end]?.kind === 'number' ? tokens[end]?.value : undefined;
  if (value === undefined || !Number.isInteger(value) || value < 1 || value > 12) return undefined;
  return make('month', String(value), at, end + 1, { cls: 'month', text: `month ${value}`, value });
}
