import { GrammyError } from 'grammy';
import type { Update } from 'grammy/types';

/** A group that became a supergroup: its chat id before and after. */
export interface Moved {
  readonly from: number;
  readonly to: number;
}

/** Reads a move from either of its two service messages. */
export function moved(update: Update): Moved | undefined {
  const message = update.message;
  if (message?.migrate_to_chat_id !== undefined)
    return { from: message.chat.id, to: message.migrate_to_chat_id };
  if (message?.migrate_from_chat_id !== undefined)
    return { from: message.migrate_from_chat_id, to: message.chat.id };
  return undefined;
}

/** Reads a move from a refused call to the old chat. */
export function movedByError(error: unknown, from: number): Moved | undefined {
  const to = error instanceof GrammyError ? error.parameters.migrate_to_chat_id : undefined;
  return to === undefined ? undefined : { from, to };
}
