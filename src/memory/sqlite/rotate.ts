import type { DatabaseSync } from 'node:sqlite';
import { aboutMemory, aboutReply } from '../kept.ts';
import type { Vault } from '../seal.ts';

/**
 * Seals anew, with the newest key, what an older one sealed; inside a transaction.
 * @param resealed the ledger, sealed with the newest key
 * @returns how many values
 */
export const rotate = (db: DatabaseSync, vault: Vault, resealed: Buffer): number => {
  const old = (column: string): string => `substr(${column}, 2, 4) <> ?`;
  const memories = db
    .prepare(`SELECT chat, revision, sealed FROM memories WHERE ${old('sealed')}`)
    .all(vault.keyId);
  const replies = db.prepare(`SELECT update_id, reply FROM claims WHERE ${old('reply')}`).all(vault.keyId);
  const index = db.prepare(`UPDATE meta SET value = ? WHERE name = 'index' AND ${old('value')}`);
  const ledger = db.prepare(`UPDATE meta SET value = ? WHERE name = 'ledger' AND ${old('value')}`);
  const saveMemory = db.prepare('UPDATE memories SET sealed = ? WHERE chat = ?');
  const saveReply = db.prepare('UPDATE claims SET reply = ? WHERE update_id = ?');
  for (const { chat, revision, sealed } of memories) {
    const about = aboutMemory(chat as Uint8Array, revision as number);
    saveMemory.run(vault.seal(vault.open(sealed as Uint8Array, about), about), chat as Uint8Array);
  }
  for (const { update_id, reply } of replies) {
    const about = aboutReply(update_id as number);
    saveReply.run(vault.seal(vault.open(reply as Uint8Array, about), about), update_id as number);
  }
  const changed = index.run(vault.sealedIndex, vault.keyId).changes;
  ledger.run(resealed, vault.keyId);
  return memories.length + replies.length + Number(changed);
};
