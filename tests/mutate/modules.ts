import { isBuiltin } from 'node:module';
import vm from 'node:vm';
import { importsOf, read, root } from '../house/source.ts';
import { plainCode } from './constants.ts';

/** Who loads whom among the project's files, from some start on; types don't count. */
export interface Graph {
  readonly files: ReadonlySet<string>;
  /** The file and all that load it, near or far. */
  readonly above: (path: string) => ReadonlySet<string>;
  readonly target: (from: string, asks: string) => string | undefined;
}

export function graphOf(starts: readonly string[]): Graph {
  const targets = new Map<string, Map<string, string | undefined>>();
  const loaders = new Map<string, string[]>();
  const waiting = [...starts];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (targets.has(path)) continue;
    const found = path.endsWith('.ts') ? importsOf(path).filter(({ how }) => how !== 'types') : [];
    targets.set(path, new Map(found.map(({ asks, file }) => [asks, file])));
    for (const { file, how } of found) {
      if (file === undefined || how !== 'static') continue;
      loaders.set(file, [...(loaders.get(file) ?? []), path]);
      waiting.push(file);
    }
  }
  const above = (path: string): ReadonlySet<string> => {
    const all = new Set([path]);
    for (const file of all) for (const loader of loaders.get(file) ?? []) all.add(loader);
    return all;
  };
  return { files: new Set(targets.keys()), above, target: (from, asks) => targets.get(from)?.get(asks) };
}

type Exports = Record<string, unknown>;
const plain = new Map<string, string>();

/** A file's code without types, kept. */
export function codeOf(path: string): string {
  const kept = plain.get(path) ?? plainCode(read(path));
  plain.set(path, kept);
  return kept;
}

const shared = new Map<string, vm.Module>();

/** A module that this process has loaded once and that no change touches. */
async function sharedModule(asks: string): Promise<vm.Module> {
  const kept = shared.get(asks);
  if (kept) return kept;
  const options = asks.endsWith('.json') ? { with: { type: 'json' } } : undefined;
  const loaded = (await import(asks, options)) as Exports;
  const names = Object.keys(loaded);
  const made = new vm.SyntheticModule(names, () => {
    for (const name of names) made.setExport(name, loaded[name]);
  });
  shared.set(asks, made);
  return made;
}

/** Loads files anew: those in `anew` from their text, one of them changed, and everything else as it stands. */
export function loaderOf(
  graph: Graph,
  anew: ReadonlySet<string>,
  change?: { readonly path: string; readonly code: string },
): (path: string) => Promise<Exports> {
  const made = new Map<string, vm.SourceTextModule>();
  const moduleOf = (path: string): vm.Module => {
    const kept = made.get(path);
    if (kept) return kept;
    const module = new vm.SourceTextModule(change?.path === path ? change.code : codeOf(path), {
      identifier: `${root}${path}`,
      initializeImportMeta: meta => {
        meta.url = `file://${root}${path}`;
      },
      importModuleDynamically: asks => sharedModule(located(path, asks)) as never,
    });
    made.set(path, module);
    return module;
  };
  const located = (from: string, asks: string): string => {
    const file = graph.target(from, asks);
    return file === undefined || isBuiltin(asks) ? asks : `${root}${file}`;
  };
  const linker = (asks: string, from: vm.Module): vm.Module | Promise<vm.Module> => {
    const path = from.identifier.slice(root.length);
    const file = graph.target(path, asks);
    return file !== undefined && anew.has(file) ? moduleOf(file) : sharedModule(located(path, asks));
  };
  return async path => {
    const module = moduleOf(path);
    if (module.status === 'unlinked') await module.link(linker as never);
    await module.evaluate({ timeout: 90_000 });
    return module.namespace as Exports;
  };
}
