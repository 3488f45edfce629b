// Loaded into the real program before its first file (`node --import`): kills it with SIGKILL at one step of its
// store. FAULT is "STEP WHEN NTH", such as "save after 4": after the fourth save was carried out. The program's own
// files are as they always are.

import { DatabaseSync } from 'node:sqlite';
import { present } from '#basics/present.ts';

type Method = (this: unknown, ...args: unknown[]) => Promise<unknown>;

const [step = '', when = '', nth = '1'] = (process.env.FAULT ?? '').split(' ');
const isPostgres = process.env.DATABASE_URL?.startsWith('postgres') === true;
let left = Number(nth);
/** Steps at the start count from the first; all others from when the word to count comes. */
let isArmed = process.env.FAULT_WAITS !== 'yes';
process.once('message', () => {
  isArmed = true;
  process.send?.('armed');
});
process.channel?.unref();

const die = (): void => {
  process.kill(process.pid, 'SIGKILL');
};
const isNow = (): boolean => isArmed && --left === 0;

/** Kills before the step, after it, or while it is on its way to the database. */
function tapStore(prototype: Record<string, Method>): void {
  const method = prototype[step];
  if (method === undefined) return;
  prototype[step] = async function (...args) {
    const isHere = isNow();
    if (isHere && when === 'before') die();
    const working = method.apply(this, args);
    if (isHere && when === 'during') setImmediate(die);
    const result = await working;
    if (isHere && when === 'after') die();
    return result;
  };
}

/** Kills with a chat's lock in the hand. */
function tapLock(prototype: Record<string, Method>): void {
  const withLock = present(prototype.withLock);
  prototype.withLock = async function (chat, work) {
    const result = await withLock.call(this, chat, () => {
      if (when === 'in' && isNow()) die();
      return (work as () => Promise<unknown>)();
    });
    if (when === 'after' && isNow()) die();
    return result;
  };
}

/** Kills inside SQLite's own transactions: `exec` is told the words that begin and end them. */
function tapSql(word: string): void {
  const exec = DatabaseSync.prototype.exec;
  DatabaseSync.prototype.exec = function (sql) {
    if (when === 'before' && sql.startsWith(word) && isNow()) die();
    exec.call(this, sql);
    if (when === 'after' && sql.startsWith(word) && isNow()) die();
  };
}

/** The same for PostgreSQL, on any connection: once the statement is on its way. */
async function tapQuery(word: string): Promise<void> {
  const { default: pg } = await import('pg');
  const prototype = pg.Client.prototype as unknown as { query: (...args: unknown[]) => unknown };
  const query = prototype.query;
  prototype.query = function (...args) {
    const given = args[0] as string | { text: string };
    const isHere = (typeof given === 'string' ? given : given.text).trimStart().startsWith(word) && isNow();
    if (isHere && when === 'before') die();
    const result = query.apply(this, args);
    if (isHere) setImmediate(die);
    return result;
  };
}

if (step === 'sql') {
  const word = process.env.FAULT_SQL ?? '';
  if (isPostgres) await tapQuery(word);
  else tapSql(word);
} else if (step !== '') {
  const { PostgresStore } = await import('#memory/postgres/store.ts');
  const { SqliteStore } = await import('#memory/sqlite/store.ts');
  const prototype = (isPostgres ? PostgresStore : SqliteStore).prototype as unknown as Record<string, Method>;
  if (step === 'lock') tapLock(prototype);
  else tapStore(prototype);
}
