import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Facts } from '#rig/rig.ts';
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
  readonly verdict?: Verdict;
  /** The first line: yes or no where that is asked. */
  readonly says: string;
  readonly lines?: readonly string[];
  readonly cautions?: readonly CautionCode[];
  readonly next?: readonly string[];
}

const spoken = ({ says, lines = [], verdict = null, cautions = [], next = [] }: Aside): Reply => ({
  headline: says,
  lines,
  verdict,
  cautions,
  next,
});

/** What words ask beside the sum, of these facts; undefined: nothing of the table. */
export const asideIn = (facts: Facts, parsed: ParsedMessage, rows: readonly Aside[]): Aside | undefined =>
  spotted(
    parsed.recognised.words,
    rows.filter(({ when }) => when?.(facts, parsed) ?? true),
    ({ spots }) => spots,
  );

/** A question that also answers what is asked beside its sum: that needs no facts. */
export function withAsides<N extends Facts>(intent: Intent<N>, rows: readonly Aside[]): Intent<N> {
  const byName = new Map(rows.map(row => [row.name, row]));
  const whatever = needs(intent.takes, []) as Intent<N>['needs'];
  return {
    ...intent,
    subjectIn: (words, text) =>
      intent.subjectIn?.(words, text) ?? spotted(words, rows, ({ spots }) => spots)?.name,
    needsOn: subject => (byName.has(subject) ? whatever : (intent.needsOn?.(subject) ?? intent.needs)),
    reply: (facts, setting) => {
      const asked = asideIn(facts, setting.parsed, rows);
      if (asked) return spoken(asked);
      // A turn may be of a subject and bring what its sum needs: then that is worked out.
      const left = setting.subject === undefined ? undefined : byName.get(setting.subject);
      return left && !intent.needs.safeParse(facts).success ? spoken(left) : intent.reply(facts, setting);
    },
  };
}
