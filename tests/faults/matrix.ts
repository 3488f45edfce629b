import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Update } from 'grammy/types';
import { present } from '#basics/present.ts';
import { findServer } from '../memory/postgres-server.ts';
import { answersIn } from './answers.ts';
import { readBooks } from './books.ts';
import { crowdOf, judgeCrowd } from './crowd.ts';
import { makeDatabase } from './database.ts';
import { type Point, points } from './points.ts';
import { freePort, type Run, start } from './process.ts';
import { type Talk, talkOf } from './talk.ts';
import { Telegram } from './telegram.ts';

type Way = 'polling' | 'webhook';

/** What one kill did. */
interface Outcome {
  readonly point: Point;
  readonly isReached: boolean;
  readonly faults: readonly string[];
}

interface Column {
  readonly name: string;
  readonly outcomes: readonly Outcome[];
  readonly updates: number;
  readonly faults: readonly string[];
}

/** A point that is not reached by then never will be, however busy the machine is (ms). */
const reachWithinMs = 30_000;
/** Messages that come while one process lives, from so many chats at once. */
const perLife = 12;
const chatsAtOnce = 6;

/**
 * The talks of all lives, and what happens in each life: two turns each of six chats. The chats begin their talks one
 * life after the other, two by two, so that each life has a bit of everything.
 */
async function script(lives: number): Promise<{ talks: Talk[]; happen: Talk['updates'][] }> {
  const talks: Talk[] = [];
  const turnsEach = 6;
  const count = Math.ceil((lives * perLife) / turnsEach / chatsAtOnce) * chatsAtOnce;
  for (let n = 0; n < count; n++) talks.push(await talkOf(n));
  const happen = Array.from({ length: lives }, (_, life) =>
    [0, 1].flatMap(second =>
      Array.from({ length: chatsAtOnce }, (__, chat) => {
        const since = life - Math.floor(chat / 2);
        const talk = talks[Math.floor(since / 3) * chatsAtOnce + chat];
        return since < 0 ? [] : present(present(talk).updates[(since % 3) * 2 + second]);
      }).flat(),
    ),
  );
  // Telegram numbers updates as they happen.
  for (const [i, update] of happen.flat().entries()) update.update_id = 10_000 + 100 * i;
  const heard = new Set(happen.flat());
  return { talks: talks.map(talk => cutTo(talk, talk.updates.filter(one => heard.has(one)).length)), happen };
}

const cutTo = (talk: Talk, count: number): Talk => ({
  chat: talk.chat,
  updates: talk.updates.slice(0, count),
  texts: talk.texts.slice(0, count),
  memories: talk.memories.slice(0, count + 1),
});

async function column(way: Way, url: string, name: string, hasCrowd: boolean): Promise<Column> {
  const folder = mkdtempSync(join(tmpdir(), 'faults-'));
  const telegram = await new Telegram().start();
  telegram.isWebhook = way === 'webhook';
  const mine = points.filter(point => point.only === undefined || point.only === way);
  const { talks, happen } = await script(mine.length + 1);
  const database = url === 'sqlite' ? `sqlite:${join(folder, 'memory.db')}` : url;
  const port = await freePort();
  const outcomes: Outcome[] = [];
  const crowd: Update[] = [];
  const withCrowd = (updates: Talk['updates']): Talk['updates'] => {
    if (!hasCrowd || updates.length === 0) return updates;
    const others = crowdOf(present(updates[0]).update_id - 60);
    crowd.push(...others);
    return [...others, ...updates];
  };
  const hook = {
    WEBHOOK_URL: `http://127.0.0.1:${port}/hook`,
    WEBHOOK_SECRET: 'a-secret-of-at-least-32-characters',
    PORT: String(port),
  };
  const live = (life: number, fault?: string, sql = '', isWaiting = false): Run =>
    start(
      folder,
      {
        TELEGRAM_API_ROOT: telegram.root(`life${life}`),
        DATABASE_URL: database,
        FAULT_SQL: sql,
        FAULT_WAITS: isWaiting ? 'yes' : 'no',
        ...(way === 'webhook' && hook),
      },
      fault,
    );
  try {
    for (const [life, point] of mine.entries()) {
      const sql = 'tap' in point ? point.sql?.[url === 'sqlite' ? 'sqlite' : 'postgres'] : undefined;
      const run = live(life, 'tap' in point ? point.tap : '', sql, point.isStart !== true);
      const isReached = await killAt(telegram, run, point, withCrowd(present(happen[life])));
      const books = await readBooks(database, talks);
      const faults = [...books.faults];
      if (books.heard.some(state => state < 0)) faults.push('a memory is none of those it may be');
      if (!isReached) faults.push(`never came to this point: ${run.log().trim().split('\n').at(-1) ?? ''}`);
      outcomes.push({ point, isReached, faults });
    }
    for (const update of withCrowd(present(happen.at(-1)))) telegram.happen(update);
    const last = live(mine.length);
    const faults: string[] = [];
    await telegram
      .until(() => telegram.open === 0, 'all confirmed', 20_000)
      .catch(e => faults.push(e.message));
    last.child.kill('SIGTERM');
    if ((await last.ended) !== 0) faults.push('the last process did not stop with 0');
    faults.push(
      ...judge(telegram, talks),
      ...judgeCrowd(telegram.said, crowd),
      ...(await end(database, talks)),
    );
    return { name, outcomes, updates: happen.flat().length + crowd.length, faults };
  } finally {
    await telegram.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Lets a process finish what the one before left, then lets messages come, and kills it at the point.
 * @returns whether it came there
 */
async function killAt(
  telegram: Telegram,
  run: Run,
  point: Point,
  updates: Talk['updates'],
): Promise<boolean> {
  let isReached = 'tap' in point;
  const late = setTimeout(() => {
    isReached = false;
    run.child.kill('SIGKILL');
  }, reachWithinMs);
  if (point.isStart !== true) {
    await telegram.until(() => telegram.open === 0, 'the rest done').catch(() => undefined);
    // One that ended before it could be armed is told as what it is: the point was never reached.
    const armed = once(run.child, 'message').catch(() => undefined);
    run.child.send('arm', () => undefined);
    await Promise.race([armed, run.ended]);
  }
  let left = 'event' in point ? point.nth : 0;
  const before = telegram.said.length;
  telegram.watch(event => {
    if ('event' in point && event === point.event && --left === 0) isReached = run.child.kill('SIGKILL');
    if (!('stop' in point) || isReached || telegram.said.length < before + updates.length / 2) return;
    isReached = run.child.kill('SIGTERM');
    setTimeout(() => run.child.kill('SIGKILL'), 2);
  });
  for (const update of updates) telegram.happen(update);
  const how = await run.ended;
  clearTimeout(late);
  telegram.watch(undefined);
  return isReached && (how === 'SIGKILL' || 'stop' in point);
}

/** Every question answered once, in its chat's order, with the right words; and every edit of one likewise. */
function judge(telegram: Telegram, talks: readonly Talk[]): string[] {
  const wrong = new Set<string>();
  const answersTo = answersIn(telegram.said);
  const place = new Map(telegram.said.map((one, i) => [one, i]));
  for (const talk of talks) {
    let last = -1;
    for (const [turn, text] of talk.texts.entries()) {
      const said = answersTo(talk, turn);
      if (said.length === 0) wrong.add('a question was lost');
      if (said.length > 1) wrong.add('an answer came twice');
      if (said.some(one => one.text !== text)) wrong.add('an answer is not what it should be');
      const at = said[0] === undefined ? last : present(place.get(said[0]));
      if (at < last) wrong.add('answers came in the wrong order');
      last = at;
    }
  }
  return [...wrong];
}

async function end(database: string, talks: readonly Talk[]): Promise<string[]> {
  const books = await readBooks(database, talks);
  const isWhole = books.heard.every((state, i) => state === present(talks[i]).updates.length);
  return isWhole ? [] : ['a memory is not what an undisturbed bot would have kept'];
}

interface Job {
  readonly way: Way;
  readonly store: 'sqlite' | 'postgres';
  readonly hasCrowd: boolean;
}

const nameOf = ({ way, store, hasCrowd }: Job): string => `${way}, ${store}${hasCrowd ? ', crowd' : ''}`;
/** All columns, or the one that FAULT_COLUMN names ("webhook, postgres, crowd"). */
const isWanted = (name: string): boolean => [undefined, '', name].includes(process.env.FAULT_COLUMN);

/** Kills the real program at each point, by polling and by webhook, on both stores. @returns whether all is well */
export async function matrix(): Promise<boolean> {
  const server = await findServer();
  const began = performance.now();
  const ways: [Way, 'sqlite' | 'postgres'][] = [
    ['polling', 'sqlite'],
    ['webhook', 'sqlite'],
    ['polling', 'postgres'],
    ['webhook', 'postgres'],
  ];
  // Each alone, and each behind a backlog of others who write in private.
  const all = [false, true].flatMap(hasCrowd => ways.map(([way, store]) => ({ way, store, hasCrowd })));
  const jobs = all.filter(job => isWanted(nameOf(job)));
  const columns: Column[] = [];
  try {
    if (typeof server === 'string') throw new Error(`no PostgreSQL: ${server}`);
    // Two at a time: the machine has the time while a process starts.
    for (const pair of [0, 2, 4, 6].map(i => jobs.slice(i, i + 2)).filter(two => two.length > 0))
      columns.push(
        ...(await Promise.all(
          pair.map(async job => {
            const { way, store, hasCrowd } = job;
            const url = store === 'sqlite' ? store : await makeDatabase(server.url);
            return column(way, url, nameOf(job), hasCrowd);
          }),
        )),
      );
  } finally {
    if (typeof server !== 'string') await server.stop();
  }
  return print(columns, (performance.now() - began) / 1000);
}

function print(columns: readonly Column[], seconds: number): boolean {
  const cell = (column: Column, point: Point): string => {
    const outcome = column.outcomes.find(one => one.point === point);
    if (outcome === undefined) return '–';
    return outcome.faults.length > 0 ? 'FAULT' : 'ok';
  };
  const line = (...words: string[]) => console.log(words.map((word, i) => word.padEnd(i ? 26 : 46)).join(''));
  console.log('\nCrash matrix: killed with SIGKILL at each point, with six chats talking');
  line('killed when', ...columns.map(column => column.name));
  for (const point of points) line(point.what, ...columns.map(column => cell(column, point)));
  const kills = columns.flatMap(column => column.outcomes).filter(one => one.isReached).length;
  const updates = columns.reduce((sum, column) => sum + column.updates, 0);
  const faults = columns.flatMap(column => [
    ...column.faults.map(fault => `${column.name}: ${fault}`),
    ...column.outcomes.flatMap(one => one.faults.map(fault => `${column.name}, ${one.point.what}: ${fault}`)),
  ]);
  for (const fault of faults) console.log(`  FAULT ${fault}`);
  console.log(
    `${kills} kills, ${updates} questions and edits, ${seconds.toFixed(0)} s: ${faults.length === 0 ? '0 lost, 0 twice, 0 wrong memories, 0 out of order' : `${faults.length} faults`}`,
  );
  return faults.length === 0;
}
