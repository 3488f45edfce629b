import type { MemoryStore } from '#conversation/memory-store.ts';
import type { Part } from '../calls.ts';
import type { Sender } from '../send.ts';
import { isDense } from './highest.ts';
import type { Content, Place, SentMessage } from './place.ts';

/** So many numbers without a message, one after the other, are the end of a supergroup's talk. */
const endGap = 2;
/**
 * Private chats and small groups share one run of numbers: the answer stands behind the highest that was seen when it
 * was kept, by no more than what else was on its way then. Where that was not kept, it is looked for a little way.
 */
const mostLooks = { behindHighest: 120, behindQuestion: 20 } as const;

/**
 * Looks for an answer that may have gone out before a crash, or over a line that broke, when nobody could note its
 * id. Telegram shows a bot no messages, but lets it edit its own: the answer is put into each message behind the
 * question, nearest first, until one is the bot's own and no answer noted before. Where the answer stands already,
 * that changes nothing.
 * @param parts as what it may stand there, the likelier first
 * @param after the highest number that was seen when the answer was kept, where numbers are shared
 * @returns the message, which now holds the answer; undefined where there is none
 */
export async function seek(
  store: MemoryStore,
  sender: Sender,
  { chat, replyTo, onlyFor }: Place,
  content: Content,
  parts: readonly Part[],
  after?: number,
): Promise<SentMessage | undefined> {
  // What only its asker sees has no number that could be tried.
  const behind = Math.max(replyTo ?? 0, after ?? 0);
  if (behind === 0 || onlyFor !== undefined) return undefined;
  const noted = await store.answersIn(String(chat));
  let empty = 0;
  const first = behind + 1;
  const looks = after === undefined ? mostLooks.behindQuestion : mostLooks.behindHighest;
  for (let id = first; id < first + looks; id++) {
    if (noted.has(String(id))) {
      empty = 0;
      continue;
    }
    const at = { chat, id };
    const found = await sender.lay(at, content, parts);
    if (found === 'ours') return at;
    if (found === 'unknown') return undefined;
    empty = found === 'none' ? empty + 1 : 0;
    if (empty >= endGap && isDense(chat)) return undefined;
  }
  return undefined;
}
