import { globSync, readFileSync } from 'node:fs';
import { present } from '#basics/present.ts';

/** The project's folder, with a slash at its end. */
export const root = new URL('../..', import.meta.url).pathname;

/** Paths from the root of all files that match, sorted, with forward slashes. */
export const files = (...patterns: string[]): string[] =>
  globSync(patterns, { cwd: root, exclude: path => /(^|\/)node_modules($|\/)/.test(path) })
    .map(path => path.replaceAll('\\', '/'))
    .sort();

/** All TypeScript of the program itself: not tests, not declarations. */
export const programFiles = (): string[] =>
  files('src/**/*.ts', 'intents/**/*.ts').filter(path => !path.endsWith('.d.ts'));

export const read = (path: string): string => readFileSync(`${root}${path}`, 'utf8');

/** How a file asks for another: at its start, at run time, or for its types only. */
type How = 'static' | 'dynamic' | 'types';

export interface Import {
  readonly from: string;
  readonly how: How;
  /** As written: "#rule/rule.ts", "zod". */
  readonly asks: string;
  /** Path from the root for a file of ours; absent for a package. */
  readonly file?: string;
}

const withoutComments = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\//g, ' ').replace(/(^|[^:'"`])\/\/[^\n]*/g, '$1');

const statement = /(?:^|[\n;])\s*(?:import|export)\s+(type\s+)?([^'"`;()=]*?\sfrom\s*)?(['"])([^'"\n]+)\3/g;
const call = /\bimport\(\s*(['"])([^'"\n]+)\1/g;

/** Whether `{ type A, type B }` names types alone. */
const namesTypesOnly = (clause: string): boolean => {
  const inBraces = /^\{([^}]*)\}\s*from/.exec(clause.trim());
  return (
    inBraces !== null &&
    present(inBraces[1])
      .split(',')
      .every(name => /^\s*(type\s|$)/.test(name))
  );
};

/** The file that an import means, as Node would find it by package.json's "imports". */
function target(from: string, asks: string, subpaths: Readonly<Record<string, string>>): string | undefined {
  if (asks.startsWith('.')) return new URL(asks, `file:///${from}`).pathname.slice(1);
  if (!asks.startsWith('#')) return undefined;
  const exact = subpaths[asks];
  if (exact) return exact.slice(2);
  // As Node does: the longest matching prefix wins.
  const keys = Object.keys(subpaths).filter(key => key.endsWith('*') && asks.startsWith(key.slice(0, -1)));
  const key = keys.sort((a, b) => b.length - a.length)[0];
  return (
    key &&
    present(subpaths[key])
      .replace('*', asks.slice(key.length - 1))
      .slice(2)
  );
}

/** All imports of a file, those of types included. */
export function importsOf(from: string, text = read(from)): Import[] {
  const { imports } = JSON.parse(read('package.json')) as { imports: Record<string, string> };
  const plain = withoutComments(text);
  const found = (asks: string, how: How): Import => ({ from, how, asks, file: target(from, asks, imports) });
  return [
    ...[...plain.matchAll(statement)].map(([, type, clause, , asks]) =>
      found(present(asks), type || (clause && namesTypesOnly(clause)) ? 'types' : 'static'),
    ),
    ...[...plain.matchAll(call)].map(([, , asks]) => found(present(asks), 'dynamic')),
  ];
}

/** Everything a file pulls in when it is loaded, by static imports alone: our files, and who loads which package. */
export function reaches(start: string): { files: Set<string>; packages: Import[] } {
  const seen = new Set<string>();
  const packages: Import[] = [];
  const visit = (path: string): void => {
    if (seen.has(path) || !path.endsWith('.ts')) return;
    seen.add(path);
    for (const found of importsOf(path)) {
      if (found.how !== 'static') continue;
      if (found.file) visit(found.file);
      else packages.push(found);
    }
  };
  visit(start);
  return { files: seen, packages };
}
