// A sample of static mutants, by hand: `npm run mutate -- static 40 7`, after `npm run mutate`.
import base from './stryker.config.mjs';

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  ...base,
  mutate: JSON.parse(process.env.MUTANTS ?? '[]'),
  ignoreStatic: false,
  // Each runs all of the tests.
  timeoutMS: 60_000,
  thresholds: { high: 95, low: 85, break: null },
  jsonReporter: { fileName: 'reports/mutation-static.json' },
};
