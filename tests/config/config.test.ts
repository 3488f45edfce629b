import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ConfigError, readConfig } from '#src/config.ts';

const noFile = '/does/not/exist/.env';
const token = '123456789:abcdefghijklmnopqrstuvwxyz_ABCDE-12';
const read = (env: Record<string, string>) => readConfig(env, noFile);
const fault = (env: Record<string, string>, file = noFile): string => {
  try {
    readConfig(env, file);
  } catch (error) {
    expect(error).toBeInstanceOf(ConfigError);
    return (error as Error).message;
  }
  throw new Error('nothing was wrong');
};

test('nothing set: the console with a SQLite file', () => {
  expect(read({})).toEqual({
    TELEGRAM_API_ROOT: 'https://api.telegram.org',
    DATABASE_URL: 'sqlite:data/memory.db',
    SEND_PACE: 'on',
    LOG_LEVEL: 'info',
    MAINS_VOLTAGE: 230,
  });
});

test('everything set', () => {
  const env = {
    BOT_TOKEN: token,
    TELEGRAM_API_ROOT: 'http://127.0.0.1:8081/',
    WEBHOOK_URL: 'https://bot.example/hook',
    WEBHOOK_SECRET: 'a-Secret_1'.repeat(4),
    PORT: '8443',
    DATABASE_URL: 'postgres://bot:pw@db.example/bot',
    LOG_LEVEL: 'WARN',
    MAINS_VOLTAGE: '120',
    ALLOWED_CHATS: '-1001234567890, 42',
    MEMORY_KEY: 'ab'.repeat(32),
  };
  expect(read(env)).toMatchObject({
    TELEGRAM_API_ROOT: 'http://127.0.0.1:8081',
    PORT: 8443,
    LOG_LEVEL: 'warn',
    MAINS_VOLTAGE: 120,
    ALLOWED_CHATS: new Set([-1001234567890, 42]),
  });
});

test('an empty value counts as not set', () => {
  expect(read({ BOT_TOKEN: '', PORT: ' ', MAINS_VOLTAGE: '' })).toEqual(read({}));
});

describe('a bad value is refused in one line that names it and never shows it', () => {
  test.each([
    ['BOT_TOKEN', 'hunter2hunter2'],
    ['BOT_TOKEN', '123 :abcdef'],
    ['TELEGRAM_API_ROOT', 'api.telegram.org'],
    ['TELEGRAM_API_ROOT', 'ftp://api.example'],
    ['WEBHOOK_URL', 'bot.example'],
    ['WEBHOOK_URL', 'http://bot.example/hook'],
    ['WEBHOOK_URL', 'http://192.168.1.5/hook'],
    ['WEBHOOK_URL', 'http://127.0.0.1.evil.example/hook'],
    ['WEBHOOK_SECRET', `with blank${'x'.repeat(30)}`],
    ['WEBHOOK_SECRET', 'x'.repeat(31)],
    ['METRICS_PORT', '65536'],
    ['WEBHOOK_SECRET', 'x'.repeat(257)],
    ['PORT', '-1'],
    ['PORT', '65536'],
    ['PORT', '80.5'],
    ['PORT', 'http'],
    ['DATABASE_URL', 'mysql://x'],
    ['DATABASE_URL', 'sqlite:'],
    ['LOG_LEVEL', 'loud'],
    ['MAINS_VOLTAGE', '12'],
    ['MAINS_VOLTAGE', '230V'],
    ['MAINS_VOLTAGE', '1e2'],
    ['ALLOWED_CHATS', 'campers'],
    ['ALLOWED_CHATS', '1,,2'],
    ['MEMORY_KEY', 'hunter2hunter2'],
  ])('%s=%s', (name, value) => {
    const message = fault({ WEBHOOK_SECRET: 'x'.repeat(32), [name]: value });
    expect(message).toMatch(new RegExp(`^${name} must be .{10,}$`));
    expect(message).not.toContain('hunter2');
  });

  test('numbers on the port of the probes', () => {
    expect(fault({ PORT: '8080', METRICS_PORT: '8080' })).toMatch(/^METRICS_PORT must be .* not PORT$/);
    expect(read({ PORT: '8080', METRICS_PORT: '9090' })).toMatchObject({ METRICS_PORT: 9090 });
  });

  test('a webhook without a secret', () => {
    expect(fault({ WEBHOOK_URL: 'https://bot.example/hook' })).toMatch(
      /^WEBHOOK_SECRET must be .* WEBHOOK_URL$/,
    );
  });
});

describe('the .env file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'config-'));
  test('gives what the environment does not', () => {
    const file = join(folder, 'good');
    writeFileSync(file, 'PORT=9000\nLOG_LEVEL="debug"\n');
    expect(readConfig({ PORT: '9001' }, file)).toMatchObject({ PORT: 9001, LOG_LEVEL: 'debug' });
  });
  test('is checked like the environment', () => {
    const file = join(folder, 'bad');
    writeFileSync(file, 'PORT=http\n');
    expect(fault({}, file)).toMatch(/^PORT must be/);
  });
  test('that cannot be read stops the start', () => {
    mkdirSync(join(folder, 'folder'));
    expect(fault({}, join(folder, 'folder'))).toMatch(/must be a readable file .*EISDIR/);
  });
});
