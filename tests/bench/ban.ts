import { type Running, start } from './bot.ts';
import { startWords } from './child.ts';
import { median, quantile, round, type Section, times } from './measure.ts';

const wait = (ms: number) => new Promise(resolve => setTimeout(resolve, ms));

const others = 50;
const banSec = 90;
/** A stretch is short, so that a slow moment of the machine meets both kinds alike (s). */
const stretchSec = 5;
/** The banned one asks with each so manieth message of the others: every 2 s. */
const askEvery = 100;
const askedAStretch = Math.ceil((stretchSec * 50) / askEvery);
/** Chats of the measurement; the banned one is none of them. */
const banned = 900_000_001;
let nextChat = 500_000_001;

/** Fifty chats ask by turns, one message every 20 ms; the banned one asks too, where told. */
async function stretch(bot: Running, isBanned: boolean): Promise<number[]> {
  const first = nextChat;
  nextChat += others;
  bot.api.tookMs.length = 0;
  const began = performance.now();
  for (let i = 0; i < stretchSec * 50; i++) {
    const late = began + i * 20 - performance.now();
    if (late > 0) await wait(late);
    bot.api.ask(1, first + (i % others));
    bot.asked++;
    // No more than one person may ask a minute.
    if (isBanned && i % askEvery === 0) bot.api.ask(1, banned);
  }
  await bot.answered();
  return [...bot.api.tookMs];
}

/** One chat in a ban of 90 s: what the others notice of it, in stretches with and without its questions. */
export async function banOfOne(): Promise<Section> {
  const bot = await start(startWords);
  try {
    await stretch(bot, false);
    const ban = { untilMs: performance.now() + banSec * 1000, refused: 0 };
    bot.api.bans.set(banned, ban);
    // Of each stretch its own, and of these the middle one: what else the machine does is no ban's.
    const p99 = { with: [] as number[], without: [] as number[] };
    let asked = 0;
    while (performance.now() < ban.untilMs - stretchSec * 2500) {
      p99.without.push(quantile(await stretch(bot, false), 0.99));
      p99.with.push(quantile(await stretch(bot, true), 0.99));
      asked += askedAStretch;
    }
    const [calm, held] = [median(p99.without), median(p99.with)];
    bot.asked += asked;
    await Promise.race([bot.api.answered(bot.asked), wait(banSec * 1000)]);
    const isAll = await Promise.race([
      bot.api.answered(bot.asked).then(() => true),
      wait(0).then(() => false),
    ]);
    const ratio = held / calm;
    return {
      title: `One chat in a ban of ${banSec} s, ${others} others asking 50 messages a second`,
      lines: [
        { what: 'the others without its questions: 99 % within, ms', value: round(calm) },
        { what: 'with them', value: round(held) },
        { what: 'against without', value: times(ratio), goal: '≤ 1.3 ×', isMet: ratio <= 1.3 },
        { what: 'calls into the ban', value: round(ban.refused), goal: '1', isMet: ban.refused === 1 },
        {
          what: `its ${asked} questions answered after it`,
          value: isAll ? 'all' : 'not all',
          goal: 'all',
          isMet: isAll,
        },
      ],
    };
  } finally {
    await bot.stop();
  }
}
