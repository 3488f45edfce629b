import type { Chemistry } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import type { Frame } from '../memory.ts';
import { leastSure } from '../unsure/sureness.ts';
import { isAsking } from './asking.ts';

const mostWords = 9;
const slipWords: ReadonlySet<string> = new Set('oops sorry wait meant mean actually said whoops'.split(' '));
const denying: ReadonlySet<string> = new Set(['not', 'no', 'isnt', 'never']);

/**
 * "Oops, it's AGM, not lithium", "should have said gel": another kind of battery in the place of the one that the
 * question before went by. Undefined where more is told, something is asked, or no other kind is named.
 */
export function chemistrySlip(own: Frame, heard: Heard): Heard | undefined {
  const { facts, recognised, words } = heard;
  const { batteries = [], ...others } = facts;
  const isMore =
    Object.keys(others).length > 0 ||
    batteries.some(battery => Object.keys(battery).some(key => key !== 'chemistry'));
  const [before, second] = own.facts.batteries ?? [];
  if (words > mostWords || isMore || !before || second || isAsking(heard)) return undefined;
  const kinds = recognised.mentions.filter(({ kind }) => kind === 'chemistry');
  const named = new Set(kinds.map(({ key }) => key as Chemistry).filter(kind => kind !== before.chemistry));
  const [chemistry, other] = named;
  if (chemistry === undefined || other !== undefined) return undefined;
  const isDenied = kinds.some(
    ({ key, from }) => key === before.chemistry && denying.has(recognised.words[from - 1] ?? ''),
  );
  if (!isDenied && !recognised.words.some(word => slipWords.has(word))) return undefined;
  return {
    ...heard,
    intent: own.intent,
    facts: { batteries: [{ chemistry }] },
    claims: [],
    options: [],
    certainty: leastSure,
  };
}
