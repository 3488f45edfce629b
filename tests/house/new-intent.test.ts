import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { phraseSchema } from '../intents/phrases.ts';
import { root } from './source.ts';

describe('npm run new:intent, in a copy of the project', () => {
  let copy: string;
  beforeAll(() => {
    copy = mkdtempSync(join(tmpdir(), 'new-intent-'));
    for (const name of ['src', 'intents', 'tests', 'package.json', 'tsconfig.json'])
      cpSync(join(root, name), join(copy, name), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  });
  afterAll(() => rmSync(copy, { recursive: true }));

  const make = (...names: string[]) =>
    spawnSync(process.execPath, ['src/tools/new-intent.ts', ...names], { cwd: copy, encoding: 'utf8' });
  const read = (path: string) => readFileSync(join(copy, path), 'utf8');

  test.for<[names: string[], says: RegExp]>([
    [[], /usage/],
    [['a', 'b'], /usage/],
    [['What-Panel'], /can't be a name/],
    [['../../etc'], /can't be a name/],
    [['what--panel'], /can't be a name/],
    [['x'.repeat(31)], /can't be a name/],
    [['new'], /word of the language/],
    [['run-time'], /there already/],
  ])('refuses %j', ([names, says]) => {
    const before = read('intents/index.ts');
    const { status, stderr } = make(...names);
    expect(status).toBe(2);
    expect(stderr).toMatch(says);
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(read('intents/index.ts')).toBe(before);
  });

  test('makes the folder, the name and the line, in the way of the house', async () => {
    expect(make('what-panel')).toMatchObject({ status: 0, stderr: '' });
    for (const file of ['intent.ts', 'compute.ts', 'answer.ts', 'phrases.json'])
      expect(existsSync(join(copy, 'intents/what-panel', file)), file).toBe(true);
    const index = read('intents/index.ts');
    expect(index.match(/import \{ whatPanel \} from '\.\/what-panel\/intent\.ts';/g)).toHaveLength(1);
    expect(index).toMatch(/whatPanel,\s*unclear,?\s*\]/);
    expect(read('src/answer/answer.ts')).toMatch(/'what-panel',\s*'unclear'/);
    const rows = phraseSchema.array().parse(JSON.parse(read('intents/what-panel/phrases.json')));
    expect(rows.filter(row => !row.not)).toHaveLength(8);
    const lint = spawnSync(
      process.execPath,
      [
        'node_modules/@biomejs/biome/bin/biome',
        'check',
        '--config-path=tests/house',
        'intents/what-panel',
        'intents/index.ts',
      ],
      { cwd: copy, encoding: 'utf8' },
    );
    expect(lint.stdout + lint.stderr).toMatch(/No fixes applied/);
    expect(lint.status).toBe(0);
    expect(make('what-panel')).toMatchObject({ status: 2 });
  });

  test('what its files import is there, types too', () => {
    const { imports } = JSON.parse(read('package.json')) as { imports: Record<string, string> };
    const missing: string[] = [];
    for (const file of ['intent.ts', 'compute.ts', 'answer.ts'])
      for (const [, names, from] of read(`intents/what-panel/${file}`).matchAll(
        /import (?:type )?\{ ([^}]*) \} from '([^']+)'/g,
      )) {
        const asked = present(from).replace(/^#[a-z]+\/(?=.)/, start =>
          present(imports[`${start}*`]).replace('*', ''),
        );
        const text = read(join(from?.startsWith('.') ? 'intents/what-panel' : '', asked));
        for (const name of present(names).split(/,\s*/))
          if (
            !new RegExp(`export (?:const|function|interface|type) ${name.replace('type ', '')}\\b`).test(text)
          )
            missing.push(`${file}: ${name} of ${from}`);
      }
    expect(missing).toEqual([]);
  });

  test('and it loads, listed before the one that is left', () => {
    const script = `import { intents } from '#intents';
      const made = intents.find(i => i.name === 'what-panel');
      console.log(made.title, intents.at(-1).name, made.takes.join());`;
    const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
      cwd: copy,
      encoding: 'utf8',
    });
    expect(stderr + stdout).toBe('TODO what-panel? unclear batteries\n');
  });
});
