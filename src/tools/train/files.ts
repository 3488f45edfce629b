import { readFileSync } from 'node:fs';
import { stripTypeScriptTypes } from 'node:module';
import tokens from 'js-tokens';

/** The project's folder. */
export const root = new URL('../../../', import.meta.url);

/** What a source says to the machine: its tokens, without types, comments, white space or the commas of a formatter. */
export function codeOf(text: string): string[] {
  const code = [...tokens(stripTypeScriptTypes(text))].filter(
    ({ type }) => !/^(?:WhiteSpace|LineTerminatorSequence|MultiLineComment|SingleLineComment)$/.test(type),
  );
  return code.flatMap(({ value }, i) => {
    const isTrailing = value === ',' && /^[)\]}]$/.test(code[i + 1]?.value ?? '');
    return isTrailing ? [] : [value];
  });
}

const unquoted = (literal: string): string => literal.slice(1, -1);

/** The files that code asks for: imports that stay when the types are gone, and data beside it (`new URL('./x', …)`). */
export function asksOf(code: readonly string[]): string[] {
  return code.flatMap((value, i) => {
    const next = code[i + 1] ?? '';
    const isText = /^['"]/.test(next);
    const isImport = isText && (value === 'from' || value === 'import');
    const isData = isText && value === '(' && code[i - 1] === 'URL' && code[i + 2] === ',';
    return isImport || isData ? [unquoted(next)] : [];
  });
}

/** Where an import leads, as the project's "imports" have it; nothing for packages. */
function leadsTo(asks: string, from: URL, subpaths: Readonly<Record<string, string>>): URL | undefined {
  if (asks.startsWith('.')) return new URL(asks, from);
  const key = Object.keys(subpaths).find(k => k.endsWith('*') && asks.startsWith(k.slice(0, -1)));
  return key === undefined
    ? undefined
    : new URL(subpaths[key]!.replace('*', asks.slice(key.length - 1)), root);
}

/** All files of the project that a file needs, itself included, each with its path from the root; sorted. */
export function needsOf(starts: readonly string[]): string[] {
  const { imports } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8')) as {
    imports: Record<string, string>;
  };
  const found = new Set<string>();
  const visit = (url: URL): void => {
    const path = url.href.slice(root.href.length);
    if (found.has(path)) return;
    found.add(path);
    if (!path.endsWith('.ts')) return;
    for (const asks of asksOf(codeOf(readFileSync(url, 'utf8')))) {
      const next = leadsTo(asks, url, imports);
      if (next) visit(next);
    }
  };
  for (const start of starts) visit(new URL(start, root));
  return [...found].sort();
}
