import { markKnown, quantityAt, type State, textAt, wordAt } from '../state.ts';
import { months } from '../words/en/calendar.ts';
import { list } from '../words/list.ts';

/** A day of the year; month 0 where only the day was said. */
interface Day {
  readonly day: number;
  readonly month: number;
  readonly at: number;
  readonly end: number;
}

const joints = list('to till til until - through thru back return returning home and leaving leave ending');
const mostBetween = 5;
const mostDays = 60;
const ordinals = list('st nd rd th');

/** A time told by its first and last day: "27/12 to 31/12", "from the 3rd to the 7th", "28 dec till 2 jan". */
export function dates(state: State): void {
  if (state.facts.durationH !== undefined) return;
  const all: Day[] = [];
  for (let i = 0; i < state.tokens.length; ) {
    const day = dayAt(state, i);
    if (day) all.push(day);
    i = day ? day.end : i + 1;
  }
  for (const [i, to] of all.entries()) {
    const from = all[i - 1];
    if (!from || !isJoined(state, from, to)) continue;
    const days = between(from, to, state.context.at.getUTCFullYear());
    if (days < 1 || days > mostDays) continue;
    state.facts.durationH = days * 24;
    const month = from.month || to.month;
    if (month) state.facts.month ??= month;
    for (const one of [from, to]) use(state, one);
    return;
  }
}

/** "27/12", "27 dec", "dec 27th", "the 3rd", or the bare first day of "3 to 7 march". */
function dayAt(state: State, at: number): Day | undefined {
  const month = months[wordAt(state, at)];
  const behind = month ? numberAt(state, at + 1) : undefined;
  if (month && behind) return { day: behind.day, month, at, end: behind.end };
  const own = numberAt(state, at);
  if (!own) return undefined;
  const { day, isOrdinal } = own;
  const second = textAt(state, own.end) === '/' ? numberAt(state, own.end + 1) : undefined;
  if (second) return slashed(day, second.day, at, second.end);
  const next = wordAt(state, own.end) === 'of' ? own.end + 1 : own.end;
  const named = months[wordAt(state, next)];
  if (named) return { day, month: named, at, end: next + 1 };
  if (isOrdinal) return { day, month: 0, at, end: own.end };
  const last = /^(-|to|till|til|until)$/.test(textAt(state, own.end)) && numberAt(state, own.end + 1);
  return last && months[wordAt(state, last.end)] ? { day, month: 0, at, end: own.end } : undefined;
}

/** Day first, as most of the world writes; the other way round where only that can be. */
function slashed(first: number, second: number, at: number, end: number): Day | undefined {
  if (second <= 12) return { day: first, month: second, at, end };
  return first <= 12 ? { day: second, month: first, at, end } : undefined;
}

/** A day of the month: "27", "27th" (which may have been read as a number with a unit). */
function numberAt(state: State, at: number): { day: number; isOrdinal: boolean; end: number } | undefined {
  const token = state.tokens[at];
  if (!token || token.kind === 'word' || token.kind === 'sign') return undefined;
  const ordinal = /^(\d\d?)(st|nd|rd|th)$/i.exec(token.raw);
  const day = ordinal ? Number(ordinal[1]) : token.kind === 'number' ? token.value : 0;
  if (!Number.isInteger(day) || day < 1 || day > 31) return undefined;
  const isSplit = ordinals.has(wordAt(state, at + 1)) && state.tokens[at + 1]!.isGlued;
  return { day, isOrdinal: ordinal !== null || isSplit, end: isSplit ? at + 2 : at + 1 };
}

function isJoined(state: State, from: Day, to: Day): boolean {
  if (to.at - from.end > mostBetween) return false;
  for (let i = from.end; i < to.at; i++) if (joints.has(textAt(state, i))) return true;
  return false;
}

const dayMs = 86_400_000;

function between(from: Day, to: Day, year: number): number {
  const last = to.month || from.month || 1;
  const first = from.month || last;
  const isNextYear = last < first;
  return Math.round(
    (Date.UTC(isNextYear ? year + 1 : year, last - 1, to.day) - Date.UTC(year, first - 1, from.day)) / dayMs,
  );
}

function use(state: State, { at, end }: Day): void {
  markKnown(state, at, end);
  for (let i = at; i < end; i++) {
    const quantity = quantityAt(state, i);
    if (quantity) quantity.taken = 'date';
    else if (state.tokens[i]!.kind === 'number') state.tokens[i]!.text = 'date';
  }
}
