import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { z } from 'zod';
import type { Answer } from '#answer/answer.ts';
import type { Memory } from '#conversation/memory.ts';
import { type MemoryStore, StaleRevision } from '#conversation/memory-store.ts';
import type { Message } from '#conversation/message.ts';

/** What answering without Telegram needs. */
export interface Deps {
  readonly converse: (
    memory: Memory,
    message: Message,
    options?: { readonly mainsV?: number },
  ) => { readonly memory: Memory; readonly answer: Answer };
  readonly store: MemoryStore;
  readonly mainsV?: number;
  readonly now: () => Date;
}

/** Answers a message and keeps what it leaves behind. */
export async function answerIn({ converse, store, mainsV }: Deps, message: Message): Promise<Answer> {
  for (let attempt = 1; ; attempt++) {
    const { memory, revision } = await store.load(message.chat);
    const result = converse(memory, message, { mainsV });
    if (result.memory === memory) return result.answer;
    try {
      if (isEmpty(result.memory)) await store.forget(message.chat);
      else await store.save(message.chat, result.memory, revision);
      return result.answer;
    } catch (error) {
      if (!(error instanceof StaleRevision) || attempt === 3) throw error;
    }
  }
}

/** Whether nothing is left to keep of a chat. */
const isEmpty = ({ rigs, lessons, settings, claims, frames, talk, passing }: Memory): boolean =>
  talk === undefined &&
  [rigs, lessons, settings, claims, frames, passing ?? {}].every(part => Object.keys(part).length === 0);

const lineSchema = z.object({
  chat: z.string().min(1).max(200),
  from: z.string().max(200),
  text: z.string(),
  at: z
    .string()
    .refine(text => /^\d{4}-\d\d-\d\d/.test(text) && !Number.isNaN(Date.parse(text)))
    .optional(),
});

const wants = {
  chat: 'a text that is not empty',
  from: 'a text',
  text: 'a text',
  at: 'a time such as 2026-01-15T09:00:00Z, or left out',
} as const;

/** Reads one line as a message. @throws Error that says what the line must be */
export function readLine(line: string, now: () => Date): Message {
  let json: unknown;
  try {
    json = JSON.parse(line);
  } catch {
    throw new Error('the line must be a JSON object with "chat", "from" and "text"');
  }
  const result = lineSchema.safeParse(json);
  if (!result.success) {
    const name = result.error.issues[0]?.path[0] as keyof typeof wants | undefined;
    if (name === undefined) throw new Error('the line must be a JSON object with "chat", "from" and "text"');
    throw new Error(`"${name}" must be ${wants[name]}`);
  }
  const { chat, from, text, at } = result.data;
  // As in a group where everything is addressed to the bot.
  return {
    chat,
    from: from.slice(0, 60),
    text,
    at: at === undefined ? now() : new Date(at),
    kind: 'group',
    ...(from === 'bot' && { isBot: true }),
  };
}

/** One JSON object out for each line in, in the same order; a fault in one line is its answer, and the run goes on. */
export async function answerLines(
  deps: Deps,
  input: NodeJS.ReadableStream,
  output: NodeJS.WritableStream,
): Promise<void> {
  for await (const line of createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })) {
    let out: object;
    try {
      out = await answerIn(deps, readLine(line, deps.now));
    } catch (error) {
      out = { error: error instanceof Error ? error.message.split('\n')[0] : String(error) };
    }
    if (!output.write(`${JSON.stringify(out)}\n`)) await once(output, 'drain');
  }
}
