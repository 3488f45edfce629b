import { run } from '@grammyjs/runner';
import { Bot } from 'grammy';
import { present } from '#basics/present.ts';

// The least that a grammY bot can be that takes updates side by side: the baseline.
const bot = new Bot(present(process.env.BOT_TOKEN), {
  client: { apiRoot: present(process.env.TELEGRAM_API_ROOT) },
});
bot.on('message:text', context => context.reply(context.message.text));
await bot.init();
const runner = run(bot);
process.once('SIGTERM', () => void runner.stop());
