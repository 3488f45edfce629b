import type { InlineKeyboardButton, Message } from 'grammy/types';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { type Stage, type StageOptions, stage } from '../fake/bot.ts';
import { alone, message, nowSec, press, sam } from '../fake/people.ts';
import { me, type World } from '../fake/world.ts';

export { alone, group, kim, message, nowSec, plainGroup, press, sam, update } from '../fake/people.ts';
export { me } from '../fake/world.ts';

/** Somebody whom the others know by a handle, and who is an admin where a test makes them one. */
export const ann = { id: 1003, is_bot: false, first_name: 'Ann', last_name: 'Smith', username: 'ann_smith' };

export const fridge = 'fridge 1.2A average, 100Ah AGM, 3 days?';

/** What goes into a chat or changes there, in whatever way. */
const saying = /^(send(Message|RichMessage|Photo|Document)|edit)/;
export const sends = (world: World): number => world.calls.filter(({ method }) => saying.test(method)).length;

/** The bot with its real head in the strict world, and short ways to speak to it. */
export function scene(more: StageOptions = {}) {
  const s: Stage = stage({ converse, ...more });
  const dateSec = () => Math.floor(s.clock.now / 1000);
  const say = async (text: string | undefined, of: Partial<Message> = {}): Promise<Message> => {
    const said = message(text, { date: dateSec(), ...of });
    await s.give({ message: said as never });
    return said;
  };
  return {
    ...s,
    say,
    /** In private. */
    tell: (text: string | undefined, of: Partial<Message> = {}) => say(text, { chat: alone, ...of }),
    /** The newest message of the bot's in a chat. */
    last: (chat?: number): Message => present(s.answers(chat).at(-1)),
    /** A message as it stands now. */
    now: (of: Message): Message => present(s.world.messages.get(`${of.chat.id} ${of.message_id}`)),
    tap: async (on: Message, label: string | RegExp, from = sam): Promise<void> => {
      await s.give({ callback_query: press(on, label, from) });
    },
    /** What only one person sees, newest last. */
    whispers: (): Message[] => [...s.world.whispers.sent.values()],
    toast: (): string | undefined => s.world.sent('answerCallbackQuery').at(-1)?.text,
    makeAdmin: (chat: number, person: number = me.id): void => void s.world.admins.add(`${chat} ${person}`),
    later: (seconds: number): void => {
      s.clock.now += seconds * 1000;
    },
    errors: () => s.logged.filter(({ level }) => level === 'error'),
  };
}
export type Scene = ReturnType<typeof scene>;

export const textOf = (m: Message): string => m.text ?? m.caption ?? '';
export const buttonsOf = (m: Message): InlineKeyboardButton[] => m.reply_markup?.inline_keyboard.flat() ?? [];
export const labelsOf = (m: Message): string[] => buttonsOf(m).map(({ text }) => text);
export const startMs = nowSec * 1000;
