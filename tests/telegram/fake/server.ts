import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { Update } from 'grammy/types';
import { Refusal } from './rules.ts';
import { Watch } from './watch.ts';
import { type Payload, token, World } from './world.ts';

type Given = Omit<Update, 'update_id'>;

/** How a webhook delivery went. */
export interface Delivery {
  readonly update: number;
  readonly status: number;
}

/** A Bot API on loopback: long polling with offsets, webhooks with secret and redelivery, faults on demand. */
export class FakeTelegram {
  readonly world = new World();
  readonly deliveries: Delivery[] = [];
  #server: Server | undefined;
  #queue: Update[] = [];
  #updateId = 500;
  #waiting: ((updates: Update[] | Refusal) => void) | undefined;
  #webhook: { url: string; secret?: string } | undefined;
  #port = 0;
  readonly #watch = new Watch();
  #gate: { method: string; open: PromiseWithResolvers<void> } | undefined;
  /** How many calls stand at the gate. */
  held = 0;

  async start(port = 0): Promise<this> {
    this.#server = createServer((request, response) => void this.#serve(request, response));
    await new Promise<void>(resolve => this.#server?.listen(port, '127.0.0.1', resolve));
    this.#port = (this.#server.address() as { port: number }).port;
    return this;
  }

  async stop(): Promise<void> {
    this.#waiting?.([]);
    this.#server?.closeAllConnections();
    await new Promise(resolve => this.#server?.close(resolve));
  }

  get root(): string {
    return `http://127.0.0.1:${this.#port}`;
  }

  /** Updates that were not confirmed by a higher offset. */
  get unconfirmed(): number[] {
    return this.#queue.map(update => update.update_id);
  }

  get isPolled(): boolean {
    return this.#waiting !== undefined;
  }

  get webhookUrl(): string | undefined {
    return this.#webhook?.url;
  }

  /** Something happens on Telegram: it waits for the next call, or goes to the webhook. @returns its update id */
  happen(given: Given, id = ++this.#updateId): number {
    this.world.hear(given);
    if (given.callback_query !== undefined) this.world.tap(given.callback_query);
    const update = { update_id: id, ...given } as Update;
    if (this.#webhook !== undefined) void this.deliver(update);
    else {
      this.#queue.push(update);
      this.#flush();
    }
    return id;
  }

  /** Hands an update to the webhook, again and again until it is taken, as Telegram does (here without its waits). */
  async deliver(update: Update, tries = 5): Promise<void> {
    const { url, secret } = this.#webhook ?? { url: '' };
    const headers = {
      'content-type': 'application/json',
      ...(secret !== undefined && { 'x-telegram-bot-api-secret-token': secret }),
    };
    for (let left = tries; left > 0; left--) {
      const status = await fetch(url, { method: 'POST', headers, body: JSON.stringify(update) }).then(
        response => response.status,
        () => 0,
      );
      this.deliveries.push({ update: update.update_id, status });
      this.#changed();
      if (status >= 200 && status < 300) return;
    }
  }

  /** Lets calls of a method wait, as on a slow line, until they are released. */
  hold(method: string): void {
    this.#gate = { method, open: Promise.withResolvers() };
  }

  release(): void {
    this.#gate?.open.resolve();
    this.#gate = undefined;
  }

  /** Settles once the condition holds, which is looked at after each call; rejects after the time. */
  until(condition: () => boolean, what: string, withinMs = 8000): Promise<void> {
    return this.#watch.until(condition, what, withinMs);
  }

  #changed(): void {
    this.#watch.changed();
  }

  #flush(): void {
    if (this.#queue.length === 0) return;
    const waiting = this.#waiting;
    this.#waiting = undefined;
    waiting?.(this.#queue.slice(0, 100));
  }

  async #getUpdates(payload: Payload): Promise<Update[]> {
    if (this.#webhook !== undefined)
      throw new Refusal(
        409,
        "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
      );
    this.#waiting?.(
      new Refusal(
        409,
        'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running',
      ),
    );
    this.#waiting = undefined;
    const { offset = 0, limit = 100, timeout = 0 } = payload;
    if (offset > 0) this.#queue = this.#queue.filter(update => update.update_id >= offset);
    this.#changed();
    if (this.#queue.length > 0 || timeout === 0) return this.#queue.slice(0, limit);
    const got = await new Promise<Update[] | Refusal>(resolve => {
      this.#waiting = resolve;
      this.#changed();
      setTimeout(() => resolve([]), timeout * 1000).unref();
    });
    if (got instanceof Refusal) throw got;
    return got.slice(0, limit);
  }

  #setWebhook(payload: Payload): true {
    if (!/^https?:\/\//.test(payload.url))
      throw new Refusal(400, 'Bad Request: bad webhook: An HTTPS URL must be provided');
    if (payload.secret_token !== undefined && !/^[\w-]{1,256}$/.test(payload.secret_token))
      throw new Refusal(400, 'Bad Request: secret token contains unallowed characters');
    this.#webhook = { url: payload.url, secret: payload.secret_token };
    for (const update of this.#queue.splice(0)) void this.deliver(update);
    return true;
  }

  #deleteWebhook(): true {
    this.#webhook = undefined;
    return true;
  }

  async #serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const [, given, method = ''] = /^\/bot([^/]+)\/(\w+)$/.exec(request.url ?? '') ?? [];
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk as Buffer);
    const payload = await read(Buffer.concat(chunks), request.headers['content-type'] ?? '');
    if (this.#gate?.method === method) {
      this.held++;
      this.#changed();
      await this.#gate.open.promise;
    }
    const fault = this.world.takeFault(method);
    if (fault === 'cut-before') return void request.socket.destroy();
    try {
      if (given !== token) throw new Refusal(401, 'Unauthorized');
      if (fault instanceof Refusal) throw fault;
      const result = await this.#call(method, payload);
      if (fault === 'cut-after') return void request.socket.destroy();
      if (fault === 'lost-after') throw new Refusal(502, 'Bad Gateway');
      reply(response, 200, { ok: true, result });
    } catch (error) {
      const refusal = error instanceof Refusal ? error : new Refusal(500, `Internal Server Error: ${error}`);
      const { code, message, parameters } = refusal;
      reply(response, code, {
        ok: false,
        error_code: code,
        description: message,
        ...(parameters && { parameters }),
      });
    } finally {
      this.#changed();
    }
  }

  #call(method: string, payload: Payload): unknown {
    if (method !== 'getUpdates' && method !== 'setWebhook' && method !== 'deleteWebhook')
      return this.world.call(method, payload);
    this.world.calls.push({ method, payload });
    if (method === 'getUpdates') return this.#getUpdates(payload);
    return method === 'setWebhook' ? this.#setWebhook(payload) : this.#deleteWebhook();
  }
}

/** What a call brings: as JSON, or as a form with files, to which fields point by "attach://…". */
async function read(body: Buffer, type: string): Promise<Payload> {
  if (type.includes('json')) return body.length > 0 ? JSON.parse(body.toString()) : {};
  if (!type.startsWith('multipart/')) return {};
  const form = await new Response(new Uint8Array(body), { headers: { 'content-type': type } }).formData();
  const files = new Map<string, Buffer>();
  for (const [name, value] of form)
    if (typeof value !== 'string') files.set(`attach://${name}`, Buffer.from(await value.arrayBuffer()));
  const attached = (_key: string, value: unknown): unknown => {
    const file = typeof value === 'string' ? files.get(value) : undefined;
    return file === undefined ? value : new Uint8Array(file);
  };
  const fields = [...form].flatMap(([name, value]) => {
    if (typeof value !== 'string') return [];
    const isData = /^[[{]|^(true|false|-?\d+)$/.test(value) && name !== 'caption';
    return [[name, isData ? JSON.parse(value, attached) : attached(name, value)]];
  });
  return Object.fromEntries(fields);
}

function reply(response: ServerResponse, status: number, body: object): void {
  if (response.destroyed) return;
  response.writeHead(status, { 'content-type': 'application/json' });
  response.end(JSON.stringify(body));
}
