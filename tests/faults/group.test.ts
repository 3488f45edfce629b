import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { emptyMemory } from '#conversation/memory.ts';
import { ClaimLost, StaleRevision } from '#conversation/memory-store.ts';
import { openStore } from '#memory/open.ts';
import { Group } from '#memory/sqlite/group.ts';

const store = () =>
  openStore(`sqlite:${join(mkdtempSync(join(tmpdir(), 'group-')), 'memory.db')}`, { key: 'ab'.repeat(32) });

test('of what is asked for in one turn, what fails takes nothing else with it, and leaves nothing of itself', async () => {
  const s = await store();
  await s.claim(1, 0);
  await s.claim(2, 0);
  const memory = { ...emptyMemory(), settings: { mainsV: 120 } };
  const revision = await s.save('a', memory, 0);
  const all = await Promise.allSettled([
    s.save('b', memory, 0, { update: 1, reply: 'one' }),
    s.save('a', emptyMemory(), revision + 5, { update: 2, reply: 'two' }),
    s.save('c', memory, 0, { update: 99, reply: 'never claimed' }),
    s.save('d', memory, 0),
  ]);
  expect(all.map(one => one.status)).toEqual(['fulfilled', 'rejected', 'rejected', 'fulfilled']);
  expect((all[1] as PromiseRejectedResult).reason).toBeInstanceOf(StaleRevision);
  expect((all[2] as PromiseRejectedResult).reason).toBeInstanceOf(ClaimLost);
  const mains = async (chat: string) => (await s.load(chat)).memory.settings.mainsV;
  expect([await mains('a'), await mains('b'), await mains('c'), await mains('d')]).toEqual([
    120,
    120,
    undefined,
    120,
  ]);
  await s.release(1);
  await s.release(2);
  expect(await s.claim(1, 0)).toEqual({ state: 'again', reply: 'one' });
  expect(await s.claim(2, 0)).toEqual({ state: 'again', reply: undefined });
  await s.close();
});

test('a commit that fails is told to all who wait for it, and the next turn works', async () => {
  const db = new DatabaseSync(':memory:');
  db.exec('CREATE TABLE t (a INTEGER PRIMARY KEY, b REFERENCES t (a) DEFERRABLE INITIALLY DEFERRED)');
  const group = new Group(db);
  const put = (a: number, b: number | null) =>
    group.run(() => db.prepare('INSERT INTO t VALUES (?, ?)').run(a, b));
  const broken = await Promise.allSettled([put(1, 77), put(2, null)]);
  expect(broken.map(one => one.status)).toEqual(['rejected', 'rejected']);
  await put(3, null);
  expect(db.prepare('SELECT a FROM t').all()).toEqual([{ a: 3 }]);
});

test('closing waits for what was asked for', async () => {
  const s = await store();
  const saving = s.save('a', emptyMemory(), 0);
  await s.close();
  expect(await saving).toBeGreaterThan(0);
});
