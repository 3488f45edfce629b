import nock from 'nock';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { VolatileStore } from '#memory/volatile/store.ts';
import { makeLog } from '#src/log.ts';
import { createBot } from '#telegram/updates/bot.ts';
import { parrot, silent } from './fake/bot.ts';
import { group, message, nowSec, update } from './fake/people.ts';
import { me, token } from './fake/world.ts';

const host = 'https://api.telegram.org';
const path = `/bot${token}/sendMessage`;
const sentMessage = { message_id: 9, date: 1, chat: group, text: 'x' };

const bot = (log = silent, isPaced = true) =>
  createBot(
    { token, isPaced },
    { converse: parrot, store: new VolatileStore(), log, now: () => nowSec * 1000 },
    { botInfo: me },
  );

beforeEach(() => nock.disableNetConnect());
afterEach(() => {
  nock.cleanAll();
  nock.enableNetConnect();
});

test('sendMessage goes over the wire as the Bot API wants it', async () => {
  let body: Record<string, unknown> = {};
  nock(host)
    .post(path, given => {
      body = given;
      return true;
    })
    .reply(200, { ok: true, result: sentMessage });
  const question = message('/power fridge _*[`');
  await bot().handleUpdate(update({ message: question as never }));
  expect(body).toEqual({
    chat_id: group.id,
    text: 'Answer to Sam: fridge _*[`\nfirst',
    entities: [{ type: 'bold', offset: 0, length: 26 }],
    reply_parameters: { message_id: question.message_id, allow_sending_without_reply: true },
    reply_markup: expect.objectContaining({ inline_keyboard: expect.any(Array) }),
    link_preview_options: { is_disabled: true },
  });
});

test('what is logged of a broken connection holds no token', async () => {
  const lines: string[] = [];
  const log = makeLog('trace', { write: line => void lines.push(line) });
  const broken = `request to ${host}${path} failed, reason: socket hang up`;
  nock(host).post(path).times(2).replyWithError(broken);
  // After the first it looks whether the answer arrived.
  const none = { ok: false, error_code: 400, description: 'Bad Request: message to edit not found' };
  nock(host).post(path.replace('sendMessage', 'editMessageText')).times(2).reply(400, none);
  await bot(log, false)
    .handleUpdate(update({ message: message('/power secretword') as never }))
    .catch(error => log.error({ err: error }, 'an update failed'));
  expect(nock.isDone()).toBe(true);
  const text = lines.join('');
  expect(text).toContain('the line to Telegram broke');
  expect(text).toContain('bot[token]');
  expect(text).not.toContain(token);
  expect(text).not.toContain(token.split(':')[1]);
  expect(text).not.toMatch(/secretword|Sam/);
});
