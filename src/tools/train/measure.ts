import { decide } from '#language/decide/decide.ts';
import { finish } from '#language/decide/finish.ts';
import type { Model } from '#language/decide/model.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { compare } from './compare.ts';
import { wordingsOf } from './dataset.ts';
import type { Group } from './groups.ts';
import { contextOf } from './train.ts';

export interface Result {
  readonly group: Group;
  readonly text: string;
  readonly isReached: boolean;
  readonly isIntent: boolean;
  readonly isFacts: boolean;
  readonly probability: number;
  readonly signs: readonly number[];
  readonly intent: string;
  readonly hazards: ReadonlyMap<string, number>;
  readonly differences: readonly string[];
}

/** Reads every wording of groups by a model and holds it against the label. */
export function measure(groups: readonly Group[], model: Model): Result[] {
  return groups.flatMap(group => {
    const context = contextOf(group, model);
    return group.wordings.map((text): Result => {
      const recognised = recognise(text);
      const decision = decide(model, recognised.mentions, context, text);
      const best = decision.options[0]!;
      const got = finish(recognised, best, context);
      const { missing, extra } = compare(got, group.states);
      const isQuiet = group.intent.includes('none') && best.intent === 'unclear';
      return {
        group,
        text,
        isReached:
          wordingsOf([{ ...group, wordings: [text] }], () => context)[0]!.derivations[0]!.errors === 0,
        hazards: decision.hazards,
        isIntent: isQuiet || group.intent.includes(best.intent),
        isFacts: missing.length + extra.length === 0,
        probability: decision.certainty,
        signs: decision.signs,
        intent: best.intent,
        differences: [...missing.map(m => `-${m}`), ...extra.map(m => `+${m}`)],
      };
    });
  });
}

const percent = (n: number, of: number): string => (of === 0 ? '–' : ((100 * n) / of).toFixed(1));

/** Totals in one line. */
export function totals(results: readonly Result[]): string {
  const n = results.length;
  const count = (test: (r: Result) => boolean): number => results.filter(test).length;
  const exact = (r: Result): boolean => r.isIntent && r.isFacts;
  const reached = count(r => r.isReached);
  const groups = new Map<string, boolean>();
  for (const r of results) groups.set(r.group.id, (groups.get(r.group.id) ?? true) && exact(r));
  const whole = [...groups.values()].filter(Boolean).length;
  return `reach ${percent(reached, n)} %, choice ${percent(
    count(r => r.isReached && r.isFacts),
    reached,
  )} %, facts ${percent(
    count(r => r.isFacts),
    n,
  )} %, questions ${percent(
    count(r => r.isIntent),
    n,
  )} %, exact ${percent(count(exact), n)} % of ${n} wordings; whole groups ${percent(whole, groups.size)} % of ${groups.size}`;
}

/** How wrong against asked back, by the least probability that is answered. */
export function curve(results: readonly Result[]): string {
  return [0, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8]
    .map(p => {
      const answered = results.filter(r => r.probability >= p);
      const wrong = answered.filter(r => !(r.isIntent && r.isFacts)).length;
      return `p≥${p}: wrong ${percent(wrong, results.length)}, back ${percent(results.length - answered.length, results.length)}`;
    })
    .join('; ');
}

const kin = [
  ['mains-lead', 'backfeed', 'mains-wiring'],
  ['gas', 'battery-fire', 'carbon-monoxide'],
  ['carbon-monoxide', 'generator-inside'],
  ['no-fuse', 'bigger-fuse', 'over-current'],
  ['jump-start', 'starter-flat'],
];

/** Dangers seen and false alarms, by the least probability of any danger that alarms. */
export function dangerCurve(results: readonly Result[]): string {
  const danger = results.filter(r => r.group.danger);
  const harmless = results.filter(r => !r.group.danger);
  return [0.1, 0.2, 0.3, 0.4, 0.5]
    .map(t => {
      const alarm = (r: Result): string[] => {
        const sum = [...r.hazards.values()].reduce((a, b) => a + b, 0);
        return sum < t
          ? []
          : [...r.hazards]
              .sort((a, b) => b[1] - a[1])
              .slice(0, 2)
              .filter(([, p], k) => k === 0 || p > t / 2)
              .map(([code]) => code);
      };
      const seen = danger.filter(r =>
        alarm(r).some(
          h => h === r.group.danger || kin.some(set => set.includes(h) && set.includes(r.group.danger!)),
        ),
      ).length;
      return `p≥${t}: seen ${percent(seen, danger.length)}, alarms ${percent(harmless.filter(r => alarm(r).length > 0).length, harmless.length)}`;
    })
    .join('; ');
}
