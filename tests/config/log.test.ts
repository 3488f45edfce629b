import { expect, test } from 'vitest';
import { describe as describeError, makeLog, redact } from '#src/log.ts';

const token = '123456789:abcdefghijklmnopqrstuvwxyz_ABCDE-12';

test.each([
  [`https://api.example/bot${token}/getMe failed`, 'https://api.example/bot[token]/getMe failed'],
  [`token ${token}.`, 'token [token].'],
  ['at 12:30 the robot9000:x said', 'at 12:30 the robot9000:x said'],
])('redacts %s', (text, redacted) => {
  expect(redact(text)).toBe(redacted);
});

test('an error is logged by kind, code and place along its chain, without its payload', () => {
  const inner = Object.assign(new Error(`GET /bot${token}/x`), { code: 'ECONNRESET' });
  const outer = Object.assign(new Error('failed'), { error: inner, payload: { text: 'private words' } });
  const shown = describeError(outer);
  expect(shown).toMatchObject({
    message: 'failed',
    causes: [{ code: 'ECONNRESET', message: 'GET /bot[token]/x' }],
  });
  expect(JSON.stringify(shown)).not.toMatch(/private words|abcdefghij/);
});

test('whatever gets into a line, the token does not get out', () => {
  const lines: string[] = [];
  makeLog('info', { write: line => void lines.push(line) }).info(
    { anything: { deep: `bot${token}` } },
    `x ${token}`,
  );
  expect(lines.join('')).not.toContain('abcdefghij');
});

test('nor do the secrets that it was told of', () => {
  const lines: string[] = [];
  makeLog('info', { write: line => void lines.push(line) }, ['hunter2']).info({ x: 'a hunter2 b' }, 'y');
  expect(lines.join('')).toContain('a [secret] b');
});
