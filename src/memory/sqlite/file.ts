import { closeSync, mkdirSync, openSync } from 'node:fs';
import { dirname } from 'node:path';
import { DatabaseSync, type SQLOutputValue } from 'node:sqlite';
import { StoreFailed } from '#conversation/memory-store.ts';
import { migrationsAfter } from '../migrations.ts';

/** Marks our files ("BWm1"), so that another program's database is never taken for one. */
const applicationId = 0x42576d31;

const migrations = new URL('./migrations/', import.meta.url);

/** An open database file and the lock that keeps other processes out of it. */
export interface File {
  readonly db: DatabaseSync;
  close(): void;
}

const busy = 5;
const readOnly = 8;
const ioFailed = 10;
const corrupt = 11;
const full = 13;
const notADatabase = 26;

/** One clear line for what SQLite reports. */
export const explain = (error: unknown, path: string): Error => {
  const { errcode, message } = error as Error & { errcode?: number };
  if (errcode === undefined) return error as Error;
  const primary = errcode & 0xff;
  const why =
    primary === busy
      ? 'is in use by another process: stop that one first'
      : primary === corrupt || primary === notADatabase
        ? 'is damaged or no SQLite file; nothing was changed: restore a backup or move it away'
        : primary === full
          ? "can't grow: the disk is full"
          : `failed: ${message}`;
  const Kind = isPassing.has(primary) ? StoreFailed : Error;
  return new Kind(`the memory in ${path} ${why}`, { cause: error });
};

/** What may be over when it is tried again. */
const isPassing: ReadonlySet<number> = new Set([busy, readOnly, ioFailed, full]);

const first = (db: DatabaseSync, sql: string): SQLOutputValue | undefined =>
  Object.values(db.prepare(sql).get() ?? {})[0];

/** Runs the work as one transaction: all of it or nothing. */
export const together = <T>(db: DatabaseSync, work: () => T): T => {
  db.exec('BEGIN IMMEDIATE');
  try {
    const result = work();
    db.exec('COMMIT');
    return result;
  } catch (error) {
    if (db.isTransaction) db.exec('ROLLBACK');
    throw error;
  }
};

/** Looks before anything is written: is this ours, whole, and not from a newer program? */
const inspect = (db: DatabaseSync): number => {
  const owner = first(db, 'PRAGMA application_id');
  const isEmpty = first(db, 'SELECT count(*) FROM sqlite_schema') === 0;
  if (owner !== applicationId && !(isEmpty && owner === 0))
    throw new Error("is another program's database; nothing was changed");
  const health = first(db, 'PRAGMA quick_check(1)');
  if (health !== 'ok') throw Object.assign(new Error(String(health)), { errcode: corrupt });
  return Number(first(db, 'PRAGMA user_version'));
};

const migrate = (db: DatabaseSync, applied: number): void => {
  for (const { number, sql } of migrationsAfter(applied, migrations)) {
    together(db, () => {
      db.exec(sql);
      db.exec(`PRAGMA user_version = ${number}; PRAGMA application_id = ${applicationId}`);
    });
  }
};

/**
 * Opens or makes the file (mode 0600). One process at a time: an empty file beside it is held locked, which
 * ends with the process however it dies, and leaves backups free to read the database.
 *
 * Write-ahead log. With synchronous NORMAL a killed process loses nothing; a power cut may take back the
 * last moments, but never half a save. `isFull` syncs each commit, so a power cut loses nothing either.
 * @throws Error in one line
 */
export const openFile = (path: string, isFull: boolean, busyMs: number): File => {
  let lock: DatabaseSync | undefined;
  let db: DatabaseSync | undefined;
  try {
    mkdirSync(dirname(path), { recursive: true });
    lock = new DatabaseSync(`${path}-lock`, { timeout: busyMs });
    lock.exec('PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE');
    closeSync(openSync(path, 'a', 0o600));
    db = new DatabaseSync(path, { timeout: busyMs });
    const applied = inspect(db);
    const mode = first(db, 'PRAGMA journal_mode = WAL');
    if (mode !== 'wal') throw new Error(`its folder can't hold a write-ahead log (${mode})`);
    db.exec(`PRAGMA synchronous = ${isFull ? 'FULL' : 'NORMAL'}; PRAGMA secure_delete = ON`);
    migrate(db, applied);
    const [held, opened] = [lock, db];
    return {
      db,
      close() {
        opened.close();
        held.close();
      },
    };
  } catch (error) {
    db?.close();
    lock?.close();
    const { errcode, code } = error as NodeJS.ErrnoException & { errcode?: number };
    if (errcode !== undefined) throw explain(error, path);
    const what = (error as Error).message;
    throw new Error(
      code ? `the memory in ${path} can't be opened (${code})` : `the memory in ${path}: ${what}`,
    );
  }
};
