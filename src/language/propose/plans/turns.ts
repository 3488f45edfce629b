import type { DayKey, Fact, Mark, PlanSymbol } from './symbol.ts';

const isOutright = (s: PlanSymbol): s is Mark => s.kind === 'mark' && (s.by === 'numbers' || s.by === 'weekdays' || s.by === 'dates');

/** Gives facts without a key the one told before them, or else the next one told. */
export function withKeys(symbols: readonly PlanSymbol[]): readonly PlanSymbol[] {
  const told = (s: PlanSymbol): s is Fact => s.kind === 'fact' && s.key !== undefined && s.key !== 'sky' && !s.isSoft;
  let last: DayKey | undefined;
  return symbols.map((s, i) => {
    if (told(s)) last = s.key;
    if (s.kind !== 'fact' || s.key) return s;
    return { ...s, key: last ?? symbols.slice(i).find(told)?.key ?? 'drivingH' };
  });
}

/** Symbols between two stops. */
function chunks(symbols: readonly PlanSymbol[]): PlanSymbol[][] {
  const out: PlanSymbol[][] = [[]];
  for (const s of symbols) {
    out.at(-1)!.push(s);
    if (s.kind === 'stop') out.push([]);
  }
  return out;
}

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
  const kept = parts.map(part => {
    const facts = part.some(s => s.kind === 'fact');
    const others = (mark: Mark): boolean => part.some(s => s.kind === 'mark' && s !== mark && s.by !== 'turns');
    return part.filter(s => {
      if (s.kind !== 'mark') return true;
      if (s.by === 'turns') return !others(s);
      if (s.by === 'spans' && !facts && !s.isBetween) {
        totalAt ??= s;
        return false;
      }
      if (s.by === 'all') return facts;
      return true;
    });
  });
  if (hasOutright) return { symbols: kept.flat(), total: totalAt?.count, totalAt, implied: 0 };
  // Without numbers and weekdays a day ends where something is told that is told of it already.
  let implied = 0;
  let keys: Set<DayKey> | undefined;
  const out: PlanSymbol[] = [];
  const imply = (s: PlanSymbol): void => {
    out.push({ kind: 'mark', by: 'turns', from: s.from, to: s.from, days: [] });
    implied++;
    keys = new Set();
  };
  for (const part of kept) {
    const hasMark = part.some(s => s.kind === 'mark' && s.by !== 'all');
    if (hasMark) keys = new Set();
    for (const s of part) {
      if (s.kind === 'fact' && s.key && !hasMark && (!keys || keys.has(s.key)) && !(s.isSoft && keys)) imply(s);
      if (s.kind === 'fact' && s.key) keys?.add(s.key);
      out.push(s);
    }
  }
  return { symbols: out, total: totalAt?.count, totalAt, implied };
}
