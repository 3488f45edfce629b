import { randomBytes } from 'node:crypto';
import { GrammyError, HttpError } from 'grammy';
import { staleCode } from '../line.ts';

/** Whose fault it was: Telegram refused, the network failed, or we failed. */
export type Origin = 'refused' | 'network' | 'ours';

export const originOf = (error: unknown): Origin =>
  error instanceof GrammyError ? 'refused' : error instanceof HttpError ? 'network' : 'ours';

/** A short id that stands in the log and in the chat. */
export const faultId = (): string => randomBytes(3).toString('hex');

/** The one honest line for the chat. */
export const faultLine = (id: string): string =>
  `Sorry, something went wrong on my side and I have no answer. Please ask again; if it keeps happening, say fault ${id}.`;

/** Whether a refusal means that the chat is closed to us for good: blocked, kicked, gone. */
export const isGone = (error: unknown): boolean => error instanceof GrammyError && error.error_code === 403;

/** Whether Telegram refused in such words. */
const isRefused = (error: unknown, words: RegExp): boolean =>
  error instanceof GrammyError && words.test(error.description ?? '');

/** Whether a refused edit changed nothing because nothing was to change. */
export const isUnmodified = (error: unknown): boolean => isRefused(error, /message is not modified/);

/** Whether the message to edit is somebody else's, or too old. */
export const isOthers = (error: unknown): boolean => isRefused(error, /message can't be edited/);

/** Whether the message to edit is not there any more, or can no longer be edited. */
export const isUneditable = (error: unknown): boolean =>
  isOthers(error) || isRefused(error, /message to edit not found|MESSAGE_ID_INVALID/);

/** Whether words were to replace a picture, or a caption words, which Telegram doesn't do. */
export const isOtherKind = (error: unknown): boolean =>
  isRefused(error, /no (text|caption) in the message to edit/);

/** Whether a call failed before it reached Telegram, so that trying again cannot say anything twice. */
export function isUnsent(error: unknown): boolean {
  if (!(error instanceof HttpError)) return false;
  const code = (error.error as { code?: unknown })?.code;
  return typeof code === 'string' && unsent.has(code);
}

const unsent = new Set(['ECONNREFUSED', 'ENOTFOUND', 'EAI_AGAIN', 'EHOSTUNREACH', staleCode]);

/**
 * The line to Telegram broke around a reply that is kept: whether it arrived is not known. The update must come
 * again, and the reply be looked for before it is sent.
 */
export class Cut extends Error {
  override readonly name = 'Cut';
}

/**
 * Whether the line broke, at whatever point of a call, or the server failed (5xx): what was sent may stand all the same,
 * so it is never sent again blind.
 */
export const isLine = (error: unknown): boolean =>
  error instanceof HttpError || (error instanceof GrammyError && error.error_code >= 500);

/** Whether a message for one person was refused because the bot may not tell them, there or so late. */
export const isUnwhisperable = (error: unknown): boolean =>
  isRefused(error, /BOT_NOT_ADMIN|EPHEMERAL|query is too old|message to be replied not found/i);

/** Whether the chat lets us read but not write: nothing can be said there, so nothing is. */
export const isMuted = (error: unknown): boolean =>
  isRefused(
    error,
    /not enough rights|have no rights to send|CHAT_WRITE_FORBIDDEN|CHAT_RESTRICTED|TOPIC_CLOSED/i,
  );

/**
 * Whether the chat should hear of a fault. A message that was cut on its way may have arrived, and a refusal for
 * a flood must not be answered by one more message.
 */
export const isWorthTelling = (error: unknown): boolean =>
  originOf(error) === 'ours' || (error instanceof GrammyError && error.error_code === 400);
