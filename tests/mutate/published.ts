import vm from 'node:vm';
import { present } from '#basics/present.ts';
import { allRules } from '#rule/rule.ts';
import { files, read } from '../house/source.ts';
import type { Row } from '../published/row.ts';
import { type Constant, changed, constantsOf, plainCode, type Untried } from './constants.ts';
import { spreadOf } from './drawn.ts';
import { codeOf, graphOf, loaderOf } from './modules.ts';

/** The two changes that each constant gets: a fifth more, a fifth less. */
const factors = [1.2, 0.8] as const;

/** What the rows said to a constant: the first row that no longer held with a fifth more and with a fifth less. */
export interface Finding {
  readonly constant: Constant;
  readonly seenBy: readonly (string | undefined)[];
}

/** The longest that the rows may take, ms, on a busy machine too: beyond it a change made a loop endless, which a test would see. */
const patienceMs = 90_000;

/** Runs a function, stopping it when it takes too long. */
const within = <T>(run: () => T): T => {
  (globalThis as { rowsInHand?: () => T }).rowsInHand = run;
  return vm.runInThisContext('rowsInHand()', { timeout: patienceMs }) as T;
};

const holds = (row: Row): boolean => {
  try {
    return Math.abs(row.run() - row.gives) <= row.within + 1e-12;
  } catch (error) {
    if ((error as { code?: string }).code === 'ERR_SCRIPT_EXECUTION_TIMEOUT') throw error;
    return false;
  }
};

const rowFiles = files('tests/published/*.ts').filter(
  path => /\brows\b/.test(read(path)) && !/\.test\./.test(path),
);
// Whole messages are asked last: they take the longest.
const order = [...rowFiles].sort((a, b) => Number(a.includes('asked')) - Number(b.includes('asked')));
const graph = graphOf(order);

/** The id of the first row that doesn't hold with a file's code changed; the likely one is tried first. */
async function seenBy(path: string, code: string, likely?: string): Promise<string | undefined> {
  const above = graph.above(path);
  const load = loaderOf(graph, above, { path, code });
  const known = allRules.length;
  try {
    const touched = order.filter(file => above.has(file));
    const first = touched.filter(file => likely?.startsWith(`${file} `));
    for (const file of new Set([...first, ...touched])) {
      const { rows } = (await load(file)) as { rows: readonly Row[] };
      const inOrder = [...rows].sort(
        (a, b) => Number(`${file} ${b.id}` === likely) - Number(`${file} ${a.id}` === likely),
      );
      const failed = within(() => inOrder.find(row => !holds(row)));
      if (failed) return `${file} ${failed.id}`;
    }
    return undefined;
  } catch (error) {
    return `${path} does not run: ${(error as Error).message.split('\n')[0]}`;
  } finally {
    allRules.length = known;
  }
}

/** All constants of the engine that a row could reach, and the numbers that are left alone. */
export function engineConstants(): { tried: Constant[]; untried: Untried[]; unreached: string[] } {
  const paths = files('src/engine/**/*.ts');
  const found = paths.map(path => constantsOf(path, plainCode(read(path))));
  return {
    tried: found.flatMap(({ tried }) => tried),
    untried: found.flatMap(({ untried }) => untried),
    unreached: paths.filter((path, i) => !graph.files.has(path) && present(found[i]).tried.length > 0),
  };
}

/** As many of the constants as asked for, drawn by a seed, in the order they came in. */
function sampleOf(all: readonly Constant[], size: number, seed: number): Constant[] {
  const placeOf = ({ path, start, kind }: Constant) => spreadOf(`${path}:${start} ${kind}`, seed);
  const some = new Set([...all].sort((a, b) => placeOf(a) - placeOf(b)).slice(0, size));
  return all.filter(constant => some.has(constant));
}

/** Changes each constant that is wanted (of a sample, each drawn), one at a time, and yields what the rows say to it. */
export async function* findings(
  isWanted: (constant: Constant) => boolean,
  sample?: { readonly size: number; readonly seed: number },
): AsyncGenerator<Finding> {
  const wanted = engineConstants().tried.filter(isWanted);
  const checked = new Set<string>();
  for (const constant of sample ? sampleOf(wanted, sample.size, sample.seed) : wanted) {
    const { path } = constant;
    if (!graph.files.has(path)) {
      yield { constant, seenBy: factors.map(() => undefined) };
      continue;
    }
    const code = codeOf(path);
    if (!checked.has(path)) {
      const failing = await seenBy(path, code);
      if (failing) throw new Error(`a row fails before anything is changed: ${failing}`);
      checked.add(path);
    }
    const seen: (string | undefined)[] = [];
    for (const factor of factors) seen.push(await seenBy(path, changed(code, constant, factor), seen[0]));
    yield { constant, seenBy: seen };
  }
}
