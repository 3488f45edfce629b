import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { Facts } from '#rig/rig.ts';
import type { RequestContext } from './intent.ts';
import type { Need } from './needs.ts';
import { spotted } from './spotting.ts';

/**
 * What people ask beside the sum of a question, with the same gear in hand: where the fuse goes, how long a battery
 * lives, whether the chassis will do. Its words name it; the answer is common practice, or worked out of the facts.
 */
export interface Aside {
  readonly name: string;
  /** Patterns of `spotting.ts`: small letters, no apostrophes, no numbers. */
  readonly spots: readonly string[];
  /** Figures told with it change nothing: without this, a figure that the sum takes makes it the sum's. */
  readonly hasAnyFigures?: true;
  /** The first line: yes or no where that is asked. */
  readonly says: string | ((facts: Facts) => string);
  readonly lines: readonly string[] | ((facts: Facts) => readonly string[]);
  readonly cautions?: readonly CautionCode[];
  readonly next?: readonly string[];
}

/** In longer messages, which mostly tell a whole rig, words that stand far apart ask nothing together. */
const mostWords = 30;

/** What is asked beside the sum, by the words of a message. */
export const asideIn = (words: readonly string[], asides: readonly Aside[]): Aside | undefined =>
  words.length > mostWords ? undefined : spotted(words, asides, ({ spots }) => spots);

/**
 * What a message is to be answered with beside the sum: what its own words ask, where none of its own figures makes it
 * a sum; else what the talk is still about, where no sum can be done.
 */
export function asideOf(
  asides: readonly Aside[],
  { parsed, subject }: RequestContext,
  { hasOwnFigures, canSum }: { readonly hasOwnFigures: boolean; readonly canSum: boolean },
): Aside | undefined {
  const asked = asideIn(parsed.recognised.words, asides);
  if (asked && (asked.hasAnyFigures || !hasOwnFigures)) return asked;
  return canSum ? undefined : asides.find(({ name }) => name === subject);
}

/** What a question needs for its sum, and nothing beside it. */
export const needsBeside =
  (asides: readonly Aside[], needs: readonly Need[]) =>
  (subject: string): readonly Need[] =>
    asides.some(({ name }) => name === subject) ? [] : needs;

/** Words for it. */
export const answerAside = ({ says, lines, cautions = [], next }: Aside, facts: Facts): Reply => ({
  headline: typeof says === 'string' ? says : says(facts),
  lines: typeof lines === 'function' ? lines(facts) : lines,
  verdict: null,
  cautions,
  next,
});
