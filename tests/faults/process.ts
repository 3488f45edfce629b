import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { token } from '../telegram/fake/world.ts';

const root = new URL('../..', import.meta.url).pathname;
export const key = 'c0ffee00'.repeat(8);

/** The real program, running. */
export interface Run {
  readonly child: ChildProcess;
  /** Exit code, or the signal that ended it. */
  readonly ended: Promise<number | string>;
  /** What it logged. */
  log(): string;
}

/** Starts the program as `npm start` does. @param folder where it runs @param fault where it is to die, for tap.ts */
export function start(folder: string, env: Record<string, string>, fault?: string): Run {
  const tap = fault === undefined ? [] : ['--import', join(root, 'tests/faults/tap.ts')];
  const child = spawn(process.execPath, [...tap, join(root, 'src/boot.mjs'), 'main'], {
    cwd: folder,
    env: {
      PATH: process.env.PATH,
      NODE_COMPILE_CACHE: join(tmpdir(), 'billywatt-faults-cache'),
      BOT_TOKEN: token,
      MEMORY_KEY: key,
      LOG_LEVEL: 'warn',
      SEND_PACE: 'off',
      FAULT: fault ?? '',
      ...env,
    },
    stdio: fault === undefined ? ['ignore', 'ignore', 'pipe'] : ['ignore', 'ignore', 'pipe', 'ipc'],
  });
  let log = '';
  child.stderr?.on('data', chunk => {
    log = (log + chunk).slice(-100_000);
  });
  const ended = once(child, 'close').then(([code, signal]) => (code ?? signal) as number | string);
  return { child, ended, log: () => log };
}

export async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as { port: number };
  server.close();
  await once(server, 'close');
  return port;
}
