import { present } from '#basics/present.ts';
import type { DayKey, Fact, Mark, PlanSymbol } from './symbol.ts';

const isOutright = (s: PlanSymbol): s is Mark =>
  s.kind === 'mark' && (s.by === 'numbers' || s.by === 'weekdays' || s.by === 'dates');

/** Gives facts without a key the one told before them, or else the next one told. */
export function withKeys(symbols: readonly PlanSymbol[]): readonly PlanSymbol[] {
  const told = (s: PlanSymbol): s is Fact =>
    s.kind === 'fact' && s.key !== undefined && s.key !== 'sky' && !s.isSoft;
  const first = symbols.find(told)?.key;
  let last: DayKey | undefined;
  return symbols.map(s => {
    if (told(s)) last = s.key;
    if (s.kind !== 'fact' || s.key) return s;
    return { ...s, key: last ?? first ?? 'drivingH' };
  });
}

/** "Thursday, day one": the same day twice. */
function isBesideWeekday(symbols: readonly PlanSymbol[], mark: Mark): boolean {
  const at = symbols.indexOf(mark);
  for (const step of [-1, 1])
    for (let i = at + step; i >= 0 && i < symbols.length; i += step) {
      const s = present(symbols[i]);
      if (s.kind === 'mark' && s.by === 'weekdays') return step < 0 || i === at + 1;
      if (s.kind !== 'stop' || s.weight > 1) break;
    }
  return false;
}

/** How many words stand in a chunk that starts at a mention, beside what it tells. */
const wordsOf = (part: readonly PlanSymbol[], from: number): number => {
  const told = part.filter(s => s.kind !== 'stop');
  return told.length === 0
    ? 0
    : Math.max(present(told.at(-1)).to, present(part.at(-1)).from) -
        told.reduce((sum, s) => sum + s.to - s.from, from);
};

/** Symbols between two stops. */
function chunks(symbols: readonly PlanSymbol[]): PlanSymbol[][] {
  const out: PlanSymbol[][] = [[]];
  for (const s of symbols) {
    present(out.at(-1)).push(s);
    if (s.kind === 'stop') out.push([]);
  }
  return out;
}

const turnAt = (s: PlanSymbol): Mark => ({ kind: 'mark', by: 'turns', from: s.from, to: s.from, days: [] });

/** Whether a chunk without a mark tells a new day after a span: "first day 2 h, two days nothing, 2 h home". */
function isAfterSpan(parts: readonly (readonly PlanSymbol[])[], p: number): boolean {
  const before = parts[p - 1] ?? [];
  const facts = (parts[p] ?? []).filter(s => s.kind === 'fact');
  if (
    facts.length === 0 ||
    facts.some(f => f.isSoft) ||
    present(parts[p]).some(s => s.kind === 'mark') ||
    endsHard(before)
  )
    return false;
  return (
    before.some(s => s.kind === 'mark' && s.by === 'spans') &&
    before.some(s => s.kind === 'fact' && facts.some(f => f.key === s.key && f.value !== s.value))
  );
}

/** Whether days are told in turn beside outright ones: after "today", or before the only number: "rain, rain, sun on day 3". */
function isImplied(parts: readonly (readonly PlanSymbol[])[]): boolean {
  const outright = parts.flat().filter(isOutright);
  if (outright.every(m => m.by === 'dates')) return true;
  const [only] = outright;
  if (outright.length !== 1 || present(only).by !== 'numbers' || present(only).days.length !== 1)
    return false;
  let before = 0;
  for (const part of parts) {
    if (part.includes(only!)) break;
    if (part.some(s => s.kind === 'fact')) before++;
  }
  return before === present(only).days[0]! - 1 && before > 0;
}

/** "Fri, sat, sun: sunny, sunny, cloudy": as many things told as days named, a day each. */
export function dealtOut(symbols: readonly PlanSymbol[]): readonly PlanSymbol[] {
  const out: PlanSymbol[] = [];
  for (let i = 0; i < symbols.length; i++) {
    const s = present(symbols[i]);
    const count =
      s.kind !== 'mark'
        ? 0
        : s.by === 'numbers' || s.by === 'weekdays'
          ? s.days.length
          : s.by === 'spans'
            ? s.count!
            : 0;
    const facts: Fact[] = [];
    if (count > 1)
      for (const next of symbols.slice(i + 1)) {
        if (next.kind === 'mark' || (next.kind === 'stop' && next.weight > 1)) break;
        if (next.kind === 'fact') facts.push(next);
      }
    if (count < 2 || s.kind !== 'mark' || facts.length !== count || new Set(facts.map(f => f.key)).size > 1) {
      out.push(s);
      continue;
    }
    facts.forEach((fact, k) => {
      out.push(
        {
          ...s,
          by: s.by === 'spans' ? 'turns' : s.by,
          days: s.by === 'spans' ? [] : [s.days[k]!],
          count: undefined,
          from: k === 0 ? s.from : fact.from,
          to: k === 0 ? s.to : fact.from,
        },
        fact,
      );
    });
    i = symbols.indexOf(facts.at(-1)!);
  }
  return out;
}

const endsHard = (part: readonly PlanSymbol[]): boolean => {
  const last = part.at(-1);
  return last?.kind === 'stop' && last.weight === 3;
};

export interface Marked {
  readonly symbols: readonly PlanSymbol[];
  /** Days of the whole trip, where told: "four days: …". */
  readonly total?: number;
  readonly totalAt?: Mark;
  /** Days that no word marks: they are told in turn. */
  readonly implied: number;
}

/** Leaves marks out that mark nothing of their own, and puts marks in where days are told in turn without them. */
export function marked(symbols: readonly PlanSymbol[]): Marked {
  let totalAt: Mark | undefined;
  const hasOutright = symbols.some(isOutright);
  const parts = chunks(symbols);
  const kept = parts.map((whole, p) => {
    const hasMany = whole.some(
      s => s.kind === 'mark' && (s.by === 'all' || s.days.length > 1 || (s.count ?? 0) > 1),
    );
    const part = whole.filter(s => s.kind !== 'fact' || !s.isDaily || hasMany);
    const facts = part.some(s => s.kind === 'fact');
    const others = (mark: Mark): boolean =>
      part.some(s => s.kind === 'mark' && s !== mark && s.by !== 'turns');
    return part.filter(s => {
      if (s.kind !== 'mark') return true;
      if (
        s.by === 'numbers' &&
        s.days.length === 1 &&
        (isBesideWeekday(symbols, s) || part.some(o => o.kind === 'mark' && o.by === 'weekdays'))
      )
        return false;
      // "Day 2 is a rest day."
      if (s.by === 'spans' && s.count === 1 && part.some(isOutright)) return false;
      if (s.by === 'turns') return !others(s);
      const isFrame = part.every(o => o.kind !== 'fact' || o.isSoft) && hasOutright && endsHard(part);
      // "Two days of driving, 4 hours each".
      const stop = part.at(-1);
      const isContinued =
        !facts &&
        stop?.kind === 'stop' &&
        stop.weight === 1 &&
        stop.to > stop.from &&
        parts[p + 1]?.some(o => o.kind === 'fact') &&
        !present(parts[p + 1]).some(o => o.kind === 'mark');
      if (
        s.by === 'spans' &&
        !isContinued &&
        (!facts || isFrame) &&
        !s.isBetween &&
        part.every(o => o.kind !== 'mark' || o === s || o.by === 'rest')
      ) {
        totalAt ??= s;
        return false;
      }
      if (s.by === 'all') return facts;
      return true;
    });
  });
  if (hasOutright && !isImplied(kept))
    return {
      symbols: kept.flatMap((part, p) => (isAfterSpan(kept, p) ? [turnAt(part[0]!), ...part] : part)),
      total: totalAt?.count,
      totalAt,
      implied: 0,
    };
  // Without numbers and weekdays a day ends where something is told that is told of it already.
  let implied = 0;
  let keys: Map<DayKey, number | string> | undefined;
  const out: PlanSymbol[] = [];
  const imply = (s: PlanSymbol): void => {
    out.push(turnAt(s));
    implied++;
    keys = new Map();
  };
  let start = 0;
  let lastTo = -1;
  for (const part of kept) {
    const hasMark = part.some(s => s.kind === 'mark' && s.by !== 'all');
    const hasHard = part.some(s => s.kind === 'fact' && !s.isSoft);
    if (hasMark) keys = new Map();
    for (const s of part) {
      if (
        s.kind === 'fact' &&
        s.key &&
        !hasMark &&
        (!keys || keys.has(s.key)) &&
        !(s.isSoft && (!keys || hasHard)) &&
        !(keys?.get(s.key) === s.value && s.from !== lastTo && wordsOf(part, start) > 0)
      )
        imply(s);
      if (s.kind === 'fact') lastTo = s.to;
      if (s.kind === 'fact' && s.key) keys?.set(s.key, s.value);
      out.push(s);
    }
    start = part.at(-1)?.to ?? start;
  }
  return { symbols: out, total: totalAt?.count, totalAt, implied };
}
