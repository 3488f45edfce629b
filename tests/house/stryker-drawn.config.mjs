// A seeded sample of the mutants, by hand: `npm run mutate -- sample 280 7`, or of the static ones: `-- static 60 7`.
import base from './stryker.config.mjs';

const { isStatic } = JSON.parse(process.env.DRAWN ?? '{}');

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  ...base,
  plugins: [...base.plugins, new URL('../mutate/drawn-checker.mjs', import.meta.url).pathname],
  // What isn't drawn is refused, as if it did not compile: Stryker's score leaves such mutants out.
  checkers: ['drawn'],
  ignoreStatic: !isStatic,
  // Static mutants run all of the tests each.
  timeoutMS: isStatic ? 60_000 : base.timeoutMS,
  thresholds: { high: 95, low: 85, break: null },
  jsonReporter: { fileName: `reports/mutation-${isStatic ? 'static' : 'sample'}.json` },
};
