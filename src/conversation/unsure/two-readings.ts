import type { IntentName } from '#answer/answer.ts';
import { isPartOf } from '#basics/part-of.ts';
import { intentNamed } from '#intents';
import type { ParsedMessage } from '#language/reading.ts';
import type { Claim, Stated } from '#rig/rig.ts';
import { isSame, partsOf, textOf } from '../answering/facts-in-words.ts';
import type { Heard } from '../hear.ts';
import { isIntent, plain, unasked } from '../questions.ts';
import { withGearTold } from '../told/gear-told.ts';
import { named, sound } from '../told/sound.ts';
import { isMedical, isOnlyNamed, isPlainEnough, type Reading } from './plain-enough.ts';
import { leastSure, leastSureAlone } from './sureness.ts';

/** A reading somebody may choose, by the words of its button. */
export interface ReadingOffered {
  readonly say: string;
  readonly intent: IntentName;
  readonly facts: Stated;
}

/** Two readings that answer differently, and what both say. */
export interface Two {
  readonly options: readonly [ReadingOffered, ReadingOffered];
  readonly shared: Stated;
  /** One reading alone, too unsure to answer by: what was understood, to say yes or no to. */
  readonly echo?: string;
  /** What each would be answered, in its first line, where that can stand alone. */
  readonly firsts?: readonly (string | undefined)[];
}

/** What an answer hangs on: the question, and of the facts those that it takes. */
function keyOf({ intent, stated }: Reading): string {
  const { takes } = intentNamed(intent);
  const used = Object.fromEntries(
    Object.entries(stated).filter(([key]) => key === 'claims' || (takes as readonly string[]).includes(key)),
  );
  return `${intent} ${textOf(inShort(named(used as Stated)))}`;
}

/** Things by the last word of their names: "the machine" of a coffee machine is that one. */
const inShort = ({ loads, ...rest }: Stated): Stated => ({
  ...rest,
  ...(loads && { loads: loads.map(load => ({ ...load, name: load.name.split(' ').at(-1) ?? load.name })) }),
});

/** The readings, those that answer alike as one, likeliest first. */
export function readingsOf({ options }: Pick<ParsedMessage, 'options'>): Reading[] {
  const merged = new Map<string, Reading>();
  for (const { intent, stated, probability } of options) {
    if (!isIntent(intent)) continue;
    const reading: Reading = { intent, stated, probability };
    const key = keyOf(reading);
    const before = merged.get(key);
    merged.set(key, before ? { ...before, probability: before.probability + probability } : reading);
  }
  return [...merged.values()].sort((a, b) => b.probability - a.probability);
}

/** The same in one short line. */
const wordsOf = (facts: Stated, other: Stated): string =>
  partsOf(facts, other).slice(0, 2).join(', ').slice(0, 60);

const mostEchoed = 6;

/** As likely as this all its readings together, a question is asked, whatever it is asked of. */
const leastOneQuestion = 0.8;

/** Whether nearly all readings ask the same, and the likeliest tells no figure: there is nothing to say yes to. */
const isBareQuestion = ([first, ...others]: readonly Reading[]): boolean =>
  first !== undefined &&
  !/\d/.test(JSON.stringify(first.stated)) &&
  others.reduce(
    (sum, { intent, probability }) => (intent === first.intent ? sum + probability : sum),
    first.probability,
  ) >= leastOneQuestion;

/** A reading that could not be told from the next in words: said back, to say yes or no to. */
function checked(first: Reading, heard: Heard): Two | undefined {
  const facts = factsIn(first.stated, heard);
  const claims = (first.stated.claims ?? []) as readonly Claim[];
  const parts = [
    ...partsOf(facts, {}),
    ...claims.map(({ who, value, unit }) =>
      `${who === 'i' ? 'you say' : `${who} says`} ${value} ${unit}`.trim(),
    ),
  ];
  if (parts.length === 0) return undefined;
  const { title } = intentNamed(first.intent);
  return {
    options: [
      { say: 'Yes', intent: first.intent, facts },
      { say: 'No', intent: 'unclear', facts: {} },
    ],
    shared: {},
    echo: `${title} ${parts.slice(0, mostEchoed).join(', ')}`,
  };
}

/** The facts of a reading that can stand, with what the words beside them tell. */
export const factsIn = (
  { claims: _c, removed: _r, corrects: _s, owner: _o, term: _t, choice: _ch, ...facts }: Reading['stated'],
  { recognised }: Pick<ParsedMessage, 'recognised'>,
): Stated => withGearTold(sound(facts as Stated).facts, recognised);

/** What a reading would be answered, in its first line; undefined where it can't be. */
export type AnswerOf = (intent: IntentName, facts: Stated) => string | undefined;

/** How many readings are tried out for their answers. */
const mostTried = 4;
/** At least this share of all readings with the same words for an answer: then there is nothing to ask. */
const leastAlike = 0.93;
/** Less sure than this, what was meant is likely none of them. */
const leastOfAlike = 0.4;

/** How likely any reading is that would be answered with the words of the likeliest, and the likeliest that would not. */
interface Alike {
  readonly share: number;
  readonly other?: Reading;
}

/** Holds the answers of the likeliest readings of one question against that of the first. */
function alikeIn(readings: readonly Reading[], heard: Heard, answerOf: AnswerOf): Alike {
  const [first, ...others] = readings as readonly [Reading, ...Reading[]];
  let said: string | undefined;
  let share = first.probability;
  let other: Reading | undefined;
  for (const one of others.slice(0, mostTried)) {
    const isOfQuestion = one.intent === first.intent;
    said ??= isOfQuestion ? answerOf(first.intent, factsIn(first.stated, heard)) : undefined;
    const isAlike =
      isOfQuestion &&
      (isPartOf(one.stated, first.stated) ||
        (said !== undefined && answerOf(one.intent, factsIn(one.stated, heard)) === said));
    if (isAlike) share += one.probability;
    else other ??= one;
  }
  return { share, other };
}

/** Less sure than this, the likeliest reading is a guess: where another question may be meant as well, it is asked which. */
const leastHeard = 0.4;
/** As likely as this, another question may be meant. */
const leastOther = 0.05;

/** Of a guess, the likeliest two questions. */
function guessed(readings: readonly Reading[], heard: Heard): Two | undefined {
  if (heard.certainty >= leastHeard) return undefined;
  const [first] = readings as readonly [Reading];
  const other = readings.find(
    ({ intent, probability }) => intent !== first.intent && !unasked.has(intent) && probability >= leastOther,
  );
  return other && apart(first, other, heard);
}

const untold: AnswerOf = () => undefined;

/**
 * Of an unsure message the two likeliest readings that answer differently, where they can be told apart in words; else
 * the likeliest alone, to be said back.
 */
export function twoReadings(heard: Heard, answerOf: AnswerOf = untold): Two | undefined {
  // Most messages are sure: their readings need not be told apart.
  if (heard.certainty >= leastSure) return undefined;
  const readings = readingsOf(heard);
  const [first] = readings;
  if (!first || unasked.has(first.intent) || isPlainEnough(readings, heard)) return undefined;
  const guess = guessed(readings, heard);
  if (guess) return guess;
  const { share, other: second } = alikeIn(readings, heard, answerOf);
  // As sure as one reading of them is, so much surer are all that are answered alike.
  const certainty = (heard.certainty * share) / first.probability;
  const isAllOne = share >= leastAlike || certainty >= leastSure;
  if (heard.certainty >= leastOfAlike && isAllOne) return undefined;
  const isTwo =
    second !== undefined &&
    !unasked.has(second.intent) &&
    (first.intent !== second.intent || !plain.has(first.intent));
  const isPlain =
    plain.has(first.intent) ||
    ((heard.certainty >= leastSureAlone || isBareQuestion(readings)) && !isMedical(first));
  // Of two questions the likelier, where only that one can be answered.
  const isOnlyAnswer =
    isTwo &&
    first.intent !== second.intent &&
    heard.certainty >= leastOfAlike &&
    answerOf(first.intent, factsIn(first.stated, heard)) !== undefined &&
    answerOf(second.intent, factsIn(second.stated, heard)) === undefined;
  if (isOnlyAnswer) return undefined;
  return (
    (isTwo && apart(first, second, heard)) ||
    (isPlain || isOnlyNamed(first, heard) ? undefined : checked(first, heard))
  );
}

/** A question's title, as what may be meant: of gear that is told, that no more is. */
const titleOf = (intent: IntentName): string =>
  intent === 'rig' ? 'Just note it' : intentNamed(intent).title;

/** Two readings with the words that tell them apart, where there are such. */
function apart(first: Reading, second: Reading, heard: Heard): Two | undefined {
  const [mine, other] = [factsIn(first.stated, heard), factsIn(second.stated, heard)];
  const isOtherQuestion = first.intent !== second.intent;
  const says = isOtherQuestion
    ? [titleOf(first.intent), titleOf(second.intent)]
    : [wordsOf(mine, other), wordsOf(other, mine)];
  const [one, two] = says as [string, string];
  if (one === two || one === '' || two === '') return undefined;
  const shared = Object.fromEntries(
    Object.entries(mine).filter(([key, value]) => isSame(value, other[key as keyof Stated])),
  ) as Stated;
  return {
    options: [
      { say: one, intent: first.intent, facts: mine },
      { say: two, intent: second.intent, facts: other },
    ],
    shared,
  };
}
