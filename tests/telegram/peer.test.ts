import { once } from 'node:events';
import { createRequire } from 'node:module';
import { type AddressInfo, createServer } from 'node:net';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { poll } from '#telegram/ops/poll.ts';
import { createBot } from '#telegram/updates/bot.ts';
import { silent } from './fake/bot.ts';

/**
 * One smoke test against a fake Bot API that somebody else wrote (npm: telegram-test-api): that what we take for
 * granted of Telegram is not only what our own fake grants. It knows nine methods and checks next to nothing, so
 * all else is tested on our own.
 */
interface Peer {
  readonly config: { readonly apiURL: string };
  start(): Promise<void>;
  stop(): Promise<boolean>;
  getClient(token: string, options: object): Client;
}
interface Client {
  makeMessage(text: string): object;
  makeCommand(text: string): object;
  sendMessage(message: object): Promise<unknown>;
  sendCommand(message: object): Promise<unknown>;
  getUpdates(): Promise<{ readonly result: readonly { readonly message: { readonly text: string } }[] }>;
}

// It is written for require, and the class is all it gives.
const Server = createRequire(import.meta.url)('telegram-test-api') as new (config: object) => Peer;
const token = '123456789:abcdefghijklmnopqrstuvwxyz_ABCDE-12';

/** A port that nobody listens on: the peer wants to be told one. */
async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
}

let peer: Peer;
beforeEach(async () => {
  peer = new Server({ port: await freePort(), host: '127.0.0.1' });
  await peer.start();
});
afterEach(() => peer.stop());

test('the bot polls it, answers a command and a plain message, and stops', async () => {
  const deps = { converse, store: new VolatileStore(), log: silent, now: Date.now };
  const bot = createBot({ token, apiRoot: peer.config.apiURL }, deps);
  // It doesn't hold a poll without updates: without a pause there would be a thousand a second.
  bot.api.config.use(async (prev, method, payload, signal) => {
    if (method === 'getUpdates') await new Promise(resolve => setTimeout(resolve, 20));
    return prev(method, payload, signal);
  });
  const client = peer.getClient(token, { timeout: 5000, interval: 20 });
  const running = poll(bot, silent, { timeoutSec: 1 });
  try {
    await client.sendCommand(client.makeCommand('/power 60W in amps at 12V'));
    expect((await client.getUpdates()).result[0]?.message.text).toMatch(/^60 W .* 5 A/);
    await client.sendMessage(client.makeMessage('how long will 100Ah AGM run a fridge averaging 1.5A?'));
    expect((await client.getUpdates()).result[0]?.message.text).toMatch(/^It lasts about 33 hours/);
  } finally {
    await running.stop();
  }
});
