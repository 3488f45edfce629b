import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { present } from '#basics/present.ts';
import { quantile } from '../bench/measure.ts';
import { findServer } from '../memory/postgres-server.ts';
import { answersIn } from './answers.ts';
import { Balancer } from './balancer.ts';
import { readBooks } from './books.ts';
import { makeDatabase } from './database.ts';
import { freePort, type Run, start } from './process.ts';
import { type Talk, talkOf } from './talk.ts';
import { type Said, Telegram } from './telegram.ts';

const chats = 500;
/** Six turns, so often: 18 a chat, and two more from the next round. */
const perChat = 20;
const withinMs = 170_000;

/** Which claims each process ended, by the number that the store knows it by. */
async function enders(url: string): Promise<Map<number, number>> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    const { rows } = await client.query('SELECT update_id, run FROM billywatt.claims WHERE is_done');
    return new Map(rows.map(row => [Number(row.update_id), Number(row.run)]));
  } finally {
    await client.end();
  }
}

const most = (numbers: readonly number[]): number | undefined => {
  const counts = new Map<number, number>();
  for (const number of numbers) counts.set(number, (counts.get(number) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
};

interface Tally {
  lost: number;
  outOfOrder: number;
  wrongWords: number;
  /** Sent by the killed process, which had not noted it. */
  stated: number;
  /** Any other second answer. */
  unstated: number;
}

function tally(
  talks: readonly Talk[],
  said: readonly Said[],
  killed: string,
  ended: Map<number, number>,
): Tally {
  const all: Tally = { lost: 0, outOfOrder: 0, wrongWords: 0, stated: 0, unstated: 0 };
  const of = answersIn(said);
  const place = new Map(said.map((one, i) => [one, i]));
  const alone = talks.flatMap(talk =>
    talk.updates.filter((_, i) => of(talk, i).length === 1 && present(of(talk, i)[0]).by === killed),
  );
  const killedRun = most(alone.map(({ update_id }) => ended.get(update_id) ?? 0));
  for (const talk of talks) {
    let last = -1;
    for (const [i, { update_id }] of talk.updates.entries()) {
      const answers = of(talk, i);
      if (answers.length === 0) all.lost++;
      if (answers.some(({ text }) => text !== talk.texts[i])) all.wrongWords++;
      for (const one of answers.slice(0, -1)) {
        const isStated = one.by === killed && ended.get(update_id) !== killedRun;
        if (isStated) all.stated++;
        else all.unstated++;
      }
      const at = answers[0] === undefined ? last : present(place.get(answers[0]));
      if (at < last) all.outOfOrder++;
      last = at;
    }
  }
  return all;
}

/**
 * Three webhook processes on one PostgreSQL behind a load balancer take 10,000 messages of 500 chats; one is killed
 * and comes back, another is restarted in good order. @returns whether nothing was lost, out of order or said twice
 */
export async function instances(): Promise<boolean> {
  const server = await findServer();
  if (typeof server === 'string') {
    console.log(`three instances: no PostgreSQL: ${server}`);
    return false;
  }
  const folder = mkdtempSync(join(tmpdir(), 'faults-'));
  const telegram = await new Telegram().start();
  telegram.isWebhook = true;
  const url = await makeDatabase(server.url);
  const ports = [await freePort(), await freePort(), await freePort()];
  const balancer = await new Balancer(ports).start();
  const runs: Run[] = [];
  const names = ['one', 'two', 'three', 'one again', 'two again'];
  const run = (i: number): Run => {
    const port = String(ports[i % 3]);
    const env = {
      TELEGRAM_API_ROOT: telegram.root(present(names[i]).replace(' ', '-')),
      DATABASE_URL: url,
      WEBHOOK_URL: `http://127.0.0.1:${balancer.port}/hook`,
      WEBHOOK_SECRET: 'a-secret-of-at-least-32-characters',
      PORT: port,
    };
    runs.push(start(folder, env));
    return present(runs.at(-1));
  };
  try {
    const talks: Talk[] = [];
    for (let n = 0; n < chats; n++) talks.push(await talkOf(n, Math.ceil(perChat / 6), perChat));
    const turns = Array.from({ length: perChat }, (_, i) =>
      talks.map(talk => present(talk.updates[i])),
    ).flat();
    for (const [i, update] of turns.entries()) update.update_id = 10_000 + i;
    for (const i of [0, 1, 2]) run(i);
    await telegram.until(() => telegram.hook.url !== undefined, 'the webhook set');
    while (balancer.ready < 3) await new Promise(resolve => setTimeout(resolve, 50));
    const began = performance.now();
    for (const update of turns) telegram.happen(update);
    const part = (share: number) => () => telegram.hook.open <= turns.length * (1 - share);
    await telegram.until(part(0.25), 'a quarter', withinMs);
    present(runs[0]).child.kill('SIGKILL');
    await telegram.until(part(0.4), 'two fifths', withinMs);
    run(3);
    await telegram.until(part(0.6), 'three fifths', withinMs);
    present(runs[1]).child.kill('SIGTERM');
    const restarted = await present(runs[1]).ended;
    run(4);
    await telegram.until(() => telegram.open === 0, 'all taken', withinMs).catch(() => undefined);
    const seconds = (performance.now() - began) / 1000;
    while (balancer.ready < 3) await new Promise(resolve => setTimeout(resolve, 50));
    const live = runs.slice(2);
    for (const { child } of live) child.kill('SIGTERM');
    const exits = [restarted, ...(await Promise.all(live.map(({ ended }) => ended)))];
    const books = await readBooks(url, talks);
    const memories = books.heard.filter((state, i) => state !== present(talks[i]).updates.length).length;
    const all = tally(talks, telegram.said, 'one', await enders(url));
    const logged = runs.flatMap(one => errorsOf(one.log()));
    return print(all, { logged, updates: turns.length, seconds, memories, exits, telegram });
  } finally {
    for (const { child } of runs) child.kill('SIGKILL');
    await balancer.stop();
    await telegram.stop();
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The kinds of errors in a log, as one line each. */
function errorsOf(log: string): string[] {
  return log.split('\n').flatMap(line => {
    if (!line.startsWith('{"level":50')) return [];
    const { msg, origin, err } = JSON.parse(line);
    const cause = err?.causes?.at(-1) ?? err;
    return [`${msg} (${origin ?? ''} ${cause?.type} ${cause?.code ?? ''} ${cause?.message})`];
  });
}

interface Rest {
  /** What the processes logged as errors. */
  readonly logged: readonly string[];
  readonly updates: number;
  readonly seconds: number;
  /** Chats whose memory is not that of an undisturbed bot. */
  readonly memories: number;
  readonly exits: readonly (number | string)[];
  readonly telegram: Telegram;
}

function print(all: Tally, { updates, seconds, memories, exits, telegram, logged }: Rest): boolean {
  const { tookMs, statuses } = telegram.hook;
  const ms = (share: number) => Math.round(quantile(tookMs, share));
  const isWell = all.lost + all.outOfOrder + all.wrongWords + all.unstated + memories === 0;
  const isStopped = exits.every(code => code === 0);
  console.log(`
Three webhook instances on one PostgreSQL, one killed and started again, one restarted in good order
  updates                              ${updates} over ${chats} chats in ${seconds.toFixed(0)} s (${Math.round(updates / seconds)}/s)
  lost                                 ${all.lost}
  out of order in their chat           ${all.outOfOrder}
  answers with other words             ${all.wrongWords}
  memories that differ                 ${memories}
  twice: sent by the killed one, unnoted ${all.stated}
  twice otherwise                      ${all.unstated}
  from first call to taken             median ${ms(0.5)} ms, 99 % ${ms(0.99)} ms, most ${ms(1)} ms
  answers to Telegram's calls          ${[...statuses].map(([status, count]) => `${status}: ${count}`).join(', ')}
  stopped with                         ${exits.join(', ')}`);
  for (const [line, of] of Map.groupBy(logged, one => one))
    console.log(`  logged ${of.length} times: ${line}`);
  return isWell && isStopped;
}
