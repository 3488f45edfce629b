import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { present } from '#basics/present.ts';
import { read, root } from '../house/source.ts';
import { type FloodApi, floodApi } from './flood-api.ts';
import { median, quantile, round, type Section, times } from './measure.ts';
import { mixed } from './mixed.ts';

const wait = (ms: number) => new Promise(resolve => setTimeout(resolve, ms));

/** What `npm start` runs, after "node"; a path of ours is made whole. */
export const startWords = (JSON.parse(read('package.json')) as { scripts: { start: string } }).scripts.start
  .replace(/^node /, '')
  .split(' ')
  .map(word => (word.startsWith('src/') ? join(root, word) : word));

export interface Running {
  readonly child: ChildProcess;
  readonly api: FloodApi;
  readonly folder: string;
  /** How many answers were asked for so far. */
  asked: number;
  stop(): Promise<void>;
}

/** CPU time of a process so far, s (Linux: its ticks are hundredths). */
function cpuSec(pid: number): number {
  const fields = present(
    execFileSync('cat', [`/proc/${pid}/stat`], { encoding: 'utf8' }).split(') ')[1],
  ).split(' ');
  return (Number(fields[11]) + Number(fields[12])) / 100;
}
/** Resident memory of a process, MB. */
export const residentMb = (pid: number): number =>
  Number(execFileSync('ps', ['-o', 'rss=', '-p', String(pid)], { encoding: 'utf8' })) / 1024;

export async function start(words: readonly string[], texts = mixed): Promise<Running> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const api = await floodApi(texts);
  const child = spawn(process.execPath, words, {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'inherit'],
    env: {
      PATH: process.env.PATH,
      BOT_TOKEN: `1:${'bench'.repeat(7)}`,
      TELEGRAM_API_ROOT: api.root,
      DATABASE_URL: 'sqlite:memory.db',
      MEMORY_KEY: 'ab'.repeat(32),
      LOG_LEVEL: 'error',
      // Telegram's own limits would be all there is to measure.
      SEND_PACE: 'off',
    },
  });
  const exit = new Promise<void>(resolve => child.once('exit', () => resolve()));
  const stop = async () => {
    child.kill('SIGTERM');
    await Promise.race([exit, wait(4000).then(() => child.kill('SIGKILL'))]);
    await api.close();
    rmSync(folder, { recursive: true, force: true });
  };
  const running: Running = { child, api, folder, asked: 0, stop };
  // The first answers compile; they are not measured.
  await ask(running, 300);
  return running;
}

let nextChat = 1;

/** Puts messages of new chats up at once and waits for the answers. @returns answers a second, CPU ms each */
async function ask(bot: Running, count: number): Promise<{ perSec: number; cpuMs: number }> {
  const [began, cpu] = [performance.now(), cpuSec(present(bot.child.pid))];
  bot.api.ask(count, nextChat);
  nextChat += count;
  bot.asked += count;
  await bot.api.answered(bot.asked);
  const seconds = (performance.now() - began) / 1000;
  return { perSec: count / seconds, cpuMs: ((cpuSec(present(bot.child.pid)) - cpu) * 1000) / count };
}

/** One message every 10 ms for so many seconds. @returns the 99th percentile of the time to the answer, ms */
async function steady(bot: Running, seconds: number): Promise<{ p50: number; p99: number }> {
  bot.api.tookMs.length = 0;
  const began = performance.now();
  for (let i = 0; i < seconds * 100; i++) {
    const late = began + i * 10 - performance.now();
    if (late > 0) await wait(late);
    bot.api.ask(1, nextChat++);
    bot.asked++;
  }
  await bot.api.answered(bot.asked);
  return { p50: quantile(bot.api.tookMs, 0.5), p99: quantile(bot.api.tookMs, 0.99) };
}

const chatsForMemory = 20_000;
/** Until a process at rest has given back what it needed for the rush. */
const restMs = 12_000;

/** The whole bot beside the barest grammY bot that echoes, on the same API, in turn. */
export async function wholeBot(rounds = 5): Promise<Section> {
  const bots = { ours: await start(startWords), bare: await start([join(root, 'tests/bench/bare-bot.ts')]) };
  type Name = keyof typeof bots;
  const runs: Record<Name, { perSec: number; cpuMs: number; p50: number; p99: number }[]> = {
    ours: [],
    bare: [],
  };
  try {
    await wait(restMs);
    const idleMb = residentMb(present(bots.ours.child.pid));
    for (let i = 0; i < rounds; i++)
      for (const name of ['ours', 'bare'] as const)
        runs[name].push({ ...(await ask(bots[name], 1500)), ...(await steady(bots[name], 2)) });
    const far: Record<Name, number> = { ours: 0, bare: 0 };
    for (const name of ['ours', 'bare'] as const) {
      bots[name].api.latencyMs = 50;
      far[name] = (await ask(bots[name], 1000)).perSec;
      bots[name].api.latencyMs = 0;
    }
    await bots.bare.stop();
    for (let left = chatsForMemory - bots.ours.asked; left > 0; left -= 5000)
      await ask(bots.ours, Math.min(left, 5000));
    await wait(restMs);
    const fullMb = residentMb(present(bots.ours.child.pid));
    const fileMb = statSync(join(bots.ours.folder, 'memory.db')).size / 1e6;
    const of = (name: Name, what: 'perSec' | 'cpuMs' | 'p50' | 'p99') =>
      median(runs[name].map(run => run[what]));
    const [rate, cpu, late, grown] = [
      of('ours', 'perSec') / of('bare', 'perSec'),
      of('ours', 'cpuMs') / of('bare', 'cpuMs'),
      of('ours', 'p99') / of('bare', 'p99'),
      fullMb / idleMb,
    ];
    return {
      title: 'The whole bot with SQLite, by polling, beside a bare grammY bot that echoes',
      lines: [
        { what: 'messages in the set, trips and turns among them', value: String(mixed.length) },
        { what: 'answers a second, all at once', value: round(of('ours', 'perSec')) },
        { what: 'the bare bot', value: round(of('bare', 'perSec')) },
        { what: 'against the bare bot', value: times(rate), goal: '≥ 0.35 ×', isMet: rate >= 0.35 },
        { what: 'CPU an answer, ms', value: round(of('ours', 'cpuMs')) },
        { what: 'the bare bot', value: round(of('bare', 'cpuMs')) },
        { what: 'against the bare bot', value: times(cpu), goal: '≤ 3.5 ×', isMet: cpu <= 3.5 },
        { what: 'at 100 messages a second: median to the answer, ms', value: round(of('ours', 'p50')) },
        { what: 'the bare bot', value: round(of('bare', 'p50')) },
        { what: '99 % within, ms', value: round(of('ours', 'p99')) },
        { what: 'the bare bot', value: round(of('bare', 'p99')) },
        { what: 'against the bare bot', value: times(late), goal: '≤ 3 ×', isMet: late <= 3 },
        { what: 'answers a second with Telegram 50 ms away', value: round(far.ours) },
        { what: 'the bare bot', value: round(far.bare) },
        { what: 'memory when idle, MB', value: round(idleMb) },
        { what: `after ${chatsForMemory.toLocaleString('en-AU')} chats, MB`, value: round(fullMb) },
        { what: 'against idle', value: times(grown), goal: '≤ 2 ×', isMet: grown <= 2 },
        { what: 'its file then, MB', value: round(fileMb) },
      ],
    };
  } finally {
    for (const bot of Object.values(bots)) await bot.stop().catch(() => undefined);
  }
}
