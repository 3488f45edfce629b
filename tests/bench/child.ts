import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { read, root } from '../house/source.ts';

/** What `npm start` runs, after "node"; a path of ours is made whole. */
export const startWords = (JSON.parse(read('package.json')) as { scripts: { start: string } }).scripts.start
  .replace(/^node /, '')
  .split(' ')
  .map(word => (word.startsWith('src/') ? join(root, word) : word));

/** Resident memory of a process, MB. */
export const residentMb = (pid: number): number =>
  Number(execFileSync('ps', ['-o', 'rss=', '-p', String(pid)], { encoding: 'utf8' })) / 1024;

/** A bot under measurement, in a folder of its own. */
export interface Child {
  readonly process: ChildProcess;
  readonly folder: string;
  /** Settles with how it ended; by itself it should not. */
  readonly ended: Promise<string>;
  /** Settles as the work does. @throws where the bot ends before, or takes longer than so many ms */
  during<T>(work: Promise<T>, withinMs?: number): Promise<T>;
  /** Ends it, and its folder. @returns how it ended, and after how many ms */
  stop(): Promise<{ how: string; ms: number }>;
}

/** How long a bot may take over what it was asked, and over its end (ms). */
const longestMs = 180_000;
const stopMs = 4000;

const living = new Set<ChildProcess>();
// A bench that is broken off leaves no bot behind that looks for its Bot API for ever.
process.once('exit', () => {
  for (const child of living) child.kill('SIGKILL');
});
for (const [signal, code] of [
  ['SIGINT', 130],
  ['SIGTERM', 143],
] as const)
  process.once(signal, () => process.exit(code));

/** Starts a bot. What it says of faults is kept, and told only where it ends before its time. */
export function launch(words: readonly string[], env: Readonly<Record<string, string>>): Child {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const child = spawn(process.execPath, words, {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'pipe'],
    env: {
      PATH: process.env.PATH,
      BOT_TOKEN: `1:${'bench'.repeat(7)}`,
      DATABASE_URL: 'sqlite:memory.db',
      LOG_LEVEL: 'error',
      ...env,
    },
  });
  living.add(child);
  let said = '';
  child.stderr.on('data', chunk => {
    said = (said + chunk).slice(-2000);
  });
  const ended = new Promise<string>(resolve =>
    child.once('exit', (code, signal) => {
      living.delete(child);
      resolve(String(code ?? signal));
    }),
  );
  const late = (ms: number, what: string) =>
    new Promise<string>(resolve => setTimeout(() => resolve(what), ms).unref());
  return {
    process: child,
    folder,
    ended,
    during: async (work, withinMs = longestMs) => {
      const over = Promise.race([ended, late(withinMs, `no end after ${withinMs / 1000} s`)]);
      const failed = over.then(how => Promise.reject(new Error(`${words.at(-1)} ended: ${how}\n${said}`)));
      return Promise.race([work, failed]);
    },
    stop: async () => {
      const began = performance.now();
      child.kill('SIGTERM');
      const how = await Promise.race([ended, late(stopMs, 'SIGKILL')]);
      if (how === 'SIGKILL') child.kill('SIGKILL');
      const ms = performance.now() - began;
      await ended;
      rmSync(folder, { recursive: true, force: true });
      return { how, ms };
    },
  };
}
