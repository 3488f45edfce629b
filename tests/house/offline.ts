import { Socket } from 'node:net';

/** Names and addresses of this machine; a path is a socket of its own. */
const isHere = (host: string | undefined): boolean =>
  host === undefined || /^(localhost|127\.\d+\.\d+\.\d+|::1|::ffff:127\.\d+\.\d+\.\d+)$/.test(host);

/** Where a test has put nock in front of the network, the call ends there: nothing is let out. */
const isStoodIn = (): boolean => new Error().stack?.includes('@mswjs/interceptors') === true;

const { connect } = Socket.prototype;

/** No test reaches out of this machine: a connection to anywhere else throws, whoever asks for it. */
Socket.prototype.connect = function (this: Socket, ...args: unknown[]) {
  const [given] = Array.isArray(args[0]) ? (args[0] as unknown[]) : args;
  const host =
    typeof given === 'object' ? (given as { host?: string }).host : (args[1] as string | undefined);
  if (typeof host === 'string' && !isHere(host) && !isStoodIn())
    throw new Error(`a test reaches out to ${host}`);
  return connect.apply(this, args as never);
} as typeof connect;
