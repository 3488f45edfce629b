import type { Message } from 'grammy/types';
import type { Frame } from '#conversation/memory.ts';
import { type Delivered, deliver, type Reply, type Room } from '#telegram/delivery/deliver.ts';
import { placeOf, type Sent } from '#telegram/delivery/send.ts';
import { hash } from '#telegram/ui/buttons.ts';
import { lacksPlace, lay } from '#telegram/ui/lay.ts';
import type { Kept } from './kept.ts';
import { isAnonymousAdmin } from './people.ts';
import type { Question } from './sort.ts';
import { type Ask, hasWorking, isForgotten, type Thought } from './think.ts';

/** An edit of a question that was never answered counts for two minutes: it may only now be addressed. */
const lateAddressSec = 120;

/** Answers that in a group only the asker needs to see. */
const forOne = new Set(['help', 'privacy', 'unclear']);

/**
 * What was not understood, and manuals, are for the asker alone. A question back for a missing number is not: others
 * may know it, and the reply to it is how it is answered.
 */
const isForOne = ({ answer, memory, kind }: Thought, at: Date): boolean =>
  kind === 'group' &&
  forOne.has(answer.intent) &&
  !(answer.intent === 'unclear' && isOpen(memory.frames.at(-1), at));

/** Whether a question is of this moment and waits for something. */
const isOpen = (frame: Frame | undefined, at: Date): boolean =>
  frame?.asked !== undefined && frame.at === at.getTime();

/** The question of a message, as the conversation wants it. */
export function askOf({ message, meant }: Pick<Question, 'message' | 'meant'>, kept?: Kept): Ask {
  const { location } = meant.source;
  return {
    chat: message.chat.id,
    kind: message.chat.type === 'private' ? 'private' : 'group',
    person: isAnonymousAdmin(message) ? undefined : message.from?.id,
    whose: isAnonymousAdmin(meant.source) ? undefined : meant.source.from,
    text: meant.text,
    at: new Date((message.edit_date ?? message.date) * 1000),
    location: location && { latitudeDeg: location.latitude, longitudeDeg: location.longitude },
    onto: kept?.onto,
  };
}

/** What to remember of an answer as it now stands in the chat. */
export const keptOf = (thought: Thought, answerId: number, question: string, reply: Shown): Kept => ({
  answerId,
  question,
  shown: hash(reply.said.text),
  onto: thought.memory.frames.at(-1),
  hasWorking: hasWorking(thought.answer),
  hasPicture: reply.chart === undefined && thought.answer.chart !== undefined,
  again: thought.answer.again ?? (() => thought.answer),
  next: thought.answer.next,
  lacksPlace: lacksPlace(thought),
});

type Shown = Pick<Reply, 'said' | 'chart'>;

/** Answers a question, or an edited one in the place of its old answer. @returns the answer, where there is one */
export async function respond(room: Room, update: number, job: Question): Promise<Sent | undefined> {
  const { message, meant } = job;
  const chat = message.chat.id;
  const old = job.isEdit ? await answered(room, message) : undefined;
  if (job.isEdit && !isWorthAgain(room, message, old, meant.text)) return undefined;

  const replied = meant.answerId === undefined ? undefined : room.kept.ofAnswer(chat, meant.answerId);
  const ask = askOf(job, replied);
  const asker = ask.person ?? 0;
  const place = placeOf(message);
  const done = await deliver(room, update, ask, thought => ({
    place: isForOne(thought, ask.at) ? { ...place, onlyFor: ask.person } : place,
    ...lay(thought, asker),
    ...(old !== undefined && { at: { chat, id: old } }),
  }));
  note(room, done, message.message_id, meant.text);
  return done.sent;
}

function note({ kept }: Room, { thought, reply, sent }: Delivered, question: number, text: string): void {
  if (!sent?.id || isForgotten(thought)) return;
  kept.set(sent.chat, question, keptOf(thought, sent.id, hash(text), reply));
}

/** The id of the message that answered this one. */
async function answered({ kept, deps }: Room, message: Message): Promise<number | undefined> {
  const known = kept.ofQuestion(message.chat.id, message.message_id)?.answerId;
  if (known !== undefined) return known;
  const stored = await deps.store.answerTo(String(message.chat.id), String(message.message_id));
  return stored === undefined ? undefined : Number(stored);
}

function isWorthAgain(
  { kept, deps }: Room,
  message: Message,
  old: number | undefined,
  text: string,
): boolean {
  const known = kept.ofQuestion(message.chat.id, message.message_id);
  if (known !== undefined) return known.question !== hash(text);
  return old !== undefined || deps.now() / 1000 - message.date < lateAddressSec;
}
