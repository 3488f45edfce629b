import { expect, test } from 'vitest';
import { openStore } from '#memory/open.ts';
import { conformance } from './conformance.ts';

conformance('volatile', async () => ({
  open: options => openStore('memory:', options),
  end: async () => undefined,
}));

test.each(['', 'mysql://x', 'data/memory.db', 'sqlite:', 'sqlite:?synchronous=full'])(
  'the address %j is refused in one line',
  async url => {
    await expect(openStore(url)).rejects.toThrow(/^DATABASE_URL .*$/);
  },
);
