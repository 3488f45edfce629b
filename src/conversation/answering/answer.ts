import type { Answer, Understood } from '#answer/answer.ts';
import { warningLines } from '#answer/hazards.ts';
import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import { english } from '#answer/speech.ts';
import { print } from '#answer/text.ts';
import { cautions as cautionSentences } from '#answer/words/en.ts';
import { type ToldFact, toldFacts } from '#intents/unused.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { type ChatUnits, inChatUnits } from '#quantity/chat-units.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';
import type { Heard } from '../hear.ts';
import type { Interpreted } from '../interpret.ts';
import { asRead } from '../told/gear-told.ts';
import { unnamed } from '../told/sound.ts';
import type { Lent } from '../whose/origins.ts';
import { isCalled } from '../whose/people.ts';
import { factsInWords } from './unused-in-words.ts';

/** How a reply becomes an answer. */
export interface Told {
  readonly intent: Answer['intent'];
  readonly heard: Heard;
  readonly isWorkingShown?: boolean;
  readonly lent?: readonly Lent[];
  /** What was counted, and what was told and not counted: a line each. */
  readonly counted?: readonly string[];
  /** Facts told that the answer doesn't hang on. */
  readonly unused?: readonly ToldFact[];
  /** Numbers in no fact that the question did not take either; where it is absent, all that no fact took. */
  readonly unread?: Heard['unread'];
  readonly hazards?: readonly HazardCode[];
  /** What it is told in, where that isn't the usual. */
  readonly units?: ChatUnits;
  /** What both of two readings say, where neither is sure. */
  readonly shared?: Understood;
  /** Works it out once more. */
  readonly again?: Answer['again'];
}

/** "From Ann's question: 100 Ah AGM": everything that came from somebody else, a line a person. */
const lentLines = (lent: readonly Lent[] = []): string[] =>
  lent.flatMap(({ who, facts, isRig }) => {
    const parts = factsInWords(facts, toldFacts(facts)).join(', ');
    if (parts === '') return [];
    const gaps = { who: sentence(who), parts };
    return isRig
      ? english.say('lent-rig', "From {who}'s rig: {parts}.", gaps)
      : english.say('lent', "From {who}'s question: {parts}.", gaps);
  });

/** What is converted is an amount, and no thing that has a name. */
function withoutName({ loads, ...facts }: ReturnType<typeof asRead>): ReturnType<typeof asRead> {
  const bare = loads?.map(({ name, ...load }) => (name === unnamed ? load : { name, ...load }));
  return { ...facts, ...(bare && { loads: bare }) } as ReturnType<typeof asRead>;
}

/** What the message states, literally. */
function understoodOf(parsed: ParsedMessage): Understood {
  const { facts, claims, removed, corrects, owner, term, choice, recognised } = parsed;
  return {
    ...(parsed.intent === 'convert' ? withoutName(asRead(facts)) : asRead(facts)),
    ...(claims.length > 0 && { claims }),
    ...(removed.length > 0 && { removed }),
    ...(corrects && { corrects }),
    // Whom "hers" means is what the talk tells, and not the message.
    ...(owner !== undefined && isCalled(owner, recognised.words) && { owner }),
    ...(term !== undefined && { term }),
    ...(choice !== undefined && { choice }),
  };
}

const round = (value: number): number => Math.round(value * 100) / 100;

/** How sure the reading is, and what came second. */
const readingOf = ({ margin, second, because }: ParsedMessage): NonNullable<Answer['reading']> => ({
  margin: round(margin),
  ...(second && { second: { intent: second.intent, differs: second.differs } }),
  get because() {
    return because();
  },
});

/** Asks for the working: no use where there is none, or it stands there. */
const workingWish = 'show the working';

/** Builds the answer as data from a reply; the working is printed only if somebody looks at it. */
export function toAnswer(reply: Reply, told: Told): Answer {
  const { heard, isWorkingShown = false } = told;
  const codes = [...new Set(reply.cautions ?? [])];
  const hasMore = reply.working !== undefined && !isWorkingShown;
  const full: Reply = {
    ...reply,
    lines: [...(reply.lines ?? []), ...(told.counted ?? []), ...lentLines(told.lent)],
    cautions: codes,
  };
  return {
    intent: told.intent,
    text: inChatUnits(print(full, { isWorkingShown, words: english }), told.units ?? {}),
    verdict: reply.verdict ?? null,
    figures: reply.figures ?? {},
    understood: { ...(told.shared ?? understoodOf(heard)), ...(reply.rig ? { rig: reply.rig } : {}) },
    hazards: told.hazards ?? [],
    unread: told.unread ?? heard.unread,
    unused: (told.unused ?? []).map(({ path, value }) => ({ fact: path.join('.'), value })),
    reading: readingOf(heard),
    assumed: reply.assumed ?? [],
    get working() {
      return reply.working?.() ?? [];
    },
    cautions: [
      ...warningLines(told.hazards ?? []),
      ...codes.map(code => english.say(`caution-${code}`, cautionSentences[code])),
    ],
    ...(told.intent === 'none' && heard.cues.has('thanks') && { isThanks: true as const }),
    next: (reply.next ?? [])
      .filter(say => say !== workingWish || hasMore)
      .slice(0, 3)
      .map(say => inChatUnits(say, told.units ?? {})),
    chart: reply.chart,
    hasWorking: () => reply.working !== undefined,
    again: told.again,
  };
}

/** An answer that says nothing: to talk among people, and to the bot's own lines. */
export const silence = (heard: Heard): Answer => ({
  ...toAnswer({ headline: '' }, { intent: 'none', heard }),
  text: '',
});

/** What an interpreted message hands on to its answer. */
export const toldOf = ({
  heard,
  readAs,
  lent,
  hazards,
  setting,
}: Interpreted): Pick<Told, 'heard' | 'lent' | 'hazards' | 'units'> => ({
  heard: readAs ?? heard,
  lent,
  hazards,
  units: setting.units,
});
