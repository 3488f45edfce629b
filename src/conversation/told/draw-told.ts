import { factsOf } from '#intents/facts.ts';
import { isEitherDraw } from '#intents/use.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Stated } from '#rig/rig.ts';
import type { Frame } from '../memory.ts';

const ofAverage: ReadonlySet<string> = new Set(['average', 'averaged', 'averages', 'avg']);
/** Words that may stand about it and add nothing. */
const fillers: ReadonlySet<string> = new Set(
  'yes yeah yep no nah ok it is its it’s thats that the an a on in as fridge freezer draw draws one day over'.split(
    ' ',
  ),
);
const mostWords = 6;

/**
 * "Average", "that's its average", said to an answer that took a draw one way and offered the other: the draw of
 * before as an average. Undefined for anything else.
 */
export function averageTold(
  { recognised, cues }: ParsedMessage,
  before: Frame | undefined,
): Stated | undefined {
  const words = recognised.words.filter(word => /[a-z]/.test(word));
  const isBare =
    words.length <= mostWords &&
    !cues.has('question-mark') &&
    words.some(word => ofAverage.has(word)) &&
    words.every(word => ofAverage.has(word) || fillers.has(word.replaceAll("'", '')));
  const load = isBare && before ? factsOf(before.facts).loads?.find(isEitherDraw) : undefined;
  if (!load) return undefined;
  const { name, currentA, powerW } = load;
  const draw = currentA === undefined ? { powerW } : { currentA };
  return { loads: [{ name, ...draw, isAverage: true }] };
}

/** Facts without what is only asked after: whether a draw is the average ("is that the average?") is not told by the question. */
export function withoutAsked(facts: Stated, { cues, recognised }: ParsedMessage): Stated {
  const { loads, ...rest } = facts;
  const isAsked =
    cues.has('question-mark') &&
    recognised.words.length <= mostWords &&
    loads?.every(load => load.isAverage === true && (load.currentA ?? load.powerW) === undefined);
  return isAsked ? rest : facts;
}
