import type { Message } from 'grammy/types';
import { dropOldest } from '#basics/oldest.ts';
import { hash } from '#telegram/ui/buttons.ts';

type Kind = 'message' | 'guest';

const mostKept = 1000;

/**
 * Tells a message that comes twice under two update ids: in a group that the bot is in, one that mentions it may
 * come as a message and as a guest query. Their chat ids need not agree, so person, second and words are compared.
 */
export class Twins {
  readonly #seen: Record<Kind, Set<string>> = { message: new Set(), guest: new Set() };

  /** Notes a message. @returns whether it came before as the other kind */
  isSecond(kind: Kind, message: Message): boolean {
    const key = `${message.from?.id} ${message.date} ${hash(message.text ?? message.caption ?? '')}`;
    if (this.#seen[kind === 'guest' ? 'message' : 'guest'].has(key)) return true;
    const seen = this.#seen[kind];
    seen.add(key);
    if (seen.size > mostKept) dropOldest(seen);
    return false;
  }
}
