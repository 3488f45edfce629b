import { type DestinationStream, destination, type Logger, pino } from 'pino';

/** Takes bot tokens, bare or inside an address, out of a text. */
export const redact = (text: string): string =>
  text.replace(/\bbot\d+:[\w-]+/g, 'bot[token]').replace(/(?<!\d)\d{5,}:[\w-]{20,}/g, '[token]');

/** What is logged of an error: its kinds, codes and places; never a payload, which may hold a text. */
export function describe(error: unknown): Record<string, unknown> {
  const chain: Record<string, unknown>[] = [];
  let at: unknown = error;
  while (at instanceof Error && chain.length < 5) {
    const more = at as Error & Record<string, unknown>;
    const entry: Record<string, unknown> = { type: more.name, message: redact(more.message) };
    for (const key of ['code', 'error_code', 'method', 'parameters'])
      if (more[key] !== undefined) entry[key] = more[key];
    // The first line of a stack repeats the message; the frames alone say where.
    if (chain.length === 0 && more.stack) entry.stack = redact(frames(more.stack));
    chain.push(entry);
    at = more.error ?? more.cause;
  }
  if (chain.length === 0) return { type: typeof error };
  const [first, ...causes] = chain;
  return causes.length > 0 ? { ...first, causes } : { ...first };
}

const frames = (stack: string): string =>
  stack
    .split('\n')
    .filter(line => line.startsWith('    at '))
    .slice(0, 12)
    .join('\n');

/**
 * The program's log: JSON lines on stderr, so that stdout stays the console chat's.
 * No texts, names or tokens go in; whatever slips into a line is redacted once more on its way out, and so are
 * the secrets given.
 */
export function makeLog(
  level: string,
  out: DestinationStream = destination({ dest: 2, sync: true }),
  secrets: readonly string[] = [],
): Logger {
  const clean = (line: string): string =>
    redact(secrets.reduce((text, secret) => text.replaceAll(secret, '[secret]'), line));
  return pino(
    { level, base: undefined, serializers: { err: describe } },
    { write: (line: string) => out.write(clean(line)) },
  );
}
