/** What of a day a plan may tell. */
export type DayKey = 'drivingH' | 'sky' | 'generatorH' | 'mainsH';

/** One day of a plan, as told. */
export interface PlanDay {
  drivingH?: number;
  sky?: string;
  generatorH?: number;
  mainsH?: number;
}

/** How a mark names its days. */
export type MarkBy =
  | 'numbers' // "day 2", "the third day", "2:"
  | 'weekdays' // "sat and sun"
  | 'dates' // "today", "tomorrow"
  | 'spans' // "then two days"
  | 'turns' // "then", "the next day"
  | 'last' // "the last two days"
  | 'rest' // "the other two"
  | 'alternate' // "every other day"
  | 'all'; // "both days", "each day"

interface Stretch {
  /** Mentions from (inclusive) and to (exclusive). */
  readonly from: number;
  readonly to: number;
}

/** Words that name days. */
export interface Mark extends Stretch {
  readonly kind: 'mark';
  readonly by: MarkBy;
  /** Numbers from 1, weekdays from Monday 0, or today 1 and tomorrow 2. */
  readonly days: readonly number[];
  /** Of spans, "last" and "rest": how many days. */
  readonly count?: number;
  /** Days of "first and last day" too. */
  readonly hasLast?: boolean;
  readonly isBetween?: boolean;
  /** Of turns: "the day after", not only "then". */
  readonly isNamed?: boolean;
}

/** Something told of a day; key and value are open where only "none", a bare number or hours of what was told before. */
export interface Fact extends Stretch {
  readonly kind: 'fact';
  readonly key?: DayKey;
  readonly value: number | string;
  /** Its key stands in the message, it is not carried over. */
  readonly isTold: boolean;
  /** "Camp", "nothing": no driving, in other words. */
  readonly isSoft?: boolean;
  /** "Four hours a day": of some of the days only where these are named beside it. */
  readonly isDaily?: boolean;
}

/** "The same again". */
export interface Again extends Stretch {
  readonly kind: 'again';
  readonly isWhole: boolean;
}

/** A break: 1 a comma, 2 "then", 3 the end of a sentence or line. */
export interface Stop extends Stretch {
  readonly kind: 'stop';
  readonly weight: number;
}

export type PlanSymbol = Mark | Fact | Again | Stop;

/** A fact told by mentions. */
export const fact = (
  from: number,
  to: number,
  key: DayKey | undefined,
  value: number | string,
  more: Partial<Fact> = {},
): Fact => ({ kind: 'fact', from, to, key, value, isTold: key !== undefined, ...more });

/** A plan that a message tells day by day, and which mentions tell it. */
export interface Plan {
  readonly days: readonly PlanDay[];
  readonly used: readonly number[];
  /** How its days were marked. */
  readonly by: readonly MarkBy[];
  /** Days told by no mark of their own. */
  readonly implied: number;
  /** Marks that something is told of. */
  readonly marks: number;
  /** Facts whose words say what they are of, and others. */
  readonly told: number;
  readonly carried: number;
}
