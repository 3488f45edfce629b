import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { read, root } from './source.ts';

/** "| 7 | what | file › test<br>file › test |" */
const rows = read('docs/telegram.md')
  .split('\n')
  .flatMap(line => {
    const [, number, , tests] = /^\| (\d+)(?: \*)? \| ([^|]*) \| (.*) \|$/.exec(line) ?? [];
    return number === undefined || tests === undefined
      ? []
      : [{ number: Number(number), tests: tests.split('<br>') }];
  });

test('docs/telegram.md names a test for each of the forty rows', () => {
  expect(rows.map(({ number }) => number)).toEqual(Array.from({ length: 40 }, (_, i) => i + 1));
});

test.each(rows.flatMap(({ number, tests }) => tests.map(name => [number, name] as const)))(
  'row %i: %s',
  (_number, name) => {
    const [file = '', title = ''] = name.split(' › ');
    const path = ['tests/telegram', 'tests']
      .map(folder => join(folder, file))
      .find(at => existsSync(join(root, at)));
    expect(path).toBeDefined();
    expect(read(present(path))).toContain(title);
  },
);
