import { defineConfig } from 'vitest/config';

/** The tests that mutants of the engine have to pass: those of the engine's own numbers, and nothing slow. */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    include: ['tests/{engine,published,rules,outside}/**/*.test.ts'],
    exclude: ['tests/outside/working.test.ts'],
    testTimeout: 20_000,
    env: { LOG_LEVEL: 'silent' },
  },
});
