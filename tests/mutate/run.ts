// `npm run mutate`: Stryker over the engine's code; `npm run mutate -- published`: constants against published rows.
import { spawnSync } from 'node:child_process';

const [what, ...rest] = process.argv.slice(2);
if (what === 'published') process.exitCode = await (await import('./report.ts')).report(rest);
else {
  const args = ['run', 'tests/house/stryker.config.mjs', ...process.argv.slice(2)];
  process.exitCode = spawnSync('stryker', args, { stdio: 'inherit' }).status ?? 1;
}
