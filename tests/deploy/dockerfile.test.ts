import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { freePort } from '../faults/process.ts';
import { message } from '../telegram/fake/people.ts';
import { FakeTelegram } from '../telegram/fake/server.ts';
import { token } from '../telegram/fake/world.ts';
import { readDockerfile } from './dockerfile.ts';
import { Image, ignoreLines, isLetThrough } from './image.ts';
import { root } from './script.ts';

const stages = readDockerfile();
const final = present(stages.at(-1));
const guide = readFileSync(`${root}docs/running.md`, 'utf8');

describe('as written', () => {
  test('the folder sent to the builder holds what COPY names, and nothing else', () => {
    const named = stages.flatMap(stage =>
      stage.of('COPY').flatMap(({ words, flags }) => (flags.from === undefined ? words.slice(0, -1) : [])),
    );
    const [first, ...rest] = ignoreLines();
    expect(first).toBe('*');
    expect(rest.sort()).toEqual(named.map(name => `!${name}`).sort());
    expect(named.filter(name => !existsSync(`${root}${name}`))).toEqual([]);
    for (const path of ['.env', 'data/memory.db', 'node_modules/x', 'deploy/.env.example', 'src.env'])
      expect(isLetThrough(path, ignoreLines())).toBe(false);
  });

  test('it ends as somebody other than root, and starts Node itself', () => {
    expect(final.last('USER').text).toBe('node');
    expect(final.steps.findLastIndex(step => step.keyword === 'RUN')).toBeLessThan(
      final.steps.findIndex(step => step.keyword === 'USER'),
    );
    expect(final.last('CMD').exec[0]).toBe('node');
    expect(final.last('STOPSIGNAL').text).toBe('SIGTERM');
  });

  test('every stage is of the Node that npm brings to bare machines', () => {
    const { optionalDependencies, scripts } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
    const majors = Object.values<string>(optionalDependencies).map(version => version.split('.')[0]);
    for (const stage of stages) expect(stage.last('FROM').words[0]).toBe(`node:${majors[0]}-slim`);
    expect(new Set(majors).size).toBe(1);
    expect(final.last('CMD').exec.join(' ')).toBe(scripts.start);
  });

  test('no secret is baked in', () => {
    const text = stages.flatMap(stage => stage.steps.map(step => step.text)).join('\n');
    expect(text).not.toMatch(/BOT_TOKEN|MEMORY_KEY|SECRET|PASSWORD/);
    expect(final.last('EXPOSE').text).toBe(final.env.PORT);
  });
});

describe('done in a plain folder', () => {
  let folder: string;
  let image: Image;
  let telegram: FakeTelegram;
  let port: number;
  const running: ChildProcess[] = [];

  const run = (command: readonly string[], env: Record<string, string> = {}) => {
    const child = image.start(command, { PORT: String(port), MEMORY_KEY: 'ab'.repeat(32), ...env });
    running.push(child);
    const output = Promise.all([text(present(child.stdout)), text(present(child.stderr))]).then(all =>
      all.join(''),
    );
    return { child, ended: once(child, 'close').then(([code]) => code as number), output };
  };
  const bot = (env: Record<string, string> = {}) =>
    run(image.command, { BOT_TOKEN: token, TELEGRAM_API_ROOT: telegram.root, ...env });
  /** Runs a command of the guide's, found by its pattern, as the container's shell would. */
  const shell = async (pattern: RegExp, redirection: string): Promise<[number, string]> => {
    const command = present(present(pattern.exec(guide))[1]).replaceAll(
      '/tmp/copy',
      image.here('/data/copy'),
    );
    const { ended, output } = run(['sh', '-c', `{ ${command}; } ${redirection}`]);
    return [await ended, await output];
  };
  const get = (path: string): Promise<number> =>
    fetch(`http://127.0.0.1:${port}${path}`).then(
      response => response.status,
      () => 0,
    );
  const check = () => run(image.healthCheck).ended;
  /** What Node's cache holds of TypeScript made plain: text, where compiled code is bytes. */
  const stripped = (): string[] => {
    const cache = image.here('/app/.cache');
    const entries = readdirSync(cache, { recursive: true, withFileTypes: true }).filter(one => one.isFile());
    const paths = entries.map(entry => join(entry.parentPath, entry.name));
    return paths.filter(path => /^(export|import|const) /m.test(readFileSync(path, 'latin1'))).sort();
  };

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'image-'));
    image = new Image(folder);
  });
  afterAll(() => {
    image?.thaw();
    rmSync(folder, { recursive: true });
  });
  beforeEach(async () => {
    telegram = await new FakeTelegram().start();
    port = await freePort();
  });
  afterEach(async () => {
    for (const child of running.splice(0)) child.kill('SIGKILL');
    await telegram.stop();
  });

  test('it holds the program, and neither tests nor settings', () => {
    expect(image.copied).toContain('src/boot.mjs');
    expect(image.copied.filter(path => /^(tests|docs|data|\.env)/.test(path))).toEqual([]);
    expect(existsSync(image.here('/app/node_modules/vitest'))).toBe(false);
    expect(existsSync(image.here('/app/node_modules/.bin/node'))).toBe(false);
    expect(statSync(image.here('/data')).mode & 0o777).toBe(0o700);
  });

  test('on a read-only tree it polls, answers, is healthy, is backed up, and stops', async () => {
    image.freeze('/data');
    const kept = image.here('/data/kept');
    const { child, ended } = bot();
    await expect.poll(() => get('/healthz'), { interval: 20, timeout: 5000 }).toBe(200);
    expect(await check()).toBe(0);
    const date = Math.floor(Date.now() / 1000);
    telegram.happen({ message: message('/power fridge 1.2A, 100Ah, 3 days?', { date }) as never });
    await telegram.until(() => telegram.world.sent().length === 1, 'an answer');
    expect(await get('/readyz')).toBe(200);
    expect(await shell(/'(deploy\/backup\.sh [^']+)'/, `> ${kept}`)).toEqual([
      0,
      expect.stringMatching(/^backed up/),
    ]);
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
    expect(await check()).toBe(1);
    expect(await shell(/'([^'\n]+deploy\/restore\.sh [^']+)'/, `< ${kept}`)).toEqual([
      0,
      expect.stringMatching(/^restored/),
    ]);
    const rotated = run(['node', 'src/tools/rotate.ts'], {
      MEMORY_KEY: `${'cd'.repeat(32)},${'ab'.repeat(32)}`,
    });
    expect(await rotated.output).toMatch(/^sealed anew: [2-9] values\n$/);
  });

  test('the cache of stripped types is whole: a start by webhook has nothing to add', async () => {
    image.thaw();
    image.freeze('/data', '/app/.cache');
    const before = stripped();
    const { child, ended } = bot({
      WEBHOOK_URL: `http://127.0.0.1:${port}/hook`,
      WEBHOOK_SECRET: 'a-secret-of-at-least-32-characters',
      DATABASE_URL: 'memory:',
    });
    await telegram.until(() => telegram.webhookUrl !== undefined, 'setWebhook');
    expect(await check()).toBe(0);
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
    expect(before.length).toBeGreaterThan(100);
    expect(stripped()).toEqual(before);
  });

  test('without a volume to write to, or a key, it says so in one line', async () => {
    image.thaw();
    image.freeze('/data');
    const settings = [
      [{ DATABASE_URL: `sqlite:${image.here('/app/memory.db')}` }, /^the memory in \S+ [^\n]+\n$/],
      [
        { DATABASE_URL: `sqlite:${image.here('/data/new.db')}`, MEMORY_KEY: '', HOME: '/nonexistent' },
        /set MEMORY_KEY to [^\n]+\n$/,
      ],
    ] as const;
    for (const [env, line] of settings) {
      const run = bot(env);
      expect([await run.ended, await run.output]).toEqual([1, expect.stringMatching(line)]);
    }
  });
});
