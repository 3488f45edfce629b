import type { Pool, PoolClient } from 'pg';
import type { Loaded } from '#conversation/memory.ts';
import { readMemory, writeMemory } from '../document.ts';
import { aboutMemory, newRevision } from '../kept.ts';
import { merge } from '../merge.ts';
import type { Vault } from '../seal.ts';
import { together } from './pool.ts';
import { sql } from './statements.ts';

/** Moves are rare; one at a time keeps two reports of the same move from crossing. */
const moveLock = 0x42576d32;

const target = async (client: PoolClient, chat: Buffer): Promise<Buffer> =>
  (await client.query(sql('target', chat))).rows[0]?.target ?? chat;

const read = async (client: PoolClient, vault: Vault, row: Buffer): Promise<Loaded | undefined> => {
  const { rows } = await client.query('SELECT revision, sealed FROM memories WHERE chat = $1 FOR UPDATE', [
    row,
  ]);
  if (!rows[0]) return undefined;
  const memory = readMemory(vault.open(rows[0].sealed, aboutMemory(row)));
  return { memory, revision: Number(rows[0].revision) };
};

/** Moves a memory to another row and remembers where it went. @param day today, for both rows */
export const move = (pool: Pool, vault: Vault, from: Buffer, to: Buffer, day: number): Promise<void> =>
  together(pool, async client => {
    await client.query('SELECT pg_advisory_xact_lock($1)', [moveLock]);
    const [old, now] = [await target(client, from), await target(client, to)];
    if (old.equals(now)) return;
    const moved = 'INSERT INTO moves (old, target, moved_day) VALUES ($1, $2, $3)';
    await client.query('UPDATE moves SET target = $1 WHERE target = $2', [now, old]);
    await client.query(`${moved} ON CONFLICT (old) DO UPDATE SET target = excluded.target`, [old, now, day]);
    const [memory, other] = [await read(client, vault, old), await read(client, vault, now)];
    await client.query(sql('remove', old));
    if (!memory) return;
    const merged = other ? merge(other.memory, memory.memory) : memory.memory;
    const sealed = vault.seal(writeMemory(merged), aboutMemory(now));
    const { rowCount } = other
      ? await client.query(sql('update', now, other.revision + 1, day, sealed, other.revision))
      : await client.query(sql('insert', now, newRevision(), day, sealed, 0));
    // The new chat's first save came between reading and writing: undo, and let the caller move again.
    if (rowCount === 0) throw new Error('the new chat was saved during the move: move again');
  });
