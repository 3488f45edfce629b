import { once } from 'node:events';
import { Agent, createServer, type Server } from 'node:http';
import { Api, HttpError, InputFile } from 'grammy';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { callOver } from '#telegram/delivery/call.ts';

let server: Server;
let port: number;
/** What came in: the path, and the body. */
let heard: { path: string; type: string; body: string }[];
let answer: string | undefined;

beforeEach(async () => {
  heard = [];
  answer = JSON.stringify({ ok: true, result: { message_id: 7 } });
  server = createServer(async (request, response) => {
    let body = '';
    for await (const part of request) body += part;
    heard.push({ path: present(request.url), type: request.headers['content-type'] ?? '', body });
    if (answer !== undefined) response.end(answer);
  }).listen(0, '127.0.0.1');
  await once(server, 'listening');
  port = (server.address() as { port: number }).port;
});
afterEach(() => {
  server.closeAllConnections();
  server.close();
});

const api = (root: string): Api => new Api('1:a', { apiRoot: root, fetch: callOver(new Agent(), root) });

test.each(['', '/behind/a/proxy'])(
  'a call goes out as JSON and comes back, at a root with path %j',
  async path => {
    const sent = await api(`http://127.0.0.1:${port}${path}`).sendMessage(5, '100 Ah – 🚐');
    expect(sent.message_id).toBe(7);
    expect(heard[0]).toMatchObject({ path: `${path}/bot1:a/sendMessage`, type: 'application/json' });
    expect(JSON.parse(present(heard[0]).body)).toEqual({ chat_id: 5, text: '100 Ah – 🚐' });
  },
);

test('a picture goes out as a form', async () => {
  await api(`http://127.0.0.1:${port}`).sendPhoto(5, new InputFile(Buffer.from('PNG!'), 'chart.png'), {
    caption: 'ü',
  });
  expect(present(heard[0]).type).toMatch(/^multipart\/form-data; boundary=/);
  expect(present(heard[0]).body).toContain('PNG!');
  expect(present(heard[0]).body).toContain('chart.png');
});

test('what is refused keeps its words', async () => {
  answer = JSON.stringify({
    ok: false,
    error_code: 429,
    description: 'Too Many Requests',
    parameters: { retry_after: 3 },
  });
  await expect(api(`http://127.0.0.1:${port}`).sendMessage(5, 'x')).rejects.toMatchObject({
    error_code: 429,
    parameters: { retry_after: 3 },
  });
});

test('no JSON, nobody there, and a call given up are faults of the line', async () => {
  answer = '<html>bad gateway</html>';
  const here = api(`http://127.0.0.1:${port}`);
  await expect(here.sendMessage(5, 'x')).rejects.toBeInstanceOf(HttpError);
  await expect(api('http://127.0.0.1:1').sendMessage(5, 'x')).rejects.toMatchObject({
    error: { code: 'ECONNREFUSED' },
  });
  answer = undefined;
  const giving = new AbortController();
  const call = here.getUpdates({ timeout: 30 }, giving.signal as never);
  server.once('request', () => giving.abort());
  await expect(call).rejects.toBeInstanceOf(HttpError);
  await expect(here.getUpdates({ timeout: 30 }, giving.signal as never)).rejects.toBeInstanceOf(HttpError);
});
