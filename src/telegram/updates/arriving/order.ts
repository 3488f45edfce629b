import type { Update } from 'grammy/types';

/**
 * The keys under which an update waits its turn: its chat, and for a move to a supergroup both chats.
 * Webhooks queue button presses by person, so the order per chat has to be kept here in both modes.
 */
export function orderKeys(update: Update): string[] {
  const message = update.message ?? update.edited_message ?? update.callback_query?.message;
  if (message !== undefined) {
    const moved = [update.message?.migrate_to_chat_id, update.message?.migrate_from_chat_id];
    return [message.chat.id, ...moved].filter(id => id !== undefined).map(String);
  }
  const member = update.my_chat_member ?? update.chat_member;
  if (member !== undefined) return [String(member.chat.id)];
  const person = (update.callback_query ?? update.inline_query ?? update.guest_message)?.from;
  return person === undefined ? [] : [`person ${person.id}`];
}
