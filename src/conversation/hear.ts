import { present } from '#basics/present.ts';
import type { GearAsked, HeldMaxim } from '#intents/intent.ts';
import { isSetup } from '#intents/needs.ts';
import type { TalkContext } from '#language/decide/frame.ts';
import type { Issue } from '#language/issue.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { read } from '#language/reading.ts';
import { convertIn } from '#language/recognise/convert.ts';
import { isOtherScript } from '#language/script.ts';
import { spokenOf } from '#language/spoken.ts';
import { isEmergency } from './answering/safe.ts';
import { lastFrame } from './kept/recall.ts';
import { contextIn, type Line } from './kept/talk-read.ts';
import { emptyMemory, type Memory } from './memory.ts';
import type { Message } from './message.ts';
import { beyondBelief } from './told/beyond.ts';
import { coolerTold, withoutAsked } from './told/cooler-told.ts';
import { withGearTold } from './told/gear-told.ts';
import { sound } from './told/sound.ts';
import { meantBy } from './turns/buttons.ts';
import { type Forgetting, forgettingIn, isUndoing, undoneBy } from './turns/requests.ts';
import type { Sided } from './turns/sided.ts';
import { asksAfterWord } from './unsure/asks-word.ts';
import { withoutFarFetched } from './unsure/far-fetched.ts';
import { pickedIn } from './unsure/picked.ts';
import { leastSure, leastSureAlone } from './unsure/sureness.ts';
import type { Joined } from './whose/joined.ts';
import type { Possession } from './whose/possession.ts';

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
  /** What of the trade it says or asks after, and who takes which side of that. */
  readonly held?: HeldMaxim;
  /** What it asks of gear that was told. */
  readonly gearAsked?: GearAsked;
  /** It asks the bot who is right, or what it was told. */
  readonly isAppeal?: true;
  /** The other question that the message asks. */
  readonly beside?: string;
  /** What its words and figures ask beyond its facts, where they put that beyond doubt. */
  readonly subject?: string;
  /** What several people run, where it speaks of all of that together. */
  readonly together?: Joined;
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
export const nods: ReadonlySet<string> = new Set([
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

/** What only takes note of what was said. */
const acknowledging: ReadonlySet<string> = new Set(
  'will do,thats better,that is better,better,much better,hm,hmm,hmmm,fair enough,righto,rightio,gotcha,got it,good to know,nice one,told ya,told you,told you so'.split(
    ',',
  ),
);

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
  const lacksTerm = parsed.intent === 'term' && parsed.term === undefined;
  if (isSure && !lacksTerm && (parsed.intent === 'convert' || !isSum(parsed))) return parsed;
  const alone = read(text, { people: context.people }, parsed.recognised);
  // "What is the alternator?" asks after a word, whatever was spoken of.
  if (alone.term !== undefined && (lacksTerm || asksAfterWord(alone)))
    return { ...alone, hazards: parsed.hazards };
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
  const { hazards } = read(text, {}, parsed.recognised);
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
  const told = heard(withoutFarFetched(withoutFalseAlarm(readSafely(text, context), context)));
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
  const bare = command.replaceAll(/[.!'’]/g, '');
  if (!isOpen && (nods.has(bare) || acknowledging.has(bare)))
    return { ...told, intent: 'none', facts: {}, probability: 1, certainty: 1, issues: [], options: [] };
  const picked = pickedIn(memory, text, told);
  if (!picked) return told;
  // One of two readings was chosen: that is what the message before says.
  const { intent, facts } = picked;
  return { ...told, intent, facts, asRead: { intent, stated: facts }, ...settled, isPicked: true };
}

let unsaid: Heard | undefined;

/** What is heard of a message without a word, in no talk: the same for everybody, and worked out once. */
export const heardNothing = (): Heard =>
  (unsaid ??= hear(emptyMemory(), { chat: '', from: '', text: '', at: new Date(0), kind: 'group' }));
