import type { Message, Update, User } from 'grammy/types';
import { vi } from 'vitest';
import { present } from '#basics/present.ts';
import { ann, kim, press, type Scene, sam, scene, textOf } from '../rows/one-group.ts';
import { isPrivate, type Place } from './places.ts';

/** What stands in a chat for all, what one person sees, and the reactions: whatever an answer may be. */
const tokens = (s: Scene): number =>
  s.answers().length + s.whispers().length + s.world.reactions.size + s.world.sent('sendDocument').length;

/** One scene being played: people write, tap, come and go, as updates tell. */
export class Play {
  readonly s: Scene;
  readonly place: Place;
  /** Questions that got nothing. */
  readonly unanswered: string[] = [];
  #ephemeral = 100;

  constructor(place: Place) {
    this.place = place;
    this.s = scene();
    place.prepare?.(this.s);
  }

  get #mark(): Partial<Message> {
    return { chat: this.place.chat, ...this.place.mark } as Partial<Message>;
  }

  /** In private everything is the same person's. */
  who(user: User): User {
    return isPrivate(this.place) ? sam : user;
  }

  /** Somebody asks the bot, as one does there; it has to answer. */
  async ask(text: string, from: User = sam, more: Partial<Message> = {}): Promise<Message> {
    const before = [tokens(this.s), this.edits];
    const isCommand = text.startsWith('/');
    const given = isPrivate(this.place) || isCommand ? text : `/power ${text}`;
    const said = await this.s.say(given, { ...this.#mark, from: this.who(from), ...more });
    if (tokens(this.s) === before[0] && this.edits === before[1]) this.unanswered.push(text);
    this.s.later(8);
    return said;
  }

  /** Somebody says something that needs no answer. */
  async say(text: string | undefined, from: User = sam, more: Partial<Message> = {}): Promise<Message> {
    const said = await this.s.say(text, { ...this.#mark, from: this.who(from), ...more });
    this.s.later(8);
    return said;
  }

  /** A command that only the bot and its sender see; in private, and on an old server, there is no such thing. */
  async whisper(text: string, from: User = sam): Promise<void> {
    if (isPrivate(this.place) || this.s.world.isOld) return void (await this.ask(text, from));
    await this.ask(text, from, { message_id: 0, ephemeral_message_id: this.#ephemeral++ });
  }

  async edit(message: Message, text: string): Promise<void> {
    const given = isPrivate(this.place) ? text : `/power ${text}`;
    await this.give({ edited_message: { ...message, text: given, edit_date: message.date + 5 } as never });
  }

  /** Somebody replies to the bot's newest message. */
  async reply(text: string, from: User = sam): Promise<Message> {
    return this.say(text, from, { reply_to_message: this.last as never });
  }

  /** Somebody taps a button of the newest message that has it; nothing where there is none. */
  async tap(label: string | RegExp, from: User = sam): Promise<void> {
    const on = [...this.s.answers(), ...this.s.whispers()].findLast(m =>
      m.reply_markup?.inline_keyboard
        ?.flat()
        .some(
          b => 'callback_data' in b && (typeof label === 'string' ? b.text === label : label.test(b.text)),
        ),
    );
    if (on !== undefined) await this.give({ callback_query: press(on, label, this.who(from)) });
  }

  async give(update: Omit<Update, 'update_id'>): Promise<void> {
    await this.s.give(update);
    this.s.later(3);
  }

  get last(): Message {
    return present(this.s.answers().at(-1));
  }

  get edits(): number {
    return this.s.world.calls.filter(({ method }) => method.startsWith('edit')).length;
  }

  /** Lets what waits for a moment go on. */
  async settle(): Promise<void> {
    this.s.later(3);
    await vi.advanceTimersByTimeAsync(3000);
  }

  /** What all of a group read that was for one person, or for nobody. */
  get leaked(): string[] {
    if (isPrivate(this.place)) return [];
    const everybody = this.s.answers(this.place.chat.id).map(textOf);
    const own =
      /^I keep the numbers of|^I work out camping power|You’re welcome|^No worries|^G’day|kept\.json/;
    return everybody.filter(text => own.test(text));
  }

  /** Refusals that no scene brings about by itself. */
  get refused(): string[] {
    const usual = this.place.usual;
    return this.s.world.refused.filter(
      text => !usual?.test(text) && !/message is not modified|no text in the message to edit/.test(text),
    );
  }
}

export { ann, kim, sam };
