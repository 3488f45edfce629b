import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { templates } from './templates.ts';

// `npm run new:intent what-panel` makes the folder of a question, with phrases that fail until it is written,
// names it in src/answer/answer.ts and lists it in intents/index.ts.
const root = new URL('../../', import.meta.url);
const [name, ...rest] = process.argv.slice(2);

function fail(why: string): never {
  console.error(why);
  process.exit(2);
}

if (!name || rest.length > 0) fail('usage: npm run new:intent NAME, such as what-panel');
if (!/^[a-z]+(-[a-z]+)*$/.test(name) || name.length > 30)
  fail(
    `"${name}" can't be a name: small letters a to z, words joined by "-", 30 at most, such as what-panel`,
  );
const folder = new URL(`intents/${name}/`, root);
if (existsSync(folder)) fail(`intents/${name} is there already`);

const variable = name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
const reserved = [
  'default',
  'new',
  'delete',
  'switch',
  'case',
  'class',
  'function',
  'return',
  'import',
  'export',
];
if (reserved.includes(variable)) fail(`"${name}" is a word of the language; take two words`);

/** Puts text into a file before the first match; the list of questions must look as it does today. */
function insert(path: string, before: RegExp, text: string): void {
  const url = new URL(path, root);
  const old = readFileSync(url, 'utf8');
  const at = old.search(before);
  if (at < 0) fail(`no place for "${name}" in ${path}: add it by hand`);
  writeFileSync(url, old.slice(0, at) + text + old.slice(at));
}

// "unclear" is what is left when nothing fits, so it stays the last.
insert('intents/index.ts', /unclear\s*,?\s*\]/, `${variable}, `);
insert('intents/index.ts', /import \{ unclear \}/, `import { ${variable} } from './${name}/intent.ts';\n`);
insert('src/answer/answer.ts', /'unclear',?\s*\]/, `'${name}', `);

mkdirSync(folder);
for (const [file, text] of Object.entries(templates(name, variable)))
  writeFileSync(new URL(file, folder), text);

// The formatter puts the lines where they belong; without it (no development packages) they stand as inserted.
const biome = fileURLToPath(new URL('node_modules/@biomejs/biome/bin/biome', root));
const paths = ['intents/index.ts', 'src/answer/answer.ts', `intents/${name}`];
spawnSync(process.execPath, [biome, 'check', '--write', '--config-path=tests/house', ...paths], {
  cwd: fileURLToPath(root),
});
console.log(
  `made intents/${name}. Next: write its phrases, then "npx vitest run --config tests/house/vitest.config.ts tests/intents -t ${name}"`,
);
