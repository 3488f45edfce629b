import type { Aligned } from './align.ts';
import { mostDays } from './marks.ts';
import type { Again, Mark, PlanDay, PlanSymbol } from './symbol.ts';

const upTo = (low: number, high: number): number[] =>
  Array.from({ length: Math.max(0, high - low + 1) }, (_, k) => low + k);

/** The weekday that a plan starts on: the first, or where they are not told in order the one from which they lie closest together. */
function firstWeekday(marks: readonly Mark[]): number {
  const days = marks.filter(m => m.by === 'weekdays').flatMap(m => m.days);
  let best = days[0] ?? 0;
  const onward = days.slice(1).reduce((sum, d, k) => sum + ((d - days[k]! + 7) % 7), 0);
  if (onward < 7) return best;
  let least = 7;
  for (const start of days) {
    const span = Math.max(...days.map(d => (d - start + 7) % 7));
    if (span < least) {
      least = span;
      best = start;
    }
  }
  return best;
}

/** Which days, numbered from 1, each mark means. */
function numbered(
  marks: readonly Mark[],
  isTold: (mark: Mark) => boolean,
  told: number | undefined,
): { readonly of: ReadonlyMap<Mark, readonly number[]>; readonly total: number } {
  const of = new Map<Mark, readonly number[]>();
  const start = firstWeekday(marks);
  const hasToday = marks.some(m => m.by === 'dates' && m.days[0] === 1);
  let dated = 0;
  let current = 0;
  let most = 0;
  const give = (mark: Mark, days: readonly number[]): void => {
    of.set(mark, days);
    current = Math.max(...days, 0);
    most = Math.max(most, current);
  };
  for (const mark of marks) {
    if (mark.by === 'numbers') give(mark, mark.days);
    else if (mark.by === 'weekdays')
      give(
        mark,
        mark.days.map(d => dated + ((d - start + 7) % 7) + 1),
      );
    else if (mark.by === 'dates') {
      give(
        mark,
        mark.days.map(d => (d === 2 && !hasToday ? 1 : d)),
      );
      dated = current;
    } else if (mark.by === 'turns')
      give(
        mark,
        mark === marks.at(-1) && told !== undefined && told > current + 1
          ? upTo(current + 1, told)
          : [current + 1],
      );
    else if (mark.by === 'spans') give(mark, upTo(current + 1, current + (mark.count ?? 1)));
  }
  const lasts = marks.filter(m => m.by === 'last' || m.hasLast);
  const lastCount = Math.max(0, ...lasts.map(m => m.count ?? 1));
  const rest = marks.find(m => m.by === 'rest' && m.count !== undefined);
  const taken = new Set([...of.values()].flat());
  const total = Math.min(
    mostDays,
    Math.max(
      told ?? 0,
      told !== undefined && told >= most ? told : most + lastCount,
      rest ? taken.size + lastCount + rest.count! : 0,
    ),
  );
  for (const mark of lasts)
    of.set(mark, [...(of.get(mark) ?? []), ...upTo(total - (mark.count ?? 1) + 1, total)]);
  for (const mark of marks)
    if (mark.by === 'alternate')
      of.set(
        mark,
        upTo(1, total).filter(d => d % 2 === 1),
      );
  const all = new Set([...of].flatMap(([mark, days]) => (isTold(mark) ? days : [])));
  for (const mark of marks) {
    if (mark.by === 'rest')
      of.set(
        mark,
        upTo(1, total).filter(d => !all.has(d)),
      );
    else if (mark.by === 'all') of.set(mark, upTo(1, Math.max(total, mark.count ?? 0)));
  }
  return { of, total };
}

/** The days that marks and their facts tell. */
export function daysOf(
  aligned: readonly Aligned[],
  symbols: readonly PlanSymbol[],
  total: number | undefined,
): { readonly days: readonly PlanDay[]; readonly marks: readonly Mark[] } {
  const again = new Map<Mark, Again>();
  let near: Mark | undefined;
  symbols.forEach((s, i) => {
    if (s.kind === 'mark') near = s;
    else if (s.kind === 'stop' && s.weight >= 3) near = undefined;
    else if (s.kind === 'again') {
      const ahead = symbols[i + 1]?.kind === 'again' ? symbols[i + 2] : symbols[i + 1];
      const isAhead = ahead?.kind === 'mark' && s.isWhole && symbols[i - 1]?.kind === 'stop';
      const mark = isAhead ? ahead : near;
      if (mark && !again.has(mark)) again.set(mark, s);
    }
  });
  const withFacts = new Set(aligned.map(a => a.mark));
  const isFramed = aligned.some(
    a => a.mark.by === 'all' || a.mark.by === 'rest' || a.mark.by === 'alternate',
  );
  const marks = symbols.filter(
    (s): s is Mark =>
      s.kind === 'mark' &&
      (withFacts.has(s) || again.has(s) || (isFramed && (s.by === 'weekdays' || s.by === 'numbers'))),
  );
  const { of, total: length } = numbered(marks, mark => withFacts.has(mark) || again.has(mark), total);
  const days: PlanDay[] = Array.from({ length: Math.max(length, 0) }, () => ({}));
  const set = (mark: Mark, key: keyof PlanDay, value: number | string): void => {
    for (const d of of.get(mark) ?? []) {
      const day = days[d - 1];
      if (day && day[key] === undefined) (day as Record<string, number | string>)[key] = value;
    }
  };
  const rank = ({ fact, mark }: Aligned): number =>
    (mark.by === 'all' ? 4 : mark.by === 'rest' ? 2 : 0) + (fact.isSoft ? 1 : 0);
  for (const a of [...aligned].sort((x, y) => rank(x) - rank(y))) set(a.mark, a.fact.key!, a.fact.value);
  for (const [mark, { isWhole }] of again) {
    if (withFacts.has(mark) && !isWhole) continue;
    for (const d of of.get(mark) ?? [])
      if (days[d - 2] && days[d - 1]) days[d - 1] = { ...days[d - 2], ...days[d - 1] };
  }
  return { days, marks };
}
