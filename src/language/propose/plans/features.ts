import type { Mention } from '../../recognise/mention.ts';
import { quotingWords } from '../../words/en/day-plans.ts';
import type { Plan } from './symbol.ts';

const most = (count: number, limit: number): string => (count >= limit ? `${limit}+` : String(count));

/** Reasons for and against taking a plan at all, for a learned decision. */
export function planFeatures(plan: Plan, mentions: readonly Mention[]): string[] {
  const out: string[] = [
    `days ${most(plan.days.length, 5)}`,
    `marks ${most(plan.marks, 4)}`,
    `told ${most(plan.told, 4)}`,
  ];
  for (const by of plan.by) out.push(`by ${by}`);
  if (plan.by.length === 1) out.push(`only by ${plan.by[0]}`);
  for (const key of ['drivingH', 'sky', 'generatorH', 'mainsH'] as const) {
    const values = plan.days.map(day => day[key]).filter(value => value !== undefined);
    if (values.length === 0) continue;
    out.push(`tells ${key}`);
    if (values.length === plan.days.length) out.push(`${key} every day`);
    if (values.every(value => value === 0)) out.push(`${key} all zero`);
    if (new Set(values).size > 1) out.push(`${key} differs`);
  }
  if (plan.implied > 0) out.push(plan.implied === plan.marks ? 'all days implied' : 'some days implied');
  if (plan.carried > 0) out.push(plan.carried > plan.told ? 'mostly carried over' : 'some carried over');
  if (plan.days.some(day => Object.keys(day).length === 0)) out.push('a day without facts');
  const used = new Set(plan.used);
  const [first, last] = [plan.used[0] ?? 0, plan.used.at(-1) ?? 0];
  // "A day" beside the plan's own hours speaks for a rate, elsewhere for a load's.
  const isRated = mentions.some(
    (m, i) => m.kind === 'rate' && m.key === 'day' && (used.has(i - 1) || used.has(i + 1)),
  );
  if (isRated) out.push('a day beside its hours');
  if (mentions.some((m, i) => i > first && i < last && m.kind === 'thing' && m.cls === 'thing'))
    out.push('things within');
  if (
    mentions.some(
      (m, i) => i > first && i < last && m.kind === 'amount' && m.dimension !== 'time' && !used.has(i),
    )
  )
    out.push('other amounts within');
  if (mentions.some(m => m.kind === 'word' && quotingWords.has(m.text))) out.push('somebody is quoted');
  if (mentions.some(m => m.kind === 'clock' && /\d/.test(m.text))) out.push('times of the clock');
  return out;
}
