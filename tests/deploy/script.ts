import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { text } from 'node:stream/consumers';

export const root = new URL('../..', import.meta.url).pathname;

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a script of `deploy/` as an operator does. @param folder where it is run, and where its .env lies */
export async function script(
  name: string,
  args: readonly string[],
  folder: string,
  env: Record<string, string> = {},
): Promise<Ended> {
  const { PATH = '', HOME = '' } = process.env;
  const child = spawn(`${root}deploy/${name}`, args, { cwd: folder, env: { PATH, HOME, ...env } });
  const [out, err] = await Promise.all([text(child.stdout), text(child.stderr), once(child, 'close')]);
  return { code: child.exitCode, out, err };
}
