import type { MemoryStore } from '#conversation/memory.ts';
import type { Content, Place, Sent } from './place.ts';
import type { Sender } from './send.ts';

/** A supergroup numbers its own messages without gaps; its ids begin with -100. */
const isDense = (chat: number): boolean => chat < -1_000_000_000_000;

/** So many numbers without a message, one after the other, are the end of a supergroup's talk. */
const endGap = 2;
/** Private chats and small groups share one run of numbers: the answer stands some way behind its question. */
const mostLooks = 20;

/**
 * Looks for an answer that may have gone out before a crash, or over a line that broke, when nobody could note its
 * id. Telegram shows a bot no messages, but lets it edit its own: the answer is put into each message behind the
 * question, nearest first, until one is the bot's own and no answer noted before. Where the answer stands already,
 * that changes nothing.
 * @returns the message, which now holds the answer; undefined where there is none
 */
export async function seek(
  store: MemoryStore,
  sender: Sender,
  { chat, replyTo, onlyFor }: Place,
  content: Content,
): Promise<Sent | undefined> {
  // What only its asker sees has no number that could be tried.
  if (replyTo === undefined || onlyFor !== undefined) return undefined;
  const noted = await store.answersIn(String(chat));
  let empty = 0;
  for (let id = replyTo + 1; id <= replyTo + mostLooks; id++) {
    if (noted.has(String(id))) {
      empty = 0;
      continue;
    }
    const at = { chat, id };
    const found = await sender.lay(at, content);
    if (found === 'ours') return at;
    if (found === 'unknown') return undefined;
    empty = found === 'none' ? empty + 1 : 0;
    if (empty >= endGap && isDense(chat)) return undefined;
  }
  return undefined;
}
