import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { widthOf } from '#answer/chart/letters.ts';
import { present } from '#basics/present.ts';
import { subsets } from '#src/tools/fonts/scripts.ts';
import { advancesOf } from '#src/tools/fonts/ttf.ts';

const folder = new URL('../../../src/answer/chart/fonts/', import.meta.url);

test('each font that is listed is there, with its licence, and no other', () => {
  const files = readdirSync(folder);
  expect(files.filter(name => name.endsWith('.ttf')).sort()).toEqual(
    subsets.map(({ name }) => `${name}.ttf`).sort(),
  );
  expect(files).toContain('OFL.txt');
});

describe.each(subsets)('$name.ttf', ({ name, characters }) => {
  const advances = advancesOf(readFileSync(new URL(`${name}.ttf`, folder)));
  test('has nearly all that it was cut down to', () => {
    const wanted = new Set([...characters()].map(character => present(character.codePointAt(0))));
    const lacks = [...wanted].filter(code => !advances.has(code));
    expect(lacks.length / wanted.size).toBeLessThan(0.25);
  });
  test('has the widths that layout goes by', () => {
    if (name !== 'regular' && name !== 'semibold') return;
    for (const [code, width] of advances) {
      const character = String.fromCodePoint(code);
      if (/\p{M}/u.test(character)) continue;
      expect(widthOf(character, 1000, name === 'regular' ? 400 : 600)).toBeCloseTo(width, 6);
    }
  });
});
