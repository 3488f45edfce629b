import { present } from '#basics/present.ts';
import type { Mention } from '../recognise/mention.ts';
import { align } from './plans/align.ts';
import { daysOf } from './plans/days.ts';
import { mayPlan } from './plans/hint.ts';
import { mostDays } from './plans/marks.ts';
import { parted } from './plans/parted.ts';
import type { DayKey, Mark, Plan, PlanDay, PlanSymbol } from './plans/symbol.ts';
import { symbolsOf } from './plans/symbols.ts';
import { dealtOut, marked, withKeys } from './plans/turns.ts';

export { planFeatures } from './plans/features.ts';
export type { Plan, PlanDay } from './plans/symbol.ts';

/** Whether a sentence ends between marks. */
function isParted(symbols: readonly PlanSymbol[], marks: readonly Mark[]): boolean {
  const [from, to] = [symbols.indexOf(marks[0]!), symbols.indexOf(marks.at(-1)!)];
  return symbols.slice(from, to).some(s => s.kind === 'stop' && s.weight === 3);
}

const isNoDriving = (m: Mention): boolean => m.kind === 'without' && m.key === 'driving';

/** The plan a message tells day by day, if it tells one. */
export function planOf(written: readonly Mention[]): Plan | undefined {
  return mayPlan(written) ? planRead(written) : undefined;
}

/** The same, whatever the mentions look like. */
export function planRead(written: readonly Mention[]): Plan | undefined {
  const { mentions, at } = parted(written);
  const read = symbolsOf(mentions);
  if (!read) return undefined;
  const { symbols, total, totalAt, implied } = marked(dealtOut(withKeys(read)));
  const aligned = align(symbols);
  const { days, marks } = daysOf(aligned, symbols, total);
  if (days.length === 0 || days.length > mostDays) return undefined;
  const facts = aligned.map(a => a.fact);
  const told = facts.filter(f => f.isTold && !f.isSoft);
  const by = [...new Set(marks.map(m => m.by))];
  const outright = marks.filter(m => m.by === 'numbers' || m.by === 'weekdays' || m.by === 'dates').length;
  const named = marks.filter(m => m.by === 'numbers' || m.by === 'weekdays').length;
  if (
    told.length === 0 &&
    !(named > 0 && marks.length > 2) &&
    !(named === 2 && facts.some(f => f.value === 0))
  )
    return undefined;
  const isDiverse = new Set(days.map(d => JSON.stringify(d))).size > 1;
  if (days.length === 1) {
    const keys = new Set<DayKey | undefined>(told.map(f => f.key));
    if (!(by.length === 1 && by[0] === 'dates' && keys.has('drivingH') && keys.has('sky'))) return undefined;
  } else if (
    marks.length < 2 &&
    !by.includes('numbers') &&
    !(by[0] === 'weekdays' && present(marks[0]).days.length > 2)
  )
    return undefined;
  else if (marks.length === 1 && Math.min(...marks[0]!.days) > 7) return undefined;
  else if (outright === 0 && !isDiverse) return undefined;
  else if (
    outright === 0 &&
    implied === marks.length &&
    total !== days.length &&
    (marks.length < 3 || isParted(symbols, marks))
  )
    return undefined;
  const used = new Set<number>();
  // "Sunny, mixed, overcast, no driving": where no day has any, that is ruled out of the whole trip.
  const isStill = !days.some(day => (day.drivingH ?? 0) > 0);
  for (const s of [...marks, ...facts, ...(totalAt ? [totalAt] : [])])
    for (let i = s.from; i < s.to; i++) if (!(isStill && isNoDriving(present(mentions[i])))) used.add(at[i]!);
  return {
    days,
    used: [...used].sort((a, b) => a - b),
    by,
    implied,
    marks: marks.length,
    told: told.length,
    carried: facts.length - told.length,
  };
}

/** The plan with nothing said of driving where there is none; of the generator, where the plan tells only of that. */
export function withoutZeros(days: readonly PlanDay[]): PlanDay[] {
  const key = days.some(d => d.drivingH === 0) ? 'drivingH' : 'generatorH';
  return days.map(day => {
    const out = { ...day };
    if (out[key] === 0) delete out[key];
    return out;
  });
}

/** The plan with no driving on the days that say nothing of it. */
export const withZeros = (days: readonly PlanDay[]): PlanDay[] =>
  days.some(d => d.drivingH !== undefined) ? days.map(d => ({ drivingH: 0, ...d })) : [...days];

/** How a plan may be meant, at most three ways: as told, with days without driving filled in, with them left open. */
export function planVariants({ days }: Plan): readonly (readonly PlanDay[])[] {
  const out = new Map<string, readonly PlanDay[]>();
  const id = (plan: readonly PlanDay[]): string =>
    plan.map(d => `${d.drivingH},${d.sky},${d.generatorH},${d.mainsH}`).join(';');
  for (const plan of [days, withZeros(days), withoutZeros(days)])
    if (!out.has(id(plan))) out.set(id(plan), plan);
  return [...out.values()];
}
