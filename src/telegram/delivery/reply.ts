import type { InlineKeyboardMarkup, UserFromGetMe } from 'grammy/types';
import type { Chart } from '#answer/chart/chart.ts';
import type { Pictures } from '#telegram/ui/pictures.ts';
import type { KeptAnswers } from '#telegram/updates/kept.ts';
import type { AnswerDeps } from '#telegram/updates/think.ts';
import type { Highest } from './again/highest.ts';
import type { SentMessage, Unsent } from './again/place.ts';
import type { Hold } from './hold.ts';
import type { Sender } from './send.ts';

/** What the handlers of one bot share. */
export interface BotContext extends AnswerDeps {
  readonly kept: KeptAnswers;
  readonly sender: Sender;
  readonly pictures: Pictures;
  readonly highest: Highest;
  /** Which chats have to wait. */
  readonly hold: Hold;
  /** Who the bot is, as `getMe` told. */
  readonly me: () => UserFromGetMe;
  /** Pictures on their way to answers that are out already. */
  readonly drawing: Set<Promise<void>>;
  /** Private chats in which a key to share a location may still be shown. */
  readonly keyed: Set<number>;
}

/** A reply ready to go out, as it is also kept until it is known to have gone out. */
export interface OutgoingReply extends Unsent {
  /** A picture that was asked for: it goes out with its words, once it is drawn. */
  readonly chart?: Chart;
  /** A picture that comes to the words once they are out, and the buttons below the two. */
  readonly added?: { readonly chart: Chart; readonly buttons?: InlineKeyboardMarkup };
  /** A file of what is kept of a chat, or of one person in it, as it is when it goes out. */
  readonly exports?: { readonly chat: number; readonly name?: string };
  /** The answer of which this shows more, and the buttons that it has left. */
  readonly more?: {
    readonly of: SentMessage;
    readonly shows: 'working' | 'picture';
    readonly buttons?: InlineKeyboardMarkup;
  };
  /** A reaction on the message, which says it all where it is allowed. */
  readonly react?: '\u{1F44D}' | '\u{1F44C}';
  /** The highest number of a message that was seen when it was kept, where chats share their numbers. */
  readonly after?: number;
  /** When it was asked for, ms since 1970. */
  readonly askedMs?: number;
}
