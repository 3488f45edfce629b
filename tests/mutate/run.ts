// `npm run mutate`: Stryker over the engine's code; `npm run mutate -- published`: constants against published rows;
// `npm run mutate -- sample 280 7`: 280 of the mutants, drawn from the seed 7; `-- static 60 7`: of those the first leaves out.
// What follows goes to Stryker: `-c 1` for one process.
import { spawnSync } from 'node:child_process';

const [what, ...rest] = process.argv.slice(2);
const stryker = (args: readonly string[], env: NodeJS.ProcessEnv = process.env): number =>
  spawnSync('stryker', ['run', ...args], { stdio: 'inherit', env }).status ?? 1;

if (what === 'published') process.exitCode = await (await import('./report.ts')).report(rest);
else if (what === 'sample' || what === 'static') {
  const [size = 60, seed = 7] = rest.slice(0, 2).map(Number);
  const env = { ...process.env, DRAWN: JSON.stringify({ size, seed, isStatic: what === 'static' }) };
  process.exitCode = stryker(['tests/house/stryker-drawn.config.mjs', ...rest.slice(2)], env);
} else process.exitCode = stryker(['tests/house/stryker.config.mjs', ...process.argv.slice(2)]);
