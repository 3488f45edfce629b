import { defineConfig } from 'vitest/config';

/** Settings of the test runner; here, not at the top, so that the top level stays short. */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/house/offline.ts'],
    testTimeout: 30_000,
    // All processors: two where there are two.
    maxWorkers: '100%',
    env: { LOG_LEVEL: 'silent' },
  },
});
