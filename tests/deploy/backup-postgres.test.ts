import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { afterAll, afterEach, beforeEach, describe, expect, test } from 'vitest';
import { keySource } from '#memory/keys.ts';
import { openPostgres, type PostgresStore } from '#memory/postgres/store.ts';
import { makeDatabase } from '../faults/database.ts';
import { billabong, keyA, keyB, named, secrets } from '../memory/examples.ts';
import { findServer } from '../memory/postgres-server.ts';
import { script } from './script.ts';

const ask = async (url: string, text: string): Promise<pg.QueryResult> => {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  return client.query(text).finally(() => client.end());
};

/** Why backups can't be tried against this server; undefined: they can. pg_dump refuses a server newer than itself. */
const whyNot = async (url: string): Promise<string | undefined> => {
  const { rows } = await ask(url, 'SHOW server_version_num');
  const major = Math.floor(rows[0].server_version_num / 10_000);
  for (const tool of ['pg_dump', 'pg_restore', 'psql']) {
    const found = spawnSync(tool, ['--version'], { encoding: 'utf8' });
    if (found.error || found.status !== 0) return `${tool} is not installed`;
    const version = Number(/(\d+)[.\w]*( \(.*\))?\s*$/.exec(found.stdout)?.[1]);
    if (!(version >= major)) return `${tool} is of version ${version}, the server of ${major}`;
  }
  return undefined;
};

const server = await findServer();
const reason = typeof server === 'string' ? server : await whyNot(server.url);
if (reason !== undefined) console.warn(`tests of PostgreSQL backups skipped: ${reason}`);

const chat = '-1001234567890';
let folder: string;
let home: string;
let other: string;
const opened: PostgresStore[] = [];

const open = async (url: string, key = keyA): Promise<PostgresStore> => {
  const store = await openPostgres(url, keySource({ key }));
  opened.push(store);
  return store;
};
const close = () => Promise.all(opened.splice(0).map(store => store.close()));
const run = (name: 'backup.sh' | 'restore.sh', url: string, copy = 'copy.dump') =>
  script(name, [join(folder, copy)], folder, { DATABASE_URL: url });

/** Every row of every table, as text. */
const rows = async (url: string): Promise<Record<string, string[]>> => {
  const tables = await ask(url, "SELECT tablename FROM pg_tables WHERE schemaname = 'billywatt' ORDER BY 1");
  const all: Record<string, string[]> = {};
  for (const { tablename } of tables.rows) {
    const found = await ask(url, `SELECT row::text FROM billywatt.${tablename} AS row ORDER BY 1`);
    all[tablename] = found.rows.map(one => one.row);
  }
  return all;
};
/** Columns, constraints and indexes. */
const shape = async (url: string): Promise<unknown[]> => [
  (await ask(url, "SELECT indexdef FROM pg_indexes WHERE schemaname = 'billywatt' ORDER BY 1")).rows,
  (
    await ask(
      url,
      `SELECT table_name, column_name, data_type, is_nullable, column_default
       FROM information_schema.columns WHERE table_schema = 'billywatt' ORDER BY 1, 2`,
    )
  ).rows,
];

/** A store with something in every table. */
const fill = async (store: PostgresStore): Promise<void> => {
  await store.save(chat, billabong, 0);
  await store.claim(7, 0);
  await store.finish(7, { chat, question: '41', answer: '42' });
  await store.claim(8, 0);
  await store.save('9', named('sam'), 0, { update: 8, reply: 'about 2 days' });
  await store.move('-5', chat);
};

afterAll(async () => {
  if (typeof server !== 'string') await server.stop();
});

describe.skipIf(reason !== undefined)('with pg_dump and pg_restore', () => {
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'backup-'));
    const { url } = server as { url: string };
    [home, other] = [await makeDatabase(url), await makeDatabase(url)];
  });
  afterEach(async () => {
    await close();
    rmSync(folder, { recursive: true });
    const { url } = server as { url: string };
    for (const made of [home, other]) await ask(url, `DROP DATABASE ${new URL(made).pathname.slice(1)}`);
  });

  test('a copy made while the bot runs, put back into an empty database, has every row', async () => {
    const bot = await open(home);
    await fill(bot);
    expect(await run('backup.sh', home)).toMatchObject({ code: 0, err: '' });
    expect(statSync(join(folder, 'copy.dump')).mode & 0o777).toBe(0o600);
    expect(await run('restore.sh', other)).toMatchObject({ code: 0, err: '' });
    const restored = await rows(other);
    expect(restored).toEqual(await rows(home));
    expect(Object.keys(restored)).toEqual(['claims', 'memories', 'meta', 'migrations', 'moves', 'tallies']);
    // Counts of a minute are kept unlogged: a copy may hold none.
    const { tallies: _tallies, ...lasting } = restored;
    expect(Object.values(lasting).every(table => table.length > 0)).toBe(true);
    expect(await shape(other)).toEqual(await shape(home));

    await close();
    await expect(open(other, keyB)).rejects.toThrow(/can't be opened with this key/);
    const again = await open(other);
    expect((await again.load('-5')).memory).toEqual(billabong);
    expect(await again.answerTo(chat, '41')).toBe('42');
    expect(await again.claim(7, 0)).toEqual({ state: 'done', answer: '42' });
    expect(await again.claim(8, 0)).toEqual({ state: 'again', reply: 'about 2 days' });
    const { revision } = await again.load('9');
    await again.save('9', named('alex'), revision);
  });

  test('a stolen copy shows no rig, name, text or chat id', async () => {
    await fill(await open(home));
    await run('backup.sh', home);
    const sql = spawnSync('pg_restore', ['--file=-', join(folder, 'copy.dump')], {
      encoding: 'latin1',
    }).stdout;
    expect(sql).toContain('COPY billywatt.memories');
    // Bytes stand in it as hexadecimal digits.
    const bytes = sql.replace(/\\\\x([0-9a-f]+)/g, (_, hex) => Buffer.from(hex, 'hex').toString('latin1'));
    for (const secret of secrets.filter(word => word.length > 4)) expect(bytes).not.toContain(secret);
  });

  test('put back over newer tables and rows, only what was copied is there', async () => {
    await fill(await open(home));
    const before = await rows(home);
    await run('backup.sh', home);
    await (await open(home)).save('10', named('alex'), 0);
    await close();
    // As an upgrade that is to be rolled back would leave it.
    await ask(home, 'CREATE TABLE billywatt.later (chat bytea REFERENCES billywatt.memories)');
    await ask(home, 'INSERT INTO billywatt.migrations (number) VALUES (99)');
    await expect(open(home)).rejects.toThrow(/update it/);
    expect(await run('restore.sh', home)).toMatchObject({ code: 0, err: '' });
    expect(await rows(home)).toEqual(before);
    expect((await (await open(home)).load('-5')).memory).toEqual(billabong);
  });

  test('under a running bot it is refused, and nothing is changed', async () => {
    await fill(await open(home));
    await run('backup.sh', home);
    const before = await rows(home);
    const refused = await run('restore.sh', home);
    expect(refused.code).not.toBe(0);
    expect(refused.err).toMatch(/stop the bot first/);
    expect(await rows(home)).toEqual(before);
  });

  test('a copy cut short is refused, and nothing is changed', async () => {
    const bot = await open(home);
    await fill(bot);
    await run('backup.sh', home);
    await close();
    const { size } = statSync(join(folder, 'copy.dump'));
    truncateSync(join(folder, 'copy.dump'), size - 200);
    const before = await rows(home);
    const refused = await run('restore.sh', home);
    expect(refused).toMatchObject({ out: '', err: expect.stringContaining('end of file') });
    expect(refused.code).not.toBe(0);
    expect(await rows(home)).toEqual(before);
  });

  test('the password goes by the environment, not by the list of processes', async () => {
    await fill(await open(home));
    const address = new URL(home);
    address.password = 'p%40ss';
    const seen = join(folder, 'seen');
    const fake = `#!/bin/sh\necho "$* ($PGPASSWORD)" > ${seen}\nexec "$REAL" "$@"\n`;
    writeFileSync(join(folder, 'pg_dump'), fake, { mode: 0o755 });
    const real = spawnSync('sh', ['-c', 'command -v pg_dump'], { encoding: 'utf8' }).stdout.trim();
    const done = await script('backup.sh', ['copy.dump'], folder, {
      DATABASE_URL: address.href,
      PATH: `${folder}:${process.env.PATH}`,
      REAL: real,
    });
    expect(done).toMatchObject({ code: 0, err: '' });
    expect(readFileSync(seen, 'utf8')).toMatch(/^(?!.*p(@|%40)ss.* \().*\(p@ss\)\n$/);
  });
});
