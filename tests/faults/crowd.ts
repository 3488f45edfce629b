import type { Message, Update } from 'grammy/types';
import { present } from '#basics/present.ts';
import type { Said } from './telegram.ts';

/** So many others write before the talks do, each in a private chat of their own: a backlog that shares its numbers. */
const crowdSize = 30;

let nextChat = 8_000_000;

/** One question of each of a crowd. @param firstId the number of the first update */
export function crowdOf(firstId: number): Update[] {
  return Array.from({ length: crowdSize }, (_, i) => {
    const id = nextChat++;
    const from = { id, is_bot: false, first_name: 'Passer' };
    const chat = { id, type: 'private' as const, first_name: 'Passer' };
    const message = { message_id: 0, date: Math.floor(Date.now() / 1000), chat, from, text: '60W in amps' };
    return { update_id: firstId + i, message: message as Message & Update.NonChannel };
  });
}

/** Each of them is answered once. */
export function judgeCrowd(said: readonly Said[], crowd: readonly Update[]): string[] {
  const counts = new Map<number, number>();
  for (const { chat, isEdit } of said) if (!isEdit) counts.set(chat, (counts.get(chat) ?? 0) + 1);
  const wrong = new Set<string>();
  for (const { message } of crowd) {
    const count = counts.get(present(message).chat.id) ?? 0;
    if (count === 0) wrong.add('a question of the crowd was lost');
    if (count > 1) wrong.add('an answer to one of the crowd came twice');
  }
  return [...wrong];
}
