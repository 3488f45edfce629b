import { present } from '#basics/present.ts';
import type { Mention } from '../../recognise/mention.ts';
import {
  betweenWords,
  connectors,
  dayNouns,
  dayWords,
  lastWords,
  ordinals,
  rangeWords,
  restWords,
} from '../../words/en/day-plans.ts';
import type { Mark, MarkBy } from './symbol.ts';

/** More days than a plan tells one by one. */
export const mostDays = 21;

const isDayNumber = (m: Mention | undefined): m is Mention & { readonly kind: 'number' } =>
  m?.kind === 'number' && Number.isInteger(m.told) && m.told >= 1 && m.told <= mostDays;
export const isDayWord = (m: Mention | undefined): boolean =>
  m !== undefined && (m.kind === 'word' || m.kind === 'noun') && dayWords.has(m.text);
/** Days as an amount: "two days". */
export const isDaySpan = (m: Mention | undefined): m is Mention & { readonly kind: 'amount' } =>
  m?.kind === 'amount' &&
  m.unit === 'days' &&
  m.cls !== 'night' &&
  m.cls !== '1weekend' &&
  !/night|nite|sleep|weekend|fortnight/.test(m.spelled ?? '') &&
  Number.isInteger(m.told) &&
  m.told >= 1 &&
  m.told <= mostDays &&
  m.value === m.told * 24;

export const mark = (
  by: MarkBy,
  from: number,
  to: number,
  days: readonly number[],
  more: Partial<Mark> = {},
): Mark => ({ kind: 'mark', by, from, to, days, ...more });
const upTo = (low: number, high: number): number[] =>
  Array.from({ length: Math.max(0, high - low + 1) }, (_, k) => low + k);

/** The number of an ordinal: "third", "3rd". */
export function ordinalOf(m: Mention | undefined): number | undefined {
  if (!m) return undefined;
  if (m.kind === 'amount' && m.spelled && /^(?:st|nd|rd|th)$/.test(m.spelled) && m.told <= mostDays)
    return m.told;
  return Object.hasOwn(ordinals, m.text) ? ordinals[m.text] : undefined;
}

/** "Day 2", "days 2 and 3", "days 2-4", "day one to three", "d2". */
export function numbersAt(mentions: readonly Mention[], at: number): Mark | undefined {
  const m = present(mentions[at]);
  const glued = /^d(\d)$/.exec(m.text);
  if (glued && (m.kind === 'word' || m.kind === 'noun'))
    return mark('numbers', at, at + 1, [Number(glued[1])]);
  if (!isDayWord(m)) return undefined;
  const days: number[] = [];
  let i = at + 1;
  const amps = mentions[i];
  // "Day three a mix": the article is no unit.
  if (amps?.kind === 'amount' && amps.spelled === 'a' && Number.isInteger(amps.told) && amps.told <= mostDays)
    return mark('numbers', at, at + 2, [amps.told]);
  if (!isDayNumber(mentions[i])) return undefined;
  const isMany = m.text === 'days';
  for (;;) {
    const number = mentions[i];
    if (!isDayNumber(number)) break;
    days.push(number.told);
    i++;
    const sep = mentions[i];
    if (!sep) break;
    let next = i + 1;
    if (isDayWord(mentions[next])) next++;
    const after = mentions[next];
    // "5 h on day 1 and 5 on day 4": the second five is hours.
    if (!isDayNumber(after) || after.told <= number.told || mentions[next + 1]?.text === 'on') break;
    if (rangeWords.has(sep.text)) {
      days.push(...upTo(number.told + 1, after.told - 1));
      i = next;
    } else if (connectors.has(sep.text)) i = next;
    else if (
      sep.text === ',' &&
      (isMany || connectors.has(mentions[next + 1]?.text ?? '')) &&
      next === i + 1 &&
      !sep.isNewLine
    )
      i = next;
    else break;
  }
  return mark('numbers', at, i, days);
}

/** "The first day", "the second and third", "the first two days", "the third and last day". `isLoose`: without "day" too. */
export function ordinalsAt(mentions: readonly Mention[], at: number, isLoose: boolean): Mark | undefined {
  const first = mentions[at - 1]?.text === 'every' ? undefined : ordinalOf(mentions[at]);
  const isLast = lastWords.has(present(mentions[at]).text);
  if (first === undefined && !isLast) return undefined;
  const days: number[] = first === undefined ? [] : [first];
  let hasLast = isLast;
  let i = at + 1;
  const span = mentions[i];
  if (isDaySpan(span) && span.told > 1)
    return first === 1
      ? mark('numbers', at, i + 1, upTo(1, span.told))
      : isLast
        ? mark('last', at, i + 1, [], { count: span.told })
        : undefined;
  if (isLoose && isDayNumber(span) && span.told > 1 && span.told < 8) {
    if (isLast) return mark('last', at, i + 1, [], { count: span.told });
    if (first === 1 && mentions[i + 1]?.kind !== 'thing')
      return mark('numbers', at, i + 1, upTo(1, span.told));
  }
  let hasNoun = false;
  const noun = (): void => {
    if (
      dayNouns.has(mentions[i]?.text ?? '') ||
      (mentions[i]?.kind === 'clock' && dayNouns.has(present(mentions[i]).key))
    ) {
      hasNoun = true;
      i++;
    }
  };
  noun();
  for (;;) {
    let next = i;
    let isRange = false;
    const join = mentions[next]?.text ?? '';
    if (join === ',') next++;
    if (connectors.has(mentions[next]?.text ?? '')) next++;
    else if (rangeWords.has(join)) {
      isRange = true;
      next++;
    } else if (join !== ',') break;
    while (mentions[next]?.text === 'the' || mentions[next]?.text === 'on') next++;
    const number = ordinalOf(mentions[next]);
    if (number !== undefined && number > (days.at(-1) ?? 0)) {
      if (join === ',' && hasNoun && !connectors.has(mentions[i + 1]?.text ?? '')) break;
      if (isRange) days.push(...upTo((days.at(-1) ?? 0) + 1, number - 1));
      days.push(number);
    } else if (number === undefined && lastWords.has(mentions[next]?.text ?? '') && join !== ',') {
      // "The third and last day" is one day, "the first and the last" are two.
      if ((days.at(-1) ?? 0) < 2) hasLast = true;
    } else break;
    i = next + 1;
    noun();
  }
  if (!hasNoun && !isLoose) return undefined;
  if (days.length === 0) return mark('last', at, i, [], { count: 1 });
  return mark('numbers', at, i, days, hasLast ? { hasLast } : {});
}

/** "None on 2 and 4": numbers of days without the word, where days are numbered already. */
export function bareNumbersAt(mentions: readonly Mention[], at: number): Mark | undefined {
  const lead = mentions[at - 1]?.text;
  if (lead !== 'on' && lead !== 'for') return undefined;
  const days: number[] = [];
  let i = at;
  for (;;) {
    const number = mentions[i];
    if (!isDayNumber(number)) break;
    days.push(number.told);
    i++;
    const sep = mentions[i]?.text ?? '';
    const after = mentions[i + 1];
    if (!isDayNumber(after) || after.told <= number.told) break;
    if (rangeWords.has(sep)) days.push(...upTo(number.told + 1, after.told - 1));
    else if (!connectors.has(sep) && sep !== ',') break;
    i++;
  }
  const end = mentions[i];
  if (days.length === 0 || (end && end.kind !== 'sign' && !end.isNewLine)) return undefined;
  return mark('numbers', at, i, days);
}

/** "The other two", "the rest", "the days between". */
export function restAt(mentions: readonly Mention[], at: number): Mark | undefined {
  const m = present(mentions[at]);
  const next = mentions[at + 1];
  if (betweenWords.has(m.text))
    return [6, 5, 4, 3, 2, 1].some(d => isDaySpan(mentions[at - d])) ||
      isDaySpan(next) ||
      isDaySpan(mentions[at + 3])
      ? undefined
      : mark('rest', at, at + 1, []);
  if (
    !restWords.has(m.text) ||
    mentions[at - 1]?.text === 'every' ||
    (m.text === 'rest' && mentions[at - 1]?.text !== 'the')
  )
    return undefined;
  if (isDaySpan(next) || isDayNumber(next)) return mark('rest', at, at + 2, [], { count: next.told });
  if (
    isDayWord(next) ||
    next?.text === 'ones' ||
    m.text === 'rest' ||
    m.text === 'otherwise' ||
    m.text === 'others'
  )
    return mark('rest', at, at + 1, []);
  return undefined;
}

/** "Two days", "the next three days", "a sunny day", "one overcast one": a number of days on. */
export function spanAt(mentions: readonly Mention[], at: number): Mark | undefined {
  const m = present(mentions[at]);
  if (isDaySpan(m)) {
    if (m.text === 'both') return mark('all', at, at + 1, []);
    const lead = [1, 2, 3].map(d => mentions[at - d]?.text ?? '');
    if (lead[0] === 'all' || lead.includes('any') || lead[0] === 'each' || lead[0] === 'every')
      return mark('all', at, at + 1, [], { count: m.told });
    const isBetween = mentions.slice(Math.max(0, at - 4), at + 7).some(o => betweenWords.has(o.text));
    return mark('spans', at, at + 1, [], { count: m.told, ...(isBetween ? { isBetween } : {}) });
  }
  const count = isDayNumber(m)
    ? m.told
    : m.text === 'a' || m.text === 'an' || m.text === 'another'
      ? 1
      : undefined;
  if (count === undefined || count > 14) return undefined;
  for (let i = at + 1; i <= at + 3; i++) {
    const o = mentions[i];
    if (!o || o.kind === 'sign' || o.kind === 'amount' || o.kind === 'number') break;
    if (o.text === 'day' || o.text === 'days' || (o.text === 'ones' && isDayNumber(m)))
      return i > at + 1 || isDayNumber(m) ? mark('spans', at, at + 1, [], { count }) : undefined;
  }
  const told = mentions[at + 1];
  if (
    isDayNumber(m) &&
    (told?.kind === 'sky' ||
      (told?.kind === 'without' && told.key === 'driving' && mentions[at - 1]?.text === 'then'))
  )
    return mark('spans', at, at + 1, [], { count });
  return undefined;
}
