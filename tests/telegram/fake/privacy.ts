import type { Message, Update } from 'grammy/types';
import { me, type World } from './world.ts';

/** Kinds of service messages: they come to every bot. */
const service =
  /^(new_chat_|left_chat_|group_chat_created|migrate_|pinned_message|forum_topic_|delete_chat_)/;

const isService = (message: Message): boolean => Object.keys(message).some(key => service.test(key));

/** A bare command goes to the bot that was the last of all bots to write there. */
function isOfBot(text: string, isLastBot: boolean): boolean {
  const [, named] = /^\/[a-z0-9_]+(?:@(\w+))?(?=\s|$)/i.exec(text) ?? [undefined];
  if (!text.startsWith('/')) return false;
  return named === undefined ? isLastBot : named.toLowerCase() === me.username.toLowerCase();
}

/**
 * Whether Telegram hands an update to a bot in privacy mode (Bots FAQ, "What messages will my bot get?"): commands
 * for it, replies to it, what was sent through it, and what happens to the group; as an admin everything.
 */
export function isDelivered(world: World, update: Partial<Update>): boolean {
  const message = update.message ?? update.edited_message;
  if (update.chat_member !== undefined) return world.isAdmin(update.chat_member.chat.id);
  if (message === undefined || message.chat.type === 'private') return true;
  if (world.isAdmin(message.chat.id) || message.ephemeral_message_id !== undefined) return true;
  if (message.via_bot?.id === me.id || isService(message)) return true;
  if (message.reply_to_message?.from?.id === me.id) return true;
  return isOfBot(message.text ?? message.caption ?? '', world.lastBot.get(message.chat.id) === me.id);
}
