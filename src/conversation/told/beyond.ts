import { english } from '#answer/speech.ts';
import type { Issue } from '#language/issue.ts';
import type { ParsedMessage } from '#language/reading.ts';

/** Figures of camps by their unit: none is above `most`. Common practice. */
const limits: readonly {
  readonly unit: string;
  readonly isDaily: boolean;
  readonly most: number;
}[] = [
  { unit: 'Ah', isDaily: true, most: 1000 },
  { unit: 'Wh', isDaily: true, most: 50_000 },
  { unit: 'Ah', isDaily: false, most: 20_000 },
  { unit: 'Wh', isDaily: false, most: 500_000 },
  { unit: 'W', isDaily: false, most: 50_000 },
  { unit: 'A', isDaily: false, most: 2000 },
];

/** Numbers of a known unit that no fact took because they are beyond belief: they are asked about. */
export function beyondBelief({
  recognised: { mentions, text, tokens },
  unread,
}: Pick<ParsedMessage, 'recognised' | 'unread'>): Issue[] {
  const left = new Set(unread.filter(({ why }) => why === 'no part of the question').map(one => one.text));
  return mentions.flatMap((mention): Issue[] => {
    const { kind, unit, value, rate, from, to } = mention;
    const said = text.slice(tokens[from]?.start, tokens[to - 1]?.end);
    if (kind !== 'amount' || !left.has(said)) return [];
    const row = limits.find(one => one.unit === unit && one.isDaily === (rate === 'day'));
    if (!row || value <= row.most) return [];
    const of = `${unit}${rate === 'day' ? ' a day' : ''}`;
    return [{ code: 'absurd-value', data: { thing: 'camper', said: `${english.decimals(value, 0)} ${of}` } }];
  });
}
