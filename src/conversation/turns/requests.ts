import { present } from '#basics/present.ts';
import { type ForgetRequest, forgetRequest } from '#language/requests/forget.ts';
import { valuesOf } from '#language/talk.ts';
import { lastFrame, personKey } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';

/** Where a wish to forget stands: asked for now, confirmed or called off after the bot asked back, or neither. */
export type Forgetting =
  | { readonly stage: 'asked' | 'confirmed'; readonly request: ForgetRequest }
  | { readonly stage: 'declined' | 'stray' };

/** How long a question back about forgetting waits for its yes (ms): nobody wipes by a yes to something else. */
export const openMs = 10 * 60_000;
/** How long a change of a rig can be undone (ms). */
export const undoMs = 3600_000;

/** What the buttons say, and what they are called by in words. */
export const confirmation = 'yes, forget';
const refusal = 'no, keep it';
const yes =
  /^(?:yes|yep|yeah|yup|aye|y|sure|ok|do it)(?:,? (?:please|pls|forget(?: it)?|delete(?: it)?|wipe (?:it|the lot)|do it|sure))?[.!]*$/;
const no = /^(?:no|nope|nah|n|don'?t|cancel|keep it)(?:,? (?:keep it|thanks|don'?t))?[.!]*$/;

/** The commands' own words, which need no guessing. */
const commands: Readonly<Record<string, ForgetRequest>> = {
  '/forget': { which: 'chat' },
  'forget everything': { which: 'chat' },
  'forget me': { which: 'me' },
};

const asides: ReadonlySet<string> = new Set(
  "oh oops dear yikes sorry please pls bot thanks ok okay right nah no nope just let's lets and".split(' '),
);
/** Every way to say one of each in turn; an empty one may be left out. */
const ways = (...parts: readonly (readonly string[])[]): string[] =>
  parts.reduce<string[]>(
    (all, part) => all.flatMap(start => part.map(next => `${start} ${next}`.trim())),
    [''],
  );

/** The ways to say one thing, and the words that they open with. */
interface Wish {
  readonly phrases: ReadonlySet<string>;
  readonly openings: ReadonlySet<string>;
}
const wishOf = (phrases: readonly string[]): Wish => ({
  phrases: new Set(phrases),
  openings: new Set(phrases.map(phrase => present(phrase.split(' ')[0]))),
});

/** What was done last: "my last change", "what I said". */
const lastDone: readonly string[] = [
  ...ways(['my', 'the', 'that'], ['last'], ['change', 'one', 'thing', 'step', 'bit', 'question']),
  ...ways(["what i've", 'what i'], ['told you', 'said', 'asked', 'wrote', 'did', 'changed']),
];
const asBefore: readonly string[] = [
  ...ways(['as', 'how', 'to how', 'to what', 'the way'], ['it was', 'it stood', 'i had it'], ['', 'before']),
];
const undoing: readonly string[] = [
  ...ways(['undo', 'revert', 'reverse'], ['', 'it', 'that', 'this', ...lastDone]),
  ...ways(['discard', 'cancel', 'scrap', 'take back', 'withdraw'], lastDone),
  ...ways(['put', 'change', 'take'], ['it', 'that', 'this'], ['back'], ['', ...asBefore]),
];
const toUndo = wishOf(undoing);

/** Ways to ask for the answer before the last turn. */
const goingBack: readonly string[] = [
  ...ways(['go back', 'back'], ['to before', 'to the first', 'to the first one', 'to the one before']),
  ...ways(['go back', 'back'], ['one', 'one step', 'a step', ...asBefore]),
  ...ways(['have it', 'leave it', ''], asBefore),
  'go back',
  'as before',
  'scrap that',
  'not that one',
  'leave that idea be',
  'forget that',
];
const toGoBack = wishOf([...undoing, ...goingBack]);

/** Ways to ask for the days of a trip one by one. */
const toListByDay = wishOf(
  ways(
    ['', 'show me', 'show it', 'show', 'tell me', 'now'],
    ['day by day', 'each day', 'every day', 'the days', 'it day by day'],
  ),
);

const mostWords = 20;
const mostLetters = 100;

/** Whether a short message says these and nothing else, one or several after each other, asides left out. */
function says(text: string, { phrases, openings }: Wish): boolean {
  const all = text.match(/[a-z']+/g) ?? [];
  const words = all.filter(word => !asides.has(word));
  // Most messages say no such thing: their first word tells.
  if (!openings.has(words[0] ?? '') || all.length > mostWords) return false;
  // Which words a phrase may begin at, all before them being said.
  const isOpen = [true, ...words.map(() => false)];
  words.forEach((_, from) => {
    if (!isOpen[from]) return;
    for (let to = from + 1; to <= words.length; to++)
      if (phrases.has(words.slice(from, to).join(' '))) isOpen[to] = true;
  });
  return isOpen[words.length] === true;
}

/** Whether a message, in small letters, asks to take the last change back, and nothing else. */
export const isUndoing = (text: string): boolean => says(text, toUndo);

const plain = (text: string): string => text.trim().toLowerCase().replaceAll('’', "'");

/** The question back about forgetting that waits for this person's word. */
function openFor({ forgetting }: Memory, { from, at }: Message): ForgetRequest | undefined {
  const isOpen =
    forgetting !== undefined && forgetting.from === personKey(from) && at.getTime() - forgetting.at <= openMs;
  return isOpen ? forgetting.request : undefined;
}

/** What a message wishes to be forgotten, if that is its wish. A wish by itself wipes nothing. */
export function forgettingIn(memory: Memory, message: Message): Forgetting | undefined {
  const text = plain(message.text);
  const open = openFor(memory, message);
  if (open && yes.test(text)) return { stage: 'confirmed', request: open };
  if (open && no.test(text)) return { stage: 'declined' };
  if (text === confirmation || text === refusal) return { stage: 'stray' };
  const request = Object.hasOwn(commands, text) ? commands[text] : forgetRequest(message.text);
  return request && { stage: 'asked', request };
}

/** The rig that a message puts back as it was before this person's last change within the hour. */
export function undoneBy({ undo }: Memory, { text, from, at }: Message): Memory['undo'] {
  const isOwn = undo !== undefined && undo.from === personKey(from) && at.getTime() - undo.at <= undoMs;
  return isOwn && isUndoing(plain(text)) ? undo : undefined;
}

/** "No, leave it at 200": the figure that stays as it was. */
function keptIn(text: string): number | undefined {
  const [, number] =
    /^(?:no|nah|nope|ok|actually)?,? ?(?:keep|leave) (?:it|that) (?:at |to |as )?(\d{1,5}(?:\.\d{1,3})?) ?[a-z]{0,5}[.!]*$/.exec(
      text,
    ) ?? [];
  return number === undefined ? undefined : Number(number);
}

/**
 * The question before a turn that this person takes back: "what if lithium?", answered, then "undo". What was changed
 * last counts: a rig told after the turn is put back first.
 */
export function turnedBack({ frames, undo }: Memory, { text, from }: Message): Frame | undefined {
  const words = plain(text);
  const kept = keptIn(words);
  if (words.length > mostLetters || !(kept !== undefined || says(words, toGoBack))) return undefined;
  const own = frames.filter(frame => frame.from === personKey(from));
  const [before, last] = own.slice(-2);
  if (!before || !last || last.onto !== before.at) return undefined;
  const stood = (facts: Frame['facts']): boolean =>
    valuesOf({ ...facts }).some(([, value]) => value === kept);
  if (kept !== undefined && (!stood(before.facts) || stood(last.facts))) return undefined;
  return undo !== undefined && undo.from === personKey(from) && undo.at > last.at ? undefined : before;
}

/** The trip, or the run that makes one, whose days a message asks for one by one, and nothing else. */
export function listedByDay(memory: Memory, { text, from, onto }: Message): Frame | undefined {
  const words = plain(text);
  if (words.length > 60 || !says(words, toListByDay)) return undefined;
  const frame = onto ?? lastFrame(memory, from);
  return frame && (frame.intent === 'trip' || frame.intent === 'run-time') ? frame : undefined;
}
