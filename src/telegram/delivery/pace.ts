import { autoRetry } from '@grammyjs/auto-retry';
import { apiThrottler } from '@grammyjs/transformer-throttler';
import type { Transformer } from 'grammy';

/** Calls that put something into a chat: the ones that Telegram's flood limits count. */
const sending = new Set<string>([
  'sendMessage',
  'sendPhoto',
  'sendDocument',
  'editMessageText',
  'editMessageCaption',
  'editMessageMedia',
  'editMessageReplyMarkup',
]);

/**
 * Marks a call that looks for an answer and mostly changes nothing; it waits for no turn, or a search would take minutes.
 * A symbol: it never leaves the process.
 */
export const unpaced = Symbol('unpaced');

/** Waits out a refusal for a flood, exactly as long as it says, at most a minute; three times at most. */
export function retryFloods(): Transformer {
  const retry = autoRetry({ maxRetryAttempts: 3, maxDelaySeconds: 60, rethrowHttpErrors: true });
  return (prev, method, payload, signal) =>
    sending.has(method) ? retry(prev, method, payload, signal) : prev(method, payload, signal);
}

/**
 * Keeps within Telegram's limits before it has to refuse (1 message a second and chat, 20 a minute and group,
 * 30 a second in all), and where it refuses all the same waits exactly as long as it says, at most a minute.
 * The waiting call holds its chat's queue, so nothing else to that chat is tried early, which would lengthen the
 * ban; other chats go on. Network faults are not repeated here: the message may have arrived.
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
