import type { DatabaseSync, StatementSync } from 'node:sqlite';

/** Every statement of the path of a message, by name. Positional inputs, in the order of the marks. */
const texts = {
  target: 'SELECT target FROM moves WHERE old = ?',
  load: 'SELECT revision, sealed FROM memories WHERE chat = ?',
  insert:
    'INSERT INTO memories (revision, saved_day, sealed, chat) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING',
  update:
    'UPDATE memories SET revision = ?, saved_day = ?, sealed = ?, drop_day = NULL WHERE chat = ? AND revision = ?',
  leave: 'UPDATE memories SET drop_day = ? WHERE chat = ?',
  remove: 'DELETE FROM memories WHERE chat = ? RETURNING chat, revision',
  retarget: 'UPDATE moves SET target = ? WHERE target = ?',
  moved: 'INSERT OR REPLACE INTO moves (old, target, moved_day) VALUES (?, ?, ?)',
  aliases: 'SELECT old FROM moves WHERE target = ?',
  unmove: 'DELETE FROM moves WHERE old = ? RETURNING old, target',
  forgetClaims: 'UPDATE claims SET chat = NULL, question = NULL, answer = NULL, reply = NULL WHERE chat = ?',
  take: 'INSERT INTO claims (update_id, run, at) VALUES (?, ?, ?) ON CONFLICT DO NOTHING',
  taken: 'SELECT run, at, is_done, answer, reply FROM claims WHERE update_id = ?',
  retake: 'UPDATE claims SET run = ?, at = ? WHERE update_id = ?',
  mark: 'UPDATE claims SET chat = ?, reply = ?, is_done = ? WHERE update_id = ? AND run = ? AND is_done = 0',
  finish:
    'UPDATE claims SET is_done = 1, reply = NULL, chat = coalesce(?, chat), ' +
    'question = coalesce(?, question), answer = coalesce(?, answer) WHERE update_id = ?',
  release: 'UPDATE claims SET run = ? WHERE update_id = ? AND run = ? AND is_done = 0',
  answerTo:
    'SELECT answer FROM claims WHERE chat = ? AND question = ? AND answer IS NOT NULL ' +
    'ORDER BY at DESC, update_id DESC LIMIT 1',
  answersIn: 'SELECT answer FROM claims WHERE chat = ? AND answer IS NOT NULL',
  due: 'SELECT update_id FROM claims WHERE reply IS NOT NULL AND is_done = 0 ORDER BY at, update_id',
  pruneClaims: 'DELETE FROM claims WHERE at < ?',
  pruneChats: 'DELETE FROM memories WHERE saved_day < ? RETURNING chat, revision',
  pruneMovesOfLeft:
    'DELETE FROM moves WHERE target IN (SELECT chat FROM memories WHERE drop_day <= ?) RETURNING old, target',
  pruneLeft: 'DELETE FROM memories WHERE drop_day <= ? RETURNING chat, revision',
  pruneMoves:
    'DELETE FROM moves WHERE moved_day < ? AND target NOT IN (SELECT chat FROM memories) RETURNING old, target',
  ledger: "INSERT OR REPLACE INTO meta (name, value) VALUES ('ledger', ?)",
} as const;

export type Statements = Readonly<Record<keyof typeof texts, StatementSync>>;

/** Prepares them all once; they live as long as the database is open. */
export const prepareAll = (db: DatabaseSync): Statements =>
  Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, db.prepare(text)])) as Statements;
