import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { hazardTable } from '#language/hazards/hazard-table.ts';
import { lexicon } from '#language/hazards/lexicon-table.ts';

const figures = readFileSync(new URL('../../../src/language/hazards/figures.ts', import.meta.url), 'utf8');
const parts = hazardTable.flatMap(row => row.shows.flatMap(way => way.split(/ [+~-] |\|/)));

test('every meaning that a way names is in the lexicon, or a figure that is found', () => {
  const isKnown = (part: string): boolean =>
    part in lexicon || part === 'denial' || part.replace(/^no-/, '') in lexicon;
  const isFigure = (part: string): boolean =>
    part.startsWith('#') && (figures.includes(`'${part}'`) || /^#(?:over|under)-/.test(part));
  expect(parts.filter(part => !isKnown(part) && !isFigure(part))).toEqual([]);
});

test('no way stands twice in a row', () => {
  for (const { code, shows } of hazardTable) expect(new Set(shows).size, code).toBe(shows.length);
});
