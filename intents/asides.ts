import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Mention } from '#language/recognise/mention.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import { type Denied, isDenied } from './denied.ts';
import { factsOf } from './facts.ts';
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
  /** Told figures that speak against what it says. */
  readonly unless?: Denied;
  /** Figures told with it change nothing: without this, figures that make it a sum have the sum answered. */
  readonly hasAnyFigures?: true;
  readonly verdict?: Verdict;
  /** Its words and figures tell it from every other question: it is asked whatever a message was read as, or where that is unsure. */
  readonly isAsked?: 'for-sure' | 'if-unsure';
  /** The first line: yes or no where that is asked. By the facts, or by all figures as they were told. */
  readonly says: string | ((facts: Facts, mentions: readonly Mention[]) => string);
  readonly lines?: readonly string[] | ((facts: Facts, mentions: readonly Mention[]) => readonly string[]);
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
  mentions: readonly Mention[] = [],
): Reply => ({
  headline: typeof says === 'string' ? says : says(facts, mentions),
  lines: typeof lines === 'function' ? lines(facts, mentions) : lines,
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
  const told = rows.filter(({ isAsked }) => isAsked !== undefined);
  const whatever = needs(intent.takes, []) as Intent<N>['needs'];
  return {
    ...intent,
    ...(told.length > 0 && {
      isAskedBy: (parsed: ParsedMessage) =>
        asideIn(parsed.recognised.words, told, ({ when }) => when?.(factsOf(parsed.facts), parsed) ?? true)
          ?.isAsked,
    }),
    subjectIn: (words, text) => intent.subjectIn?.(words, text) ?? asideIn(words, rows)?.name,
    needsOn: subject => (byName.has(subject) ? whatever : (intent.needsOn?.(subject) ?? intent.needs)),
    reply: (facts, setting) => {
      const { parsed, subject } = setting;
      // Seldom do the words ask any: only then is it looked whether a sum was told.
      const isOpen = ({ when, unless, hasAnyFigures }: Aside): boolean =>
        (hasAnyFigures || !isSumTold(parsed.facts, facts, setting)) &&
        (when?.(facts, parsed) ?? true) &&
        !isDenied(unless, factsOf(parsed.facts), parsed.recognised.mentions);
      const asked = asideIn(parsed.recognised.words, rows, isOpen);
      if (asked) return answerAside(asked, facts, parsed.recognised.mentions);
      // A turn may be of a subject and bring what its sum needs: then that is worked out.
      const left = subject === undefined ? undefined : byName.get(subject);
      if (!left || intent.needs.safeParse(facts).success) return intent.reply(facts, setting);
      // Of facts that it isn't asked of, a guess at the sum says more.
      const isOfOthers = left.when?.(facts, parsed) === false;
      return (
        (isOfOthers ? intent.guess?.(facts, setting) : undefined) ??
        answerAside(left, facts, parsed.recognised.mentions)
      );
    },
  };
}
