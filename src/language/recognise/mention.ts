import type { Dimension } from '#quantity/units.ts';

export type MentionKind =
  | 'amount' // a number with a unit
  | 'number' // a number alone
  | 'thing' // an appliance of the catalogue
  | 'noun' // a word that no lexicon knows: a thing, a person or a place perhaps
  | 'battery'
  | 'chemistry'
  | 'role'
  | 'station'
  | 'solar'
  | 'controller'
  | 'regulator'
  | 'charger'
  | 'inverter'
  | 'wave'
  | 'cable'
  | 'fuse'
  | 'alternator'
  | 'monitor'
  | 'bms'
  | 'mains'
  | 'arrangement'
  | 'mount'
  | 'sky'
  | 'shade'
  | 'without'
  | 'level'
  | 'always'
  | 'average'
  | 'taken'
  | 'month'
  | 'weekday'
  | 'clock'
  | 'place'
  | 'person'
  | 'rate'
  | 'word'
  | 'sign';

/** A stretch of tokens that is one thing to the reader: an amount, a thing, a word. */
export interface Mention {
  readonly kind: MentionKind;
  /** What of its kind: the chemistry, the kind of charger, the unit, the word itself. */
  readonly key: string;
  /** Class for features: kind and key where the key tells, the word where it is known, "?" else. */
  readonly cls: string;
  /** Clusters of its (last) word, −1 where none is known. */
  readonly fine?: number;
  readonly coarse?: number;
  /** As written, small. */
  readonly text: string;
  /** As it stands in the message, in small letters with its accents: how people and places are called. */
  readonly raw?: string;
  /** Tokens from (inclusive) and to (exclusive). */
  readonly from: number;
  readonly to: number;
  /** Of a person's name: a word that leads to places stands before it. */
  readonly isLed?: boolean;
  /** It starts a line. */
  readonly isNewLine?: boolean;
  /** Of a number or amount: in the base unit of its dimension. */
  readonly value: number;
  /** Other values it may have: the middle of a range it ends, "10.000", two joined times. */
  readonly variants: readonly Variant[];
  readonly unit?: string;
  /** Of an amount: its unit as written ("nights", "st" of "1st"). */
  readonly spelled?: string;
  readonly dimension?: Dimension;
  /** Second dimension that its unit may mean: "m" is metres or minutes. */
  readonly otherDimension?: Dimension;
  /** The number as told, before its unit was applied. */
  readonly told: number;
  readonly isNegative?: boolean;
  /** Something "a day" follows or goes with it. */
  readonly rate?: 'day' | 'night' | 'hour' | 'week';
  /** Of a figure beside a word of a panel's label: what it is there. */
  readonly label?: 'open volts' | 'working volts' | 'amps' | undefined;
  /** A count before it: "3 x 5 W". */
  readonly supply?: 'dc' | 'ac';
}

/** Another value of an amount, named for why. */
export interface Variant {
  readonly why: 'range' | 'thousands' | 'joined' | 'product' | 'span' | 'times' | 'share' | 'sum';
  readonly value: number;
  /** Of a product: how many. */
  readonly count?: number;
}

/**
 * A mention with each of its fields in the same place, those that it lacks undefined. Reading looks at mentions a
 * hundred times a word: objects of one shape are looked into several times as fast as those of many.
 */
export const shaped = (m: Mention): Mention => ({
  kind: m.kind,
  key: m.key,
  cls: m.cls,
  text: m.text,
  from: m.from,
  to: m.to,
  value: m.value,
  told: m.told,
  variants: m.variants,
  fine: m.fine,
  coarse: m.coarse,
  unit: m.unit,
  dimension: m.dimension,
  otherDimension: m.otherDimension,
  spelled: m.spelled,
  isNegative: m.isNegative,
  rate: m.rate,
  supply: m.supply,
  label: m.label,
  raw: m.raw,
  isLed: m.isLed,
  isNewLine: m.isNewLine,
});
