import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { isDeepStrictEqual } from 'node:util';
import pg from 'pg';
import { present } from '#basics/present.ts';
import { openStore } from '#memory/open.ts';
import { key } from './process.ts';
import type { Talk } from './talk.ts';

/** What the database holds while no process runs on it. */
export interface Books {
  /** Updates noted as answered. */
  readonly done: ReadonlySet<number>;
  /** How many messages of each talk its memory has taken in, -1 where it is none of the states it may be in. */
  readonly heard: readonly number[];
  /** What is wrong with the whole: a damaged file, an unreadable memory. */
  readonly faults: readonly string[];
}

async function heard(url: string, talks: readonly Talk[], faults: string[]): Promise<number[]> {
  const store = await openStore(url, { key });
  try {
    const counts: number[] = [];
    for (const { chat, memories } of talks) {
      const { memory } = await store.load(String(chat));
      counts.push(memories.findLastIndex(one => isDeepStrictEqual(one, memory)));
    }
    return counts;
  } catch (error) {
    faults.push(String(error));
    return talks.map(() => -1);
  } finally {
    await store.close();
  }
}

/** Reads a copy, so that the next process finds what the dead one left: a log not yet taken into the file. */
async function readSqlite(path: string, talks: readonly Talk[]): Promise<Books> {
  const folder = mkdtempSync(join(tmpdir(), 'books-'));
  const copy = join(folder, 'memory.db');
  try {
    for (const end of ['', '-wal']) if (existsSync(path + end)) cpSync(path + end, copy + end);
    if (!existsSync(copy)) return { done: new Set(), heard: talks.map(() => 0), faults: [] };
    const faults: string[] = [];
    const states = await heard(`sqlite:${copy}`, talks, faults);
    const db = new DatabaseSync(copy);
    const check = db.prepare('PRAGMA integrity_check').all();
    if (check.length !== 1 || Object.values(present(check[0]))[0] !== 'ok')
      faults.push('the file is damaged');
    const rows = db.prepare('SELECT update_id FROM claims WHERE is_done = 1').all();
    db.close();
    return { done: new Set(rows.map(row => Number(row.update_id))), heard: states, faults };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Waits until the server has noticed that the process is gone, and has ended what was on its way. */
async function readPostgres(url: string, talks: readonly Talk[]): Promise<Books> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    for (;;) {
      const sql = "SELECT count(*)::int AS n FROM pg_stat_activity WHERE application_name = 'billywatt'";
      if ((await client.query(sql)).rows[0].n === 0) break;
      await new Promise(resolve => setTimeout(resolve, 5));
    }
    const faults: string[] = [];
    const states = await heard(url, talks, faults);
    const { rows } = await client.query('SELECT update_id FROM billywatt.claims WHERE is_done');
    return { done: new Set(rows.map(row => Number(row.update_id))), heard: states, faults };
  } finally {
    await client.end();
  }
}

export const readBooks = (url: string, talks: readonly Talk[]): Promise<Books> =>
  url.startsWith('sqlite:') ? readSqlite(url.slice('sqlite:'.length), talks) : readPostgres(url, talks);
