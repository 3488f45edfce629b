import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { Damaged } from '#conversation/memory-store.ts';
import { keySource } from '#memory/keys.ts';
import { openSqlite, type SqliteOptions } from '#memory/sqlite/store.ts';
import { billabong, keyA, named } from './examples.ts';
import { formerRows } from './former.ts';

// Somebody who has the file, may write to it, and has no key.

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'billywatt-'));
  path = join(folder, 'memory.db');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const open = (options: SqliteOptions = {}) => openSqlite(path, keySource({ key: keyA }), options);
const inFile = <T>(work: (file: DatabaseSync) => T): T => {
  const file = new DatabaseSync(path);
  try {
    return work(file);
  } finally {
    file.close();
  }
};
type Row = Record<string, null | number | string | Uint8Array>;
const rowsOf = (table: string): Row[] =>
  inFile(file => file.prepare(`SELECT * FROM ${table}`).all()) as Row[];
const put = (table: string, row: Row): void => {
  const marks = Object.keys(row).map(() => '?');
  inFile(file =>
    file
      .prepare(`INSERT OR REPLACE INTO ${table} (${Object.keys(row)}) VALUES (${marks})`)
      .run(...Object.values(row)),
  );
};
const ownersOf = async (chat: string, options?: SqliteOptions): Promise<string[]> => {
  const store = open(options);
  return store
    .load(chat)
    .then(({ memory }) => Object.keys(memory.rigs))
    .finally(() => store.close());
};

/** A file in which sam's rig became alex's, with the rows of before. */
async function changed(): Promise<{ memories: Row[]; meta: Row[] }> {
  const store = open();
  const revision = await store.save('1', named('sam'), 0);
  await store.save('2', named('robin'), 0);
  await store.move('-5', '-100');
  await store.close();
  const before = { memories: rowsOf('memories'), meta: rowsOf('meta') };
  const later = open();
  await later.save('1', named('alex'), revision);
  await later.close();
  return before;
}
const wasOf = ({ memories }: { memories: Row[] }): Row =>
  present(memories.find(row => rowsOf('memories').every(now => now.revision !== row.revision)));

describe('with the file and no key', () => {
  const outside = /changed from outside: a row was put back, added or taken out/;

  test('what was sealed for an earlier revision does not open under the present one', async () => {
    const was = wasOf(await changed());
    inFile(file =>
      file
        .prepare('UPDATE memories SET sealed = ? WHERE chat = ?')
        .run(present(was.sealed), present(was.chat)),
    );
    await expect(ownersOf('1')).rejects.toBeInstanceOf(Damaged);
    expect(await ownersOf('2')).toEqual(['robin']);
  });

  test.each<[string, (before: { memories: Row[]; meta: Row[] }) => void]>([
    ['a whole row put back as it was', before => put('memories', wasOf(before))],
    [
      'a row with another revision',
      () => inFile(file => file.exec('UPDATE memories SET revision = revision + 1')),
    ],
    ['a row taken out', () => inFile(file => file.exec('DELETE FROM memories WHERE rowid = 1'))],
    [
      'a row copied to another chat',
      ({ memories }) => put('memories', { ...present(memories[0]), chat: Buffer.alloc(16, 7) }),
    ],
    [
      'a move made up',
      () =>
        put('moves', {
          old: present(present(rowsOf('memories')[0]).chat),
          target: present(present(rowsOf('memories')[1]).chat),
          moved_day: 1,
        }),
    ],
    [
      'a move turned elsewhere',
      () => inFile(file => file.exec("UPDATE moves SET target = x'00112233445566778899aabbccddeeff'")),
    ],
    ['a move taken out', () => inFile(file => file.exec('DELETE FROM moves'))],
    ['the ledger of before', ({ meta }) => put('meta', present(meta.find(row => row.name === 'ledger')))],
    ['no ledger', () => inFile(file => file.exec("DELETE FROM meta WHERE name = 'ledger'"))],
    [
      'a ledger of zeros',
      () =>
        inFile(file => file.exec("UPDATE meta SET value = zeroblob(length(value)) WHERE name = 'ledger'")),
    ],
  ])('%s: the file is not opened, nor changed, until its keeper says so', async (_, change) => {
    change(await changed());
    const before = readFileSync(path);
    expect(() => open()).toThrow(outside);
    expect(readFileSync(path).equals(before)).toBe(true);
    await open({ isAccepting: true }).close();
    await open().close();
  });

  test('a row and the ledger put back together differ from the rest', async () => {
    const store = open();
    const revision = await store.save('1', named('sam'), 0);
    await store.close();
    const before = { memories: rowsOf('memories'), meta: rowsOf('meta') };
    const later = open();
    await later.save('1', named('alex'), revision);
    await later.save('2', named('robin'), 0);
    await later.close();
    put('memories', present(before.memories[0]));
    put('meta', present(before.meta.find(row => row.name === 'ledger')));
    expect(() => open()).toThrow(outside);
  });
});

describe('the ledger follows', () => {
  const chat = fc.constantFrom('1', '2', '-5', '-6', '-100');
  const step = fc.oneof(
    fc.record({ kind: fc.constant('save' as const), chat, isStale: fc.boolean() }),
    fc.record({ kind: fc.constant('move' as const), chat, to: chat }),
    fc.record({ kind: fc.constant('forget' as const), chat }),
    fc.record({ kind: fc.constant('lost' as const), chat }),
    fc.record({ kind: fc.constant('leave' as const), chat }),
    fc.record({ kind: fc.constant('prune' as const), day: fc.integer({ min: 0, max: 4 }) }),
  );

  test('whatever is done, together or one by one, the file opens again', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.array(step, { maxLength: 4 }), { maxLength: 6 }), async turns => {
        rmSync(path, { force: true });
        let day = 1;
        const store = open({ now: () => day * 86_400_000 });
        for (const turn of turns) {
          day += 1;
          await Promise.allSettled(
            turn.map(async one => {
              switch (one.kind) {
                case 'save': {
                  const { revision } = await store.load(one.chat);
                  return store.save(one.chat, named('sam'), revision + (one.isStale ? 1 : 0));
                }
                case 'move':
                  return store.move(one.chat, one.to);
                case 'forget':
                  return store.forget(one.chat);
                case 'lost':
                  return store.forget(one.chat, { update: 99 });
                case 'leave':
                  return store.leave(one.chat, 0);
                case 'prune':
                  return store.prune({ claims: 0, chats: one.day * 86_400_000 });
              }
            }),
          );
        }
        const rows = rowsOf('memories').length;
        await store.close();
        const again = open();
        expect(rowsOf('memories')).toHaveLength(rows);
        await again.close();
      }),
      { seed: 16, numRuns: 60 },
    );
  });
});

describe('a file from before', () => {
  const make = (): void => {
    const migrations = new URL('../../src/memory/sqlite/migrations/', import.meta.url);
    inFile(file => {
      for (const name of ['001-start.sql', '002-leave.sql'])
        file.exec(readFileSync(new URL(name, migrations), 'utf8'));
      file.exec('PRAGMA user_version = 2; PRAGMA application_id = 1113025841');
    });
    for (const { table, columns, values } of formerRows())
      put(table, Object.fromEntries(columns.map((column, i) => [column, values[i] ?? null])));
  };

  test('opens, is bound once, and keeps what it holds', async () => {
    make();
    const former = rowsOf('memories');
    const store = open();
    expect((await store.load('-5')).memory.rigs).toEqual(billabong.rigs);
    expect((await store.load('-1001234567890')).memory.rigs).toEqual(billabong.rigs);
    expect(Object.keys((await store.load('7')).memory.rigs)).toEqual(['alex']);
    expect(await store.claim(1, 2)).toEqual({ state: 'again', reply: 'about 2 days' });
    await store.close();
    expect(await ownersOf('7')).toEqual(['alex']);
    // What was sealed before it was bound is of no use any more.
    for (const row of former) put('memories', row);
    await expect(ownersOf('7')).rejects.toBeInstanceOf(Damaged);
  });

  test('a row that was damaged already stays shut, and can be forgotten', async () => {
    make();
    inFile(file => file.exec("UPDATE memories SET sealed = CAST(substr(sealed, 1, 60) || x'00' AS BLOB)"));
    const store = open();
    await expect(store.load('7')).rejects.toBeInstanceOf(Damaged);
    await store.forget('7');
    expect((await store.load('7')).revision).toBe(0);
    await store.close();
    await open().close();
  });
});
