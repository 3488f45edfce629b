import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { pages } from './pages.ts';
import { transcript } from './scenes.ts';

// `npm run docs` writes the pages; `npm run docs -- --check` only tells whether they are fresh (exit 1 if not).
const root = new URL('../../', import.meta.url);
const isCheck = process.argv.includes('--check');

const stored = (path: string): string | undefined => {
  try {
    return readFileSync(new URL(path, root), 'utf8').replaceAll('\r\n', '\n');
  } catch {
    return undefined;
  }
};

const stale = Object.entries(await pages()).filter(([path, text]) => stored(path) !== text);
if (isCheck && stale.length > 0) {
  console.error(`${stale.map(([path]) => path).join(' and ')} out of date: run "npm run docs"`);
  process.exitCode = 1;
} else if (!isCheck) {
  for (const [path, text] of stale) writeFileSync(new URL(path, root), text);
  mkdirSync(new URL('docs/scenes/', root), { recursive: true });
  for (const [path, png] of Object.entries((await transcript()).pictures))
    writeFileSync(new URL(path, root), png);
  console.log(stale.length > 0 ? `wrote ${stale.map(([path]) => path).join(', ')}` : 'all fresh');
}
