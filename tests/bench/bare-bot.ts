import { Bot } from 'grammy';

// The least that a grammY bot can be: the baseline for start and memory.
const bot = new Bot(process.env.BOT_TOKEN!, { client: { apiRoot: process.env.TELEGRAM_API_ROOT! } });
bot.on('message:text', context => context.reply(context.message.text));
process.once('SIGTERM', () => void bot.stop());
await bot.start();
