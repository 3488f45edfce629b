import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { present } from '#basics/present.ts';
import { script } from '../deploy/script.ts';
import { findServer } from '../memory/postgres-server.ts';
import { answersIn } from './answers.ts';
import { readBooks } from './books.ts';
import { makeDatabase } from './database.ts';
import { type Run, start } from './process.ts';
import { type Talk, talkOf } from './talk.ts';
import { Telegram } from './telegram.ts';

const chats = 6;
const withinMs = 120_000;
/** What `deploy/backup.sh` needs for PostgreSQL; not every machine has it. */
const copyTool = 'pg_dump';

/** The first turns of all talks, or the others, in the order of asking. */
const part = (talks: readonly Talk[], isFirst: boolean) => {
  const half = present(talks[0]).updates.length / 2;
  const turns = Array.from({ length: half }, (_, i) => (isFirst ? i : half + i));
  return turns.flatMap(i => talks.map(talk => present(talk.updates[i])));
};

/**
 * The real program is asked, copied while it runs, asked on, and loses all; the copy is put back elsewhere, and it goes
 * on from there. @returns what is wrong
 */
async function drill(first: string, second: string, folder: string): Promise<string[]> {
  const telegram = await new Telegram().start();
  const faults: string[] = [];
  const talks: Talk[] = [];
  for (let n = 0; n < chats; n++) talks.push(await talkOf(n));
  for (const [i, update] of [...part(talks, true), ...part(talks, false)].entries())
    update.update_id = 10_000 + i;
  const runs: Run[] = [];
  const run = (database: string): Run => {
    runs.push(start(folder, { TELEGRAM_API_ROOT: telegram.root('bot'), DATABASE_URL: database }));
    return present(runs.at(-1));
  };
  const tell = async (isFirst: boolean) => {
    for (const update of part(talks, isFirst)) telegram.happen(update);
    await telegram.until(() => telegram.open === 0, 'all confirmed', withinMs);
  };
  const operate = async (name: 'backup.sh' | 'restore.sh', database: string) => {
    const { code, err } = await script(name, [join(folder, 'copy')], folder, { DATABASE_URL: database });
    if (code !== 0) faults.push(`${name}: ${err}`);
  };
  try {
    const before = run(first);
    await tell(true);
    await operate('backup.sh', first);
    await tell(false);
    before.child.kill('SIGTERM');
    if ((await before.ended) !== 0) faults.push('the first process did not stop with 0');
    await operate('restore.sh', second);
    const books = await readBooks(second, talks);
    const half = present(talks[0]).updates.length / 2;
    if (books.heard.some(state => state !== half)) faults.push('a memory is not that of the copy');
    const said = telegram.said.length;
    const after = run(second);
    // Telegram hands out all of it once more: what the copy has is done, the rest is answered as it was.
    await tell(true);
    if (telegram.said.length > said) faults.push('what the copy has as answered was answered again');
    await tell(false);
    const answers = answersIn(telegram.said.slice(said));
    for (const talk of talks)
      for (const [turn, text] of talk.texts.entries()) {
        const told = answers(talk, turn).at(-1)?.text;
        // An edit puts into the answer what it was edited to before all was lost: nothing changes.
        const isThere = told === undefined && talk.updates[turn]?.edited_message !== undefined;
        if (turn >= half && told !== text && !isThere)
          faults.push(`asked on after it: ${told?.split('\n')[0]}`);
      }
    after.child.kill('SIGTERM');
    if ((await after.ended) !== 0) faults.push('the second process did not stop with 0');
    return faults;
  } finally {
    for (const { child } of runs) child.kill('SIGKILL');
    await telegram.stop();
  }
}

/** Copies and restores a running bot's memory, of both stores, with the scripts of `deploy/`. @returns whether all is well */
export async function drills(): Promise<boolean> {
  console.log('\nRestore drill: copied while it runs, all lost, put back elsewhere, asked on');
  const server = await findServer();
  let isWell = true;
  const tried = async (what: string, urls: (folder: string) => Promise<[string, string]>) => {
    const folder = mkdtempSync(join(tmpdir(), 'drill-'));
    try {
      const faults = await drill(...(await urls(folder)), folder);
      isWell &&= faults.length === 0;
      console.log(
        `  ${what.padEnd(12)} ${faults.length === 0 ? 'all as it was' : `FAULT ${faults.join('; ')}`}`,
      );
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  };
  try {
    await tried('SQLite', async folder => [
      `sqlite:${join(folder, 'memory.db')}`,
      `sqlite:${join(folder, 'elsewhere.db')}`,
    ]);
    const has = spawnSync(copyTool, ['--version']).status === 0;
    if (typeof server === 'string' || !has)
      console.log(`  PostgreSQL   not tried: ${has ? server : `no ${copyTool}`}`);
    else
      await tried('PostgreSQL', async () => [await makeDatabase(server.url), await makeDatabase(server.url)]);
  } finally {
    if (typeof server !== 'string') await server.stop();
  }
  return isWell;
}
