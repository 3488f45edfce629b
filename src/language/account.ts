import { present } from '#basics/present.ts';
import type { Option } from './decide/decide.ts';
import { planOf } from './propose/plans.ts';
import * as slot from './propose/slots.ts';
import type { Mention } from './recognise/mention.ts';
import type { Recognised } from './recognise/recognise.ts';

/** A number of the message that is in no fact, and why. */
export interface Unread {
  readonly text: string;
  readonly why: string;
}

const reasons: Readonly<Record<string, string>> = {
  money: 'a price',
  km: 'a distance',
  years: 'an age or a span of years',
  months: 'a span of months',
  L: 'a volume',
  kg: 'a weight',
};

/** Every number that the facts hold, however deep. */
function numbersIn(facts: unknown, found: number[] = []): readonly number[] {
  if (typeof facts === 'number') found.push(facts);
  else if (facts !== null && typeof facts === 'object')
    for (const inner of Object.values(facts)) numbersIn(inner, found);
  return found;
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-3 * Math.max(1, Math.abs(b));

/** The values that a number may be told by: as decided, as said, in its base unit, as one of its variants. */
const valuesOf = (m: Mention, decided: number): number[] => {
  const scale = m.told === 0 ? 1 : m.value / m.told;
  return [decided, m.told, m.value, ...m.variants.flatMap(v => [v.value, v.value / scale])];
};

/** Whether a mention is a number: an amount, a number alone, a time with digits. */
export const isNumber = (m: Mention): boolean =>
  m.kind === 'amount' || m.kind === 'number' || (m.kind === 'clock' && /\d/.test(m.text));

/**
 * Numbers that no fact took, as they stand in the message, each with its reason: none vanishes.
 * @param beside what is told beside the facts: what was put right, what is to be converted
 */
export function unreadIn(recognised: Recognised, { state, stated }: Option, beside: unknown): Unread[] {
  const { text, tokens, mentions } = recognised;
  const planned = stated.days ? new Set(planOf(mentions)?.used) : undefined;
  const aside = numbersIn(beside);
  const told = [...numbersIn(stated), ...aside];
  const isIn = (numbers: readonly number[], m: Mention, decided: number): boolean =>
    valuesOf(m, decided).some(value => numbers.some(number => isNear(number, value)));
  /** Why a number is in nothing, or undefined where it is told. */
  const whyNot = (m: Mention, s: number, decided: number): string | undefined => {
    if (s > slot.same) {
      const isTold = s === slot.until ? stated.until === m.key : isIn(told, m, decided);
      return isTold ? undefined : 'another figure was taken for it';
    }
    if (isIn(aside, m, decided)) return undefined;
    return s === slot.same ? 'said before' : (reasons[m.unit ?? ''] ?? 'no part of the question');
  };
  return mentions.flatMap((m, i) => {
    const why = isNumber(m) && !planned?.has(i) ? whyNot(m, state.slots[i]!, state.values[i]!) : undefined;
    return why === undefined
      ? []
      : [{ text: text.slice(present(tokens[m.from]).start, present(tokens[m.to - 1]).end), why }];
  });
}
