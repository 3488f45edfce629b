// `npm run mutate`: Stryker over the engine's code; `npm run mutate -- published`: constants against published rows;
// `npm run mutate -- static 40 7`: 40 of the mutants that the first leaves out, drawn from the seed 7.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

const [what, ...rest] = process.argv.slice(2);
const stryker = (args: readonly string[], env: NodeJS.ProcessEnv = process.env): number =>
  spawnSync('stryker', ['run', ...args], { stdio: 'inherit', env }).status ?? 1;

if (what === 'published') process.exitCode = await (await import('./report.ts')).report(rest);
else if (what === 'static') {
  const { staticSample } = await import('./static.ts');
  const [size = 40, seed = 7] = rest.map(Number);
  const places = staticSample(JSON.parse(readFileSync('reports/mutation.json', 'utf8')), size, seed);
  const env = { ...process.env, MUTANTS: JSON.stringify(places) };
  process.exitCode = stryker(['tests/house/stryker-static.config.mjs'], env);
} else process.exitCode = stryker(['tests/house/stryker.config.mjs', ...process.argv.slice(2)]);
