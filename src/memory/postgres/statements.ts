import type { QueryConfig } from 'pg';
import { isGone } from './locks.ts';

/** $1 row, $2 new revision, $3 day, $4 sealed, $5 old revision. */
const insert = `INSERT INTO memories (chat, revision, saved_day, sealed)
  SELECT $1, $2::bigint, $3::int, $4::bytea
  WHERE $5::bigint = 0 AND NOT EXISTS (SELECT FROM moves WHERE old = $1)
  ON CONFLICT DO NOTHING`;
const update = `UPDATE memories SET revision = $2, saved_day = $3, sealed = $4, drop_day = NULL
  WHERE chat = $1 AND revision = $5`;

/**
 * A save and the closing of its claim as one statement, so as one transaction in one round trip.
 * $6 chat, $7 its sealed reply, $8 is it done, $9 the update, $10 the run.
 */
const andMark = (write: string): string => {
  const [head, tail = ''] = write.split(/(?=ON CONFLICT)/);
  return `WITH mine AS (
      SELECT update_id FROM claims WHERE update_id = $9 AND run = $10 AND NOT is_done FOR UPDATE
    ), written AS (
      ${head} AND EXISTS (SELECT FROM mine) ${tail} RETURNING 1
    ), marked AS (
      UPDATE claims SET chat = $6, reply = $7, is_done = $8
      WHERE update_id IN (SELECT update_id FROM mine) AND EXISTS (SELECT FROM written)
    )
    SELECT EXISTS (SELECT FROM mine) AS is_mine, EXISTS (SELECT FROM written) AS is_written`;
};

/** One more of a tally: $1 now; its key, its room, and what the key comes from, as numbered inputs. */
const tallied = (key: string, most: string, from = ''): string =>
  `INSERT INTO tallies AS t (what, since, count) SELECT ${key}::bytea, $1::bigint, 1 ${from}
    ON CONFLICT (what) DO UPDATE SET
      count = CASE WHEN $1 - t.since >= 60000 OR t.since > $1 THEN 1 ELSE t.count + 1 END,
      since = CASE WHEN $1 - t.since >= 60000 OR t.since > $1 OR t.count = ${most}::int THEN $1 ELSE t.since END
    RETURNING count`;

/** Every statement of the path of a message, by name; each is prepared once a connection. */
const texts = {
  target: 'SELECT target, seal FROM moves WHERE old = $1',
  /** $1 chat → its row, followed over a move, and the memory there. */
  load: `SELECT target, seal, revision, sealed
    FROM (SELECT $1::bytea AS old) AS asked
    LEFT JOIN moves ON moves.old = asked.old
    LEFT JOIN memories ON memories.chat = coalesce(target, asked.old)`,
  insert,
  update,
  insertAndMark: andMark(insert),
  updateAndMark: andMark(update),
  mark: `UPDATE claims SET chat = $1, reply = $2, is_done = $3
    WHERE update_id = $4 AND run = $5 AND NOT is_done`,
  forgetClaims: `UPDATE claims SET chat = NULL, question = NULL, answer = NULL, reply = NULL
    WHERE chat = $1 OR chat IN (SELECT old FROM moves WHERE target = $1)`,
  /** $1 chat, $2 the day from which it is to go, or NULL. */
  leave: `UPDATE memories SET drop_day = $2
    WHERE chat = (SELECT coalesce((SELECT target FROM moves WHERE old = $1), $1))`,
  remove: 'DELETE FROM memories WHERE chat = $1',
  unmove: 'DELETE FROM moves WHERE target = $1',
  take: `INSERT INTO claims (update_id, run, at) VALUES ($1, $2, $3) ON CONFLICT DO NOTHING`,
  /** $1 update, $2 run, $3 now, $4 the time before which a claim is free. */
  retake: `WITH former AS (SELECT run FROM claims WHERE update_id = $1 FOR UPDATE)
    UPDATE claims SET run = $2, at = $3 FROM former
    WHERE update_id = $1 AND NOT is_done
      AND (claims.run <= 0 OR at <= $4 OR CASE WHEN claims.run <> $2 THEN ${isGone('claims.run')} END)
    RETURNING reply, former.run AS former`,
  taken: 'SELECT is_done, answer FROM claims WHERE update_id = $1',
  finish: `UPDATE claims SET is_done = true, reply = NULL, chat = coalesce($2, chat),
      question = coalesce($3, question), answer = coalesce($4, answer)
    WHERE update_id = $1`,
  release: 'UPDATE claims SET run = $3 WHERE update_id = $1 AND run = $2 AND NOT is_done',
  answerTo: `SELECT answer FROM claims WHERE chat = $1 AND question = $2 AND answer IS NOT NULL
    ORDER BY at DESC, update_id DESC LIMIT 1`,
  answersIn: 'SELECT answer FROM claims WHERE chat = $1 AND answer IS NOT NULL',
  due: 'SELECT update_id FROM claims WHERE reply IS NOT NULL AND NOT is_done ORDER BY at, update_id',
  tally: tallied('$2', '$3'),
  tallyBoth: `WITH one AS (${tallied('$2', '$3')}),
      within AS (${tallied('$4', '$5', 'FROM one WHERE count <= $3')})
    SELECT one.count, (SELECT count FROM within) AS within FROM one`,
  pruneTallies: 'DELETE FROM tallies WHERE $1 - since >= 60000',
  pruneClaims: 'DELETE FROM claims WHERE at < $1',
  pruneChats: 'DELETE FROM memories WHERE saved_day < $1',
  /** $1 today → the chats that go, with their former ids. */
  pruneLeft: `WITH gone AS (DELETE FROM memories WHERE drop_day <= $1 RETURNING chat),
      moved AS (DELETE FROM moves WHERE target IN (SELECT chat FROM gone))
    SELECT chat FROM gone`,
  pruneMoves: 'DELETE FROM moves WHERE moved_day < $1 AND target NOT IN (SELECT chat FROM memories)',
} as const;

/** A statement with its inputs, in the order of their numbers. */
export const sql = (name: keyof typeof texts, ...values: unknown[]): QueryConfig => ({
  name,
  text: texts[name],
  values,
});
