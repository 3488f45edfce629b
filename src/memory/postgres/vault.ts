import type { Pool } from 'pg';
import type { KeySource } from '../keys.ts';
import { Vault } from '../seal.ts';

const stored = async (pool: Pool): Promise<Buffer | undefined> =>
  (await pool.query("SELECT value FROM meta WHERE name = 'index'")).rows[0]?.value;

/** The vault of this database: opened with the keys given, or made where the database is new. */
export const openVault = async (pool: Pool, keys: KeySource): Promise<Vault> => {
  const before = await stored(pool);
  if (before) return Vault.open(keys(false), before);
  const masters = keys(true);
  const made = Vault.make(masters).sealedIndex;
  // Of instances that start at once, the first one's stands and the others open that.
  await pool.query("INSERT INTO meta (name, value) VALUES ('index', $1) ON CONFLICT DO NOTHING", [made]);
  return Vault.open(masters, (await stored(pool)) ?? made);
};
