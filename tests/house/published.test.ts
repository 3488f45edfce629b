import { expect, test } from 'vitest';
import type { Row } from '../published/row.ts';
import { rules } from '../rules/all.ts';
import { files, root } from './source.ts';

/** Definitions, plain physics and the trade's rules of thumb have no number in a book to be held against. */
const needsNone = (source: string): boolean => /^definition|common practice|physics|Ohm's law/.test(source);

test('every rule that comes from a work is held against numbers from outside', async () => {
  const used = new Set<string>();
  for (const { rule } of rules) {
    const evaluate = rule.evaluate;
    Object.assign(rule, {
      evaluate: (inputs: Readonly<Record<string, number>>) => {
        used.add(rule.name);
        return evaluate(inputs);
      },
    });
  }
  for (const path of files('tests/published/*.ts').filter(p => !/(\.test|\/row)\.ts$/.test(p)))
    for (const row of ((await import(`${root}${path}`)) as { rows?: readonly Row[] }).rows ?? []) row.run();
  const unheld = rules.filter(({ rule }) => !needsNone(rule.source) && !used.has(rule.name));
  expect(unheld.map(({ rule }) => `${rule.name}: ${rule.source}`)).toEqual([]);
});
