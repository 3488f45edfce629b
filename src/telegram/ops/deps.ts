import type { Transformer } from 'grammy';
import type { Answer } from '#answer/answer.ts';
import type { Memory } from '#conversation/memory.ts';
import type { MemoryStore } from '#conversation/memory-store.ts';
import type { Message } from '#conversation/message.ts';

/** The one door to what the bot knows: pure, and the same for every transport. */
export type Converse = (
  memory: Memory,
  message: Message,
  options?: { readonly mainsV?: number },
) => { readonly memory: Memory; readonly answer: Answer };

/** The part of a logger that is used here. */
export interface Log {
  debug(fields: object, message: string): void;
  info(fields: object, message: string): void;
  warn(fields: object, message: string): void;
  error(fields: object, message: string): void;
}

/** How an update ended: answered or passed over, left to another process, or broken off for a later try. */
type End = 'done' | 'busy' | 'broken';

/** Takes note of what happens, for an operator. Nothing of it names a chat or a person. */
export interface Meter {
  /** An update is taken up. @returns what to call when it is done with */
  began(kind: string): (end: End) => void;
  /** One more question than is answered in a minute. */
  flooded(verdict: string): void;
  /** Sees each call to Telegram, repeated ones too. */
  readonly watch: Transformer;
}

/** What a bot needs from outside. */
export interface Deps {
  readonly converse: Converse;
  readonly store: MemoryStore;
  readonly log: Log;
  readonly meter?: Meter;
  /** Milliseconds since 1970; a test may stop it. */
  readonly now: () => number;
}

/** What a bot is told at its making. */
export interface BotSettings {
  readonly token: string;
  readonly apiRoot?: string;
  readonly mainsV?: number;
  /** Chats that are answered; all, where not given. */
  readonly allowedChats?: ReadonlySet<number>;
  /**
   * Whether calls keep within Telegram's limits by waiting; default true. Else they go out at once, and only a
   * refusal for a flood is waited out.
   */
  readonly isPaced?: boolean;
}
