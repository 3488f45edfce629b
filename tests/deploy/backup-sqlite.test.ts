import { randomBytes } from 'node:crypto';
import {
  chownSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { keySource } from '#memory/keys.ts';
import { openSqlite, type SqliteStore } from '#memory/sqlite/store.ts';
import { billabong, keyA, keyB, named } from '../memory/examples.ts';
import { script } from './script.ts';

const chat = '-1001234567890';
let folder: string;
let store: SqliteStore | undefined;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'backup-'));
});
afterEach(async () => {
  await store?.close();
  rmSync(folder, { recursive: true });
});

const open = (name: string, key = keyA): SqliteStore => {
  store = openSqlite(join(folder, name), keySource({ key }), { busyMs: 100 });
  return store;
};
const run = (name: 'backup.sh' | 'restore.sh', copy: string, file: string) =>
  script(name, [join(folder, copy)], folder, { DATABASE_URL: `sqlite:${join(folder, file)}` });

/** Every row of every table, as text. */
const rows = (file: string): Record<string, string[]> => {
  const db = new DatabaseSync(join(folder, file));
  const tables = db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").all();
  const all = Object.fromEntries(
    tables.map(({ name }) => [
      name as string,
      db
        .prepare(`SELECT * FROM ${name}`)
        .all()
        .map(row => JSON.stringify(row))
        .sort(),
    ]),
  );
  db.close();
  return all;
};

/** A store with something in every table. */
const fill = async (one: SqliteStore): Promise<void> => {
  await one.save(chat, billabong, 0);
  await one.claim(7, 0);
  await one.finish(7, { chat, question: '41', answer: '42' });
  await one.claim(8, 0);
  await one.save('9', named('sam'), 0, { update: 8, reply: 'about 2 days' });
  await one.move('-5', chat);
};

test('a copy put back elsewhere has every row, and opens with the key alone', async () => {
  await fill(open('bot.db'));
  expect(await run('backup.sh', 'copy.db', 'bot.db')).toMatchObject({ code: 0, err: '' });
  expect(statSync(join(folder, 'copy.db')).mode & 0o777).toBe(0o600);
  await store?.close();
  expect(await run('restore.sh', 'copy.db', 'new/bot.db')).toMatchObject({ code: 0, err: '' });
  const restored = rows('new/bot.db');
  expect(restored).toEqual(rows('bot.db'));
  expect(Object.values(restored).every(table => table.length > 0)).toBe(true);
  expect(() => open('new/bot.db', keyB)).toThrow(/can't be opened with this key/);
  const again = open('new/bot.db');
  expect((await again.load('-5')).memory).toEqual(billabong);
  expect(await again.answerTo(chat, '41')).toBe('42');
  expect(await again.claim(7, 0)).toEqual({ state: 'done', answer: '42' });
  expect(await again.claim(8, 0)).toEqual({ state: 'again', reply: 'about 2 days' });
});

test('while the bot writes without a pause, the copy is of one moment', async () => {
  const bot = open('bot.db');
  // Far more pages than one step of a copy in parts would take.
  // Words of chance, as a memory is packed before it is sealed.
  const rigs = Object.fromEntries(
    Array.from({ length: 600 }, (_, i) => [
      `p${i}`,
      { place: randomBytes(40).toString('hex'), dailyUseAh: i + 1 },
    ]),
  );
  const large = { ...billabong, rigs };
  for (let i = 0; i < 250; i++) await bot.save(`still ${i}`, large, 0);
  expect(statSync(join(folder, 'bot.db')).size + statSync(join(folder, 'bot.db-wal')).size).toBeGreaterThan(
    1e7,
  );

  let revisions = [0, 0];
  let round = 0;
  const write = async (): Promise<void> => {
    round++;
    const memory = { ...named('sam'), rigs: { sam: { dailyUseAh: round } } };
    // One after the other: in a copy of one moment "first" is ahead by one round at most.
    const first = await bot.save('first', memory, present(revisions[0]));
    revisions = [first, await bot.save('second', memory, present(revisions[1]))];
  };
  await write();
  const roundBefore = round;
  let isCopying = true;
  const backup = run('backup.sh', 'copy.db', 'bot.db').finally(() => {
    isCopying = false;
  });
  while (isCopying) {
    await write();
    await new Promise(resolve => setImmediate(resolve));
  }
  expect(await backup).toMatchObject({ code: 0, err: '' });
  expect(round).toBeGreaterThan(roundBefore + 20);
  await bot.close();

  await run('restore.sh', 'copy.db', 'new.db');
  const restored = open('new.db');
  const [a = 0, b = 0] = await Promise.all(
    ['first', 'second'].map(async name => (await restored.load(name)).memory.rigs.sam?.dailyUseAh),
  );
  expect(b).toBeGreaterThanOrEqual(roundBefore);
  expect(a).toBeLessThanOrEqual(round);
  expect([0, 1]).toContain(a - b);
  for (let i = 0; i < 250; i++) expect((await restored.load(`still ${i}`)).memory).toEqual(large);
});

test('what was there is set aside whole', async () => {
  await fill(open('bot.db'));
  await store?.close();
  await run('backup.sh', 'copy.db', 'bot.db');
  const later = open('bot.db');
  await later.save('10', named('alex'), 0);
  await later.close();
  const before = rows('bot.db');
  await run('restore.sh', 'copy.db', 'bot.db');
  const aside = readdirSync(folder).filter(name => /^bot\.db\.before-restore-\d{8}T\d{6}Z$/.test(name));
  expect(aside).toHaveLength(1);
  expect(rows(present(aside[0]))).toEqual(before);
  expect(rows('bot.db')).not.toEqual(before);
});

test.skipIf(process.getuid?.() !== 0)('put back by root, the file is its folder’s owner’s', async () => {
  await fill(open('bot.db'));
  await run('backup.sh', 'copy.db', 'bot.db');
  mkdirSync(join(folder, 'service'));
  chownSync(join(folder, 'service'), 65_534, 65_534);
  await run('restore.sh', 'copy.db', 'service/bot.db');
  for (const name of ['bot.db', 'bot.db-lock'])
    expect(statSync(join(folder, 'service', name)), name).toMatchObject({ uid: 65_534, gid: 65_534 });
});

test('a restore under a running bot is refused, and the bot goes on', async () => {
  const bot = open('bot.db');
  await fill(bot);
  await run('backup.sh', 'copy.db', 'bot.db');
  const refused = await run('restore.sh', 'copy.db', 'bot.db');
  expect(refused).toMatchObject({ code: 1, err: expect.stringMatching(/stop the bot first\n$/) });
  await bot.save('10', named('alex'), 0);
  await bot.close();
  expect((await open('bot.db').load('10')).memory).toEqual(named('alex'));
});

test.each([
  ['cut short', () => truncateSync(join(folder, 'copy.db'), 8192)],
  ['of another kind', () => writeFileSync(join(folder, 'copy.db'), 'not a database at all')],
  ['empty', () => truncateSync(join(folder, 'copy.db'))],
])('a copy that is %s is refused, and nothing is changed', async (_, spoil) => {
  await fill(open('bot.db'));
  await run('backup.sh', 'copy.db', 'bot.db');
  await store?.close();
  spoil();
  const before = readFileSync(join(folder, 'bot.db'));
  const refused = await run('restore.sh', 'copy.db', 'bot.db');
  expect(refused).toMatchObject({ code: 1, out: '', err: expect.stringMatching(/^restore: .*\n$/) });
  expect(readFileSync(join(folder, 'bot.db'))).toEqual(before);
  expect(readdirSync(folder).sort()).toEqual(['bot.db', 'bot.db-lock', 'copy.db']);
});

test('a copy is never written over, and none is left of a failed backup', async () => {
  writeFileSync(join(folder, 'copy.db'), 'precious');
  expect(await run('backup.sh', 'copy.db', 'bot.db')).toMatchObject({ code: 1 });
  expect(readFileSync(join(folder, 'copy.db'), 'utf8')).toBe('precious');
  expect(await run('backup.sh', 'other.db', 'bot.db')).toMatchObject({ code: 1, out: '' });
  expect(readdirSync(folder)).toEqual(['copy.db']);
});

test('the database is found in .env, as the bot finds it; a bad setting is named', async () => {
  await fill(open('elsewhere.db'));
  writeFileSync(join(folder, '.env'), 'DATABASE_URL="sqlite:elsewhere.db?synchronous=full" # here\n');
  expect(await script('backup.sh', ['copy.db'], folder)).toMatchObject({ code: 0 });
  expect(rows('copy.db')).toEqual(rows('elsewhere.db'));
  const wrong = await script('backup.sh', ['x.db'], folder, { DATABASE_URL: 'nowhere' });
  expect(wrong).toMatchObject({
    code: 1,
    out: '',
    err: expect.stringMatching(/^DATABASE_URL must be .*\n$/),
  });
});
