import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface FloodApi {
  readonly root: string;
  /** Puts messages up for the next calls: each of a chat of its own. @param from the first chat's id */
  ask(count: number, from: number): void;
  /** Settles when so many answers came since the start. */
  answered(count: number): Promise<void>;
  /** ms from each message being put up to its answer. */
  readonly tookMs: number[];
  /** Chats in a ban (429), each until that moment of `performance.now()`, and how many calls each refused. */
  readonly bans: Map<number, { readonly untilMs: number; refused: number }>;
  /** How long Telegram takes over a call, in ms. */
  latencyMs: number;
  /** Puts one update up, its number aside. */
  put(update: object): void;
  /** Hears each call but those for updates, and may say what comes back of it. */
  onCall?: (method: string, body: string) => object | undefined;
  close(): Promise<void>;
}

const me = { id: 1, is_bot: true, first_name: 'Bench', username: 'bench_bot', can_join_groups: true };
const ok = (result: unknown): string => `{"ok":true,"result":${JSON.stringify(result)}}`;

async function bodyOf(request: IncomingMessage): Promise<string> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts).toString();
}

/** What carries an answer: a trip's comes as a picture. */
const answers: ReadonlySet<string> = new Set(['sendMessage', 'sendPhoto', 'sendRichMessage']);

/** A Bot API on loopback for many messages at once, by long polling; it costs as little as it can. */
export async function floodApi(texts: readonly string[]): Promise<FloodApi> {
  let queue: object[] = [];
  let update = 0;
  let sent = 0;
  let isWaited: ((updates: object[]) => void) | undefined;
  /** When each chat's messages were put up that have no answer yet. */
  const asked = new Map<number, number[]>();
  const goals: { count: number; done: () => void }[] = [];
  const tookMs: number[] = [];
  const sentReply = ok({ message_id: 2, date: 0, chat: { id: 1, type: 'private' }, text: 'x' });

  const updates = async (body: string): Promise<object[]> => {
    const { offset = 0, limit = 100 } =
      body === '' ? {} : (JSON.parse(body) as { offset?: number; limit?: number });
    let done = 0;
    while (done < queue.length && (queue[done] as { update_id: number }).update_id < offset) done++;
    queue = queue.slice(done);
    if (queue.length > 0) return queue.slice(0, limit);
    return new Promise(resolve => {
      isWaited = resolve;
      setTimeout(() => resolve([]), 1000).unref();
    });
  };
  const bans: FloodApi['bans'] = new Map();
  /** The refusal that a send gets in a ban. */
  const flooded = (body: string): string | undefined => {
    const ban = bans.get(Number(/"chat_id":(-?\d+)/.exec(body)?.[1]));
    const left = ban === undefined ? 0 : Math.ceil((ban.untilMs - performance.now()) / 1000);
    if (ban === undefined || left <= 0) return undefined;
    ban.refused++;
    return `{"ok":false,"error_code":429,"description":"Too Many Requests: retry after ${left}","parameters":{"retry_after":${left}}}`;
  };
  const noteSent = (body: string): void => {
    sent++;
    const chat = Number(/"chat_id":(-?\d+)/.exec(body)?.[1]);
    const waiting = asked.get(chat);
    const at = waiting?.shift();
    if (at !== undefined) tookMs.push(performance.now() - at);
    if (waiting?.length === 0) asked.delete(chat);
    for (const goal of goals.filter(({ count }) => count <= sent)) {
      goals.splice(goals.indexOf(goal), 1);
      goal.done();
    }
  };
  const serve = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const method = request.url?.split('/').at(-1)?.split('?')[0] ?? '';
    const body = await bodyOf(request);
    let answer = ok(true);
    if (method === 'getMe') answer = ok(me);
    else if (method === 'getUpdates') answer = ok(await updates(body));
    else if (api.onCall !== undefined) {
      const result = api.onCall(method, body);
      if (answers.has(method)) noteSent(body);
      answer = ok(result ?? true);
    } else if (answers.has(method)) {
      const refusal = flooded(body);
      if (refusal === undefined) noteSent(body);
      answer = refusal ?? sentReply;
    }
    const end = () => {
      response.setHeader('content-type', 'application/json');
      response.end(answer);
    };
    if (api.latencyMs > 0 && method !== 'getUpdates') setTimeout(end, api.latencyMs);
    else end();
  };
  const server = createServer((request, response) => void serve(request, response));
  // A line ended for idleness just as a bot writes into it is reset, and ends a bot that asks nothing again: the bare
  // one is idle for about as long as Node's 5 s while the other has its turn.
  server.keepAliveTimeout = 0;
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve));
  const api: FloodApi = {
    root: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    tookMs,
    bans,
    latencyMs: 0,
    put: one => {
      queue.push({ update_id: ++update, ...one });
      isWaited?.(queue.slice(0, 100));
      isWaited = undefined;
    },
    ask: (count, from) => {
      const date = Math.floor(Date.now() / 1000);
      for (let i = 0; i < count; i++) {
        const id = from + i;
        const person = { id, is_bot: false, first_name: 'Kim' };
        const chat = { id, type: 'private', first_name: 'Kim' };
        const message = { message_id: 1, date, chat, from: person, text: texts[i % texts.length] };
        queue.push({ update_id: ++update, message });
        asked.set(id, [...(asked.get(id) ?? []), performance.now()]);
      }
      isWaited?.(queue.slice(0, 100));
      isWaited = undefined;
    },
    answered: count =>
      new Promise(resolve => {
        if (sent >= count) resolve();
        else goals.push({ count, done: resolve });
      }),
    close: () =>
      new Promise(resolve => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
  return api;
}
