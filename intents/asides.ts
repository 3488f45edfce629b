import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import type { Intent, RequestContext } from './intent.ts';
import { needs } from './needs.ts';
import { spotted } from './spotting.ts';

/**
 * What people ask beside a question's sum, with the same gear in hand ("can I leave it on all night?" of a charge time):
 * answered in words, in place of the sum. Common practice where no source stands beside it, or worked out of the facts.
 */
export interface Aside {
  readonly name: string;
  /** How people ask it once the question is known, in the patterns of `spotting.ts`: small letters, no apostrophes, no numbers. */
  readonly spots: readonly string[];
  /** It is asked only of such facts. */
  readonly when?: (facts: Facts, parsed: ParsedMessage) => boolean;
  /** Figures told with it change nothing: without this, figures that make it a sum have the sum answered. */
  readonly hasAnyFigures?: true;
  readonly verdict?: Verdict;
  /** The first line: yes or no where that is asked. */
  readonly says: string | ((facts: Facts) => string);
  readonly lines?: readonly string[] | ((facts: Facts) => readonly string[]);
  readonly cautions?: readonly CautionCode[];
  readonly next?: readonly string[];
}

/** In longer messages, which mostly tell a whole rig, words that stand far apart ask nothing together. */
const mostWords = 30;

/** What is asked beside the sum, by the words of a message. */
export const asideIn = (
  words: readonly string[],
  rows: readonly Aside[],
  isOpen?: (row: Aside) => boolean,
): Aside | undefined =>
  words.length > mostWords ? undefined : spotted(words, rows, ({ spots }) => spots, isOpen);

/** Words for it. */
export const answerAside = (
  { says, lines = [], verdict = null, cautions = [], next = [] }: Aside,
  facts: Facts,
): Reply => ({
  headline: typeof says === 'string' ? says : says(facts),
  lines: typeof lines === 'function' ? lines(facts) : lines,
  verdict,
  cautions,
  next,
});

/** Of what was told, what a question takes. */
const tookOf = (told: Stated, takes: readonly string[]): Stated =>
  Object.fromEntries(Object.entries(told).filter(([key]) => takes.includes(key)));

/** Whether a message makes it a sum: by what it tells itself, or by that and what else is known. */
type IsSumTold<N> = (told: Stated, facts: N, setting: RequestContext) => boolean;

/**
 * A question that also answers what is asked beside its sum, which needs no facts: what a message's own words ask, where
 * its figures don't make it a sum; else what the talk is still about, where no sum can be done.
 * @param isSumTold by itself, where the message alone tells all that the sum needs
 */
export function withAsides<N extends Facts>(
  intent: Intent<N>,
  rows: readonly Aside[],
  isSumTold: IsSumTold<N> = told => intent.needs.safeParse(tookOf(told, intent.takes)).success,
): Intent<N> {
  const byName = new Map(rows.map(row => [row.name, row]));
  const whatever = needs(intent.takes, []) as Intent<N>['needs'];
  return {
    ...intent,
    subjectIn: (words, text) => intent.subjectIn?.(words, text) ?? asideIn(words, rows)?.name,
    needsOn: subject => (byName.has(subject) ? whatever : (intent.needsOn?.(subject) ?? intent.needs)),
    reply: (facts, setting) => {
      const { parsed, subject } = setting;
      // Seldom do the words ask any: only then is it looked whether a sum was told.
      const isOpen = ({ when, hasAnyFigures }: Aside): boolean =>
        (hasAnyFigures || !isSumTold(parsed.facts, facts, setting)) && (when?.(facts, parsed) ?? true);
      const asked = asideIn(parsed.recognised.words, rows, isOpen);
      if (asked) return answerAside(asked, facts);
      // A turn may be of a subject and bring what its sum needs: then that is worked out.
      const left = subject === undefined ? undefined : byName.get(subject);
      if (!left || intent.needs.safeParse(facts).success) return intent.reply(facts, setting);
      // Of facts that it isn't asked of, a guess at the sum says more.
      const isOfOthers = left.when?.(facts, parsed) === false;
      return (isOfOthers ? intent.guess?.(facts, setting) : undefined) ?? answerAside(left, facts);
    },
  };
}
