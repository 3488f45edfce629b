import type { Cue } from '#language/words/en/cues.ts';
import type { Facts } from '#rig/rig.ts';

/** Whether the words speak of a DC-DC charger as what charges: not beside an isolator, and not as what isn't there. */
export const isDcdcSpoken = (
  { without }: Pick<Facts, 'without'>,
  cues: { readonly has: (cue: Cue) => boolean },
): boolean => cues.has('dcdc') && !cues.has('isolator') && !without?.includes('dcdc');

/** The facts with a DC-DC charger of the usual size where the words speak of one and no fact tells what charges: "2 h of driving through the DC-DC". */
export const withDcdcSpoken = <F extends Facts>(
  facts: F,
  cues: { readonly has: (cue: Cue) => boolean },
): F =>
  facts.chargers === undefined && isDcdcSpoken(facts, cues)
    ? { ...facts, chargers: [{ kind: 'dcdc' }] }
    : facts;
