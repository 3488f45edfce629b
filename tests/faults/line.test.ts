import { once } from 'node:events';
import { createServer, type Server, type Socket } from 'node:net';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { VolatileStore } from '#memory/volatile/store.ts';
import { createBot } from '#telegram/updates/bot.ts';
import { parrot, silent } from '../telegram/fake/bot.ts';
import { message, nowSec, update } from '../telegram/fake/people.ts';
import { me, token } from '../telegram/fake/world.ts';

let server: Server;
let root: string;
/** How many messages the server read; that the bot is typing is none. */
let calls = 0;
/** What the server does with its next call on a connection that it knows. */
let next: 'answer' | 'reset before reading' | 'reset after reading' = 'answer';

const body = JSON.stringify({
  ok: true,
  result: { message_id: 1, date: 0, chat: { id: 1, type: 'private' } },
});
const reply = `HTTP/1.1 200 OK\r\ncontent-type: application/json\r\ncontent-length: ${body.length}\r\n\r\n${body}`;

function serve(socket: Socket): void {
  socket.on('error', () => undefined);
  let call = '';
  socket.on('data', data => {
    call += data.toString();
    // A call's body may come in a piece of its own; it ends with its JSON.
    if (!call.trimEnd().endsWith('}')) return;
    const isMessage = call.includes('/sendMessage');
    call = '';
    if (!isMessage) return void socket.write(reply);
    const how = next;
    next = 'answer';
    if (how !== 'reset before reading') calls++;
    if (how === 'answer') socket.write(reply);
    else socket.resetAndDestroy();
  });
}

beforeEach(async () => {
  calls = 0;
  next = 'answer';
  server = createServer(serve).listen(0, '127.0.0.1');
  await once(server, 'listening');
  root = `http://127.0.0.1:${(server.address() as { port: number }).port}`;
});
afterEach(() => {
  vi.restoreAllMocks();
  server.close();
});

/** Asks two questions with a time between; the second finds the first one's connection idle. */
async function askTwice(idleMs: number, how: typeof next): Promise<void> {
  const bot = createBot(
    { token, apiRoot: root, isPaced: false },
    { converse: parrot, store: new VolatileStore(), log: silent, now: () => nowSec * 1000 },
    { botInfo: me },
  );
  await bot.handleUpdate(update({ message: message('/power fridge') as never }));
  expect(calls).toBe(1);
  const later = performance.now() + idleMs;
  vi.spyOn(performance, 'now').mockImplementation(() => later);
  next = how;
  await bot.handleUpdate(update({ message: message('/power lights') as never }));
}

describe('a connection that breaks', () => {
  test('as the server ends it for idleness: the call was not read, and goes out again', async () => {
    await askTwice(5000, 'reset before reading');
    expect(calls).toBe(2);
  });
  test('in use: the call may have been carried out, and is not repeated', async () => {
    await askTwice(10, 'reset after reading');
    expect(calls).toBe(2);
  });
});
