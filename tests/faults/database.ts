import pg from 'pg';

let made = 0;

/** A new, empty database on a server. @returns its address */
export async function makeDatabase(server: string): Promise<string> {
  const name = `faults_${process.pid}_${++made}`;
  const client = new pg.Client({ connectionString: server });
  await client.connect();
  await client.query(`CREATE DATABASE ${name}`).finally(() => client.end());
  const url = new URL(server);
  url.pathname = `/${name}`;
  return url.href;
}
