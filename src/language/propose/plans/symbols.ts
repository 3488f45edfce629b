import { present } from '#basics/present.ts';
import type { Mention } from '../../recognise/mention.ts';
import { doubtfulDays } from '../../words/en/calendar.ts';
import { againWords, driveWords, lastWords, turnWords } from '../../words/en/day-plans.ts';
import { bareHoursAt, hoursAt, noneAt, restingAt } from './facts.ts';
import {
  bareNumbersAt,
  isDaySpan,
  mostDays,
  numbersAt,
  ordinalOf,
  ordinalsAt,
  restAt,
  spanAt,
} from './marks.ts';
import { skyAt } from './sky.ts';
import { stopAt, stopOf } from './stops.ts';
import { sundays } from './sundays.ts';
import type { Mark, PlanSymbol } from './symbol.ts';
import type { Scope } from './topics.ts';
import { weekdayMarkAt, weekdaysOf } from './weekdays.ts';

/** Numbers that count lines or items of a plan: "1 drive 6 h", "2: parked". */
function lineNumbers(mentions: readonly Mention[]): ReadonlySet<number> {
  const found: number[] = [];
  let expected = 1;
  mentions.forEach((m, i) => {
    const before = mentions[i - 1];
    const next = mentions[i + 1];
    const isStart =
      m.isNewLine ||
      !before ||
      stopOf(before) > 0 ||
      before.text === ':' ||
      before.text === '-' ||
      before.text === '*';
    if (m.kind !== 'number' || m.told !== expected || expected > mostDays || !isStart || !next) return;
    if (
      next.text === ':' ||
      next.text === ')' ||
      next.kind === 'sky' ||
      next.kind === 'without' ||
      next.kind === 'amount' ||
      (next.kind === 'sign' && stopOf(next) === 0) ||
      next.text === 'drive' ||
      next.text === 'driving'
    ) {
      found.push(i);
      expected++;
    }
  });
  return new Set(found.length >= 2 ? found : []);
}

/** "Today", "tomorrow", "the day after", "then", "the next day". */
function turnAt(mentions: readonly Mention[], at: number, isStart: boolean): Mark | undefined {
  const m = present(mentions[at]);
  const next = mentions[at + 1]?.text ?? '';
  const mark = (by: Mark['by'], to: number, days: readonly number[], more: Partial<Mark> = {}): Mark => ({
    kind: 'mark',
    by,
    from: at,
    to,
    days,
    ...more,
  });
  if (m.text === 'today' && /^(?:and|&|n|\+)$/.test(next) && mentions[at + 2]?.text === 'tomorrow')
    return mark('dates', at + 3, [1, 2]);
  if (m.text === 'today' || m.text === 'todays' || (m.kind === 'clock' && m.text === 'tonight'))
    return mark('dates', at + 1, [1]);
  if (
    m.kind === 'clock' &&
    (m.text === 'tomorrow' || m.text === 'tomorrow morning' || m.text === 'tomorrow evening')
  )
    return mark('dates', at + 1, [2]);
  if ((m.text === 'day' || m.text === 'the day') && next === 'after') {
    const third = mentions[at + 2];
    const isNamed = third?.text === 'tomorrow' || third?.text === 'that' || third?.text === 'next';
    return mark('turns', at + (isNamed ? 3 : 2), [], { isNamed: true });
  }
  if ((m.text === 'next' || m.text === 'following') && next === 'day')
    return mark('turns', at + 2, [], { isNamed: true });
  if (m.text === 'then' || m.text === 'afterwards' || m.text === 'thereafter')
    return mark('turns', at + 1, []);
  if (m.text === 'after' && next === 'that') return mark('turns', at + 2, [], { isNamed: true });
  if (m.text === 'followed' && next === 'by') return mark('turns', at + 2, []);
  if (isStart && turnWords.has(m.text) && next !== '')
    return mark('turns', at + (next === 'that' ? 2 : 1), []);
  return undefined;
}

/** More is told of no plan of `mostDays`: three keys a day. */
const mostFacts = 3 * mostDays;
/** With its marks and stops. */
const mostSymbols = 400;

/**
 * A message as the symbols that day plans are made of; what is none of them is left out. Nothing where more is told
 * than a plan has.
 */
export function symbolsOf(mentions: readonly Mention[]): readonly PlanSymbol[] | undefined {
  const stops = mentions.map((_, k) => stopAt(mentions, k));
  const scope: Scope = { mentions, stops, taken: new Set() };
  const lines = lineNumbers(mentions);
  const suns = sundays(mentions);
  const named = mentions.map((m, i) => (suns.has(i) ? [6] : weekdaysOf(m)));
  const isLone = named.filter(days => days.length > 0).length < 2;
  // "Sat" and "wed" are verbs too: they need another weekday beside them.
  const daysAt = (i: number): readonly number[] =>
    isLone && doubtfulDays.has(mentions[i]?.text ?? '') ? [] : (named[i] ?? []);
  const isDay = (i: number): boolean => suns.has(i);
  const strict = mentions.filter(
    (_, i) => numbersAt(mentions, i) || ordinalsAt(mentions, i, false) || isDaySpan(mentions[i]),
  ).length;
  const ordinalCount = mentions.filter(
    (m, i) =>
      ordinalOf(m) !== undefined && mentions[i - 1]?.kind !== 'month' && mentions[i + 1]?.kind !== 'month',
  ).length;
  const out: PlanSymbol[] = [];
  let hasHours = false;
  let facts = 0;
  let markEnd = 0;
  let i = 0;
  while (i < mentions.length) {
    if (out.length > mostSymbols) return undefined;
    const m = present(mentions[i]);
    const before = out.at(-1);
    if (m.isNewLine && !(before?.kind === 'stop' && before.weight >= 3))
      out.push({ kind: 'stop', from: i, to: i, weight: 3 });
    if (stops[i]! > 0) {
      out.push({ kind: 'stop', from: i, to: i + 1, weight: stops[i]! });
      i++;
      continue;
    }
    const isStart = i === 0 || m.isNewLine === true || stops[i - 1]! > 0;
    const isLastOf =
      lastWords.has(m.text) &&
      mentions[i - 1]?.text === 'the' &&
      out.filter(s => s.kind === 'mark' && s.by === 'numbers').length > 1;
    const isLoose =
      isLastOf ||
      ((strict > 0 || ordinalCount >= 2 || out.some(s => s.kind === 'mark')) && isLooseOrdinal(mentions, i));
    const found =
      (lines.has(i) || isNextNumber(mentions, i, isStart, out)
        ? ({ kind: 'mark', by: 'numbers', from: i, to: i + 1, days: [m.told] } as Mark)
        : undefined) ??
      numbersAt(mentions, i) ??
      ordinalsAt(mentions, i, isLoose) ??
      weekdayMarkAt(mentions, i, daysAt) ??
      turnAt(mentions, i, isStart) ??
      (strict > 0 ? bareNumbersAt(mentions, i) : undefined) ??
      restAt(mentions, i) ??
      spanAt(mentions, i) ??
      ratesAt(mentions, i);
    if (found) {
      if (found.by === 'turns') out.push({ kind: 'stop', from: i, to: i, weight: 2 });
      out.push(found);
      // "Five days: two sunny, …" tells the length of the trip.
      if (found.by === 'spans' && mentions[found.to]?.text === ':')
        out.push({ kind: 'stop', from: found.to, to: found.to, weight: 1 });
      i = found.to;
      markEnd = found.to;
      continue;
    }
    const hours = hoursAt(scope, i, markEnd);
    const told =
      hours === 'load'
        ? undefined
        : (hours ??
          restingAt(mentions, i) ??
          (isDay(i) ? undefined : skyAt(mentions, i, isDay)) ??
          noneAt(scope, i) ??
          (hasHours || ((strict > 1 || !isLone) && driveWords.has(mentions[i - 1]?.text ?? ''))
            ? bareHoursAt(scope, i)
            : undefined));
    if (told) {
      if (++facts > mostFacts) return undefined;
      if (hours || m.kind === 'number') hasHours = true;
      // "A sunny day": the day belongs to its sky.
      const isWithDay =
        told.key === 'sky' &&
        /^days?$/.test(mentions[told.to]?.text ?? '') &&
        mentions[told.to + 1]?.kind !== 'number';
      out.push(isWithDay ? { ...told, to: told.to + 1 } : told);
      i = told.to + (isWithDay ? 1 : 0);
      continue;
    }
    if ((m.kind === 'word' || m.kind === 'noun') && againWords.has(m.text))
      out.push({
        kind: 'again',
        from: i,
        to: i + 1,
        isWhole: m.text === 'same' || m.text === 'ditto' || m.text === 'likewise' || m.text === 'repeat',
      });
    i++;
  }
  return out;
}

/** "Day one: sunny; two: overcast": the next number, without "day". */
function isNextNumber(
  mentions: readonly Mention[],
  at: number,
  isStart: boolean,
  before: readonly PlanSymbol[],
): boolean {
  const m = present(mentions[at]);
  if (!isStart || m.kind !== 'number' || mentions[at + 1]?.text !== ':') return false;
  const last = before.findLast(s => s.kind === 'mark');
  return last?.kind === 'mark' && last.by === 'numbers' && last.days.at(-1) === m.told - 1;
}

/** Whether an ordinal without "day" may mean one: no thing follows that it would count. */
function isLooseOrdinal(mentions: readonly Mention[], at: number): boolean {
  const m = present(mentions[at]);
  const [before, next] = [mentions[at - 1], mentions[at + 1]];
  if (
    before?.kind === 'month' ||
    next?.kind === 'month' ||
    (next?.text === 'of' && mentions[at + 2]?.kind === 'month')
  )
    return false;
  if (lastWords.has(m.text))
    return next?.kind === 'number' || (before?.text === 'the' && (!next || stopOf(next) > 0));
  if (!next) return true;
  return (
    next.kind !== 'thing' &&
    next.kind !== 'battery' &&
    next.kind !== 'chemistry' &&
    next.kind !== 'solar' &&
    next.kind !== 'noun' &&
    next.kind !== 'inverter' &&
    next.text !== 'hour' &&
    next.text !== 'time' &&
    next.text !== 'hand'
  );
}

/** "Each day", "every day": all the days; "every other day": each second one. */
function ratesAt(mentions: readonly Mention[], at: number): Mark | undefined {
  const m = present(mentions[at]);
  const next = mentions[at + 1]?.text;
  if (m.text === 'every' && (next === 'other' || next === 'second') && mentions[at + 2]?.text === 'day')
    return { kind: 'mark', by: 'alternate', from: at, to: at + 3, days: [] };
  // "All sunny", "sunny all along".
  if (m.text === 'all' && (mentions[at + 1]?.kind === 'sky' || mentions[at + 1]?.text === 'along'))
    return { kind: 'mark', by: 'all', from: at, to: at + 1, days: [] };
  return m.kind === 'rate' && /^(?:each|every) (?:day|evening|night)/.test(m.text)
    ? { kind: 'mark', by: 'all', from: at, to: at + 1, days: [] }
    : undefined;
}
