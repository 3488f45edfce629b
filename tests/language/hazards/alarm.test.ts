import { expect, test } from 'vitest';
import { alarmed } from '#language/hazards/alarm.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';

test.for<[name: string, p: Partial<Record<HazardCode, number>>, concepts: string[], codes: HazardCode[]]>([
  ['nothing likely', { gas: 0.04, 'no-fuse': 0.04 }, ['gas-word', 'fuse'], []],
  ['likely, with a word that shows it', { 'mixed-parallel': 0.25 }, ['old'], ['mixed-parallel']],
  ['likely, and no word shows it', { 'mixed-parallel': 0.25 }, ['lithium'], []],
  [
    'so likely that other words than ours must show it',
    { 'mixed-parallel': 0.8 },
    ['lithium'],
    ['mixed-parallel'],
  ],
  ['less likely, without a word that shows it', { 'carbon-monoxide': 0.5 }, ['sleep'], []],
  ['likely as a whole, and no one danger of them', { gas: 0.05, 'no-fuse': 0.05 }, ['fuse', 'gas-word'], []],
  ['hardly likely, with a word that shows it', { 'no-fuse': 0.1 }, ['fuse'], ['no-fuse']],
  ['as likely an emergency, which takes the whole answer', { gas: 0.1 }, ['gas-word'], []],
  ['an emergency likelier than that', { gas: 0.21 }, ['gas-word'], ['gas']],
  ['two at once', { 'no-fuse': 0.6, 'over-current': 0.2 }, ['fuse', 'inverter'], ['no-fuse', 'over-current']],
  [
    'an emergency beside it must be likelier',
    { 'no-fuse': 0.6, gas: 0.14 },
    ['fuse', 'gas-word'],
    ['no-fuse'],
  ],
])('%s', ([, p, concepts, codes]) => {
  expect(alarmed(new Map(Object.entries(p)), () => new Set(concepts))).toEqual(codes);
});
