import { autoRetry } from '@grammyjs/auto-retry';
import { apiThrottler } from '@grammyjs/transformer-throttler';
import type { Transformer } from 'grammy';

/** Calls that put something into a chat: the ones that Telegram's flood limits count. */
const sending = new Set<string>([
  'sendMessage',
  'sendRichMessage',
  'sendPhoto',
  'sendDocument',
  'editMessageText',
  'editMessageCaption',
  'editMessageMedia',
  'editMessageReplyMarkup',
]);

/**
 * Marks a call that waits for no turn: one that looks for an answer and mostly changes nothing, or a search would take
 * minutes; and a word that only counts now.
 * A symbol: it never leaves the process.
 */
export const unpaced = Symbol('unpaced');

/** What is set once at the start, which nobody waits for. */
const setting = (method: string): boolean => method.startsWith('setMy');

/**
 * Waits out a refusal for a flood of what is set at the start, exactly as long as it says. What goes into a chat is not
 * repeated here: the chat is held instead (`hold.ts`), so that no update, lock or queue waits with it. Faults of the
 * line and of the server (5xx) never are: the call may have been carried out.
 */
export function retryFloods(): Transformer {
  const retry = autoRetry({
    maxRetryAttempts: 3,
    maxDelaySeconds: 120,
    rethrowHttpErrors: true,
    rethrowInternalServerErrors: true,
  });
  return (prev, method, payload, signal) =>
    setting(method) ? retry(prev, method, payload, signal) : prev(method, payload, signal);
}

/**
 * Keeps within Telegram's limits before it has to refuse: 1 message a second and chat, 20 a minute and group, 30 a
 * second in all.
 */
export function pace(): Transformer[] {
  const throttle = apiThrottler();
  return [
    retryFloods(),
    (prev, method, payload, signal) =>
      sending.has(method) && !(unpaced in payload)
        ? throttle(prev, method, payload, signal)
        : prev(method, payload, signal),
  ];
}
