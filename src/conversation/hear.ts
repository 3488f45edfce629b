import { present } from '#basics/present.ts';
import { isSetup } from '#intents/needs.ts';
import type { TalkContext } from '#language/decide/frame.ts';
import { conceptsIn } from '#language/hazards/features.ts';
import type { Issue } from '#language/issue.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { read } from '#language/reading.ts';
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
import { coolerTold } from './told/cooler-told.ts';
import { withGearTold } from './told/gear-told.ts';
import { sound } from './told/sound.ts';
import { meantBy } from './turns/buttons.ts';
import { type Forgetting, forgettingIn, isUndoing, undoneBy } from './turns/requests.ts';
import { pickedIn } from './unsure/picked.ts';
import { leastSure } from './unsure/sureness.ts';
import { lastNamed, openingName, peopleIn, wordsWritten } from './whose/people.ts';
import type { Possession } from './whose/possession.ts';

/** The talk as memory keeps it. */
function talkOf({ talk, rigs }: Memory): Talk {
  const { at: _at, named: _named, ...rest } = talk ?? { at: 0 };
  return { ...rest, hasRig: Object.keys(rigs).length > 0 };
}

/** What a message of this chat is read in. */
function contextOf(memory: Memory, { from, onto }: Message): TalkContext {
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

/** How many meanings of the last two lines are kept. */
const mostMeanings = 16;

const kept = ({ hasRig: _hasRig, ...talk }: Talk, at: Date): Memory['talk'] => ({
  ...(talk.lastIntent !== undefined && { lastIntent: talk.lastIntent }),
  lastKeys: talk.lastKeys?.slice(0, 60),
  lastValues: talk.lastValues?.slice(0, mostValues).map(([of, value]) => [of, value]),
  asked: talk.asked?.slice(0, 60),
  said: talk.said?.slice(0, 24),
  meant: talk.meant?.slice(0, mostMeanings),
  lastFrom: talk.lastFrom,
  lastWriter: talk.lastWriter,
  asks: talk.asks?.map(([from, intent]) => [from, intent]),
  at: at.getTime(),
});

/** The talk after a person's line and, where the bot asked something back, after that. */
export function talkAfter(
  memory: Memory,
  message: Message,
  parsed: ParsedMessage,
  asked?: string,
): Memory['talk'] {
  const before = talkOf(memory);
  const stated = parsed.options[0]?.stated ?? {};
  const { mentions } = parsed.recognised;
  const concepts = conceptsIn(message.text);
  const after = afterLine(before, parsed.intent, stated, personKey(message.from), mentions, concepts);
  const { recognised } = parsed;
  const opening = openingName(recognised);
  const named = lastNamed(memory, wordsWritten(recognised), message.from, opening) ?? memory.talk?.named;
  const isAsking = asked !== undefined;
  const talk = isAsking ? { ...after, ...heardFromBot(asked, after, readLine) } : after;
  return { ...present(kept(talk, message.at)), named };
}

/** A line that the bot wrote: not answered, but what it asks stands open. */
export function hearBot(memory: Memory, { text, at }: Message): Memory {
  const talk = talkOf(memory);
  const after = present(kept({ ...talk, ...heardFromBot(text, talk, readLine) }, at));
  return { ...memory, talk: { ...after, named: memory.talk?.named } };
}

/** A message as it was heard: what can't be meant taken out, what it speaks of among its cues. */
export interface Heard extends ParsedMessage {
  readonly forgetting?: Forgetting;
  /** The change of a rig that the message takes back. */
  readonly undo?: Memory['undo'];
  readonly issues: readonly Issue[];
  /** One of two readings was picked by it. */
  readonly isPicked?: true;
  /** Gear of somebody's that it speaks of, once that is known. */
  readonly possessions?: readonly Possession[];
  /** It was read as a comparison, of two people's gear. */
  readonly isRivalry?: true;
}

/** What of a reading can be meant, with what it speaks of. */
function heard(parsed: ParsedMessage): Heard {
  const { facts, issues } = sound(parsed.facts);
  const { tokens, mentions } = parsed.recognised;
  const foreign: Issue[] = isOtherScript(tokens) ? [{ code: 'other-language' }] : [];
  const cues = new Set([...parsed.cues, ...spokenOf(mentions)]);
  return {
    ...parsed,
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

/** A whole setup that the talk makes unsure is read by itself: where that is surer, it stands alone. */
function readWhole(text: string, context: TalkContext): ParsedMessage {
  const parsed = read(text, context);
  if (
    parsed.certainty >= leastSure ||
    context.lastIntent === undefined ||
    !isSetup(sound(parsed.facts).facts)
  )
    return parsed;
  const alone = read(text, { people: context.people });
  return alone.certainty >= leastSure ? { ...alone, hazards: parsed.hazards } : parsed;
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
  const told = heard(readSafely(text, contextOf(memory, message)));
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
  if (meant)
    return {
      ...told,
      intent: meant,
      facts: button?.facts ?? told.facts,
      removed: [],
      corrects: undefined,
      ...settled,
    };
  const isOpen = memory.choice !== undefined || before?.asked !== undefined || before?.intent === 'learn';
  // Nothing was asked: a nod turns nothing.
  if (!isOpen && nods.has(command.replaceAll(/[.!]/g, '')))
    return { ...told, intent: 'none', facts: {}, probability: 1, certainty: 1, issues: [], options: [] };
  const picked = pickedIn(memory, text, told);
  if (!picked) return told;
  // One of two readings was chosen: that is what the message before says.
  const { intent, facts } = picked;
  return { ...told, intent, facts, ...settled, isPicked: true };
}
