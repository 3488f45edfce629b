import type { Pool } from 'pg';
import { aboutMemory, aboutReply } from '../kept.ts';
import type { Vault } from '../seal.ts';

/** Rows sealed anew at a time. */
const batch = 500;

interface Kind {
  readonly select: string;
  readonly update: string;
  readonly about: (row: { readonly id: never; readonly revision: string }) => string;
}

const kinds: readonly Kind[] = [
  {
    select:
      'SELECT chat AS id, revision, sealed AS value FROM memories WHERE substring(sealed from 2 for 4) <> $1 LIMIT $2',
    update: 'UPDATE memories SET sealed = $1 WHERE chat = $2 AND sealed = $3',
    about: ({ id, revision }) => aboutMemory(id, Number(revision)),
  },
  {
    select:
      'SELECT update_id AS id, reply AS value FROM claims WHERE substring(reply from 2 for 4) <> $1 LIMIT $2',
    update: 'UPDATE claims SET reply = $1 WHERE update_id = $2 AND reply = $3',
    about: ({ id }) => aboutReply(Number(id)),
  },
];

/**
 * Seals anew, with the newest key, what an older one sealed, while other instances go on: a row that they
 * saved in between is left alone and looked at again.
 * @returns how many values
 */
export const rotate = async (pool: Pool, vault: Vault): Promise<number> => {
  let count = 0;
  for (const { select, update, about } of kinds) {
    for (;;) {
      const { rows } = await pool.query(select, [vault.keyId, batch]);
      for (const row of rows) {
        const { id, value } = row;
        const text = vault.open(value, about(row));
        const { rowCount } = await pool.query(update, [vault.seal(text, about(row)), id, value]);
        count += rowCount ?? 0;
      }
      if (rows.length === 0) break;
    }
  }
  const index = "UPDATE meta SET value = $1 WHERE name = 'index' AND substring(value from 2 for 4) <> $2";
  const { rowCount } = await pool.query(index, [vault.sealedIndex, vault.keyId]);
  return count + (rowCount ?? 0);
};
