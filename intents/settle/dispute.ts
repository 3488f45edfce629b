import type { IntentName, Verdict } from '#answer/answer.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { Explored } from '#engine/explore.ts';
import type { Range } from '#quantity/range.ts';
import type { Dimension } from '#quantity/units.ts';
import type { Facts, Rig } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';

/** What somebody says the answer is: as said, and in the base unit of its dimension. */
export interface Heard {
  readonly who: string;
  readonly said: number;
  readonly unit: string;
  readonly dimension: Dimension;
  readonly value: number;
}

/** An argument: the facts, what each one claims, and what the talk is about. */
export interface Dispute {
  readonly facts: Facts;
  readonly claims: readonly Heard[];
  /** What most claims measure; undefined where there are none. */
  readonly dimension?: Dimension;
  readonly cues: RequestContext['parsed']['cues'];
  /** The question before, where there is one. */
  readonly argued?: RequestContext['argued'];
  readonly recalled: RequestContext['recalled'];
  readonly rigs: Readonly<Record<string, Rig>>;
  readonly at: Date;
  readonly mainsV: number;
}

/** How a claim stands to what is needed, where too much does no harm. */
export type EnoughOrNot = 'right' | 'over' | 'under';

/** What was found out about an argument. */
export interface Finding {
  /** Range of the answer, in the base unit of its dimension. */
  readonly answer: Range;
  readonly dimension: Dimension;
  /** Who is right, where the argument is not about a number. */
  readonly closest?: string;
  readonly verdict?: Verdict;
  /** The first line, where it is not made from answer and claims. */
  readonly headline?: string;
  /** Of a size that must be large enough: whether a claim (base unit) is. */
  readonly judged?: (value: number) => EnoughOrNot;
  /** The size as people told theirs, where that is no amount: "6 AWG". */
  readonly needs?: string;
  /** "It lasts", "It draws": what stands before the amount. */
  readonly says: string;
  /** What would have to be true for a claim (base unit), to follow "Sam's 4 days": "would mean draining it to 4 %". */
  readonly wouldMean: (value: number) => string | undefined;
  /** How to find out on the spot. */
  readonly measure: string;
  readonly explored?: Explored<string>;
  readonly cautions?: readonly CautionCode[];
}

/** One kind of argument. */
export interface Subject {
  readonly name: string;
  /** The question whose answer is argued about. */
  readonly intent?: IntentName;
  /** How well the facts and claims fit it: 0 not at all, the highest wins. */
  readonly fits: (dispute: Dispute) => number;
  /** What is missing to settle it, to follow "To settle that I need"; undefined where nothing is. */
  readonly missing: (dispute: Dispute) => string | undefined;
  readonly solve: (dispute: Dispute) => Finding;
}

/** Whether a fact was said now, and not recalled. */
const isSaid = (d: Dispute, key: keyof Facts): boolean => d.facts[key] !== undefined && !d.recalled.has(key);

/** Two points where it was said, one where memory has it, none where nobody knows. */
export const weigh = (d: Dispute, key: keyof Facts): number =>
  d.facts[key] === undefined ? 0 : isSaid(d, key) ? 2 : 1;
