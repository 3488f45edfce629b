import type { DatabaseSync } from 'node:sqlite';
import { aboutMemory, aboutReply } from '../kept.ts';
import type { Vault } from '../seal.ts';

/** Seals anew, with the newest key, what an older one sealed; inside a transaction. @returns how many values */
export const rotate = (db: DatabaseSync, vault: Vault): number => {
  const old = (column: string): string => `substr(${column}, 2, 4) <> ?`;
  const memories = db.prepare(`SELECT chat, sealed FROM memories WHERE ${old('sealed')}`).all(vault.keyId);
  const replies = db.prepare(`SELECT update_id, reply FROM claims WHERE ${old('reply')}`).all(vault.keyId);
  const index = db.prepare(`UPDATE meta SET value = ? WHERE name = 'index' AND ${old('value')}`);
  const saveMemory = db.prepare('UPDATE memories SET sealed = ? WHERE chat = ?');
  const saveReply = db.prepare('UPDATE claims SET reply = ? WHERE update_id = ?');
  for (const { chat, sealed } of memories) {
    const about = aboutMemory(chat as Uint8Array);
    saveMemory.run(vault.seal(vault.open(sealed as Uint8Array, about), about), chat as Uint8Array);
  }
  for (const { update_id, reply } of replies) {
    const about = aboutReply(update_id as number);
    saveReply.run(vault.seal(vault.open(reply as Uint8Array, about), about), update_id as number);
  }
  const changed = index.run(vault.sealedIndex, vault.keyId).changes;
  return memories.length + replies.length + Number(changed);
};
