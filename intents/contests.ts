import type { Reply } from '#answer/reply.ts';
import type { Facts } from '#rig/rig.ts';

// Questions of which people take sides without a number: this or that, or yes or no.

/** One of the things that are chosen between, with the words that name it. */
interface Choice {
  readonly name: string;
  readonly words: readonly string[];
  /** What it counts as beside the others: gel is lead-acid where lithium is the other. */
  readonly kind?: string;
}

const contests = {
  chemistry: [
    { name: 'lithium', words: ['lithium', 'lithiums', 'lfp', 'lifepo', 'lifepo4'] },
    { name: 'AGM', words: ['agm', 'agms'], kind: 'lead' },
    { name: 'gel', words: ['gel', 'gels'], kind: 'lead' },
    { name: 'lead-acid', words: ['lead', 'flooded'], kind: 'lead' },
  ],
  path: [
    { name: 'DC-DC', words: ['dcdc', 'dc'] },
    { name: 'isolator', words: ['isolator', 'isolators', 'vsr', 'relay'] },
  ],
  source: [
    { name: 'solar', words: ['solar', 'panel', 'panels', 'sun'] },
    { name: 'alternator', words: ['alternator', 'driving', 'engine', 'dcdc', 'dc', 'isolator'] },
    { name: 'mains', words: ['mains', 'hookup', 'shore'] },
    { name: 'generator', words: ['generator', 'genny', 'gennie', 'genset'] },
    { name: 'battery', words: ['battery', 'batteries', 'bank'] },
  ],
  controller: [
    { name: 'MPPT', words: ['mppt'] },
    { name: 'PWM', words: ['pwm'] },
  ],
} as const satisfies Record<string, readonly Choice[]>;

/** What is chosen between. */
export type Contest = keyof typeof contests;

/** The choices of a contest that some words name, in the order of the table. */
export const choicesIn = (contest: Contest, words: readonly string[]): readonly string[] =>
  (contests[contest] as readonly Choice[])
    .filter(choice => choice.words.some(word => words.includes(word)))
    .map(({ name }) => name);

const kindOf = (name: string): string =>
  (Object.values(contests).flat() as readonly Choice[]).find(choice => choice.name === name)?.kind ?? name;

/** Whether two sides are one: AGM and gel, where lithium is the other. */
export const isSameSide = (a: string, b: string): boolean => kindOf(a) === kindOf(b);

/** Two kinds of battery among which is chosen. */
const areUnlike = ({ batteries = [] }: Pick<Facts, 'batteries'>): boolean =>
  new Set(batteries.flatMap(({ chemistry }) => chemistry ?? [])).size > 1;

/** What a comparison is between, by the pair that its words name, else by its facts. */
export function contestOfPair(facts: Facts, pair: string | undefined): Contest | undefined {
  switch (pair) {
    case 'dcdc-isolator':
      return 'path';
    case 'pwm-mppt':
      return 'controller';
    case 'agm-lithium':
      return 'chemistry';
    case 'panel-generator':
    case 'grow':
    case 'battery-panel':
      return 'source';
  }
  if (facts.solar && facts.chargers) return 'source';
  return areUnlike(facts) ? 'chemistry' : undefined;
}

/** The side that an answer takes: its verdict, else what it says is better; undefined where it takes none. */
export function sideOf(
  { verdict, figures, headline }: Reply,
  contest: Contest | undefined,
): string | undefined {
  if (verdict) return verdict;
  // Answered in words, it says so itself.
  const [opening] = /^(?:Yes|No)\b/.exec(headline) ?? [];
  if (opening && contest === undefined) return opening.toLowerCase();
  const said = [figures?.better, figures?.recommendation].find(one => typeof one?.value === 'string')?.value;
  if (contest === undefined || typeof said !== 'string') return undefined;
  const [side, ...more] = choicesIn(contest, said.toLowerCase().split(/[^a-z0-9]+/));
  return more.length === 0 ? side : undefined;
}
