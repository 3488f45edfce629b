import type { Agent, RequestOptions } from 'node:http';
import type { Readable } from 'node:stream';
import type { ApiClientOptions } from 'grammy';
import { present } from '#basics/present.ts';
import { plain, secure } from './line.ts';

/** What grammY hands to `fetch` for a call. */
interface Init {
  readonly method: string;
  readonly headers: Readonly<Record<string, string>>;
  /** JSON, or a form with a file as it is read. */
  readonly body: string | Readable;
  readonly signal: AbortSignal;
}

/** What grammY takes from an answer. */
interface Answered {
  readonly status: number;
  readonly statusText: string;
  json(): Promise<unknown>;
}

/**
 * What grammY needs of `fetch`, straight on Node's own client: half the work of a general one, since a call goes to
 * one server, follows no other and comes back as one small JSON. A call that breaks rejects with Node's own error.
 */
export function callOver(agent: Agent, apiRoot = 'https://api.telegram.org'): ApiClientOptions['fetch'] {
  const { protocol, hostname, port } = new URL(apiRoot);
  const [origin] = apiRoot.match(/^[^/]*\/\/[^/]*/) ?? [''];
  const { request } = protocol === 'http:' ? plain : secure;
  const server: RequestOptions = { agent, hostname: hostname.replace(/^\[|\]$/g, ''), port };

  const call = (url: string, { method, headers, body, signal }: Init): Promise<Answered> =>
    new Promise((resolve, reject) => {
      const isText = typeof body === 'string';
      const length = isText && { 'content-length': Buffer.byteLength(body) };
      const options = {
        ...server,
        path: url.slice(origin.length),
        method,
        headers: { ...headers, ...length },
      };
      const sent = request(options, answer => {
        const parts: Buffer[] = [];
        answer.on('data', part => parts.push(part));
        answer.on('error', failed);
        answer.on('end', () => {
          signal.removeEventListener('abort', aborted);
          const text = parts.length === 1 ? present(parts[0]).toString() : Buffer.concat(parts).toString();
          resolve({
            status: answer.statusCode ?? 0,
            statusText: answer.statusMessage ?? '',
            json: async () => JSON.parse(text),
          });
        });
      });
      const aborted = (): void => {
        sent.destroy(new DOMException('the call was given up', 'AbortError'));
      };
      const failed = (error: Error): void => {
        signal.removeEventListener('abort', aborted);
        reject(error);
      };
      sent.on('error', failed);
      signal.addEventListener('abort', aborted);
      if (signal.aborted) aborted();
      else if (isText) sent.end(body);
      else body.on('error', error => sent.destroy(error)).pipe(sent);
    });
  return call as unknown as ApiClientOptions['fetch'];
}
