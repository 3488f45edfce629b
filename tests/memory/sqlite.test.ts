import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { emptyMemory } from '#conversation/memory.ts';
import { keySource } from '#memory/keys.ts';
import { openStore } from '#memory/open.ts';
import { openSqlite, type SqliteOptions, type SqliteStore } from '#memory/sqlite/store.ts';
import { conformance } from './conformance.ts';
import { billabong, keyA, keyB, named, secrets } from './examples.ts';

const chat = '-1001234567890';
let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'billywatt-'));
  path = join(folder, 'data', 'memory.db');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const open = (key = keyA, options: SqliteOptions = {}) =>
  openSqlite(path, keySource({ key }), { busyMs: 30, ...options });

conformance('sqlite', async () => {
  let store: SqliteStore | undefined;
  return {
    open: async options => {
      store = open(keyA, options);
      return store;
    },
    end: async () => store?.close(),
  };
});

/** All that a thief of the data folder gets. */
const bytes = (): string =>
  readdirSync(join(folder, 'data'))
    .map(name => readFileSync(join(folder, 'data', name), 'latin1'))
    .join('\n');

describe('after a restart', () => {
  test.each([[false], [true]])('memory, moves and claims are there (synchronous full: %s)', async isFull => {
    const before = open(keyA, { isFull });
    await before.claim(1, 0);
    await before.save('-5', billabong, 0, { update: 1, reply: 'about 2 days' });
    await before.claim(2, 0);
    await before.finish(2);
    await before.move('-5', chat);
    await before.close();
    const after = open();
    expect((await after.load('-5')).memory).toEqual(billabong);
    expect(await after.claim(1, 1)).toEqual({ state: 'again', reply: 'about 2 days' });
    expect((await after.claim(2, 1)).state).toBe('done');
    await after.close();
  });

  test('a process killed at once after a save has saved', async () => {
    const program = `
      import { openStore } from '#memory/open.ts';
      const store = await openStore('sqlite:${path}', { key: '${keyA}' });
      await store.claim(1, 0);
      await store.save('${chat}', ${JSON.stringify(billabong)}, 0, { update: 1, reply: 'about 2 days' });
      await store.claim(2, 0);
      process.kill(process.pid, 'SIGKILL');`;
    const child = spawnSync(process.execPath, ['--input-type=module-typescript', '-e', program]);
    expect([child.signal, child.stderr.toString()]).toEqual(['SIGKILL', '']);
    const after = open();
    expect((await after.load(chat)).memory).toEqual(billabong);
    expect(await after.claim(1, 1)).toEqual({ state: 'again', reply: 'about 2 days' });
    expect(await after.claim(2, 1)).toEqual({ state: 'again', reply: undefined });
    await after.close();
  });
});

describe('a stolen file', () => {
  test('shows no rig, name, text or chat id, in any of its files', async () => {
    const store = open();
    await store.claim(1, 0);
    await store.save(chat, billabong, 0, { update: 1, reply: 'The fridge runs about 2 days, Wilhelmina' });
    await store.move('-5', chat);
    expect(bytes()).toContain('memories');
    for (const secret of [...secrets, 'about 2 days']) expect(bytes()).not.toContain(secret);
    const { revision } = await store.load(chat);
    await store.save(chat, named('barnaby'), revision);
    await store.finish(1, { chat, question: '41', answer: '42' });
    await store.close();
    for (const secret of [...secrets, 'about 2 days', keyA]) expect(bytes()).not.toContain(secret);
    expect(statSync(path).mode & 0o777).toBe(0o600);
  });

  test('without MEMORY_KEY the key lies in its own folder, and without it the data stays shut', async () => {
    const keyFile = join(folder, 'settings', 'memory.key');
    const url = `sqlite:${path}`;
    const first = await openStore(url, { keyFile });
    await first.save(chat, billabong, 0);
    await first.close();
    expect(bytes()).not.toContain(readFileSync(keyFile, 'utf8').trim());
    const second = await openStore(url, { keyFile });
    expect((await second.load(chat)).memory).toEqual(billabong);
    await second.close();
    rmSync(keyFile);
    await expect(openStore(url, { keyFile })).rejects.toThrow(/key file .*memory\.key is missing/);
    expect(existsSync(keyFile)).toBe(false);
  });
});

describe('keys', () => {
  test('the wrong key opens nothing and changes nothing', async () => {
    await open().close();
    const before = readFileSync(path);
    expect(() => open(keyB)).toThrow(/can't be opened with this key: it was sealed with key [0-9a-f]{8}/);
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  test('a new key before the old one reads everything; after rotate it alone does', async () => {
    const old = open(keyA);
    await old.claim(1, 0);
    await old.save(chat, billabong, 0, { update: 1, reply: 'about 2 days' });
    await old.save('2', named('sam'), 0);
    await old.close();
    const both = open(`${keyB},${keyA}`);
    expect((await both.load(chat)).memory).toEqual(billabong);
    await both.save('3', named('alex'), 0);
    // Two memories, one reply and the secret of the hashes.
    expect(await both.rotate()).toBe(4);
    expect(await both.rotate()).toBe(0);
    await both.close();
    expect(() => open(keyA)).toThrow(/can't be opened with this key/);
    const after = open(keyB);
    expect((await after.load(chat)).memory).toEqual(billabong);
    expect(await after.claim(1, 0)).toEqual({ state: 'again', reply: 'about 2 days' });
    expect(Object.keys((await after.load('3')).memory.rigs)).toEqual(['alex']);
    await after.close();
  });

  test('a row put in the place of another chat’s does not open', async () => {
    const store = open();
    await store.save('1', named('sam'), 0);
    await store.save('2', named('alex'), 0);
    const file = new DatabaseSync(path);
    file.exec('UPDATE memories SET sealed = (SELECT sealed FROM memories ORDER BY chat LIMIT 1)');
    file.close();
    const loads = await Promise.allSettled(['1', '2'].map(id => store.load(id)));
    expect(loads.map(one => one.status).sort()).toEqual(['fulfilled', 'rejected']);
    await store.close();
  });
});

describe('a file that can’t be used gives one line and stays as it is', () => {
  const refused = (text: RegExp): void => {
    const before = bytes();
    let message = '';
    try {
      open();
    } catch (error) {
      message = (error as Error).message;
    }
    expect(message).toMatch(text);
    expect(message).not.toContain('\n');
    expect(bytes()).toBe(before);
  };
  const write = async (change: (file: Buffer) => Buffer): Promise<void> => {
    const store = open();
    for (let i = 0; i < 200; i += 1) await store.save(String(i), billabong, 0);
    await store.close();
    writeFileSync(path, change(readFileSync(path)));
  };

  test.each([
    [
      'no database at all',
      () => Buffer.from('fridge 1.2A, 100Ah\n'.repeat(400)),
      /damaged or no SQLite file/,
    ],
    ['cut off in the middle', (file: Buffer) => file.subarray(0, file.length / 2), /damaged/],
    ['overwritten in the middle', (file: Buffer) => file.fill(0xff, 8192, 40_960), /damaged/],
  ])('%s', async (_, change, text) => {
    await write(change);
    refused(text);
  });

  test('another program’s database', async () => {
    await write(() => Buffer.alloc(0));
    const other = new DatabaseSync(path);
    other.exec('CREATE TABLE recipes (name TEXT)');
    other.close();
    refused(/another program's database/);
  });

  test('from a newer program', async () => {
    await write(file => file);
    const file = new DatabaseSync(path);
    file.exec('PRAGMA user_version = 99');
    file.close();
    refused(/tables have version 99, this program knows up to 3/);
  });

  test('with the tables of version 1 is brought up to date, and keeps what it holds', async () => {
    await write(file => file);
    const file = new DatabaseSync(path);
    file.exec('ALTER TABLE memories DROP COLUMN drop_day; PRAGMA user_version = 1');
    file.close();
    const store = open(keyA, { now: () => 0 });
    expect((await store.load('7')).memory).toEqual(billabong);
    await store.leave('7', 0);
    expect((await store.prune({ claims: 0 })).chats).toBe(1);
    await store.close();
  });

  test('in use by another bot', async () => {
    const store = open();
    refused(/in use by another process/);
    await store.save(chat, billabong, 0);
    await store.close();
  });

  test('in a folder that is a file', async () => {
    await write(file => file);
    path = join(path, 'below', 'memory.db');
    expect(() => open()).toThrow(/^the memory in .*memory\.db can't be opened \(ENOTDIR\)$/);
  });

  test('a writer from outside makes a save fail in one line, and it works again after', async () => {
    const store = open();
    const other = new DatabaseSync(path);
    other.exec('BEGIN IMMEDIATE');
    await expect(store.save(chat, billabong, 0)).rejects.toThrow(
      /^the memory in .* is in use by another process/,
    );
    other.exec('ROLLBACK');
    await store.save(chat, billabong, 0);
    other.exec(`VACUUM INTO '${join(folder, 'backup.db')}'`);
    other.close();
    await store.close();
    path = join(folder, 'backup.db');
    const restored = open();
    expect((await restored.load(chat)).memory).toEqual(billabong);
    await restored.close();
  });

  test('a row damaged within gives an error, not an empty memory to save over it', async () => {
    const store = open();
    const revision = await store.save(chat, billabong, 0);
    const file = new DatabaseSync(path);
    file.exec("UPDATE memories SET sealed = CAST(substr(sealed, 1, 60) || x'00' AS BLOB)");
    file.close();
    await expect(store.load(chat)).rejects.toThrow(/damaged/);
    await expect(store.save(chat, emptyMemory(), 0)).rejects.toThrow(/saved in between/);
    expect(revision).toBeGreaterThan(0);
    await store.close();
    await expect(store.load(chat)).rejects.toThrow();
  });
});
