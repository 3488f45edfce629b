import { readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import { present } from '#basics/present.ts';
import { subsets } from './fonts/scripts.ts';
import { type Advances, advancesOf } from './fonts/ttf.ts';

/**
 * `npm run fonts -- FOLDER` cuts the fonts of pictures down to what they print, and writes how wide each letter is.
 * FOLDER is one in which the fonts and `subset-font` are installed: `src/answer/chart/fonts/README.md` says which.
 */
const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error('say the folder in which the fonts are installed');
const require = createRequire(join(resolve(folder), 'package.json'));
const subsetFont = require('subset-font') as (
  font: Buffer,
  text: string,
  options: { readonly preserveNameIds: readonly number[] },
) => Promise<Buffer>;
/** Name of the family and of the style: by them a weight is found. OpenType 1.9, "name". */
const familyNames = [16, 17];
const target = join(import.meta.dirname, '../answer/chart/fonts');

/** Letters in a row as one run: the first, then each one's width; a single number where they are alike. */
function runsOf(
  advances: Advances,
): (readonly [from: number, widths: number | readonly number[], to?: number])[] {
  const runs: { from: number; widths: number[] }[] = [];
  for (const [code, width] of [...advances].sort(([a], [b]) => a - b)) {
    const last = runs.at(-1);
    if (last && last.from + last.widths.length === code) last.widths.push(width);
    else runs.push({ from: code, widths: [width] });
  }
  return runs.map(({ from, widths }) =>
    new Set(widths).size === 1 ? [from, present(widths[0]), from + widths.length - 1] : [from, widths],
  );
}

const widths: Record<string, ReturnType<typeof runsOf>> = {};
for (const { name, from, characters } of subsets) {
  const font = await readFile(require.resolve(from.replace(/@\d[^/]*/, '')));
  const subset = await subsetFont(font, characters(), { preserveNameIds: familyNames });
  await writeFile(join(target, `${name}.ttf`), subset);
  widths[name] = runsOf(advancesOf(subset));
  console.log(`${name}: ${Math.round(subset.length / 1000)} kB`);
}
await writeFile(join(target, 'widths.json'), `${JSON.stringify(widths)}\n`);
