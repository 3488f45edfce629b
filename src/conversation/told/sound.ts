import type { Issue } from '#language/issue.ts';
import { fits } from '#rig/fits.ts';
import { type Facts, factsSchema, type Stated } from '#rig/rig.ts';

/** What was told that can stand, and what of it can't be meant. */
export interface Sound {
  readonly facts: Stated;
  readonly issues: readonly Issue[];
}

/** What the lists of facts are called by the bot. */
const things: Readonly<Record<string, string>> = {
  loads: 'load',
  batteries: 'battery',
  solar: 'panel',
  chargers: 'charger',
  inverter: 'inverter',
  cable: 'cable',
};
const words = (key: string): string => key.replaceAll(/[A-Z]/g, letter => ` ${letter.toLowerCase()}`);

/** What a load that nobody named is called. */
export const unnamed = 'load';

export const named = (facts: Stated): Stated =>
  facts.loads
    ? {
        ...facts,
        loads: facts.loads.map(load => ({
          ...load,
          name: load.name ?? unnamed,
        })),
      }
    : facts;

/** Sizes beyond any camp, and none at all: told in numbers that no engine should be fed. */
const most: readonly (readonly [
  list: 'loads' | 'batteries' | 'solar',
  key: string,
  low: number,
  high: number,
])[] = [
  ['batteries', 'capacityAh', 0.1, 20_000],
  ['batteries', 'energyWh', 1, 500_000],
  ['loads', 'currentA', 0, 2_000],
  ['loads', 'powerW', 0, 50_000],
  ['solar', 'powerW', 1, 50_000],
];

const isOfFacts = fits(factsSchema);

/** Parts of the facts that can't be meant, by their path. */
function wrongIn(facts: Stated): (readonly (string | number)[])[] {
  const { error } = isOfFacts(facts) ? {} : factsSchema.safeParse(facts);
  const shaped = error?.issues.map(issue => issue.path as (string | number)[]) ?? [];
  const sized = most.flatMap(([list, key, low, high]) =>
    (facts[list] ?? []).flatMap((row, i) => {
      const value = (row as Record<string, unknown>)[key];
      return typeof value === 'number' && (value < low || value > high) ? [[list, i, key]] : [];
    }),
  );
  return [...shaped, ...sized];
}

const at = (value: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce<unknown>((inner, key) => (inner as Record<string | number, unknown> | undefined)?.[key], value);

/** Takes out what can't be meant (a battery of 0 Ah, a day of 30 hours) and says so. */
export function sound(told: Stated): Sound {
  const all = named(told);
  const wrong = wrongIn(all);
  if (wrong.length === 0) return { facts: all, issues: [] };
  const facts = structuredClone(all) as Facts & Record<string, unknown>;
  const issues: Issue[] = [];
  for (const path of wrong) {
    const [list = ''] = path;
    const said = at(facts, path);
    const thing = things[list] ?? words(String(list));
    if (typeof said === 'number' || typeof said === 'string')
      issues.push({ code: 'absurd-value', data: { thing, said: `${said}` } });
    const owner = at(facts, path.slice(0, -1)) as Record<string | number, unknown> | undefined;
    const key = path.at(-1);
    if (owner && key !== undefined) delete owner[key];
  }
  // What is left may still be of a shape that nothing knows: then nothing of it is gone by.
  return { facts: isOfFacts(facts) ? (facts as Stated) : {}, issues };
}
