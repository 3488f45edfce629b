import { connect, createServer, type Server, type Socket } from 'node:net';

/** A way to a server that can be shut, as when it is down, and opened again. */
export class Door {
  readonly port: number;
  readonly #to: URL;
  readonly #sockets = new Set<Socket>();
  #server: Server | undefined;

  /** @param port where it opens @param to the address of what is behind it */
  constructor(port: number, to: string) {
    this.port = port;
    this.#to = new URL(to);
  }

  /** The address of what is behind it, through the door. */
  get url(): string {
    const url = new URL(this.#to);
    url.port = String(this.port);
    return url.href;
  }

  async open(): Promise<this> {
    this.#server = createServer(here => {
      const there = connect(Number(this.#to.port), this.#to.hostname);
      for (const socket of [here, there]) {
        this.#sockets.add(socket);
        socket
          .on('error', () => undefined)
          .on('close', () => {
            this.#sockets.delete(socket);
            here.destroy();
            there.destroy();
          });
      }
      here.pipe(there).pipe(here);
    });
    await new Promise<void>(resolve => this.#server?.listen(this.port, '127.0.0.1', resolve));
    return this;
  }

  async shut(): Promise<void> {
    const closed = new Promise(resolve => (this.#server ? this.#server.close(resolve) : resolve(undefined)));
    for (const socket of this.#sockets) socket.destroy();
    await closed;
    this.#server = undefined;
  }
}
