import type { IntentName } from '#answer/answer.ts';
import type { Intent, RequestContext } from '#intents/intent.ts';
import { type Worked, worked } from '#intents/unused.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import { plain } from '../questions.ts';
import { isMedical } from './plain-enough.ts';
import type { AnswerOf, ReadingOffered, Two } from './two-readings.ts';

/** A message taken for one question, as far as its answer goes by it. */
interface Taken {
  readonly intent: Intent;
  readonly ready?: Facts;
  readonly setting: RequestContext;
  readonly lent: readonly unknown[];
  readonly hazards: readonly HazardCode[];
}

/** Answers of readings that are only tried, each worked out once. */
export interface Tries {
  readonly answerOf: AnswerOf;
  /** What was worked out of it, if it was tried. */
  readonly workedOf: (intent: string, facts: Stated) => Worked | undefined;
  /** Two readings with the first lines of their answers, where these can stand alone. */
  readonly withFirstLines: (two: Two) => Two;
}

/** A question with its facts, letter by letter: the same message taken the same way has the same answer. */
const keyOf = (intent: string, facts: Stated): string => `${intent} ${JSON.stringify(facts)}`;

/** Tries readings of one message. */
export function triesOf(take: (intent: IntentName, facts: Stated) => Taken): Tries {
  const tried = new Map<string, { readonly taken: Taken; readonly whole?: Worked }>();
  const tryOut = (intent: IntentName, facts: Stated) => {
    const key = keyOf(intent, facts);
    const known = tried.get(key);
    if (known) return known;
    const taken = take(intent, facts);
    const { ready } = taken;
    const one = { taken, whole: ready && worked(() => taken.intent.reply(ready, taken.setting)) };
    tried.set(key, one);
    return one;
  };
  /** A first line that needs no caution beside it, and holds nothing of somebody else's. */
  const firstLine = ({ intent, facts }: ReadingOffered): string | undefined => {
    if (plain.has(intent) || isMedical({ intent, stated: facts, probability: 1 })) return undefined;
    const { taken, whole } = tryOut(intent, facts);
    if (!whole || taken.lent.length > 0 || taken.hazards.length > 0) return undefined;
    const { figures, cautions, headline } = whole.reply;
    // What asks back itself has no figure.
    const isWorkedOut = figures !== undefined && Object.keys(figures).length > 0;
    return isWorkedOut && !cautions?.length ? headline : undefined;
  };
  return {
    answerOf: (intent, facts) => tryOut(intent, facts).whole?.reply.headline,
    workedOf: (intent, facts) => tried.get(keyOf(intent, facts))?.whole,
    withFirstLines: two => {
      const firsts = two.options.map(choice => firstLine(choice));
      return firsts.every(first => first === undefined) ? two : { ...two, firsts };
    },
  };
}
