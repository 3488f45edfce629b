import { present } from '#basics/present.ts';
import type { TalkContext } from '#language/decide/frame.ts';
import { conceptsIn } from '#language/hazards/features.ts';
import { type ParsedMessage, read } from '#language/reading.ts';
import { relatives } from '#language/spoken.ts';
import {
  afterLine,
  contextFor,
  heardFromBot,
  keysOf,
  type LineReader,
  type Talk,
  valuesOf,
} from '#language/talk.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { lastNamed, openingName, peopleIn, wordsWritten } from '../whose/people.ts';
import { personKey } from './recall.ts';

/** The talk as memory keeps it. */
function talkOf({ talk, rigs }: Memory): Talk {
  const { at: _at, named: _named, lines, ...rest } = talk ?? { at: 0 };
  return {
    ...rest,
    hasRig: Object.keys(rigs).length > 0,
    ...(lines && { lines: lines.map(([from, words]) => [from, hashesIn(words)] as const) }),
  };
}

/** The words of a line as memory keeps them, in no order. */
const wordsKept = (words: readonly number[]): string =>
  words
    .map(word => (word >>> 0).toString(36))
    .sort()
    .join(' ');

/** The hashes of words that memory keeps. */
const hashesIn = (words: string): number[] =>
  words === '' ? [] : words.split(' ').map(word => Number.parseInt(word, 36) | 0);

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

/** What was read of a line. */
export type Line = ReturnType<LineReader>;
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
  lines: talk.lines?.map(([from, words]) => [from, wordsKept(words)]),
  at: at.getTime(),
});

/** A text without what stands in quotation marks. */
const unquoted = (text: string): string =>
  text
    .split('“')
    .map((part, i) => (i === 0 ? part : part.slice(part.indexOf('”') + 1)))
    .join('');

/** The talk after a person's line and, where the bot asked something back, after that. */
export function talkAfter(
  memory: Memory,
  message: Message,
  { asRead: { intent, stated }, recognised }: Pick<ParsedMessage, 'recognised'> & { readonly asRead: Line },
  asked?: string,
): Memory['talk'] {
  const before = talkOf(memory);
  const { mentions } = recognised;
  const concepts = conceptsIn(message.text);
  const after = afterLine(before, intent, stated, personKey(message.from), mentions, concepts);
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
