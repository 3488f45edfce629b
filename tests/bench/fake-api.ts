import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface FakeApi {
  readonly root: string;
  /** Resolves with the time (performance.now) at which the first message was sent. */
  readonly firstSent: Promise<number>;
  close(): Promise<void>;
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  let text = '';
  for await (const part of request) text += String(part);
  return text;
}

const chat = { id: 7, type: 'private', first_name: 'Kim' };

/** Just enough of a Bot API on loopback for one message to be fetched and answered, by long polling. */
export async function fakeApi(text: string): Promise<FakeApi> {
  const date = Math.floor(Date.now() / 1000);
  const from = { id: 7, is_bot: false, first_name: 'Kim' };
  let waiting = [{ update_id: 1, message: { message_id: 1, date, chat, from, text } }];
  let sent: (at: number) => void = () => {};
  const firstSent = new Promise<number>(resolve => {
    sent = resolve;
  });
  const answers: Record<string, () => unknown> = {
    getMe: () => ({ id: 1, is_bot: true, first_name: 'Bench', username: 'bench_bot', can_join_groups: true }),
    getUpdates: () => {
      const updates = waiting;
      waiting = [];
      return updates;
    },
    getWebhookInfo: () => ({ url: '', has_custom_certificate: false, pending_update_count: 0 }),
  };
  const server = createServer(async (request: IncomingMessage, response: ServerResponse) => {
    const method = request.url?.split('/').at(-1)?.split('?')[0] ?? '';
    await bodyOf(request);
    if (method.startsWith('send') && method !== 'sendChatAction') sent(performance.now());
    const result =
      answers[method]?.() ??
      (method.startsWith('send') && method !== 'sendChatAction'
        ? { message_id: 2, date, chat, text: 'x' }
        : true);
    // Long polling: an empty answer waits, as Telegram's does, though not for half a minute.
    const delay = method === 'getUpdates' && (result as unknown[]).length === 0 ? 1000 : 0;
    setTimeout(() => {
      if (response.destroyed) return;
      response.setHeader('content-type', 'application/json');
      response.end(JSON.stringify({ ok: true, result }));
    }, delay);
  });
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve));
  return {
    root: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    firstSent,
    close: () =>
      new Promise(resolve => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
