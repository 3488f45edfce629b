import { present } from '#basics/present.ts';
import { placesAfter, placesBefore, type Role } from '../words/en/battery-places.ts';
import type { Mention } from './mention.ts';

/** How many mentions may stand between a battery and the word for where it sits. */
const reach = 3;

const isBattery = (m: Mention): boolean =>
  m.kind === 'battery' || m.kind === 'chemistry' || m.dimension === 'charge';
const leads = /^(?:the|a|an|my|our|your|his|her|their|old)$/;
const ends: ReadonlySet<string> = new Set(['.', ';', '?', '!']);

/** Whether a battery stands within reach of a place, on one side and in the same sentence. */
function hasBattery(mentions: readonly Mention[], at: number, step: 1 | -1): boolean {
  for (let n = 1, i = at + step; n <= reach; n++, i += step) {
    const m = mentions[i];
    if (!m || ends.has(m.text)) return false;
    if (isBattery(m)) return true;
  }
  return false;
}

function roleAt(mentions: readonly Mention[], at: number): Role | undefined {
  const { kind, text } = present(mentions[at]);
  if (kind !== 'word' && kind !== 'noun') return undefined;
  // "Bring back 150 Ah" is no place.
  const before = leads.test(mentions[at - 1]?.text ?? '') ? placesBefore[text] : undefined;
  if (before && hasBattery(mentions, at, 1)) return before;
  const lead = mentions[at - 1]?.text === 'the' ? mentions[at - 2] : mentions[at - 1];
  const after = lead && /^(?:in|at|up)$/.test(lead.text) ? placesAfter[text] : undefined;
  return after && hasBattery(mentions, at, -1) ? after : undefined;
}

/**
 * The mentions, where the place of a battery that may tell what it is for is taken as such: "the rear AGM", "lithium in
 * the back", "the car's own 60 Ah".
 */
export const batteriesPlaced = (mentions: readonly Mention[]): readonly Mention[] =>
  mentions.some(isBattery)
    ? mentions.map((m, i) => {
        const role = roleAt(mentions, i);
        return role === undefined ? m : { ...m, kind: 'role', key: role, cls: `role?:${role}` };
      })
    : mentions;
