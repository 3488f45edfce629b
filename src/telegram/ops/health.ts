import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import type { MemoryStore } from '#conversation/memory-store.ts';
import { plain } from '#telegram/delivery/line.ts';

/** What a question of an operator gets. */
export interface Told {
  readonly status: number;
  readonly type: string;
  readonly body: string;
}

/** Answers an operator's question; undefined for anything else. */
export type Probe = (request: IncomingMessage) => Promise<Told> | undefined;

/** Whether the store takes writes is looked at no oftener than this, however often it is asked. */
const lookEveryMs = 2000;
const lookWithinMs = 3000;
/** A call for updates that is neither answered nor refused after so long is being held, which ends it after half a minute. */
const takenAfterMs = 1000;
const heldAtMostMs = 60_000;
/** An id that Telegram never gives: the row that the check of the store writes. */
const ownRow = 0;

export interface HealthOptions {
  readonly now: () => number;
  /** After how long without a word from Telegram a poller counts as cut off (ms); none by webhook, which may be quiet. */
  readonly heardWithinMs?: number;
}

/**
 * What `/healthz` and `/readyz` tell. Alive: the process answers. Ready: Telegram was heard of lately, and the
 * store took a write. Nothing here is on the way of a message.
 */
export class Health {
  readonly #options: HealthOptions;
  #store: MemoryStore | undefined;
  #heardAt: number | undefined;
  #polledSince: number | undefined;
  #isStopping = false;
  #looked: { readonly at: number; readonly isWritable: Promise<boolean> } | undefined;

  constructor(options: HealthOptions) {
    this.#options = options;
  }

  /** Telegram answered a poll, took the webhook, or called it. */
  heard(): void {
    this.#heardAt = this.#options.now();
  }

  /** A call for updates begins, or has ended one way or the other. */
  polling(isRunning: boolean): void {
    this.#polledSince = isRunning ? this.#options.now() : undefined;
  }

  /** Whether Telegram holds a call for updates: it has taken it, else it would have refused at once. */
  #isPolled(): boolean {
    if (this.#polledSince === undefined || this.#heardAt === undefined) return false;
    const forMs = this.#options.now() - this.#polledSince;
    return forMs >= takenAfterMs && forMs <= heldAtMostMs;
  }

  /** The store is open. */
  opened(store: MemoryStore): void {
    this.#store = store;
  }

  /** No new work shall be sent here. */
  stopping(): void {
    this.#isStopping = true;
  }

  /** Each part and whether it is well. */
  async report(): Promise<{ readonly isReady: boolean; readonly parts: Record<string, string> }> {
    const { now, heardWithinMs = Number.POSITIVE_INFINITY } = this.#options;
    const ageMs = this.#heardAt === undefined ? undefined : now() - this.#heardAt;
    const isHeard = this.#isPolled() || (ageMs !== undefined && ageMs <= heardWithinMs);
    const isWritable = await this.#isWritable();
    const age = ageMs === undefined ? 'not heard of yet' : `heard of ${Math.round(ageMs / 1000)} s ago`;
    const store = isWritable ? 'writable' : this.#store ? 'not writable' : 'not open yet';
    return {
      isReady: isHeard && isWritable && !this.#isStopping,
      parts: { telegram: age, store, process: this.#isStopping ? 'stopping' : 'running' },
    };
  }

  #isWritable(): Promise<boolean> {
    const at = this.#options.now();
    if (this.#looked === undefined || at - this.#looked.at >= lookEveryMs || at < this.#looked.at)
      this.#looked = { at, isWritable: this.#look(at) };
    return this.#looked.isWritable;
  }

  /** Writes one row that is of no use else, and gives it back. */
  async #look(at: number): Promise<boolean> {
    const store = this.#store;
    if (store === undefined) return false;
    const late = Promise.withResolvers<boolean>();
    const timer = setTimeout(() => late.resolve(false), lookWithinMs);
    const work = store
      .claim(ownRow, at)
      .then(() => store.release(ownRow))
      .then(
        () => true,
        () => false,
      );
    return Promise.race([work, late.promise]).finally(() => clearTimeout(timer));
  }

  /** Answers `/healthz` and `/readyz`. */
  readonly probe: Probe = request => {
    if (request.method !== 'GET' && request.method !== 'HEAD') return undefined;
    switch (request.url?.split('?')[0]) {
      case '/healthz':
        return Promise.resolve({ status: 200, type: 'text/plain', body: 'alive\n' });
      case '/readyz':
        return this.#ready();
      default:
        return undefined;
    }
  };

  async #ready(): Promise<Told> {
    const { isReady, parts } = await this.report();
    const body = `${JSON.stringify({ ready: isReady, ...parts })}\n`;
    return { status: isReady ? 200 : 503, type: 'application/json', body };
  }
}

/** The page of numbers. It stands on a port of its own, which no proxy is pointed at. */
export const numbers =
  ({ page, type }: { readonly page: () => Promise<string>; readonly type: string }): Probe =>
  request =>
    request.method === 'GET' && request.url?.split('?')[0] === '/metrics'
      ? page().then(body => ({ status: 200, type, body }))
      : undefined;

/** Writes an answer out; a request that could not be answered gets a 500, and nothing else happens. */
export function tell(response: ServerResponse, told: Promise<Told>): void {
  told
    .catch((): Told => ({ status: 500, type: 'text/plain', body: '' }))
    .then(({ status, type, body }) => {
      if (response.destroyed) return;
      response.writeHead(status, { 'content-type': type, 'content-length': Buffer.byteLength(body) });
      response.end(body);
    });
}

/** A server of its own for the probes, where no webhook is served on the port. */
export async function serveProbes(
  probe: Probe,
  port: number,
): Promise<{ readonly port: number; stop(): Promise<void> }> {
  const nothing: Told = { status: 404, type: 'text/plain', body: '' };
  const server: Server = plain.createServer((request, response) => {
    request.resume();
    tell(response, probe(request) ?? Promise.resolve(nothing));
  });
  server.requestTimeout = 5000;
  server.headersTimeout = 5000;
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, resolve);
  });
  return {
    port: (server.address() as { port: number }).port,
    stop: () =>
      new Promise(resolve => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
