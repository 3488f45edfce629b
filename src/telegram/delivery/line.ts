import type { Agent, ClientRequest } from 'node:http';
import type { Socket } from 'node:net';

// Importing http by name would load all that it can do for browsers' sake too: 25 ms of a start.
export const plain = process.getBuiltinModule('node:http');
export const secure = process.getBuiltinModule('node:https');

/** A server that ends idle connections waits some seconds at least; one used just now it does not end for idleness. */
const idleMs = 1000;

/** The code of a call that went into a connection which the server had ended for idleness: it was never read. */
export const staleCode = 'ESTALE_LINE';

/**
 * Keeps connections open between calls, and tells apart the two ways in which one breaks: a connection that had been
 * idle and is reset before a byte came back was ended by the server before the call; any other may have carried it.
 */
function watchful<A extends Agent>(agent: A): A {
  const idleSince = new WeakMap<object, number>();
  // Not in the types, though documented: both are made to be overridden.
  const hooks = agent as unknown as {
    keepSocketAlive(socket: Socket): boolean;
    reuseSocket(socket: Socket, request: ClientRequest): void;
  };
  const [keep, reuse] = [hooks.keepSocketAlive, hooks.reuseSocket];
  hooks.keepSocketAlive = function (socket) {
    idleSince.set(socket, performance.now());
    return keep.call(this, socket);
  };
  hooks.reuseSocket = function (socket, request) {
    const wasIdle = performance.now() - (idleSince.get(socket) ?? Number.POSITIVE_INFINITY) >= idleMs;
    const before = socket.bytesRead;
    if (wasIdle)
      request.once('error', (error: NodeJS.ErrnoException) => {
        const isReset = error.code === 'ECONNRESET' || error.code === 'EPIPE';
        if (isReset && socket.bytesRead === before) error.code = staleCode;
      });
    reuse.call(this, socket, request);
  };
  return agent;
}

/** The connections to the Bot API at this address, Telegram's own where none is told. */
export const lineTo = (apiRoot?: string): Agent =>
  apiRoot?.startsWith('http:')
    ? watchful(new plain.Agent({ keepAlive: true }))
    : watchful(new secure.Agent({ keepAlive: true }));
