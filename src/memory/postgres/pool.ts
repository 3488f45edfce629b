import { Client, type ClientConfig, Pool, type PoolClient } from 'pg';
import { ClaimLost, Damaged, StaleRevision, StoreFailed } from '#conversation/memory-store.ts';
import { migrationsAfter } from '../migrations.ts';

const migrations = new URL('./migrations/', import.meta.url);

/** Any fixed number: two instances that start at once migrate one after the other. */
const migrationLock = 0x42576d31;

/**
 * Whether it may be over when it is tried again: the line broke, or by class of SQLSTATE (PostgreSQL, appendix A) the
 * server has no room or connections (53), was stopped (57), or its system failed (58).
 */
const isPassing = (code: string | undefined): boolean =>
  code === undefined || !/^[0-9A-Z]{5}$/.test(code) || /^(08|40|53|55|57|58)/.test(code);

/** One clear line for what the driver or the server reports; never the address's user or password. */
export const explain = (error: unknown): Error => {
  if (error instanceof StaleRevision || error instanceof ClaimLost || error instanceof Damaged) return error;
  const { message, code, errors } = error as Error & { code?: string; errors?: Error[] };
  // A refused connection to a name with several addresses comes without a message of its own.
  const reason = message || errors?.[0]?.message || code || 'no reason given';
  const Kind = isPassing(code) ? StoreFailed : Error;
  return new Kind(`the memory on PostgreSQL: ${reason.split('\n')[0]}`, { cause: error });
};

/** Settings of every connection to this server. Times in ms. */
export const settings = (url: string, schema: string): ClientConfig => ({
  connectionString: url,
  options: `-c search_path=${schema}`,
  application_name: 'billywatt',
  keepAlive: true,
  connectionTimeoutMillis: 5000,
  statement_timeout: 15_000,
  query_timeout: 20_000,
  idle_in_transaction_session_timeout: 20_000,
});

/** A pool whose idle connections may break without ending the process: the next query connects anew. */
export const makePool = (config: ClientConfig, max: number): Pool => {
  const pool = new Pool({ ...config, max, idleTimeoutMillis: 30_000 });
  pool.on('error', () => undefined);
  return pool;
};

export const connect = async (config: ClientConfig): Promise<Client> => {
  const client = new Client(config);
  client.on('error', () => undefined);
  await client.connect();
  return client;
};

/** Runs the work as one transaction: all of it or nothing. */
export const together = async <T>(pool: Pool, work: (client: PoolClient) => Promise<T>): Promise<T> => {
  const client = await pool.connect();
  let broken: Error | undefined;
  try {
    await client.query('BEGIN');
    const result = await work(client);
    await client.query('COMMIT');
    return result;
  } catch (error) {
    await client.query('ROLLBACK').catch(failure => {
      broken = failure;
    });
    throw error;
  } finally {
    client.release(broken);
  }
};

/** Makes the schema or brings it up to date. @throws Error when it is from a newer program */
export const migrate = (pool: Pool, schema: string): Promise<void> =>
  together(pool, async client => {
    await client.query('SELECT pg_advisory_xact_lock($1)', [migrationLock]);
    await client.query(`CREATE SCHEMA IF NOT EXISTS ${schema}`);
    await client.query('CREATE TABLE IF NOT EXISTS migrations (number integer PRIMARY KEY)');
    const { rows } = await client.query('SELECT coalesce(max(number), 0) AS applied FROM migrations');
    for (const { number, sql } of migrationsAfter(rows[0].applied, migrations)) {
      await client.query(sql);
      await client.query('INSERT INTO migrations (number) VALUES ($1)', [number]);
    }
  });
