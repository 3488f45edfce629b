import { present } from '#basics/present.ts';
import { isSetup } from '#intents/needs.ts';
import type { TalkContext } from '#language/decide/frame.ts';
import { conceptsIn } from '#language/hazards/features.ts';
import type { Issue } from '#language/issue.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { read } from '#language/reading.ts';
import { convertIn } from '#language/recognise/convert.ts';
import { isOtherScript } from '#language/script.ts';
import { relatives, spokenOf } from '#language/spoken.ts';
import {
  afterLine,
  contextFor,
  heardFromBot,
  keysOf,
  type LineReader,
  type Talk,
  valuesOf,
} from '#language/talk.ts';
import { isEmergency } from './answering/safe.ts';
import { lastFrame, personKey } from './kept/recall.ts';
import type { Memory } from './memory.ts';
import type { Message } from './message.ts';
import { beyondBelief } from './told/beyond.ts';
import { coolerTold, withoutAsked } from './told/cooler-told.ts';
import { withGearTold } from './told/gear-told.ts';
import { sound } from './told/sound.ts';
import { meantBy } from './turns/buttons.ts';
import { type Forgetting, forgettingIn, isUndoing, undoneBy } from './turns/requests.ts';
import type { Sided } from './turns/sided.ts';
import { pickedIn } from './unsure/picked.ts';
import { leastSure, leastSureAlone } from './unsure/sureness.ts';
import { lastNamed, openingName, peopleIn, wordsWritten } from './whose/people.ts';
import type { Possession } from './whose/possession.ts';

/** The talk as memory keeps it. */
function talkOf({ talk, rigs }: Memory): Talk {
  const { at: _at, named: _named, ...rest } = talk ?? { at: 0 };
  return { ...rest, hasRig: Object.keys(rigs).length > 0 };
}

/** What a message of this chat is read in. */
export function contextIn(memory: Memory, { from, onto }: Message): TalkContext {
  const told = new Set([...relatives, ...peopleIn(memory)]);
  const talk = contextFor(talkOf(memory), personKey(from));
  if (!onto) return { ...talk, people: [...told] };
  const facts = { ...onto.facts };
  return {
    ...talk,
    lastIntent: onto.intent,
    lastKeys: keysOf(facts),
    lastValues: valuesOf(facts),
    isOwn: onto.from === personKey(from),
    people: [...told],
  };
}

type Line = ReturnType<LineReader>;
/** Lines of the bot's own read lately: it asks the same few things over and over. */
const linesRead = new Map<string, Line>();
const mostLines = 100;

const readLine: LineReader = (text, context) => {
  const isAlone = Object.keys(context).length === 0;
  const known = isAlone ? linesRead.get(text) : undefined;
  if (known) return known;
  const { intent, options } = read(text, context);
  const line: Line = { intent, stated: options[0]?.stated ?? {} };
  if (linesRead.size >= mostLines) linesRead.clear();
  if (isAlone) linesRead.set(text, line);
  return line;
};

/** How many figures of a question are kept for the reading of the next line. */
const mostValues = 24;

/** How many things spoken of are kept: the last is meant most often. */
const mostThings = 6;

/** How many meanings of the last two lines are kept. */
const mostMeanings = 16;

/** At most so many, and nothing for none: what isn't there takes no room in a chat's memory. */
const upTo = <T>(list: readonly T[] | undefined, most: number): T[] | undefined =>
  list?.length ? list.slice(0, most) : undefined;

const kept = ({ hasRig: _hasRig, things, lastIntent, ...talk }: Talk, at: Date): Memory['talk'] => ({
  ...(things?.length && { things: things.slice(-mostThings) }),
  ...(lastIntent !== undefined && { lastIntent }),
  lastKeys: upTo(talk.lastKeys, 60),
  lastValues: upTo(talk.lastValues, mostValues)?.map(([of, value]) => [of, value]),
  asked: upTo(talk.asked, 60),
  said: upTo(talk.said, 24),
  meant: upTo(talk.meant, mostMeanings),
  lastFrom: talk.lastFrom,
  lastWriter: talk.lastWriter,
  asks: talk.asks?.map(([from, intent]) => [from, intent]),
  at: at.getTime(),
});

/** A text without what stands in quotation marks. */
const unquoted = (text: string): string =>
  text
    .split('“')
    .map((part, i) => (i === 0 ? part : part.slice(part.indexOf('”') + 1)))
    .join('');

/** The talk after a person's line and, where the bot asked something back, after that. */
export function talkAfter(memory: Memory, message: Message, parsed: Heard, asked?: string): Memory['talk'] {
  const before = talkOf(memory);
  const { intent, stated } = parsed.asRead;
  const { mentions } = parsed.recognised;
  const concepts = conceptsIn(message.text);
  const after = afterLine(before, intent, stated, personKey(message.from), mentions, concepts);
  const { recognised } = parsed;
  const opening = openingName(recognised);
  const named = lastNamed(memory, wordsWritten(recognised), message.from, opening) ?? memory.talk?.named;
  // An example of how to say it speaks of nobody's gear.
  const plain = asked && unquoted(asked);
  const talk = plain ? { ...after, ...heardFromBot(plain, after, readLine) } : after;
  return { ...present(kept(talk, message.at)), named };
}

/** A line that the bot wrote: not answered, but what it asks stands open. */
export function hearBot(memory: Memory, { text, at }: Message): Memory {
  const talk = talkOf(memory);
  // Right after an answer of its own, both are one line of the bot.
  const said = talk.said?.includes('1bot')
    ? talk.said.filter(sign => sign.startsWith('2')).map(sign => `1${sign.slice(1)}`)
    : talk.said;
  const heard = heardFromBot(text, { ...talk, said }, readLine);
  const after = present(kept({ ...talk, ...heard }, at));
  return { ...memory, talk: { ...after, named: memory.talk?.named } };
}

/** A message as it was heard: what can't be meant taken out, what it speaks of among its cues. */
export interface Heard extends ParsedMessage {
  /** What the reader took it for, before it was held against memory: the next line is read after that, as in training. */
  readonly asRead: Line;
  readonly forgetting?: Forgetting;
  /** The change of a rig that the message takes back. */
  readonly undo?: Memory['undo'];
  readonly issues: readonly Issue[];
  /** One of two readings was picked by it. */
  readonly isPicked?: true;
  /** Gear of somebody's that it speaks of, once that is known. */
  readonly possessions?: readonly Possession[];
  /** Sides that it takes without a number. */
  readonly sided?: Sided;
  /** It asks the bot who is right. */
  readonly isAppeal?: true;
  /** It was read as a comparison, of two people's gear. */
  readonly isRivalry?: true;
}

/** What of a reading can be meant, with what it speaks of. */
function heard(parsed: ParsedMessage): Heard {
  const { facts, issues } = sound(withoutAsked(parsed.facts, parsed));
  const { tokens, mentions } = parsed.recognised;
  const foreign: Issue[] = isOtherScript(tokens) ? [{ code: 'other-language' }] : [];
  const cues = new Set([...parsed.cues, ...spokenOf(mentions)]);
  return {
    ...parsed,
    asRead: { intent: parsed.intent, stated: parsed.options[0]?.stated ?? {} },
    facts: withGearTold(facts, parsed.recognised),
    cues,
    issues: [...issues, ...beyondBelief(parsed), ...foreign],
  };
}

/** Longer messages are cut: no chat sends any. */
const mostCharacters = 4096;

/** What a command by itself asks for, and the plain words that menus and buttons send: these are ours, and never guessed at. */
const commands: Readonly<Record<string, string>> = {
  '/help': 'help',
  '/start': 'help',
  '/power': 'help',
  help: 'help',
  '/privacy': 'privacy',
  privacy: 'privacy',
  settings: 'help',
  '/learn': 'learn',
  'teach me': 'learn',
  next: 'learn',
  quiz: 'learn',
  '/rig': 'rig',
  'show my rig': 'rig',
  'save it as my rig': 'rig',
  // Of what was just answered; by itself it asks for nothing.
  'show the working': 'unclear',
};

/** What only says yes. */
const nods: ReadonlySet<string> = new Set([
  'yes',
  'yep',
  'yeah',
  'yup',
  'yes please',
  'ok',
  'okay',
  'sure',
  'right',
]);

/** A sum that is there in full: "60 W in amps". */
const isSum = ({ recognised }: ParsedMessage): boolean => convertIn(recognised)?.to !== undefined;

/**
 * What stands alone and is made another thing by the talk before it, a setup, a sum or a word that is asked after, is
 * read by itself where that is surer.
 */
function readWhole(text: string, context: TalkContext): ParsedMessage {
  const parsed = read(text, context);
  if (context.lastIntent === undefined) return parsed;
  const isSure = parsed.certainty >= leastSure;
  if (isSure && (parsed.intent === 'convert' || !isSum(parsed))) return parsed;
  const alone = read(text, { people: context.people });
  const isOfItself = alone.intent === 'convert' ? isSum(alone) : alone.term !== undefined;
  const isWhole = isOfItself || (!isSure && isSetup(sound(parsed.facts).facts));
  const isSurer = alone.certainty >= Math.max(leastSure, isOfItself ? parsed.certainty : 0);
  return isWhole && isSurer ? { ...alone, hazards: parsed.hazards } : parsed;
}

/** Whether it asks to see more of an answer and tells nothing: what was dangerous in that is kept with the question. */
const onlyShows = ({ cues, facts }: ParsedMessage): boolean =>
  cues.has('ask-working') && Object.keys(facts).length === 0;

/**
 * Reads a text in its talk. What is an emergency by its own words is one whatever was spoken of before: of a danger
 * seen in the talk the text is read alone too.
 */
function readSafely(text: string, context: TalkContext): ParsedMessage {
  const parsed = readWhole(text, context);
  if (parsed.hazards.length === 0 || isEmergency(parsed.hazards) || !context.meant?.length) return parsed;
  const { hazards } = read(text, {});
  return isEmergency(hazards) || onlyShows(parsed) ? { ...parsed, hazards } : parsed;
}

/**
 * An emergency of which neither words nor talk show any danger ("is it safe to have the battery under the bed") is none:
 * the likeliest other question is taken, as unsure as it was.
 */
function withoutFalseAlarm(parsed: ParsedMessage, { meant = [] }: TalkContext): ParsedMessage {
  if (parsed.intent !== 'emergency' || parsed.hazards.length > 0 || meant.length > 0) return parsed;
  const options = parsed.options.filter(({ intent }) => intent !== 'emergency');
  const [first] = options;
  return first
    ? { ...parsed, intent: first.intent, options, certainty: Math.min(parsed.certainty, leastSureAlone) }
    : parsed;
}

/** Of what the bot's own words ask for, or somebody picked, nothing is unsure. */
const settled = {
  issues: [],
  probability: 1,
  certainty: 1,
  margin: 20,
  second: undefined,
  options: [],
} as const satisfies Partial<Heard>;

/** Reads a message in the talk of its chat. */
export function hear(memory: Memory, message: Message): Heard {
  const text = message.text.slice(0, mostCharacters);
  const context = contextIn(memory, message);
  const told = heard(withoutFalseAlarm(readSafely(text, context), context));
  const command = text.trim().toLowerCase();
  if (Object.hasOwn(commands, command))
    return { ...told, intent: present(commands[command]), probability: 1, options: [] };
  const forgetting = forgettingIn(memory, { ...message, text });
  if (forgetting) return { ...told, forgetting, intent: 'forget', probability: 1, options: [] };
  const undo = undoneBy(memory, message);
  if (undo) return { ...told, undo, intent: 'rig', facts: {}, probability: 1, options: [] };
  // Nothing of this person's is there to be taken back.
  if (isUndoing(command)) return { ...told, intent: 'none', facts: {}, probability: 1, options: [] };
  const before = message.onto ?? lastFrame(memory, message.from);
  const button = coolerTold(memory, message, told) ?? meantBy(command);
  const meant = button && (button.intent ?? (before?.asked === undefined ? before?.intent : undefined));
  if (meant) {
    const facts = button?.facts ?? told.facts;
    return {
      ...told,
      intent: meant,
      facts,
      asRead: { intent: meant, stated: facts },
      removed: [],
      corrects: undefined,
      ...settled,
    };
  }
  const isOpen = memory.choice !== undefined || before?.asked !== undefined || before?.intent === 'learn';
  // Nothing was asked: a nod turns nothing.
  if (!isOpen && nods.has(command.replaceAll(/[.!]/g, '')))
    return { ...told, intent: 'none', facts: {}, probability: 1, certainty: 1, issues: [], options: [] };
  const picked = pickedIn(memory, text, told);
  if (!picked) return told;
  // One of two readings was chosen: that is what the message before says.
  const { intent, facts } = picked;
  return { ...told, intent, facts, asRead: { intent, stated: facts }, ...settled, isPicked: true };
}
