import {
  Agent,
  request as ask,
  createServer,
  type IncomingMessage,
  type OutgoingHttpHeaders,
} from 'node:http';

/** One server behind the balancer. */
interface Behind {
  readonly port: number;
  isReady: boolean;
}

/** What a request needs to be passed on. */
interface Passed {
  readonly method: string;
  readonly url: string;
  readonly headers: OutgoingHttpHeaders;
  readonly body: Buffer;
}

const lookEveryMs = 200;

async function bodyOf(request: IncomingMessage): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts);
}

/**
 * A load balancer on loopback, as small as one can be: in turn to those that say they are ready, to the next one
 * where a connection is refused, 502 where one breaks off.
 */
export class Balancer {
  readonly #behind: Behind[];
  readonly #agent = new Agent({ keepAlive: true });
  readonly #server = createServer((request, response) => {
    bodyOf(request)
      .then(body => {
        const { method = 'GET', url = '/', headers } = request;
        return this.#pass({ method, url, headers, body }, this.#behind.length);
      })
      .catch(() => 502)
      .then(status => {
        response.writeHead(status, { 'content-length': 0 });
        response.end();
      });
  });
  #turn = 0;
  #looking: ReturnType<typeof setInterval> | undefined;
  port = 0;

  constructor(ports: readonly number[]) {
    this.#behind = ports.map(port => ({ port, isReady: false }));
  }

  async start(): Promise<this> {
    await new Promise<void>(resolve => this.#server.listen(0, '127.0.0.1', resolve));
    this.port = (this.#server.address() as { port: number }).port;
    this.#looking = setInterval(() => this.#look(), lookEveryMs);
    return this;
  }

  async stop(): Promise<void> {
    clearInterval(this.#looking);
    this.#agent.destroy();
    this.#server.closeAllConnections();
    await new Promise(resolve => this.#server.close(resolve));
  }

  get ready(): number {
    return this.#behind.filter(one => one.isReady).length;
  }

  #look(): void {
    for (const one of this.#behind)
      this.#call(one, { method: 'GET', url: '/readyz', headers: {}, body: Buffer.alloc(0) }).then(
        status => {
          one.isReady = status === 200;
        },
        () => {
          one.isReady = false;
        },
      );
  }

  async #pass(passed: Passed, tries: number): Promise<number> {
    const ready = this.#behind.filter(one => one.isReady);
    const to = ready[this.#turn++ % Math.max(1, ready.length)];
    if (to === undefined) return 503;
    try {
      return await this.#call(to, passed);
    } catch (error) {
      to.isReady = false;
      const isUnsent = (error as NodeJS.ErrnoException).code === 'ECONNREFUSED';
      return isUnsent && tries > 1 ? this.#pass(passed, tries - 1) : 502;
    }
  }

  #call({ port }: Behind, { method, url, headers, body }: Passed): Promise<number> {
    return new Promise((resolve, reject) => {
      const to = { host: '127.0.0.1', port, path: url, method, headers, agent: this.#agent, timeout: 30_000 };
      const call = ask(to, response => {
        response.resume();
        response.once('error', reject).once('end', () => resolve(response.statusCode ?? 502));
        response.once('close', () => reject(new Error('broken off')));
      });
      call.once('timeout', () => call.destroy(new Error('too slow'))).once('error', reject);
      call.end(body);
    });
  }
}
