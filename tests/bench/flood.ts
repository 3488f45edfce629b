import { type Running, start } from './bot.ts';
import { startWords } from './child.ts';
import { median, quantile, round, type Section, times } from './measure.ts';

const wait = (ms: number) => new Promise(resolve => setTimeout(resolve, ms));

const rounds = 3;
const others = 50;
const seconds = 10;
/** The others ask once in so many ms, by turns; the flooder writes so often meanwhile. */
const everyMs = 20;
const perOne = 2;
const mostStopMs = 2000;
let nextChat = 600_000_001;

/** One message of a chat's only person, of which no time is taken. */
function put(bot: Running, id: number, messageId: number): void {
  const person = { id, is_bot: false, first_name: 'Kim' };
  const chat = { id, type: 'private', first_name: 'Kim' };
  const date = Math.floor(Date.now() / 1000);
  const text = 'fridge 1.2A, 100Ah, 3 days?';
  bot.api.put({ message: { message_id: messageId, date, chat, from: person, text } });
}

/** The others ask for ten seconds, where told beside a flood. @returns ms to each of their answers */
async function stretch(bot: Running, isFlooded: boolean): Promise<number[]> {
  const first = nextChat;
  nextChat += others + 1;
  const count = (seconds * 1000) / everyMs;
  bot.api.tookMs.length = 0;
  const began = performance.now();
  for (let i = 0; i < count; i++) {
    const late = began + i * everyMs - performance.now();
    if (late > 0) await wait(late);
    if (isFlooded) for (let n = 0; n < perOne; n++) put(bot, first + others, perOne * i + n + 1);
    bot.api.ask(1, first + (i % others));
  }
  const all = async (): Promise<void> => {
    while (bot.api.tookMs.length < count) await wait(20);
  };
  await bot.during(all(), 60_000).catch(() => undefined);
  return [...bot.api.tookMs];
}

/** One person writes a thousand messages in ten seconds: what others notice of it, and how a stop in the midst ends. */
export async function floodOfOne(): Promise<Section> {
  const bot = await start(startWords);
  try {
    await stretch(bot, false);
    const p99 = { with: [] as number[], without: [] as number[] };
    let unanswered = 0;
    for (let i = 0; i < rounds; i++)
      for (const name of ['without', 'with'] as const) {
        const took = await stretch(bot, name === 'with');
        unanswered += (seconds * 1000) / everyMs - took.length;
        p99[name].push(quantile(took, 0.99));
      }
    const ratio = median(p99.with) / median(p99.without);
    for (let i = 0; i < 200; i++) put(bot, nextChat, i + 1);
    const { how, ms } = await bot.stop();
    return {
      title: `One person writes ${(seconds * 1000 * perOne) / everyMs} messages in ${seconds} s, ${others} others ask ${1000 / everyMs} a second`,
      lines: [
        { what: 'the others without it: 99 % within, ms', value: round(median(p99.without)) },
        { what: 'with it', value: round(median(p99.with)) },
        { what: 'against without', value: times(ratio), goal: '≤ 1.5 ×', isMet: ratio <= 1.5 },
        { what: 'of theirs unanswered', value: String(unanswered), goal: '0', isMet: unanswered === 0 },
        {
          what: 'told to stop in the midst of one, it ended with',
          value: how,
          goal: '0',
          isMet: how === '0',
        },
        { what: 'after, ms', value: round(ms), goal: `≤ ${mostStopMs}`, isMet: ms <= mostStopMs },
      ],
    };
  } finally {
    await bot.stop();
  }
}
