import { GrammyError } from 'grammy';
import type { Message } from 'grammy/types';
import { placeOf, type SentMessage } from '#telegram/delivery/again/place.ts';
import { postFirst } from '#telegram/delivery/deliver.ts';
import type { BotContext, OutgoingReply } from '#telegram/delivery/reply.ts';
import { say } from '#telegram/ui/say.ts';
import { nameIn } from './names.ts';
import { isAnonymousAdmin } from './people.ts';

const plain = (text: string): OutgoingReply['said'] => ({ text, entities: [] });

/** Sends a person what is kept of them, as a file, and only to them. */
export async function sendExport(room: BotContext, message: Message): Promise<SentMessage | undefined> {
  const person = message.from?.id;
  const place = placeOf(message);
  const { chat } = message;
  if (person === undefined || isAnonymousAdmin(message))
    return postFirst(room, { place, said: say('I keep nothing of people who speak as the group.') });
  if (chat.type === 'private')
    return postFirst(room, {
      place,
      said: plain('All that I keep of this chat.'),
      exports: { chat: chat.id },
    });
  const { memory } = await room.deps.store.load(String(chat.id));
  const { name } = nameIn(memory, message.from, room.bot);
  const said = plain('All that I keep of you in that group.');
  const sent = await postFirst(room, {
    place: { chat: person },
    said,
    exports: { chat: chat.id, name },
  }).catch(error => {
    if (error instanceof GrammyError && error.error_code === 400) return undefined;
    throw error;
  });
  if (sent !== undefined) return undefined;
  // Telegram lets a bot write to a person only after they wrote to it.
  const how = 'I send that in private only. Open a chat with me, press Start, and ask here again.';
  return postFirst(room, { place, said: say(how) });
}
