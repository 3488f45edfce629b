import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import type { Intent } from './intent.ts';
import { needs } from './needs.ts';
import { spotted } from './spotting.ts';

/**
 * Something that people ask beside a question's sum ("can I leave it on all night?" of a charge time): answered in
 * words, in place of the sum. Common practice where no source stands beside it.
 */
export interface Aside {
  readonly name: string;
  /** How people ask it once the question is known, in the patterns of `spotting.ts`: small letters, no apostrophes, no numbers. */
  readonly spots: readonly string[];
  /** It is asked only of such facts. */
  readonly when?: (facts: Facts, parsed: ParsedMessage) => boolean;
  /** It is answered so even where figures for the sum are told with it. */
  readonly isBeforeSums?: true;
  readonly verdict?: Verdict;
  /** The first line: yes or no where that is asked. */
  readonly says: string;
  readonly lines?: readonly string[];
  readonly cautions?: readonly CautionCode[];
  readonly next?: readonly string[];
}

/** In a longer message such words mostly tell something else. */
const mostWords = 24;

const spoken = ({ says, lines = [], verdict = null, cautions = [], next = [] }: Aside): Reply => ({
  headline: says,
  lines,
  verdict,
  cautions,
  next,
});

/** Of what was told, what a question takes. */
const tookOf = (told: Stated, takes: readonly string[]): Stated =>
  Object.fromEntries(Object.entries(told).filter(([key]) => takes.includes(key)));

/** What words ask beside the sum; where the message itself tells what the sum needs, only what comes before it. */
export const asideIn = (
  facts: Facts,
  parsed: ParsedMessage,
  rows: readonly Aside[],
  isSumTold: (told: Stated) => boolean,
): Aside | undefined => {
  const { words } = parsed.recognised;
  if (words.length > mostWords) return undefined;
  const isTold = isSumTold(parsed.facts);
  return spotted(
    words,
    rows.filter(({ when, isBeforeSums }) => (isBeforeSums || !isTold) && (when?.(facts, parsed) ?? true)),
    ({ spots }) => spots,
  );
};

/**
 * A question that also answers what is asked beside its sum: that needs no facts.
 * @param isSumTold whether a message tells figures for the sum, where the question needs none by itself
 */
export function withAsides<N extends Facts>(
  intent: Intent<N>,
  rows: readonly Aside[],
  isSumTold: (told: Stated) => boolean = told => intent.needs.safeParse(tookOf(told, intent.takes)).success,
): Intent<N> {
  const byName = new Map(rows.map(row => [row.name, row]));
  const whatever = needs(intent.takes, []) as Intent<N>['needs'];
  return {
    ...intent,
    subjectIn: (words, text) =>
      intent.subjectIn?.(words, text) ??
      (words.length > mostWords ? undefined : spotted(words, rows, ({ spots }) => spots)?.name),
    needsOn: subject => (byName.has(subject) ? whatever : (intent.needsOn?.(subject) ?? intent.needs)),
    reply: (facts, setting) => {
      const asked = asideIn(facts, setting.parsed, rows, isSumTold);
      if (asked) return spoken(asked);
      // A turn may be of a subject and bring what its sum needs: then that is worked out.
      const left = setting.subject === undefined ? undefined : byName.get(setting.subject);
      return left && !intent.needs.safeParse(facts).success ? spoken(left) : intent.reply(facts, setting);
    },
  };
}
