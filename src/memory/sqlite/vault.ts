import type { DatabaseSync } from 'node:sqlite';
import type { KeySource } from '../keys.ts';
import { Vault } from '../seal.ts';

/** The vault of this database: opened with the keys given, or made where the database is new. */
export const openVault = (db: DatabaseSync, keys: KeySource): Vault => {
  const stored = db.prepare("SELECT value FROM meta WHERE name = 'index'").get();
  if (stored) return Vault.open(keys(false), stored.value as Uint8Array);
  const vault = Vault.make(keys(true));
  db.prepare("INSERT INTO meta (name, value) VALUES ('index', ?)").run(vault.sealedIndex);
  return vault;
};
