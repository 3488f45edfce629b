import { join } from 'node:path';
import { present } from '#basics/present.ts';
import { root } from '../house/source.ts';
import { launch, residentMb, startWords } from './child.ts';
import { fakeApi } from './fake-api.ts';
import { median, round, type Section, times } from './measure.ts';

const wait = (ms: number) => new Promise(resolve => setTimeout(resolve, ms));

/** Starts a bot in a new folder against a new fake API: ms to its first answer, MB when idle after it. */
async function once(words: readonly string[]): Promise<{ ms: number; mb: number }> {
  const api = await fakeApi('fridge 1.2A, 100Ah, 3 days?');
  const began = performance.now();
  const child = launch(words, { TELEGRAM_API_ROOT: api.root });
  try {
    const ms = (await child.during(api.firstSent, 20_000)) - began;
    await wait(2500);
    return { ms, mb: residentMb(present(child.process.pid)) };
  } finally {
    await child.stop();
    await api.close();
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
