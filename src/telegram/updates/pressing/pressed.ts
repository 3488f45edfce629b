import type { Api } from 'grammy';
import type { CallbackQuery, Message } from 'grammy/types';
import type { BotContext } from '#telegram/delivery/reply.ts';
import type { Button } from '#telegram/ui/buttons.ts';
import type { Toast } from './toasts.ts';

/** A press as it is worked on. */
export interface Pressed {
  readonly room: BotContext;
  readonly api: Api;
  readonly update: number;
  readonly query: CallbackQuery;
  readonly message: Message;
  readonly button: Button;
  /** Ends the spinner, with a word or none; a link opens the chat with the bot. */
  readonly reply: (toast?: Toast, more?: { readonly url?: string }) => Promise<void>;
}
