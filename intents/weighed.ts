import type { Figure } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { bankOfOne } from '#engine/battery/bank.ts';
import { type Explored, likelyOf } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from './cautions.ts';
import { reasons } from './figures.ts';
import { bankFor } from './learned.ts';
import { hasUse, useOf } from './use.ts';

/** What two ways to the same end come to on this rig. */
export interface Weighed {
  readonly headline: string;
  readonly lines: readonly string[];
  readonly figures: Readonly<Record<string, Figure>>;
  /** The side that suits, in a word or two. */
  readonly better: string;
  readonly explored?: Explored<string>;
  readonly cautions: readonly CautionCode[];
}

/** What a pair is weighed by. */
export interface PairCase {
  readonly facts: Facts;
  readonly at: Date;
  readonly mainsV: number;
}

/** Nobody told a battery: this one is taken, and said. Common practice. */
const usualAh = 100;

/** The battery told, else a usual one. */
export const bankOrUsual = (facts: Facts): Bank => {
  const chemistry = facts.batteries?.find(b => b.role !== 'starter' && b.chemistry)?.chemistry ?? 'agm';
  return bankFor(facts) ?? bankOfOne({ capacityAh: usualAh, chemistry });
};

/** A day's use, Ah, where something is told that uses. */
export function dayUse({ facts, at, mainsV }: PairCase, voltageV = 12): number | undefined {
  if (!hasUse(facts)) return undefined;
  const use = useOf(facts, voltageV, mainsV, at);
  return dailyUseAh(use, likelyOf(useAssumptions(use)));
}

/** Which of the two for this rig, and why; what the other is good for. */
export function replyOf(facts: Facts, weighed: Weighed): Reply {
  const { headline, lines, figures, better, explored, cautions } = weighed;
  return {
    headline,
    lines: lines.filter(Boolean).slice(0, 4),
    verdict: null,
    figures: { ...figures, better: { value: better } },
    ...(explored && reasons(explored)),
    cautions: [...loadCautions(facts), ...cautions],
    next: explored ? ['show the working'] : [],
  };
}
