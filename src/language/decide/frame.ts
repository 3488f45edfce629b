import type { Awaited } from '../propose/answers.ts';
import type { Mention } from '../recognise/mention.ts';
import { speakers } from '../words/en/people.ts';
import { hashText } from './hash.ts';

/** A line before a message: whose it was, and how many lines of people came after it. */
export interface Heard {
  readonly whose: 'own' | 'other' | 'bot';
  readonly ago: number;
  readonly words: readonly number[];
}

/** What the talk before leaves for the reading of a message. */
export interface TalkContext {
  /** The question asked before, where there is one. */
  readonly lastIntent?: string;
  /** Facts of that question: "batteries", "loads". */
  readonly lastKeys?: readonly string[];
  /** Figures of that question, each with what it is of: "loads.powerW", 60. */
  readonly lastValues?: readonly (readonly [string, number])[];
  /** What the bot asked back for, as kinds and dimensions: "battery", "A". */
  readonly asked?: readonly string[];
  /** Things last spoken of, the likeliest to be meant last. */
  readonly things?: readonly string[];
  /** The last question was this person's own. */
  readonly isOwn?: boolean;
  /** The last question of this person's own, whoever asked since. */
  readonly ownIntent?: string;
  /** Signs of the last two lines, whoever wrote them and whatever they were. */
  readonly said?: readonly string[];
  /** What the last two lines of people meant as dangers go: 1 before the meanings of the last, 2 of the one before. */
  readonly meant?: readonly string[];
  /** The last two lines of people and the bot's own after them, as the hashes of their words, each once. */
  readonly heard?: readonly Heard[];
  /** The last line was this person's own. */
  readonly wroteLast?: boolean;
  /** A rig is known. */
  readonly hasRig?: boolean;
  /** Who else wrote lately, small. */
  readonly others?: readonly string[];
  /** Names of people in the chat, small. */
  readonly people?: readonly string[];
}

/** What of the talk before a message may lean on: nothing, a question, a question and a thing spoken of. */
export type Leaning = 'whole' | 'turn' | 'thing';

const leanOf = ({ things, lastIntent, asked }: TalkContext): Leaning =>
  things?.length ? 'thing' : lastIntent !== undefined || asked?.length ? 'turn' : 'whole';

/** What words alone may answer: how the volts of the question before were taken, which way its cable goes, what its alternator is. */
function awaitsOf({ lastKeys, lastIntent, asked }: TalkContext): readonly Awaited[] {
  const out: Awaited[] = [];
  if (lastIntent === 'charge-level' || lastKeys?.includes('volts')) out.push('taken');
  if (lastIntent === 'cable-size' || lastKeys?.includes('cable')) out.push('trip');
  if (lastIntent === 'charge-path' || asked?.includes('alternator')) out.push('alternator');
  return out;
}

/** Everything of a message that features look at, worked out once. */
export interface Frame {
  readonly mentions: readonly Mention[];
  /** The thing of the talk before that a figure without a name is of. */
  readonly spokenOf?: string;
  readonly lean: Leaning;
  readonly awaits: readonly Awaited[];
  /** Figures of the question before, by the hashes of what they are of. */
  readonly lastValues: readonly { readonly of: number; readonly value: number }[];
  /** Hashes of the classes. */
  readonly cls: Int32Array;
  /** What it is as an owner, as a hash: its kind, of amounts the class, of words whether the writer is meant. */
  readonly ownerKind: Int32Array;
  readonly hasQuestion: boolean;
  readonly context: readonly number[];
  readonly clause: Uint8Array;
  /** Gear and things: whether a mention is one. */
  readonly isAnchor: Uint8Array;
  /** The nearest of them on each side, −1 and the number of mentions where there is none. */
  readonly left: Int32Array;
  readonly right: Int32Array;
  readonly present: readonly number[];
  readonly contextNames: readonly string[];
  readonly heard: readonly Heard[];
  /** The questions that the words alone point to, likeliest first, as hashes. */
  readonly questions: readonly number[];
}

const anchors: ReadonlySet<string> = new Set([
  'thing',
  'noun',
  'battery',
  'chemistry',
  'role',
  'station',
  'solar',
  'controller',
  'charger',
  'inverter',
  'cable',
  'fuse',
  'alternator',
  'monitor',
  'bms',
  'mains',
  'regulator',
  'person',
]);
/** Signs that end a clause. */
export const breaks: ReadonlySet<string> = new Set(['.', ';', '!', '?', ':', '-', '(', ')', '•', '|', '/']);

const theWriter = hashText('i');

export function frameOf(mentions: readonly Mention[], context: TalkContext = {}): Frame {
  const n = mentions.length;
  // Cut from two: typed arrays are dear to get.
  const numbers = new Int32Array(4 * n);
  const small = new Uint8Array(2 * n);
  const [cls, ownerKind] = [numbers.subarray(0, n), numbers.subarray(n, 2 * n)];
  const [left, right] = [numbers.subarray(2 * n, 3 * n), numbers.subarray(3 * n)];
  const [clause, isAnchor] = [small.subarray(0, n), small.subarray(n)];
  const present = new Set<number>();
  let at = 0;
  let hasQuestion = false;
  let last = -1;
  for (let i = 0; i < n; i++) {
    const m = mentions[i]!;
    cls[i] = hashText(m.cls);
    if (m.kind === 'sign' && breaks.has(m.text)) at++;
    if (m.text === '?') hasQuestion = true;
    clause[i] = Math.min(at, 255);
    left[i] = last;
    if (anchors.has(m.kind)) {
      isAnchor[i] = 1;
      last = i;
    }
    const kind = m.kind === 'amount' ? cls[i]! : hashText(m.kind);
    ownerKind[i] = m.kind === 'word' && speakers.has(m.text) ? theWriter : kind;
    if (m.kind !== 'word' && m.kind !== 'sign') present.add(kind);
  }
  let next = n;
  for (let i = n - 1; i >= 0; i--) {
    right[i] = next;
    if (isAnchor[i]) next = i;
  }
  const contextNames = [...namesOf(context), ...callsIn(mentions, context.others)];
  return {
    mentions,
    spokenOf: context.things?.at(-1),
    lean: leanOf(context),
    awaits: awaitsOf(context),
    lastValues: (context.lastValues ?? []).map(([key, value]) => ({ of: hashText(key), value })),
    cls,
    ownerKind,
    hasQuestion,
    context: contextNames.map(hashText),
    clause,
    isAnchor,
    left,
    right,
    present: [...present],
    contextNames,
    heard: context.heard ?? [],
    questions: [],
  };
}

function namesOf(context: TalkContext): string[] {
  const names = [`last:${context.lastIntent ?? 'nothing'}`];
  for (const key of context.lastKeys ?? []) names.push(`had:${key}`);
  for (const key of context.asked ?? []) names.push(`asked:${key}`);
  if (context.lastIntent) names.push(context.isOwn ? 'own' : 'another');
  if (context.ownIntent !== undefined && !context.isOwn) names.push(`mine:${context.ownIntent}`);
  for (const sign of context.said ?? []) names.push(`said:${sign}`);
  if (context.said?.length) names.push(context.wroteLast ? 'said:own' : 'said:another');
  if (context.hasRig) names.push('rig');
  if (context.things?.length) names.push(`things:${Math.min(3, context.things.length)}`);
  return names;
}

/** Where a message names somebody else who wrote lately: first and last it most often speaks to them. */
function callsIn(mentions: readonly Mention[], others: readonly string[] = []): string[] {
  if (others.length === 0) return [];
  const isNamed = ({ kind, raw, text }: Mention): boolean =>
    (kind === 'person' || kind === 'noun' || kind === 'word') &&
    (raw ?? text).split(' ').some(word => others.includes(word));
  let last = mentions.length - 1;
  while (last > 0 && mentions[last]!.kind === 'sign') last--;
  const calls = new Set<string>();
  mentions.forEach((m, i) => {
    if (isNamed(m)) calls.add(i === 0 ? 'calls:first' : i === last ? 'calls:last' : 'calls:within');
  });
  return [...calls];
}

const outside = hashText('<none>');
/** The class of a mention; of none beyond the ends. */
export const classAt = (f: Frame, i: number): number => (i >= 0 && i < f.cls.length ? f.cls[i]! : outside);

/** A distance or count, coarser where it is large. */
export const bucket = (n: number): number => (n < 6 ? n : n < 9 ? 6 : n < 14 ? 7 : 8);

/** How large a value is, in half powers of two. */
export const size = (value: number): number =>
  Number.isFinite(value) && value > 0 ? Math.max(-12, Math.min(24, Math.round(Math.log2(value) * 2))) : -20;
