import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { inWords } from '#answer/answer.ts';
import { answerLines, type Deps, readLine } from '#console/lines.ts';
import { VolatileStore } from '#memory/volatile/store.ts';

const now = () => new Date('2026-01-15T09:00:00Z');
const converse: Deps['converse'] = (memory, message) => {
  if (message.text === 'crash') throw new Error('broken\nstack');
  return {
    memory: { ...memory, settings: { mainsV: (memory.settings.mainsV ?? 0) + 1 } },
    answer: inWords(
      'run-time',
      `${message.kind} ${message.chat} ${message.from} ${message.at.toISOString()} ${memory.settings.mainsV ?? 0}`,
    ),
  };
};

function open() {
  const [input, output] = [new PassThrough(), new PassThrough()];
  output.setEncoding('utf8');
  const done = answerLines({ converse, store: new VolatileStore(), now }, input, output).then(() =>
    output.end(),
  );
  return { input, output, done };
}

async function run(lines: string): Promise<{ text?: string; error?: string }[]> {
  const { input, output } = open();
  input.end(lines);
  let out = '';
  for await (const chunk of output) out += chunk;
  return out
    .split('\n')
    .filter(Boolean)
    .map(line => JSON.parse(line));
}

test('one answer a line, in order, each chat with its own memory', async () => {
  const line = (chat: string) => JSON.stringify({ chat, from: 'sam', text: 'x', at: '2026-02-01T00:00:00Z' });
  const out = await run([line('a'), line('b'), line('a')].join('\n'));
  expect(out.map(({ text }) => text)).toEqual([
    'group a sam 2026-02-01T00:00:00.000Z 0',
    'group b sam 2026-02-01T00:00:00.000Z 0',
    'group a sam 2026-02-01T00:00:00.000Z 1',
  ]);
});

test('without a time it is now', async () => {
  expect((await run('{"chat":"a","from":"sam","text":"x"}'))[0]?.text).toContain('2026-01-15T09:00:00.000Z');
});

test('an answer comes as its line comes, not at the end', async () => {
  const { input, output, done } = open();
  for (const text of ['first', 'second']) {
    input.write(`{"chat":"a","from":"sam","text":"${text}"}\n`);
    const [chunk] = (await new Promise<[string]>(resolve =>
      output.once('data', data => resolve([data])),
    )) as [string];
    expect(JSON.parse(chunk).intent).toBe('run-time');
  }
  input.end();
  await done;
});

test('a fault in one line is its answer, and the run goes on', async () => {
  const good = '{"chat":"a","from":"sam","text":"x"}';
  const out = await run(['{"chat":', '', '{"chat":"a","from":"sam","text":"crash"}', good].join('\n'));
  expect(out.map(({ error, text }) => error ?? text)).toEqual([
    'the line must be a JSON object with "chat", "from" and "text"',
    'the line must be a JSON object with "chat", "from" and "text"',
    'broken',
    expect.stringContaining('group a sam'),
  ]);
});

describe('a line that is no message is refused by name', () => {
  test.each([
    ['[]', /JSON object/],
    ['null', /JSON object/],
    ['"fridge"', /JSON object/],
    ['{}', /"chat" must be/],
    ['{"chat":1,"from":"sam","text":"x"}', /"chat" must be/],
    ['{"chat":"a","text":"x"}', /"from" must be/],
    ['{"chat":"a","from":"sam","text":null}', /"text" must be/],
    ['{"chat":"a","from":"sam","text":"x","at":"soon"}', /"at" must be/],
    ['{"chat":"a","from":"sam","text":"x","at":17}', /"at" must be/],
  ])('%s', (line, message) => {
    expect(() => readLine(line, now)).toThrow(message);
  });
});

test('a line from the bot is told as such', () => {
  expect(readLine('{"chat":"a","from":"bot","text":"How big is it?"}', now)).toMatchObject({ isBot: true });
  expect(readLine('{"chat":"a","from":"bo","text":"How big is it?"}', now)).not.toHaveProperty('isBot');
});
