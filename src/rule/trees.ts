import { createRequire } from 'node:module';
import { present } from '#basics/present.ts';
import type { Tree } from './tree.ts';
import stored from './trees.json' with { type: 'json' };

const trees = stored as unknown as Readonly<Record<string, Tree>>;
const load = createRequire(import.meta.url);

/**
 * The tree of a formula. Those of the rules are stored in `trees.json` (written by `npm run docs`, held fresh by
 * `npm run check`), so that a start needs no mathjs, nor an install: that saves 80 ms, and 18 MB on the disk. A
 * formula that isn't stored yet is parsed on the spot, where mathjs is there for development.
 */
export function treeOf(name: string, formula: string, symbols: readonly string[]): Tree {
  if (Object.hasOwn(trees, formula)) return present(trees[formula]);
  const { parseFormula } = load('./parse.ts') as typeof import('./parse.ts');
  return parseFormula(name, formula, symbols);
}
