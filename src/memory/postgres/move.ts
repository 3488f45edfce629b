import type { Pool, PoolClient } from 'pg';
import type { Loaded } from '#conversation/memory-store.ts';
import { readOwn, writeMemory } from '../document.ts';
import { aboutMemory, newRevision } from '../kept.ts';
import { merge } from '../merge.ts';
import type { Vault } from '../seal.ts';
import { together } from './pool.ts';
import { sql } from './statements.ts';

/** Moves are rare; one at a time keeps two reports of the same move from crossing. */
const moveLock = 0x42576d32;

/** The row of a chat, followed over a move. @throws Damaged where the bot did not make it */
export const target = async (client: PoolClient | Pool, vault: Vault, chat: Buffer): Promise<Buffer> => {
  const [moved] = (await client.query(sql('target', chat))).rows;
  if (!moved) return chat;
  vault.checkMove(chat, moved.target, moved.seal);
  return moved.target;
};

const read = async (client: PoolClient, vault: Vault, row: Buffer): Promise<Loaded | undefined> => {
  const { rows } = await client.query('SELECT revision, sealed FROM memories WHERE chat = $1 FOR UPDATE', [
    row,
  ]);
  if (!rows[0]) return undefined;
  const revision = Number(rows[0].revision);
  return { memory: readOwn(vault.open(rows[0].sealed, aboutMemory(row, revision))), revision };
};

/** Moves a memory to another row and remembers where it went. @param day today, for both rows */
export const move = (pool: Pool, vault: Vault, from: Buffer, to: Buffer, day: number): Promise<void> =>
  together(pool, async client => {
    await client.query('SELECT pg_advisory_xact_lock($1)', [moveLock]);
    const [old, now] = [await target(client, vault, from), await target(client, vault, to)];
    if (old.equals(now)) return;
    const former = await client.query('SELECT old FROM moves WHERE target = $1', [old]);
    for (const one of former.rows)
      await client.query('UPDATE moves SET target = $1, seal = $3 WHERE old = $2', [
        now,
        one.old,
        vault.moveSeal(one.old, now),
      ]);
    const moved = 'INSERT INTO moves (old, target, moved_day, seal) VALUES ($1, $2, $3, $4)';
    await client.query(
      `${moved} ON CONFLICT (old) DO UPDATE SET target = excluded.target, seal = excluded.seal`,
      [old, now, day, vault.moveSeal(old, now)],
    );
    const [memory, other] = [await read(client, vault, old), await read(client, vault, now)];
    await client.query(sql('remove', old));
    if (!memory) return;
    const merged = other ? merge(other.memory, memory.memory) : memory.memory;
    const next = other ? other.revision + 1 : newRevision();
    const sealed = vault.seal(writeMemory(merged), aboutMemory(now, next));
    const { rowCount } = other
      ? await client.query(sql('update', now, next, day, sealed, other.revision))
      : await client.query(sql('insert', now, next, day, sealed, 0));
    // The new chat's first save came between reading and writing: undo, and let the caller move again.
    if (rowCount === 0) throw new Error('the new chat was saved during the move: move again');
  });
