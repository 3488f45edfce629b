import { present } from '#basics/present.ts';
import type { Conversion } from '../reading.ts';
import type { Recognised } from './recognise.ts';
import { unitLexicon } from './units.ts';

const leads: ReadonlySet<string> = new Set([
  'in',
  'to',
  'into',
  'as',
  'many',
  'what',
  'whats',
  '=',
  'how',
  'the',
]);

/** The amount to convert, the unit asked for, and what bridges them. */
export function convertIn({ mentions, words, tokens }: Recognised): Conversion | undefined {
  const amounts = mentions.filter(m => m.kind === 'amount' && m.dimension !== 'other');
  const bridge = amounts.length > 1 ? amounts.find(m => m.dimension === 'voltage') : undefined;
  const time = amounts.length > 1 ? amounts.find(m => m.dimension === 'time') : undefined;
  const value = amounts.find(m => m !== bridge && m !== time) ?? amounts[0];
  if (!value?.unit) return undefined;
  const taken = new Set<number>();
  for (const m of amounts) for (let i = m.from; i < m.to; i++) taken.add(i);
  const text = { length: words.length, wordAt: (i: number) => words[i] ?? '' };
  let to: string | undefined;
  for (let i = 0; i < tokens.length; i++) {
    if (taken.has(i)) continue;
    const found = unitLexicon.find(text, i);
    if (!found || found.value.symbol === value.unit) continue;
    const isLetter = found.length === 1 && present(words[i]).length === 1;
    const isLed = leads.has(words[i - 1] ?? '') || leads.has(words[i - 2] ?? '');
    if (words[i] === 'in' || words[i] === 'below' || (isLetter && !isLed)) continue;
    to ??= found.value.symbol;
    if (isLed) {
      to = found.value.symbol;
      break;
    }
  }
  return { value: value.told, unit: value.unit, to, voltageV: bridge?.value, hours: time?.value };
}
