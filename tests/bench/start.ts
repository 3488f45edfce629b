import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { present } from '#basics/present.ts';
import { read, root } from '../house/source.ts';
import { fakeApi } from './fake-api.ts';
import { median, round, type Section, times } from './measure.ts';

const wait = (ms: number) => new Promise(resolve => setTimeout(resolve, ms));

/** Resident memory of a process, MB. */
const residentMb = (pid: number): number =>
  Number(execFileSync('ps', ['-o', 'rss=', '-p', String(pid)], { encoding: 'utf8' })) / 1024;

/** What `npm start` runs, word by word, after "node"; a path of ours is made whole. */
const startWords = (JSON.parse(read('package.json')) as { scripts: { start: string } }).scripts.start
  .replace(/^node /, '')
  .split(' ')
  .map(word => (word.startsWith('src/') ? join(root, word) : word));

/** Starts a bot in a new folder against a new fake API: ms to its first answer, MB when idle after it. */
async function once(words: readonly string[]): Promise<{ ms: number; mb: number }> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const api = await fakeApi('fridge 1.2A, 100Ah, 3 days?');
  const began = performance.now();
  const child = spawn(process.execPath, words, {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'inherit'],
    env: {
      PATH: process.env.PATH,
      BOT_TOKEN: `1:${'bench'.repeat(7)}`,
      TELEGRAM_API_ROOT: api.root,
      DATABASE_URL: 'sqlite:memory.db',
      LOG_LEVEL: 'error',
    },
  });
  const exit = new Promise<void>(resolve => child.once('exit', () => resolve()));
  try {
    const failed = exit.then(() => Promise.reject(new Error(`${words.join(' ')} ended before it answered`)));
    const late = wait(20_000).then(() =>
      Promise.reject(new Error(`${words.join(' ')} did not answer in 20 s`)),
    );
    failed.catch(() => {});
    late.catch(() => {});
    const ms = (await Promise.race([api.firstSent, failed, late])) - began;
    await wait(2500);
    return { ms, mb: residentMb(present(child.pid)) };
  } finally {
    child.kill('SIGTERM');
    await Promise.race([exit, wait(4000).then(() => child.kill('SIGKILL'))]);
    await api.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Start to first answer and idle memory, beside the barest grammY bot, started in turn. */
export async function starting(rounds: number): Promise<Section> {
  const scripts = { ours: startWords, bare: [join(root, 'tests/bench/bare-bot.ts')] } as const;
  await once(scripts.ours);
  const runs = { ours: [] as { ms: number; mb: number }[], bare: [] as { ms: number; mb: number }[] };
  for (let i = 0; i < rounds; i++)
    for (const name of ['ours', 'bare'] as const) runs[name].push(await once(scripts[name]));
  const of = (name: 'ours' | 'bare', what: 'ms' | 'mb') => median(runs[name].map(run => run[what]));
  const [start, memory] = [of('ours', 'ms') / of('bare', 'ms'), of('ours', 'mb') / of('bare', 'mb')];
  return {
    title: `As a Telegram bot, started ${rounds} times in turn with a bare grammY bot`,
    lines: [
      { what: 'start to first answer, ms', value: round(of('ours', 'ms')) },
      { what: 'the bare bot, ms', value: round(of('bare', 'ms')) },
      { what: 'start against the bare bot', value: times(start), goal: '≤ 1.8 ×', isMet: start <= 1.8 },
      { what: 'memory when idle, MB', value: round(of('ours', 'mb')) },
      { what: 'the bare bot, MB', value: round(of('bare', 'mb')) },
      { what: 'memory against the bare bot', value: times(memory), goal: '≤ 1.5 ×', isMet: memory <= 1.5 },
    ],
  };
}
