import { present } from '#basics/present.ts';

/** What a module may use of another: the whole of it, its types, or some files. */
type May = 'all' | 'types' | readonly `${string}.ts`[];

export interface Module {
  readonly layer: number;
  readonly may: Readonly<Record<string, May>>;
  /** Packages it may import; those of Node only where 'node:' stands. */
  readonly packages: readonly string[];
}

/**
 * Which module stands on which layer and what it may import. Imports go down only, and on its own
 * layer a module sees only itself. `main` stands for the files right under src/, which may use everything.
 */
export const modules: Readonly<Record<string, Module>> = {
  // Checks and copies that know nothing of power: every module may use them.
  basics: { layer: 0, may: {}, packages: [] },
  quantity: { layer: 0, may: {}, packages: [] },
  // node:fs: the list of the world's towns is a file of data beside it, read at the first look-up.
  places: { layer: 0, may: {}, packages: ['node:fs'] },
  // node:module: the parsed formulas are a file of data beside it.
  // node:fs, node:zlib: the fitted climate is a file of data beside it, read at the first look-up.
  climate: { layer: 0, may: {}, packages: ['node:fs', 'node:zlib'] },
  rule: { layer: 1, may: { quantity: 'all' }, packages: ['mathjs', 'node:module'] },
  // Appliances and gear, a row a thing: reading knows them by name, the engine by their figures.
  catalog: { layer: 1, may: { quantity: 'all' }, packages: [] },
  rig: { layer: 1, may: {}, packages: ['zod'] },
  engine: {
    layer: 2,
    may: { catalog: 'all', rule: 'all', quantity: 'all', rig: 'all', places: 'all', climate: 'all' },
    packages: [],
  },
  // node:fs: the learned weights are a file of data beside it.
  language: {
    layer: 2,
    may: { catalog: 'all', quantity: 'all', rig: 'all', places: 'all' },
    packages: ['node:fs'],
  },
  answer: {
    layer: 3,
    may: { rule: 'all', quantity: 'all', rig: 'all', language: ['language/issue.ts'], chart: 'types' },
    packages: [],
  },
  // Charts are the one part of an answer with packages and files of its own; loaded when first asked for.
  chart: {
    layer: 3,
    may: { answer: 'all', quantity: 'all', rig: 'all' },
    packages: ['d3-scale', 'd3-shape', '@resvg/resvg-js', 'node:'],
  },
  intents: {
    layer: 4,
    may: {
      answer: 'all',
      chart: 'types',
      language: 'types',
      engine: 'all',
      catalog: 'all',
      quantity: 'all',
      rig: 'all',
      places: 'all',
      rule: 'all',
    },
    // node:module: examples.ts reads the phrases of all questions, once, when help is first asked for.
    packages: ['zod', 'node:module'],
  },
  conversation: {
    layer: 5,
    may: { intents: 'all', language: 'all', answer: 'all', quantity: 'all', rig: 'all' },
    packages: ['zod'],
  },
  memory: {
    layer: 6,
    may: { conversation: ['conversation/memory.ts', 'conversation/memory-store.ts'] },
    packages: ['zod', 'pg', 'node:'],
  },
  telegram: {
    layer: 7,
    // What draws a chart is loaded by both transports when the first picture is wanted.
    may: { conversation: 'all', answer: 'all', chart: 'all' },
    packages: [
      'grammy',
      '@grammyjs/auto-retry',
      '@grammyjs/runner',
      '@grammyjs/transformer-throttler',
      'zod',
      'pino',
      'prom-client',
      'node:',
    ],
  },
  console: {
    layer: 7,
    may: { conversation: 'all', answer: 'all', chart: 'all' },
    packages: ['zod', 'node:'],
  },
};

/** The module of a file, "main" for the top layer. */
export function moduleOf(path: string): string {
  if (path.startsWith('intents/')) return 'intents';
  if (path.startsWith('src/answer/chart/')) return 'chart';
  const [, module, rest] = path.split('/');
  return rest === undefined || module === 'tools' ? 'main' : present(module);
}
