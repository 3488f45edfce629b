import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { Message, Update } from 'grammy/types';
import { Refusal } from '../telegram/fake/rules.ts';
import { Watch } from '../telegram/fake/watch.ts';
import { type Payload, World } from '../telegram/fake/world.ts';
import { Hook } from './hook.ts';

/** A message of the bot as it went into a chat, or as it was changed there. */
export interface Said {
  readonly chat: number;
  /** The message that it replies to. */
  readonly question: number;
  readonly text: string;
  readonly isEdit: boolean;
  /** Which process said it: the first part of the path that it calls. */
  readonly by: string;
}

/** What can be watched for, in the order of a message's life. */
export type Event =
  | 'getMe arrives'
  | 'webhook set or dropped'
  | 'updates handed out'
  | 'confirmation arrives'
  | 'send arrives'
  | 'send carried out'
  | 'send answered'
  | 'edit arrives'
  | 'edit carried out'
  | 'webhook answers';

/**
 * A Bot API on loopback that plays Telegram's part when things die: it hands out what is not confirmed again and
 * again, calls webhooks chat by chat until they take it, and tells a watcher of each step, so that a process can be
 * killed right there.
 */
export class Telegram {
  readonly world = new World();
  readonly said: Said[] = [];
  readonly hook: Hook;
  #server: Server | undefined;
  #queue: Update[] = [];
  #waiting: ((updates: Update[]) => void) | undefined;
  #port = 0;
  #watch: ((event: Event) => void) | undefined;
  readonly #seen = new Watch();
  isWebhook = false;

  constructor(connections = 40) {
    this.hook = new Hook(connections, event => this.#tell(event));
  }

  async start(): Promise<this> {
    this.#server = createServer((request, response) => void this.#serve(request, response));
    await new Promise<void>(resolve => this.#server?.listen(0, '127.0.0.1', resolve));
    this.#port = (this.#server.address() as { port: number }).port;
    return this;
  }

  async stop(): Promise<void> {
    this.hook.stop();
    this.#waiting?.([]);
    this.#server?.closeAllConnections();
    await new Promise(resolve => this.#server?.close(resolve));
  }

  /** Where the process of this name finds the API. */
  root(name: string): string {
    return `http://127.0.0.1:${this.#port}/${name}`;
  }

  /** Calls at each step from now on. */
  watch(watch: ((event: Event) => void) | undefined): void {
    this.#watch = watch;
  }

  happen(update: Update): void {
    this.world.hear(update);
    if (this.isWebhook) {
      this.hook.queue(update);
      return;
    }
    this.#queue.push(update);
    const waiting = this.#waiting;
    this.#waiting = undefined;
    waiting?.(this.#handOut(100));
  }

  /** How many updates nobody has confirmed. */
  get open(): number {
    return this.isWebhook ? this.hook.open : this.#queue.length;
  }

  /** Settles once the condition holds, looked at after each call. */
  until(condition: () => boolean, what: string, withinMs = 20_000): Promise<void> {
    return this.#seen.until(condition, what, withinMs);
  }

  #tell(event: Event): void {
    this.#watch?.(event);
    this.#seen.changed();
  }

  #handOut(limit: number): Update[] {
    const updates = this.#queue.slice(0, limit);
    if (updates.length > 0) queueMicrotask(() => this.#tell('updates handed out'));
    return updates;
  }

  async #getUpdates({ offset = 0, limit = 100, timeout = 0 }: Payload): Promise<Update[]> {
    if (this.hook.url !== undefined) throw new Refusal(409, 'Conflict: webhook is active');
    this.#waiting?.([]);
    this.#waiting = undefined;
    const before = this.#queue.length;
    this.#queue = this.#queue.filter(update => update.update_id >= offset);
    if (this.#queue.length < before) this.#tell('confirmation arrives');
    if (this.#queue.length > 0 || timeout === 0) return this.#handOut(limit);
    return new Promise<Update[]>(resolve => {
      this.#waiting = resolve;
      setTimeout(() => resolve([]), timeout * 1000).unref();
    });
  }

  #setWebhook(payload: Payload): true {
    this.#tell('webhook set or dropped');
    this.hook.set(payload.url || undefined, payload.secret_token);
    return true;
  }

  #send(by: string, method: string, payload: Payload): unknown {
    this.#tell('send arrives');
    const result = this.world.call(method, payload);
    if (payload.reply_parameters !== undefined)
      this.said.push({
        chat: Number(payload.chat_id),
        question: payload.reply_parameters.message_id,
        text: payload.text,
        isEdit: false,
        by,
      });
    this.#tell('send carried out');
    return result;
  }

  #edit(by: string, payload: Payload): unknown {
    this.#tell('edit arrives');
    const result = this.world.call('editMessageText', payload) as Message;
    const [chat, question] = [Number(payload.chat_id), result.reply_to_message?.message_id ?? 0];
    this.said.push({ chat, question, text: payload.text, isEdit: true, by });
    this.#tell('edit carried out');
    return result;
  }

  async #serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const [, by = '', method = ''] = /^\/([^/]+)\/bot[^/]+\/(\w+)$/.exec(request.url ?? '') ?? [];
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk as Buffer);
    const body = Buffer.concat(chunks).toString();
    const payload: Payload = body.startsWith('{') ? JSON.parse(body) : {};
    // What a dead process asked for is not done: its connection is gone.
    if (request.socket.destroyed && method === 'getUpdates') return;
    let status = 200;
    let answer: object;
    try {
      answer = { ok: true, result: await this.#call(by, method, payload) };
    } catch (error) {
      const refusal = error instanceof Refusal ? error : new Refusal(500, String(error));
      status = refusal.code;
      answer = {
        ok: false,
        error_code: status,
        description: refusal.message,
        parameters: refusal.parameters,
      };
    }
    if (response.destroyed) return;
    response.writeHead(status, { 'content-type': 'application/json' });
    response.end(JSON.stringify(answer), () => method === 'sendMessage' && this.#tell('send answered'));
  }

  #call(by: string, method: string, payload: Payload): unknown {
    if (method === 'getUpdates') return this.#getUpdates(payload);
    if (method === 'setWebhook') return this.#setWebhook(payload);
    if (method === 'deleteWebhook') return this.#setWebhook({});
    if (method === 'sendMessage') return this.#send(by, method, payload);
    if (method === 'editMessageText') return this.#edit(by, payload);
    if (method === 'getMe') this.#tell('getMe arrives');
    const result = this.world.call(method, payload);
    // The list of calls is of no use here, and would grow for ever.
    this.world.calls.length = 0;
    return result;
  }
}
