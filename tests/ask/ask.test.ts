import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;
const question = 'fridge 1.2A, 100Ah, 3 days?';

/** Runs the command as people do, apart from npm. */
function ask(args: string[], input = '', env: Record<string, string> = {}) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'src/boot.mjs'), 'ask', ...args],
    {
      cwd: root,
      input,
      encoding: 'utf8',
      env: { ...process.env, BOT_TOKEN: '', ...env },
    },
  );
  return { status, stdout, stderr };
}
const oneLine = /^ask: .{10,}\n$/;

test('one message: the answer as text, exit 0', () => {
  const { status, stdout, stderr } = ask([question]);
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(stdout.split('\n')[0]).toMatch(/\d/);
});

test('--json: one object', () => {
  const { status, stdout } = ask(['--json', question]);
  const answer = JSON.parse(stdout);
  expect(status).toBe(0);
  expect(answer.intent).toBe('run-time');
  expect(answer).toMatchObject({ verdict: 'no', text: expect.any(String), next: expect.any(Array) });
});

test('--json tells what it warns of, what it left unread and how sure it is', () => {
  const answer = JSON.parse(ask(['--json', 'fridge 1.2A, 100Ah for $300, 3 days?']).stdout);
  expect(answer.hazards).toEqual([]);
  expect(answer.unread).toEqual([{ text: '300', why: 'a price' }]);
  expect(answer.reading.margin).toBeGreaterThan(0);
  expect(answer.reading).toMatchObject({
    second: { intent: expect.any(String) },
    because: expect.arrayContaining([
      { reason: expect.stringMatching(/is load\.currentA of/), weight: expect.any(Number) },
    ]),
  });
});

test('--why: how it was read, and no answer', () => {
  const { status, stdout } = ask(['--why', question]);
  expect(status).toBe(0);
  expect(stdout).toMatch(/^Taken for run-time/);
  expect(stdout).toMatch(/“fridge” \(thing, 0–6\): load/);
  expect(stdout).not.toMatch(/It lasts|it lasts/);
});

test('asking back is an answer too', () => {
  expect(ask(['--json', 'hmm']).status).toBe(0);
});

test('--jsonl with --memory: memory outlives the run', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'ask-')), 'memory.db');
  const env = { MEMORY_KEY: 'ab'.repeat(32) };
  const line = (text: string) =>
    `${JSON.stringify({ chat: 'g1', from: 'sam', text, at: '2026-01-15T09:00:00Z' })}\n`;
  const first = ask(['--jsonl', '--memory', file], `${line(question)}not json\n`, env);
  expect(
    first.stdout
      .trim()
      .split('\n')
      .map(text => JSON.parse(text).intent ?? 'error'),
  ).toEqual(['run-time', 'error']);
  const second = ask(['--jsonl', '--memory', file], line('make it 5 days'), env);
  expect(JSON.parse(second.stdout)).toMatchObject({ intent: 'run-time' });
  expect([first.status, second.status]).toEqual([0, 0]);
  expect(existsSync(file)).toBe(true);
});

describe('wrong use: exit 2, one clear line on stderr, nothing on stdout', () => {
  test.each([
    ['no message', [], {}, /message/],
    ['an empty message', [' '], {}, /message/],
    ['an unknown option', ['--yaml', question], {}, /--yaml/],
    ['two forms at once', ['--json', '--jsonl'], {}, /--jsonl/],
    ['an answer and a reason at once', ['--json', '--why', question], {}, /--why/],
    ['a message and --jsonl', ['--jsonl', question], {}, /stdin/],
    ['--memory without a file', [question, '--memory'], {}, /--memory/],
    ['a bad setting', [question], { MAINS_VOLTAGE: 'loud' }, /MAINS_VOLTAGE must be/],
  ] as [string, string[], Record<string, string>, RegExp][])('%s', (_what, args, env, says) => {
    const { status, stdout, stderr } = ask(args, '', env);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(oneLine);
    expect(stderr).toMatch(says);
  });
});

test('a memory file that is none: exit 1, one line, nothing overwritten', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'ask-')), 'memory.db');
  writeFileSync(file, 'these are my holiday notes, not a database at all\n'.repeat(200));
  const { status, stdout, stderr } = ask(['--memory', file, question], '', { MEMORY_KEY: 'ab'.repeat(32) });
  expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
  expect(stderr).toMatch(oneLine);
});

test('--help', () => {
  const { status, stdout } = ask(['--help']);
  expect(status).toBe(0);
  expect(stdout).toContain('--jsonl');
});
