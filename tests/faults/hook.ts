import { Agent, request as ask } from 'node:http';
import type { Update } from 'grammy/types';
import { present } from '#basics/present.ts';
import type { Event } from './telegram.ts';

/** Waits before the next try (ms); Telegram's are 0, 2, 4, 8 s and more, here a tenth of that and less. */
const waitMs = (tries: number): number => (tries === 1 ? 0 : Math.min(50 * 2 ** (tries - 2), 800));

const chatOf = (update: Update): number =>
  (update.message ?? update.edited_message ?? update.callback_query?.message)?.chat.id ?? 0;

/**
 * Calls a webhook as Telegram does: one queue a chat, the next update only after the one before was taken, so many
 * connections at once, and again until it is taken.
 */
export class Hook {
  readonly #queues = new Map<number, Update[]>();
  readonly #due: number[] = [];
  readonly #agent: Agent;
  readonly #connections: number;
  readonly #tell: (event: Event) => void;
  #running = 0;
  #isStopped = false;
  url: string | undefined;
  #secret = '';
  /** Updates that were not taken yet. */
  open = 0;
  /** How each call ended; 0 where no answer came. */
  readonly statuses = new Map<number, number>();
  /** From the first try to its being taken, of each update (ms). */
  readonly tookMs: number[] = [];

  constructor(connections: number, tell: (event: Event) => void) {
    this.#connections = connections;
    this.#tell = tell;
    this.#agent = new Agent({ keepAlive: true, maxSockets: connections });
  }

  set(url: string | undefined, secret = ''): void {
    this.url = url;
    this.#secret = secret;
    this.#next();
  }

  stop(): void {
    this.#isStopped = true;
    this.#agent.destroy();
  }

  queue(update: Update): void {
    this.open++;
    const chat = chatOf(update);
    const queue = this.#queues.get(chat);
    if (queue !== undefined) {
      queue.push(update);
      return;
    }
    this.#queues.set(chat, [update]);
    this.#due.push(chat);
    this.#next();
  }

  #next(): void {
    while (this.url !== undefined && !this.#isStopped && this.#running < this.#connections) {
      const chat = this.#due.shift();
      if (chat === undefined) return;
      this.#running++;
      void this.#see(chat, present(this.#queues.get(chat)));
    }
  }

  /** Sees the first update of a chat through; the rest of its queue comes after it. */
  async #see(chat: number, queue: Update[]): Promise<void> {
    const began = performance.now();
    const body = JSON.stringify(queue[0]);
    for (let tries = 1; !this.#isStopped; tries++) {
      const status = await this.#call(body);
      this.statuses.set(status, (this.statuses.get(status) ?? 0) + 1);
      if (status >= 200 && status < 300) break;
      await new Promise(resolve => setTimeout(resolve, waitMs(tries)));
    }
    if (this.#isStopped) return;
    this.tookMs.push(performance.now() - began);
    queue.shift();
    this.open--;
    this.#running--;
    if (queue.length > 0) this.#due.push(chat);
    else this.#queues.delete(chat);
    this.#next();
    this.#tell('webhook answers');
  }

  #call(body: string): Promise<number> {
    const { url } = this;
    if (url === undefined) return Promise.resolve(0);
    return new Promise(resolve => {
      const headers = {
        'content-type': 'application/json',
        'content-length': Buffer.byteLength(body),
        'x-telegram-bot-api-secret-token': this.#secret,
      };
      const call = ask(url, { method: 'POST', headers, agent: this.#agent }, response => {
        response.resume();
        response.once('end', () => resolve(response.statusCode ?? 0)).once('error', () => resolve(0));
        response.once('close', () => resolve(0));
      });
      call.once('error', () => resolve(0));
      call.end(body, () => this.#tell('updates handed out'));
    });
  }
}
