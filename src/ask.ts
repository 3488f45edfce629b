import { parseArgs } from 'node:util';
import type { Answer } from '#answer/answer.ts';
import type { Message } from '#conversation/message.ts';
import type { KeptStore } from '#memory/kept.ts';

const help = `Usage: npm run -s ask -- [--json | --why] [--memory FILE] "MESSAGE"
       npm run -s ask -- --jsonl [--memory FILE] < LINES

Answers one message as the chat would show it.
  --json         as one JSON object
  --why          how it was read instead: mentions, what each was taken for, the readings with their probabilities
  --jsonl        reads {"chat":"g1","from":"sam","text":"…","at":"2026-01-15T09:00:00Z"} a line on stdin
                 ("at" may be left out) and writes one JSON object a line, in the same order; a line from "bot"
                 is heard as what the bot said, and not answered
  --memory FILE  keeps the memory of chats in this file; else it lasts for the run
  --help         shows this
Exit status: 0 answered, 1 something broke, 2 wrong use.
`;

/** Wrong use of the command itself: exit 2. */
class UsageError extends Error {}

interface Wish {
  readonly mode: 'text' | 'json' | 'jsonl' | 'why' | 'help';
  readonly text: string;
  readonly memory?: string;
}

function readWish(args: string[]): Wish {
  const { values, positionals } = parse(args);
  const text = positionals.join(' ').trim();
  if (values.help === true) return { mode: 'help', text };
  if (values.memory === '') throw new UsageError('--memory needs a file name');
  const memory = values.memory;
  if (values.jsonl === true) {
    if (values.json === true) throw new UsageError('--json and --jsonl do not go together: use one of them');
    if (text !== '') throw new UsageError('--jsonl reads its messages from stdin: leave out the message');
    return { mode: 'jsonl', text, memory };
  }
  if (values.json === true && values.why === true)
    throw new UsageError('--json and --why do not go together: use one of them');
  if (text === '') throw new UsageError('no message: write it in quotes after --, or see --help');
  const mode = values.json === true ? 'json' : values.why === true ? 'why' : 'text';
  return { mode, text, memory };
}

function parse(args: string[]) {
  try {
    return parseArgs({
      args,
      allowPositionals: true,
      options: {
        json: { type: 'boolean' },
        jsonl: { type: 'boolean' },
        why: { type: 'boolean' },
        memory: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    });
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error));
  }
}

/** Answers by the wish on stdout. */
async function ask(wish: Wish): Promise<void> {
  if (wish.mode === 'help') return void process.stdout.write(help);
  const config = (await import('./config.ts')).readConfig(process.env);
  const [{ answerIn, answerLines }, { openStore }, { converse }] = await Promise.all([
    import('#console/lines.ts'),
    import('#memory/open.ts'),
    import('#conversation/converse.ts'),
  ]);
  const url = wish.memory === undefined ? 'memory:' : `sqlite:${wish.memory}`;
  const store: KeptStore = await openStore(url, { key: config.MEMORY_KEY });
  const deps = { converse, store, mainsV: config.MAINS_VOLTAGE, now: () => new Date() };
  try {
    if (wish.mode === 'jsonl') return await answerLines(deps, process.stdin, process.stdout);
    const message = { chat: 'ask', from: 'me', text: wish.text, at: deps.now(), kind: 'private' as const };
    if (wish.mode === 'why') return await explain(store, message);
    const answer: Answer = await answerIn(deps, message);
    process.stdout.write(`${wish.mode === 'json' ? JSON.stringify(answer) : answer.text}\n`);
  } finally {
    await store.close();
  }
}

/** How a message is read in its chat, without answering it. */
async function explain(store: KeptStore, message: Message): Promise<void> {
  const [{ hear }, { why }] = await Promise.all([
    import('#conversation/hear.ts'),
    import('#conversation/why.ts'),
  ]);
  const { memory } = await store.load(message.chat);
  process.stdout.write(`${why(hear(memory, message))}\n`);
}

// Whoever reads may stop early ("| head -1"): that is no fault.
process.stdout.on('error', error => {
  process.exit((error as NodeJS.ErrnoException).code === 'EPIPE' ? 0 : 1);
});

try {
  await ask(readWish(process.argv.slice(2)));
} catch (error) {
  const isUsage = error instanceof UsageError || (error as Error).name === 'ConfigError';
  process.stderr.write(`ask: ${(error instanceof Error ? error.message : String(error)).split('\n')[0]}\n`);
  process.exitCode = isUsage ? 2 : 1;
}
