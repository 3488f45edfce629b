import type { Recognised } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';

/** Words that speak of the battery that starts the engine. */
const starting: ReadonlySet<string> = new Set(
  'starter starters start starts starting started crank cranks cranking cranker bonnet hood engine motor main vehicle vehicles under'.split(
    ' ',
  ),
);
/** What, right before "battery", makes it the one that starts. */
const vehicles: ReadonlySet<string> = new Set(
  'car cars ute utes truck trucks van vans original stock'.split(' '),
);
/** Where a camp battery lives. */
const camping: ReadonlySet<string> = new Set(
  'canopy tub tray drawer drawers camper trailer caravan box boot back rear house leisure aux auxiliary second deep'.split(
    ' ',
  ),
);

const isOfVehicle = ({ words }: Recognised): boolean =>
  words.some((word, at) => vehicles.has(word) && /^(?:battery|batteries|batt)$/.test(words[at + 1] ?? ''));

/**
 * The facts with a battery that no word says to start anything as one of the camp: behind a DC-DC charger, or where camp
 * batteries live ("25 A DC-DC in the ute, 105 Ah AGM in the canopy").
 */
export function withRoleTold(facts: Stated, recognised: Recognised): Stated {
  const { batteries, chargers } = facts;
  const [only] = batteries ?? [];
  if (only?.role !== 'starter' || batteries?.length !== 1) return facts;
  const { words } = recognised;
  if (words.some(word => starting.has(word)) || isOfVehicle(recognised)) return facts;
  const isBehind = chargers?.some(({ kind }) => kind === 'dcdc') === true;
  if (!isBehind && !words.some(word => camping.has(word))) return facts;
  return { ...facts, batteries: [{ ...only, role: 'house' }] };
}
