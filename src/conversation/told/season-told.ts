import { factsOf } from '#intents/facts.ts';
import type { Intent } from '#intents/intent.ts';
import { whereOf } from '#intents/sun.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';

/** The middle month of each season south of the equator; north of it the same six months on. */
const southern: Readonly<Record<string, number>> = {
  summer: 1,
  summers: 1,
  midsummer: 1,
  autumn: 4,
  autumns: 4,
  fall: 4,
  winter: 7,
  winters: 7,
  midwinter: 7,
  wintertime: 7,
  spring: 10,
};
const halfYear = 6;

/** "And in winter?", where the place tells which months that is: in place of a month from before. */
export function withSeasonTold(facts: Stated, { facts: told, recognised }: Heard, { takes }: Intent): Stated {
  if (told.month !== undefined || !takes.includes('month')) return facts;
  const { words } = recognised;
  const at = words.findIndex(word => Object.hasOwn(southern, word));
  const month = southern[words[at] ?? ''];
  // "Fall" alone is a verb; "in fall" is none.
  if (month === undefined || (words[at] === 'fall' && words[at - 1] !== 'in')) return facts;
  const { latitudeDeg } = whereOf(factsOf(facts));
  if (latitudeDeg === undefined) return facts;
  const middle = latitudeDeg < 0 ? month : ((month + halfYear - 1) % 12) + 1;
  return { ...facts, month: middle };
}
