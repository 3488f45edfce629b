import { setTimeout as wait } from 'node:timers/promises';

/** What a server that is down, starting, or out of reach answers: it may be there in a moment. */
const passing = new Set([
  ...[
    'ECONNREFUSED',
    'ECONNRESET',
    'EHOSTUNREACH',
    'ENETUNREACH',
    'ENOTFOUND',
    'EAI_AGAIN',
    'EPIPE',
    'ETIMEDOUT',
  ],
  // PostgreSQL: too many connections; shut down by an admin or a crash; starting up.
  ...['53300', '57P01', '57P02', '57P03'],
]);

/** The driver's own words where it gives no code. */
const cutOff = /timeout expired|terminated|timed out/i;

/** Whether a failure may be over by itself, so that waiting makes sense. A wrong password or key is not. */
export function isTransient(error: unknown): boolean {
  for (let at = error; at instanceof Error; at = at.cause) {
    const { code, errors, message } = at as Error & { code?: string; errors?: unknown[] };
    if ((code !== undefined && passing.has(code)) || (code === undefined && cutOff.test(message)))
      return true;
    if (errors?.some(isTransient)) return true;
  }
  return false;
}

export interface RetryOptions {
  /** Ends the waiting. */
  readonly signal: AbortSignal;
  readonly onFailed: (error: unknown) => void;
  readonly backOffMs?: { readonly first: number; readonly last: number };
}

/**
 * Opens something until it opens, waiting longer each time.
 * @throws what is not passing, at once; the abort's reason when told to stop
 */
export async function openWithRetry<T>(
  open: () => Promise<T>,
  { signal, onFailed, backOffMs = { first: 300, last: 10_000 } }: RetryOptions,
): Promise<T> {
  for (let ms = backOffMs.first; ; ms = Math.min(ms * 2, backOffMs.last)) {
    try {
      return await open();
    } catch (error) {
      if (!isTransient(error)) throw error;
      onFailed(error);
      await wait(ms, undefined, { signal });
    }
  }
}
