import type { Message } from 'grammy/types';
import { type Place, placeOf } from '#telegram/delivery/again/place.ts';
import { type Delivered, deliver } from '#telegram/delivery/deliver.ts';
import type { BotContext, OutgoingReply } from '#telegram/delivery/reply.ts';
import { hash } from '#telegram/ui/buttons.ts';
import { doorTo, type Page, pages } from '#telegram/ui/help.ts';
import { lacksPlace, render } from '#telegram/ui/render.ts';
import type { Question } from './arriving/sort.ts';
import type { Kept } from './kept.ts';
import { isAnonymousAdmin } from './people/people.ts';
import { type Ask, type Draft, hasWorking, isForgotten } from './think.ts';

/** An edit of a question that was never answered counts for two minutes: it may only now be addressed. */
const lateAddressSec = 120;

/** Pages that in a group only their asker needs to see. What wasn't understood is asked back before all. */
const isForOne = ({ answer, kind }: Draft): boolean =>
  kind === 'group' && (pages as readonly string[]).includes(answer.intent);

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
    isCalled: meant.isCalled,
  };
}

/** What to remember of an answer as it now stands in the chat. */
export const keptOf = (draft: Draft, answerId: number, question: string, reply: Shown): Kept => ({
  answerId,
  question,
  shown: hash(reply.said.text),
  onto: draft.memory.frames.at(-1),
  hasWorking: hasWorking(draft.answer),
  hasPicture: draft.answer.chart !== undefined,
  isTable: draft.memory.settings.pictures === false,
  again: draft.answer.again ?? (() => draft.answer),
  next: draft.answer.next,
  lacksPlace: lacksPlace(draft),
});

type Shown = Pick<OutgoingReply, 'said'>;

/** The words of a question that may be passed on: those of a private chat, where inline answers are on. */
const passedOn = (room: BotContext, { message, meant }: Question): string | undefined =>
  message.chat.type === 'private' && room.me().supports_inline_queries && meant.source === message
    ? meant.text
    : undefined;

/** Where a page for one person goes: to them alone, and for all only the door to it. */
function forOne(place: Place, { answer, kind }: Draft, person: number | undefined): Partial<OutgoingReply> {
  if (!isForOne({ answer, kind } as Draft) || person === undefined) return { place };
  const instead = doorTo(answer.intent as Page);
  return { place: { ...place, onlyFor: place.onlyFor ?? { person } }, instead };
}

/** Whether a key to share a location stands in a private chat: the next answer takes it away. */
function isKeyed({ keyed }: BotContext, { chat, location }: Message): boolean {
  const isOpen = keyed.delete(chat.id);
  return chat.type === 'private' && (isOpen || location !== undefined);
}

/**
 * Answers a question, or an edited one in the place of its old answer.
 * @param isLater the answer is kept, and sent by the caller
 * @returns the answer, where there is one
 */
export async function respond(
  room: BotContext,
  update: number,
  job: Question,
  isLater = false,
): Promise<Delivered | undefined> {
  const { message, meant } = job;
  const chat = message.chat.id;
  const old = job.isEdit ? await answered(room, message) : undefined;
  if (job.isEdit && !isWorthAgain(room, message, old, meant.text)) return undefined;

  const replied = meant.answerId === undefined ? undefined : room.kept.ofAnswer(chat, meant.answerId);
  const ask = askOf(job, replied);
  const asker = ask.person ?? 0;
  const place = placeOf(message);
  const question = passedOn(room, job);
  const hasKeys = isKeyed(room, message);
  const make = (draft: Draft): OutgoingReply => ({
    place,
    ...render(draft, asker, { question }),
    ...forOne(place, draft, ask.person),
    // A message takes buttons or takes keys away, not both.
    ...(hasKeys && old === undefined && { buttons: undefined, keys: { remove_keyboard: true as const } }),
    ...(old !== undefined && { at: { chat, id: old } }),
  });
  const done = await deliver(room, update, ask, make, { isLater });
  if (!isLater) note(room, done, message.message_id, meant.text);
  return done;
}

function note({ kept }: BotContext, { draft, reply, sent }: Delivered, question: number, text: string): void {
  if (!sent?.id || isForgotten(draft)) return;
  const known = keptOf(draft, sent.id, hash(text), reply);
  if (question > 0) kept.set(sent.chat, question, known);
  else kept.change(sent.chat, sent.id, known);
}

/** The id of the message that answered this one. */
async function answered({ kept, deps }: BotContext, message: Message): Promise<number | undefined> {
  const known = kept.ofQuestion(message.chat.id, message.message_id)?.answerId;
  if (known !== undefined) return known;
  const stored = await deps.store.answerTo(String(message.chat.id), String(message.message_id));
  return stored === undefined ? undefined : Number(stored);
}

function isWorthAgain(
  { kept, deps }: BotContext,
  message: Message,
  old: number | undefined,
  text: string,
): boolean {
  const known = kept.ofQuestion(message.chat.id, message.message_id);
  if (known !== undefined) return known.question !== hash(text);
  return old !== undefined || deps.now() / 1000 - message.date < lateAddressSec;
}
