import type { DatabaseSync } from 'node:sqlite';
import { Damaged } from '#conversation/memory-store.ts';
import { aboutFormerMemory, aboutMemory } from '../kept.ts';
import type { KeySource } from '../keys.ts';
import { Vault } from '../seal.ts';
import { together } from './file.ts';
import { Ledger } from './ledger.ts';

/** How a file is sealed, and what it is to hold. */
export interface Sealing {
  readonly vault: Vault;
  readonly ledger: Ledger;
}

const meta = (db: DatabaseSync, name: string): Uint8Array | undefined =>
  db.prepare('SELECT value FROM meta WHERE name = ?').get(name)?.value as Uint8Array | undefined;

const keep = (db: DatabaseSync, { vault, ledger }: Sealing): void => {
  const set = db.prepare('INSERT OR REPLACE INTO meta (name, value) VALUES (?, ?)');
  set.run('index', vault.sealedIndex);
  set.run('ledger', ledger.sealed());
  ledger.kept();
};

/** Binds each memory of a file from before to its revision. One that doesn't open stays as it is, and shut. */
const bind = (db: DatabaseSync, vault: Vault): void => {
  const rows = db.prepare('SELECT chat, revision, sealed FROM memories').all();
  const update = db.prepare('UPDATE memories SET sealed = ? WHERE chat = ?');
  for (const row of rows) {
    const chat = row.chat as Uint8Array;
    try {
      const text = vault.open(row.sealed as Uint8Array, aboutFormerMemory(chat));
      update.run(vault.seal(text, aboutMemory(chat, row.revision as number)), chat);
    } catch (error) {
      if (!(error instanceof Damaged)) throw error;
    }
  }
  vault.bound();
};

/** Adds up what is there. */
const reckon = (db: DatabaseSync, ledger: Ledger): void => {
  for (const row of db.prepare('SELECT chat, revision FROM memories').iterate())
    ledger.memory(row.chat as Uint8Array, row.revision as number);
  for (const row of db.prepare('SELECT old, target FROM moves').iterate())
    ledger.move(row.old as Uint8Array, row.target as Uint8Array);
};

const isWhole = (db: DatabaseSync, ledger: Ledger): boolean => {
  const stored = meta(db, 'ledger');
  try {
    return stored !== undefined && ledger.isAs(stored);
  } catch (error) {
    if (error instanceof Damaged) return false;
    throw error;
  }
};

/**
 * The vault of this file: opened with the keys given, or made where the file is new; and the ledger of its rows.
 * @param isAccepting takes the rows as they are
 * @throws Error where something else than this program changed them
 */
export const openVault = (db: DatabaseSync, keys: KeySource, isAccepting = false): Sealing => {
  const stored = meta(db, 'index');
  const vault = stored ? Vault.open(keys(false), stored) : Vault.make(keys(true));
  const ledger = new Ledger(vault);
  const isFromBefore = !vault.isBound;
  if (isFromBefore || !stored) {
    together(db, () => {
      if (isFromBefore) bind(db, vault);
      reckon(db, ledger);
      keep(db, { vault, ledger });
    });
    return { vault, ledger };
  }
  reckon(db, ledger);
  if (isAccepting) together(db, () => keep(db, { vault, ledger }));
  else if (!isWhole(db, ledger))
    throw new Error(
      'the memory was changed from outside: a row was put back, added or taken out. Restore a backup, or take it ' +
        'as it is by `npm run rotate -- --accept`',
    );
  ledger.kept();
  return { vault, ledger };
};
