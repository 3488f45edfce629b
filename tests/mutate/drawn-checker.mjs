// Stryker's plugin for `drawn.ts`: lets through the mutants that are drawn.
import { drawn } from './drawn.ts';

const checker = {
  init: async () => {},
  // All at once: a draw is of all of them.
  group: async mutants => [mutants.map(({ id }) => id)],
  check: async mutants => {
    const some = drawn(mutants, JSON.parse(process.env.DRAWN));
    return Object.fromEntries(
      mutants.map(({ id }) => [
        id,
        some.has(id) ? { status: 'passed' } : { status: 'compileError', reason: 'not drawn' },
      ]),
    );
  },
};

export const strykerPlugins = [{ kind: 'Checker', name: 'drawn', value: checker }];
