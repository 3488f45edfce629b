import type { Reply } from '#answer/reply.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Facts } from '#rig/rig.ts';
import type { Intent, RequestContext } from './intent.ts';
import { needs } from './needs.ts';
import { isSpotted, spotted } from './spotting.ts';

/**
 * What is worked out of figures that no fact holds, as two readings and the time between them. Its words and its figures
 * together tell it from every other question, so that it is what is asked whatever a message was read as.
 */
export interface WorkedBeside {
  readonly name: string;
  /** How people ask it, in the patterns of `spotting.ts`: small letters, no apostrophes, no numbers. */
  readonly spots: readonly string[];
  /** Whether the figures that it is worked out of are told. */
  readonly when: (parsed: ParsedMessage) => boolean;
  /** Reading has it by itself, so that it needs no help. */
  readonly isRead?: (parsed: ParsedMessage) => boolean;
  /** Facts told with it that it goes by besides. */
  readonly takes: readonly (keyof Facts)[];
  readonly reply: (facts: Facts, setting: RequestContext) => Reply;
}

/** Longer messages mostly tell a whole rig. */
const mostWords = 60;

const disputing = ['who|whos|whose_side|i_say|he_says|she_says|is_he_right|is_she_right|argument|settle'];

/** A question that also answers what is worked out of such figures. */
export function withWorked<N extends Facts>(intent: Intent<N>, rows: readonly WorkedBeside[]): Intent<N> {
  const byName = new Map(rows.map(row => [row.name, row]));
  const whatever = needs(intent.takes, []) as Intent<N>['needs'];
  const askedIn = (parsed: ParsedMessage): WorkedBeside | undefined => {
    const { words } = parsed.recognised;
    // What people say against each other is settled between them.
    if (words.length > mostWords || parsed.claims.length > 1 || isSpotted(words, disputing)) return undefined;
    return spotted(
      words,
      rows,
      ({ spots }) => spots,
      ({ when, isRead }) => when(parsed) && isRead?.(parsed) !== true,
    );
  };
  return {
    ...intent,
    askedByFigures: parsed => {
      const row = askedIn(parsed);
      return row && { subject: row.name, takes: row.takes };
    },
    numbersBeside: parsed =>
      askedIn(parsed)
        ? parsed.recognised.mentions.map(({ value }) => value)
        : (intent.numbersBeside?.(parsed) ?? []),
    needsOn: subject => (byName.has(subject) ? whatever : (intent.needsOn?.(subject) ?? intent.needs)),
    reply: (facts, setting) => {
      const row = setting.subject === undefined ? undefined : byName.get(setting.subject);
      if (!row) return intent.reply(facts, setting);
      if (row.when(setting.parsed)) return row.reply(facts, setting);
      // A turn of it tells no such figures again.
      return intent.needs.safeParse(facts).success
        ? intent.reply(facts, setting)
        : { headline: 'Tell me the figures once more with that, and when each was read.', verdict: null };
    },
  };
}
