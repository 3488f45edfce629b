// Mutation testing of the engine, by hand: `npm run mutate`, or one room: `npm run mutate -- -m 'src/engine/cable/**'`.

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  // Named, as the default looks for them by a name pattern.
  plugins: ['@stryker-mutator/vitest-runner'],
  testRunner: 'vitest',
  vitest: { configFile: 'tests/house/mutate.vitest.config.ts', related: false },
  coverageAnalysis: 'perTest',
  mutate: ['src/engine/**/*.ts', '!src/engine/**/*-table.ts', '!src/engine/solar/stations.ts'],
  // Formulas and tables are read once, when their file is loaded: a mutant there would need the whole suite anew.
  // tests/rules and tests/published hold them, row by row.
  ignoreStatic: true,
  concurrency: 2,
  // For busy machines: a loop that does not end is told by its count of rounds, not by the clock.
  timeoutMS: 20_000,
  dryRunTimeoutMinutes: 60,
  thresholds: { high: 95, low: 85, break: 85 },
  reporters: ['clear-text', 'json', 'progress-append-only'],
  clearTextReporter: { logTests: false, reportTests: false, allowColor: false },
  jsonReporter: { fileName: 'reports/mutation.json' },
  tempDirName: '.stryker-tmp',
  // No file of that name: Stryker would rewrite ours with functions that TypeScript 7 has no more.
  tsconfigFile: 'none',
  allowConsoleColors: false,
};
