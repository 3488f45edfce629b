import { defineConfig } from 'vitest/config';

/** Folders whose tests change nothing that another could see: their files share what they load. */
const pure = [
  'answer',
  'basics',
  'cases',
  'catalog',
  'climate',
  'conversation',
  'engine',
  'intents',
  'language',
  'messages',
  'outside',
  'places',
  'published',
  'quantity',
  'rig',
  'rules',
  'voice',
].map(folder => `tests/${folder}/**/*.test.ts`);

/** Settings of the test runner; here, not at the top, so that the top level stays short. */
export default defineConfig(({ mode }) => {
  const root = new URL('../..', import.meta.url).pathname;
  const shared = {
    setupFiles: ['tests/house/offline.ts'],
    hookTimeout: 30_000,
    testTimeout: mode === 'whole' ? 600_000 : 30_000,
    // By `npm run test:whole` everything is tried, not a share of it: tests/house/share.ts.
    env: { LOG_LEVEL: 'silent', WHOLE: mode === 'whole' ? 'yes' : 'no' },
  };
  return {
    root,
    test: {
      // All processors: two where there are two.
      maxWorkers: '100%',
      projects: [
        {
          root,
          test: {
            ...shared,
            name: 'pure',
            include: pure,
            // One load of program and weights for all files of a worker, by Node itself as when the bot runs.
            isolate: false,
            experimental: { viteModuleRunner: false, nodeLoader: false },
          },
        },
        { root, test: { ...shared, name: 'apart', include: ['tests/**/*.test.ts'], exclude: pure } },
      ],
    },
  };
});
