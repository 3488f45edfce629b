import type { ChatMemberUpdated, UserFromGetMe } from 'grammy/types';

const outside = new Set(['left', 'kicked']);

/** How long a chat's memory is kept after the bot was shut out of it (ms); the notice of privacy says so. */
const keptAfterMs = 30 * 86_400_000;

/** When the memory of a chat goes that is left now. @param nowMs ms since 1970 */
export const dropAt = (nowMs: number): number => nowMs + keptAfterMs;

/** Whether the bot was shut out of a chat, let in again, or neither; blocked and unblocked in private. */
export function passage({ old_chat_member, new_chat_member }: ChatMemberUpdated): 'out' | 'in' | undefined {
  if (outside.has(new_chat_member.status)) return 'out';
  return outside.has(old_chat_member.status) ? 'in' : undefined;
}

/** Whether the bot just came into a group: a promotion is no arrival, nor is a private chat that is opened. */
export const isArrival = (change: ChatMemberUpdated): boolean =>
  change.chat.type !== 'private' && change.chat.type !== 'channel' && passage(change) === 'in';

/** The one short hello. How to ask depends on what Telegram lets the bot see. */
export function helloText(me: UserFromGetMe): string {
  const isMentionSeen = me.can_read_all_group_messages || me.supports_guest_queries === true;
  const mention = isMentionSeen ? `, mention @${me.username}` : '';
  return [
    'Hello. I answer camping power questions.',
    `Ask with /power fridge 1.2A, 100Ah, 3 days?${mention}, or reply to one of my answers. Otherwise I stay silent.`,
  ].join('\n');
}
