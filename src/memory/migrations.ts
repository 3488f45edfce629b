import { readdirSync, readFileSync } from 'node:fs';

/** A change of tables: plain SQL in `NNN-what.sql`, applied once, in order, never edited after a release. */
export interface Migration {
  readonly number: number;
  readonly sql: string;
}

/**
 * The migrations of a folder that come after the given number.
 * @param applied the last one applied, 0 for an empty database
 * @throws Error when the database is ahead of the program
 */
export const migrationsAfter = (applied: number, folder: URL): Migration[] => {
  const all = readdirSync(folder)
    .filter(name => /^\d{3}-.*\.sql$/.test(name))
    .sort()
    .map(name => ({ number: Number(name.slice(0, 3)), sql: readFileSync(new URL(name, folder), 'utf8') }));
  const newest = all.at(-1)?.number ?? 0;
  if (applied > newest)
    throw new Error(`its tables have version ${applied}, this program knows up to ${newest}: update it`);
  return all.filter(one => one.number > applied);
};
