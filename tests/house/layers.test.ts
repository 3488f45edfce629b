import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { moduleOf, modules } from './layers.ts';
import { type Import, importsOf, programFiles, reaches, read } from './source.ts';

// The templates of a new question hold the imports of files that are not there yet.
const all = programFiles().filter(path => path !== 'src/tools/templates.ts');
const imports = all.flatMap(path => importsOf(path));

/** Why an import is against the house, or undefined. */
function wrong({ from, how, asks, file }: Import): string | undefined {
  const name = moduleOf(from);
  const module = modules[name];
  if (name === 'main') return undefined;
  if (!module) return `${name} is not a module of tests/house/layers.ts`;
  if (!file) {
    const isAllowed = module.packages.some(p => asks === p || asks.startsWith(p.endsWith(':') ? p : `${p}/`));
    return isAllowed ? undefined : `${name} may not use the package ${asks}`;
  }
  const other = moduleOf(file);
  if (other === name) return sameRoom(from, file);
  if (other === 'basics') return undefined;
  const may = module.may[other];
  if (may === undefined) return `${name} may not use ${other}`;
  if (Array.isArray(may) && !may.some(one => file === `src/${one}`))
    return `${name} may use only ${may.join(' and ')} of ${other}`;
  if (may === 'types' && how !== 'types') return `${name} may use only types of ${other}`;
  return undefined;
}

/** Questions and stores are neighbours that never meet: each keeps to its folder and what they share. */
function sameRoom(from: string, file: string): string | undefined {
  const [, folder] = /^(?:intents|src\/memory)\/([^/]+)\//.exec(from) ?? [];
  const [, other] = /^(?:intents|src\/memory)\/([^/]+)\//.exec(file) ?? [];
  if (!folder) return undefined;
  if (file === 'intents/index.ts') return 'a question may not know the list of questions';
  return other === undefined || other === folder ? undefined : `${folder} may not use its neighbour ${other}`;
}

/** Groups of files that import one another in a ring (Tarjan's strongly connected components). */
function rings(edges: ReadonlyMap<string, readonly string[]>): string[][] {
  const index = new Map<string, number>();
  const low = new Map<string, number>();
  const stack: string[] = [];
  const found: string[][] = [];
  const visit = (node: string): void => {
    index.set(node, index.size);
    low.set(node, present(index.get(node)));
    stack.push(node);
    for (const next of edges.get(node) ?? []) {
      if (!index.has(next)) visit(next);
      if (stack.includes(next)) low.set(node, Math.min(present(low.get(node)), present(low.get(next))));
    }
    if (low.get(node) !== index.get(node)) return;
    const ring = stack.splice(stack.indexOf(node));
    if (ring.length > 1 || edges.get(node)?.includes(node)) found.push(ring);
  };
  for (const node of edges.keys()) if (!index.has(node)) visit(node);
  return found;
}

const graphOf = (from: readonly Import[]): Map<string, string[]> =>
  new Map(
    all.map(path => [
      path,
      from.filter(i => i.from === path && i.file && i.how !== 'dynamic').map(i => present(i.file)),
    ]),
  );

describe('layers', () => {
  test('every import goes down, to a module that it may use', () => {
    const broken = imports.flatMap(i => {
      const why = wrong(i);
      return why ? [`${i.from} imports ${i.asks}: ${why}`] : [];
    });
    expect(broken).toEqual([]);
  });

  test('every import means a file that is there', () => {
    const there = programFiles();
    const lost = imports.filter(i => i.file?.endsWith('.ts') && !there.includes(i.file));
    expect(lost.map(i => `${i.from} imports ${i.asks}`)).toEqual([]);
  });

  test('the table itself goes down', () => {
    // An answer carries a chart as data, and a chart draws it: one layer, joined by types alone.
    const isJoined = (a: string, b: string) => [a, b].sort().join() === 'answer,chart';
    for (const [name, module] of Object.entries(modules))
      for (const other of Object.keys(module.may))
        if (!isJoined(name, other))
          expect(present(modules[other]).layer, `${name} → ${other}`).toBeLessThan(module.layer);
  });

  test('there are no rings, types included', () => {
    // One pair of the reader knows each other still, by its types.
    const known = ['reading.ts recognise/convert.ts'];
    const found = rings(graphOf(imports)).map(ring =>
      ring.map(path => path.replace('src/language/', '')).join(' '),
    );
    expect(found.filter(ring => !known.includes(ring))).toEqual([]);
  });

  test('parse.ts alone loads mathjs', () => {
    const loaders = imports.filter(i => /^mathjs(\/|$)/.test(i.asks) && i.how !== 'types');
    expect(loaders.map(i => i.from)).toEqual(['src/rule/parse.ts']);
  });

  test('the program needs its dependencies, all of them and no others; its tools those of developers too', () => {
    const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Record<
      'dependencies' | 'devDependencies',
      Record<string, string>
    >;
    // A rule's tree is stored: what parses it is loaded where rules are written, and no install has to bring it.
    const isTool = (path: string): boolean => path.startsWith('src/tools/') || path === 'src/rule/parse.ts';
    const lost = imports
      .filter(i => !i.file && i.how !== 'types' && !i.asks.startsWith('node:'))
      .filter(i => {
        const name = i.asks
          .split('/')
          .slice(0, i.asks.startsWith('@') ? 2 : 1)
          .join('/');
        return !(name in dependencies || (isTool(i.from) && name in devDependencies));
      });
    expect(lost.map(i => `${i.from} imports ${i.asks}`)).toEqual([]);
    const texts = programFiles()
      .filter(path => !isTool(path))
      .map(path => read(path))
      .join('\n');
    // Some are used by their files alone (fonts), so a mention is enough.
    expect(Object.keys(dependencies).filter(name => !texts.includes(name))).toEqual([]);
  });

  test('the middle loads no transport, no store, no settings, no chart', () => {
    const { files, packages } = reaches('src/conversation/converse.ts');
    const heavy = /^(grammy|@grammyjs|pino|dotenv|pg|d3-|@resvg|node:)/;
    // Data that is a part of the program, read once when first asked for.
    const ownData = [
      'intents/examples.ts loads node:module',
      'src/answer/speech.ts loads node:fs',
      'src/answer/speech.ts loads node:module',
      'src/climate/file.ts loads node:zlib',
      'src/climate/world.ts loads node:fs',
      'src/language/decide/weights.ts loads node:fs',
      'src/places/world.ts loads node:fs',
      'src/rule/trees.ts loads node:module',
    ];
    const loads = packages.filter(i => heavy.test(i.asks)).map(i => `${i.from} loads ${i.asks}`);
    expect(loads.filter(line => !ownData.includes(line))).toEqual([]);
    const modules = new Set([...files].map(moduleOf));
    expect(
      [...modules].filter(module => ['chart', 'memory', 'telegram', 'console', 'main'].includes(module)),
    ).toEqual([]);
    expect(files.size).toBeGreaterThan(30);
  });

  test('the top layer loads transports and stores only when it needs them', () => {
    const early = imports.filter(
      i =>
        ['src/main.ts', 'src/ask.ts'].includes(i.from) &&
        i.how === 'static' &&
        i.file &&
        ['telegram', 'console', 'chart'].includes(moduleOf(i.file)),
    );
    expect(early.map(i => `${i.from} imports ${i.asks}`)).toEqual([]);
  });
});

describe('the checks themselves see', () => {
  const seen = (text: string) => importsOf('src/engine/made-up.ts', text).map(i => [i.asks, i.how, i.file]);
  test.for<[text: string, want: unknown[]]>([
    [`import { a } from '#rule/rule.ts';`, ['#rule/rule.ts', 'static', 'src/rule/rule.ts']],
    [`import type { A } from '#answer/answer.ts';`, ['#answer/answer.ts', 'types', 'src/answer/answer.ts']],
    [`import { type A, type B } from './x.ts';`, ['./x.ts', 'types', 'src/engine/x.ts']],
    [`import { type A, b } from './x.ts';`, ['./x.ts', 'static', 'src/engine/x.ts']],
    [`import {\n  a,\n  b,\n} from "../rig/rig.ts";`, ['../rig/rig.ts', 'static', 'src/rig/rig.ts']],
    [`export { a } from './x.ts';`, ['./x.ts', 'static', 'src/engine/x.ts']],
    [`export type { A } from './x.ts';`, ['./x.ts', 'types', 'src/engine/x.ts']],
    [`import './x.ts';`, ['./x.ts', 'static', 'src/engine/x.ts']],
    [`const a = await import('grammy');`, ['grammy', 'dynamic', undefined]],
    [`import i from '#intents';`, ['#intents', 'static', 'intents/index.ts']],
    [`import i from '#intents/intent.ts';`, ['#intents/intent.ts', 'static', 'intents/intent.ts']],
    [`import p from '../a.json' with { type: 'json' };`, ['../a.json', 'static', 'src/a.json']],
  ])('%s', ([text, want]) => {
    expect(seen(text)).toEqual([want]);
  });

  test('comments import nothing', () => {
    expect(seen(`// import { a } from 'b';\n/* import 'c'; */\nconst url = 'https://d';`)).toEqual([]);
  });

  test('a ring of three, and a file that imports itself', () => {
    const edges = new Map([
      ['a', ['b']],
      ['b', ['c']],
      ['c', ['a']],
      ['d', ['a', 'd']],
    ]);
    expect(rings(edges).map(ring => ring.sort())).toEqual([['a', 'b', 'c'], ['d']]);
  });

  test.for<[from: string, text: string, why: string]>([
    ['src/engine/x.ts', `import { a } from '#language/reading.ts';`, 'engine may not use language'],
    ['src/rig/x.ts', `import type { A } from '#answer/answer.ts';`, 'rig may not use answer'],
    ['intents/trip/x.ts', `import { a } from '../rig/intent.ts';`, 'trip may not use its neighbour rig'],
    [
      'intents/trip/x.ts',
      `import { a } from '#language/reading.ts';`,
      'intents may use only types of language',
    ],
    ['intents/trip/x.ts', `import { a } from '#intents';`, 'a question may not know the list of questions'],
    ['src/quantity/x.ts', `import fs from 'node:fs';`, 'quantity may not use the package node:fs'],
    ['src/memory/sqlite/x.ts', `import '../postgres/store.ts';`, 'sqlite may not use its neighbour postgres'],
    [
      'src/answer/x.ts',
      `import type { Talk } from '#language/talk.ts';`,
      'answer may use only language/issue.ts of language',
    ],
  ])('%s: %s', ([from, text, why]) => {
    expect(importsOf(from, text).map(wrong)).toEqual([why]);
  });
});
