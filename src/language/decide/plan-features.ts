import type { Plan } from '../propose/plans.ts';
import type { Features } from './feature-list.ts';
import type { Frame } from './frame.ts';
import { hashText, mix } from './hash.ts';

/** How a plan may be taken: not at all, as told, with no driving on days that say nothing of it, or with that left open. */
export const planOutcomes = ['none', 'told', 'zeros', 'open'] as const;

/** What speaks for a plan of days. */
export function planFeatures(f: Frame, plan: Plan, out: Features): void {
  const put = (template: number, a: number, b = 0): void => void out.push(mix(template, a, b));
  put(500, Math.min(plan.days.length, 9));
  put(501, hashText(plan.by.join(' ')));
  put(502, Math.min(plan.marks, 5), Math.min(plan.told, 5));
  put(503, Math.min(plan.implied, 4), Math.min(plan.carried, 4));
  const has = (key: 'drivingH' | 'sky' | 'generatorH' | 'mainsH'): number =>
    plan.days.every(d => d[key] !== undefined) ? 2 : plan.days.some(d => d[key] !== undefined) ? 1 : 0;
  const zero = plan.days.filter(d => d.drivingH === 0).length;
  const keys = has('drivingH') * 27 + has('sky') * 9 + has('generatorH') * 3 + has('mainsH');
  put(504, keys);
  put(505, keys, zero === 0 ? 0 : zero === plan.days.length ? 2 : 1);
  for (const q of f.questions) {
    put(506, q);
    put(507, q, keys);
  }
  for (const c of f.context) put(508, c);
  const used = new Set(plan.used);
  f.mentions.forEach((m, i) => {
    if (m.kind === 'word' || m.kind === 'without' || m.kind === 'sky' || m.kind === 'rate') {
      put(509, f.cls[i]!);
      if (used.has(i)) put(510, f.cls[i]!);
    }
  });
}
