import { randomBytes } from 'node:crypto';
import { linkSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';

/** Hands out the master keys, newest first. `isFirst`: the database is empty, so a key may be made. */
export type KeySource = (isFirst: boolean) => readonly Buffer[];

const shape = '32 bytes as base64 or hex, as `openssl rand -base64 32` prints';

const keyFrom = (text: string, name: string): Buffer => {
  const isHex = /^[0-9a-f]{64}$/i.test(text);
  const isBase64 = /^[\w+/-]{43}=?$/.test(text);
  if (!isHex && !isBase64) throw new Error(`${name} must be ${shape}; several, newest first, by commas`);
  return Buffer.from(text, isHex ? 'hex' : 'base64');
};

/**
 * Reads one key or several: the first seals, all open.
 * @param name what to call the text in an error; the text itself is never shown
 */
export const readKeys = (text: string, name = 'MEMORY_KEY'): Buffer[] => {
  const keys = text.split(/[\s,]+/).filter(part => part !== '');
  return (keys.length > 0 ? keys : ['']).map(key => keyFrom(key, name));
};

/** Where the key file lies unless told otherwise: in the user's settings, apart from any data folder. */
export const defaultKeyFile = (env: NodeJS.ProcessEnv = process.env): string =>
  join(env.XDG_CONFIG_HOME || join(env.HOME || homedir(), '.config'), 'billywatt', 'memory.key');

const codeOf = (error: unknown): string => (error as NodeJS.ErrnoException).code ?? String(error);

/** Makes the file whole or not at all, and never over another: written beside, then linked to its name. */
const makeKeyFile = (path: string): void => {
  const draft = `${path}.${process.pid}`;
  try {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    writeFileSync(draft, `${randomBytes(32).toString('base64')}\n`, { mode: 0o600, flag: 'wx', flush: true });
    linkSync(draft, path);
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return;
    throw new Error(`no key file could be made at ${path} (${codeOf(error)}): set MEMORY_KEY to ${shape}`);
  } finally {
    rmSync(draft, { force: true });
  }
};

const isOpenToOthers = (path: string): boolean =>
  process.platform !== 'win32' && (statSync(path).mode & 0o077) !== 0;

const readKeyFile = (path: string, isFirst: boolean): Buffer[] => {
  const read = (): string | undefined => {
    try {
      if (isOpenToOthers(path)) throw new Error(`the key file ${path} is open to others: chmod 600 it`);
      return readFileSync(path, 'utf8');
    } catch (error) {
      const code = codeOf(error);
      if (code === 'ENOENT') return undefined;
      if (!(error as NodeJS.ErrnoException).code) throw error;
      throw new Error(`the key file ${path} can't be read (${code})`);
    }
  };
  let text = read();
  if (text === undefined && isFirst) {
    makeKeyFile(path);
    text = read();
  }
  // A fresh key can't open old data, and would hide that the right one is missing.
  if (text === undefined)
    throw new Error(
      `the memory is sealed and its key file ${path} is missing: put it back, or set MEMORY_KEY`,
    );
  return readKeys(text, `the key file ${path}`);
};

/**
 * Keys from the text of MEMORY_KEY where given, else from the key file, which is made (mode 0600, its folder
 * 0700) when the database is new. All errors are one clear line.
 */
export const keySource = (from: { key?: string; keyFile?: string } = {}): KeySource => {
  const { key } = from;
  if (key !== undefined) {
    const keys = readKeys(key);
    return () => keys;
  }
  return isFirst => readKeyFile(from.keyFile ?? defaultKeyFile(), isFirst);
};
