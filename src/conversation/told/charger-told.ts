import type { ParsedMessage } from '#language/reading.ts';
import type { Stated } from '#rig/rig.ts';

/** Words that give a thing to somebody, a few words before it. */
const having: ReadonlySet<string> = new Set(
  'my our has have got ive weve fitted installed put wired running runs use uses using'.split(' '),
);
/** Words by which a message weighs a thing, wants it or goes without, wherever they stand. */
const weighing: ReadonlySet<string> = new Set(
  'should need needs want would could if or vs than worth better instead no not dont without never broken'.split(
    ' ',
  ),
);
/** Words that ask about it, where they stand before it. */
const asking: ReadonlySet<string> = new Set('can do does is are which what how'.split(' '));
const reach = 4;

/**
 * A DC-DC charger that a message says somebody has, and of which the reader took no fact as the message tells no amps
 * or was taken for another thing: "just fitted a DC-DC to the ute". It is a usual one, for what is asked after it.
 */
export function dcdcTold({ facts, cues, recognised }: ParsedMessage): Stated | undefined {
  if (facts.chargers || facts.without?.includes('dcdc') || cues.has('question-mark')) return undefined;
  const { mentions, words } = recognised;
  const [charger, ...others] = mentions.filter(({ kind }) => kind === 'charger');
  if (!charger || others.length > 0 || charger.key !== 'dcdc') return undefined;
  const before = words.slice(0, charger.from);
  const isHad = before.slice(-reach).some(word => having.has(word));
  const isWeighed = words.some(word => weighing.has(word)) || before.some(word => asking.has(word));
  return isHad && !isWeighed ? { chargers: [{ kind: 'dcdc' }] } : undefined;
}
