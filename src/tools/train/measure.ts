import { decide } from '#language/decide/decide.ts';
import { finish } from '#language/decide/finish.ts';
import type { Model } from '#language/decide/model.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';
import { compare } from './compare.ts';
import { wordingsOf } from './dataset.ts';
import type { Group } from './groups.ts';
import { isKin } from './kin.ts';
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

/** Shares of wordings and of groups, each from 0 to 1. */
export interface Shares {
  readonly wordings: number;
  readonly groups: number;
  /** Some allowed reading is exactly right. */
  readonly reach: number;
  /** Of those, the one decided for. */
  readonly choice: number;
  readonly facts: number;
  readonly questions: number;
  /** Question and facts as the label has them. */
  readonly exact: number;
  /** Groups of which every wording is read exactly. */
  readonly whole: number;
}

export const isExact = (r: Result): boolean => r.isIntent && r.isFacts;

/** What came of reading groups. */
export function sharesOf(results: readonly Result[]): Shares {
  const share = (test: (r: Result) => boolean, of = results): number =>
    of.length === 0 ? Number.NaN : of.filter(test).length / of.length;
  const groups = new Map<string, boolean>();
  for (const r of results) groups.set(r.group.id, (groups.get(r.group.id) ?? true) && isExact(r));
  return {
    wordings: results.length,
    groups: groups.size,
    reach: share(r => r.isReached),
    choice: share(
      r => r.isFacts,
      results.filter(r => r.isReached),
    ),
    facts: share(r => r.isFacts),
    questions: share(r => r.isIntent),
    exact: share(isExact),
    whole: [...groups.values()].filter(Boolean).length / groups.size,
  };
}

/** A share as per cent, "–" where there was nothing to count. */
export const percent = (share: number): string => (Number.isNaN(share) ? '–' : (100 * share).toFixed(1));

/** Totals in one line. */
export function totals(results: readonly Result[]): string {
  const s = sharesOf(results);
  const of = (name: string, share: number): string => `${name} ${percent(share)} %`;
  return `${[of('reach', s.reach), of('choice', s.choice), of('facts', s.facts), of('questions', s.questions), of('exact', s.exact)].join(', ')} of ${s.wordings} wordings; ${of('whole groups', s.whole)} of ${s.groups}`;
}

/** What happens where readings less sure than `least` are asked about: shares answered wrong and asked back. */
export interface Point {
  readonly least: number;
  readonly wrong: number;
  readonly back: number;
}

const thresholds = [0, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8];

/** Wrong against asked back, by the least certainty that is answered. */
export const points = (results: readonly Result[]): Point[] =>
  thresholds.map(least => {
    const answered = results.filter(r => r.probability >= least);
    return {
      least,
      wrong: answered.filter(r => !isExact(r)).length / results.length,
      back: 1 - answered.length / results.length,
    };
  });

/** The same in one line. */
export const curve = (results: readonly Result[]): string =>
  points(results)
    .map(({ least, wrong, back }) => `p≥${least}: wrong ${percent(wrong)}, back ${percent(back)}`)
    .join('; ');

/** Dangers seen and false alarms, by the least probability of any danger that alarms. */
export interface DangerPoint {
  readonly least: number;
  readonly seen: number;
  readonly alarms: number;
}

/** The dangers that a reading names: the likeliest, and a second that is half as likely as it must be. */
function named({ hazards }: Result, least: number): string[] {
  const sum = [...hazards.values()].reduce((a, b) => a + b, 0);
  if (sum < least) return [];
  return [...hazards]
    .sort((a, b) => b[1] - a[1])
    .slice(0, 2)
    .filter(([, p], k) => k === 0 || p > least / 2)
    .map(([code]) => code);
}

const isSeen = (r: Result, least: number): boolean =>
  named(r, least).some(code => isKin(code as HazardCode, r.group.danger as HazardCode));

export function dangerPoints(results: readonly Result[]): DangerPoint[] {
  const danger = results.filter(r => r.group.danger);
  const harmless = results.filter(r => !r.group.danger);
  return [0.1, 0.2, 0.3, 0.4, 0.5].map(least => ({
    least,
    seen: danger.filter(r => isSeen(r, least)).length / danger.length,
    alarms: harmless.filter(r => named(r, least).length > 0).length / harmless.length,
  }));
}
