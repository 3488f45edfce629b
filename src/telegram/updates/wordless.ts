import type { Message } from 'grammy/types';
import type { Room } from '#telegram/delivery/deliver.ts';
import { placeOf, type Sent } from '#telegram/delivery/place.ts';
import { say } from '#telegram/ui/say.ts';

const line =
  'Nice, but I only read words, and places that you share. Write it short: fridge 1.2A, 100Ah, 3 days?';
const mostKept = 10_000;

/** Says once to each private chat what the bot can't read: voice notes, polls, contacts, pictures without words. */
export class Wordless {
  readonly #told = new Set<number>();

  async answer({ sender }: Room, message: Message): Promise<Sent | undefined> {
    const chat = message.chat.id;
    if (this.#told.has(chat)) return undefined;
    if (this.#told.size >= mostKept) this.#told.delete(this.#told.values().next().value!);
    this.#told.add(chat);
    return sender.send(placeOf(message), { said: say(line) }).catch(error => {
      // Not said, it is still to be said.
      this.#told.delete(chat);
      throw error;
    });
  }
}
