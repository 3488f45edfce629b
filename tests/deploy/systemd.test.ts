import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { readConfig } from '../../src/config.ts';
import { root } from './script.ts';
import { filledIn, isSetting, stopTakesMs } from './settings.ts';

const unit = readFileSync(`${root}deploy/one-machine/billywatt.service`, 'utf8');
/** The values of a directive, in order. */
const values = (name: string): string[] =>
  [...unit.matchAll(new RegExp(`^${name}=(.*)$`, 'gm'))].map(([, value]) => present(value));

describe('as written', () => {
  test('it starts what npm start does, from the folder of the guide', () => {
    const { scripts } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
    const start = scripts.start
      .replace(/^node/, '/opt/billywatt/node_modules/.bin/node')
      .replace(' src/', ' /opt/billywatt/src/');
    expect(values('ExecStart')).toEqual([start]);
    const guide = readFileSync(`${root}docs/running.md`, 'utf8');
    expect(guide).toMatch(/git clone \S+ \/opt\/billywatt\b/);
    for (const path of [...values('EnvironmentFile'), 'deploy/one-machine/billywatt.service'])
      expect(guide).toContain(path);
  });

  test('its settings are ones the program reads, and good with the secrets added', () => {
    const own = values('Environment').map(pair => pair.split(/=(.*)/s, 2) as [string, string]);
    const names = own.map(([name]) => name);
    expect(names.filter(name => !isSetting(name))).toEqual(['NODE_COMPILE_CACHE']);
    const { BOT_TOKEN, MEMORY_KEY } = filledIn;
    const config = readConfig({ BOT_TOKEN, MEMORY_KEY, ...Object.fromEntries(own) }, '/nonexistent/.env');
    expect(config.DATABASE_URL).toBe(`sqlite:/var/lib/${values('StateDirectory')[0]}/memory.db`);
    expect(Object.fromEntries(own).NODE_COMPILE_CACHE).toBe(`/var/cache/${values('CacheDirectory')[0]}`);
    expect(unit).not.toMatch(/Environment=(BOT_TOKEN|MEMORY_KEY)/);
  });

  test('a stop is waited for longer than the program takes; a bad setting is not tried again', () => {
    expect(Number(values('TimeoutStopSec')[0]) * 1000).toBeGreaterThan(stopTakesMs);
    expect(values('RestartPreventExitStatus')).toEqual(['2']);
  });
});

const has = spawnSync('systemd-analyze', ['--version'], { encoding: 'utf8' });
const version = Number(/^systemd (\d+)/.exec(has.stdout ?? '')?.[1] ?? 0);
if (version === 0) console.warn('checks by systemd skipped: systemd-analyze is not installed');

describe.skipIf(version === 0)('by systemd itself', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'unit-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  /** Looks the unit over, with this Node in the place of the installed one. */
  const verify = (text: string) => {
    const path = join(folder, 'billywatt.service');
    writeFileSync(path, text.replaceAll('/opt/billywatt/node_modules/.bin/node', process.execPath));
    const { status, stdout, stderr } = spawnSync('systemd-analyze', ['verify', '--man=no', path], {
      encoding: 'utf8',
      env: { ...process.env, SYSTEMD_LOG_LEVEL: 'warning' },
    });
    // What it says of other units of this machine is not ours.
    const ours = `${stdout}${stderr}`.split('\n').filter(line => line.includes('billywatt'));
    return { status, ours };
  };

  test('it has nothing to say against the unit', () => {
    expect(verify(unit)).toEqual({ status: 0, ours: [] });
  });

  test.each([
    ['an unknown directive', unit.replace('NoNewPrivileges=', 'NoNewPrivilegs='), /Unknown key/],
    [
      'a value that is none',
      unit.replace('ProtectSystem=strict', 'ProtectSystem=strong'),
      /ignoring: strong/,
    ],
    ['a program that is not there', unit.replace('.bin/node', '.bin/nod'), /not executable/],
  ])('a fault would be found: %s', (_, text, told) => {
    expect(verify(text).ours.join('\n')).toMatch(told);
  });
});
