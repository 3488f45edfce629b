import { defineConfig } from 'vitest/config';

/** The tests that mutants of the engine have to pass: those of the engine's own numbers, and nothing slow. */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    include: ['tests/{engine,published,rules,outside}/**/*.test.ts'],
    exclude: ['tests/outside/working.test.ts'],
    // Generous, for busy machines: a mutant whose loop does not end is stopped from outside.
    testTimeout: 900_000,
    env: { LOG_LEVEL: 'silent' },
  },
});
