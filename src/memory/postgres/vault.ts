import type { Pool, PoolClient } from 'pg';
import { present } from '#basics/present.ts';
import { Damaged } from '#conversation/memory-store.ts';
import { aboutFormerMemory, aboutMemory } from '../kept.ts';
import type { KeySource } from '../keys.ts';
import { Vault } from '../seal.ts';
import { together } from './pool.ts';

const stored = async (pool: Pool | PoolClient): Promise<Buffer | undefined> =>
  (await pool.query("SELECT value FROM meta WHERE name = 'index'")).rows[0]?.value;

/**
 * Binds each memory of a database from before to its revision, and seals the moves; of instances that start at once,
 * one does it. A memory that doesn't open stays as it is, and shut.
 */
const bind = (pool: Pool, masters: readonly Buffer[]): Promise<Vault> =>
  together(pool, async client => {
    // No save by an instance of before may come in between.
    await client.query('LOCK TABLE meta, memories, moves IN EXCLUSIVE MODE');
    const vault = Vault.open(masters, present(await stored(client)));
    if (vault.isBound) return vault;
    for (const { chat, revision, sealed } of (await client.query('SELECT * FROM memories')).rows) {
      try {
        const text = vault.open(sealed, aboutFormerMemory(chat));
        const bound = vault.seal(text, aboutMemory(chat, Number(revision)));
        await client.query('UPDATE memories SET sealed = $1 WHERE chat = $2', [bound, chat]);
      } catch (error) {
        if (!(error instanceof Damaged)) throw error;
      }
    }
    for (const { old, target } of (await client.query('SELECT * FROM moves')).rows)
      await client.query('UPDATE moves SET seal = $1 WHERE old = $2', [vault.moveSeal(old, target), old]);
    vault.bound();
    await client.query("UPDATE meta SET value = $1 WHERE name = 'index'", [vault.sealedIndex]);
    return vault;
  });

/** The vault of this database: opened with the keys given, or made where the database is new. */
export const openVault = async (pool: Pool, keys: KeySource): Promise<Vault> => {
  const before = await stored(pool);
  const masters = keys(before === undefined);
  if (before === undefined) {
    const made = Vault.make(masters).sealedIndex;
    // Of instances that start at once, the first one's stands and the others open that.
    await pool.query("INSERT INTO meta (name, value) VALUES ('index', $1) ON CONFLICT DO NOTHING", [made]);
  }
  const vault = Vault.open(masters, before ?? present(await stored(pool)));
  return vault.isBound ? vault : bind(pool, masters);
};
