import type { Reply } from '#answer/reply.ts';
import { type Bank, bankIn, bankOfOne } from '#engine/battery/bank.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { decimals } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { figure } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { isSpotted } from '../../spotting.ts';

/** Share of its Ah that a charger should give at least, so that it is full in a day. Common practice. */
const leastShare = 0.1;

const asked = {
  size: [
    'what_size|how_big|which_size|what_rating|which_charger_rating|what_amp|how_many_amps|which_charger|what_charger charger|mains|amps|rating -fuse -cable -panel -solar -inverter -generator -genny -alternator -dcdc',
    'what_amps|how_many_amps|what_current|maximum|max|most|highest charge|charging|charged batter*|agm|gel|lithium|li|lifepo*|it -how_long -fuse -cable -panel* -solar -inverter -generator -genny -alternator -dcdc -hours -site -draw*',
  ],
  harm: [
    'bad|hurt|harm|can_i_use|could_i_use|can_i_put|suffer|too_big|too_much|too_high|damage|safe|ok|okay|cook -lithium_setting -old -leave -night -how_long -agm_charger -full -fill* -enough -generator -solar',
  ],
} as const;

/** What the battery should be charged with, A. */
function rangeOf(bank: Bank): { readonly low: number; readonly high: number } {
  const high = Math.min(limitsOf(bank).chargeA, bank.maxCurrentA ?? Infinity);
  return { low: Math.min(high, leastShare * bank.capacityAh), high };
}

const kinds = {
  lfp: 'lithium',
  agm: 'AGM',
  gel: 'gel',
  flooded: 'wet battery',
  'lead-acid': 'battery',
} as const;

/** What 100 Ah of a kind should be charged with at most, A. */
export const mostChargeA = (chemistry: 'lfp' | 'agm' | 'gel' | 'flooded'): number =>
  limitsOf(bankOfOne({ capacityAh: 100, chemistry })).chargeA;

/** Words that ask what size of charger. */
export const chargerSizeSpots: readonly string[] = asked.size;

const sizeWords = (low: number, high: number, what: string): string =>
  `A ${decimals(low, 0)} to ${decimals(high, 0)} A charger suits ${what}.`;

/** What size of charger suits the battery, in the first line. */
export function chargerSizeWords(facts: Facts): string {
  const { low, high, what } = suiting(facts);
  return sizeWords(low, high, what);
}

function suiting(facts: Facts) {
  const chemistry = facts.batteries?.find(battery => battery.chemistry)?.chemistry;
  const known = bankIn(facts);
  const bank = known ?? bankOfOne({ capacityAh: 100, chemistry });
  const what = `${known ? '' : 'each '}${decimals(bank.capacityAh, 0)} Ah ${chemistry ? kinds[chemistry] : 'of battery'}`;
  return { ...rangeOf(bank), what, chemistry, known };
}

/** What size of charger suits the battery, or whether the one told is too big for it; undefined: neither is asked. */
export function chargerSize(facts: Facts, setting: RequestContext): Reply | undefined {
  const { low, high, what, chemistry, known } = suiting(facts);
  const amps = (value: number): string => decimals(value, 0);
  const figures = { chargerCurrent: figure({ value: high, low, high }, 'A') };
  // What was said now: chargers that memory adds are not asked about.
  const told = setting.parsed.facts.chargers?.find(c => c.kind !== 'generator' && c.currentA !== undefined);
  const toldA = told?.currentA;
  if (toldA === undefined && isSpotted(setting.parsed.recognised.words, asked.size))
    return {
      headline: sizeWords(low, high, what),
      lines: [
        'The bigger end is quicker, the smaller is gentler and cheaper; its own sheet’s limit comes first.',
        `It must have a setting for ${chemistry ? kinds[chemistry] : 'your type of battery'}, with several stages.`,
      ],
      verdict: null,
      figures,
      ...(chemistry === 'lfp'
        ? { cautions: ['lithium-cold' as const] }
        : { cautions: ['battery-gas' as const] }),
      next: ['20A charger, 100Ah AGM from 50 %, how long?'],
    };
  // A bare "50?" is answered where it is too much; else how long it takes is what helps.
  const isPlain = setting.parsed.recognised.words.length <= 3 && (toldA ?? 0) > 1.05 * high;
  if (
    toldA === undefined ||
    told?.kind === 'dcdc' ||
    facts.durationH !== undefined ||
    !(isSpotted(setting.parsed.recognised.words, asked.harm) || isPlain) ||
    !known
  )
    return undefined;
  const isFine = toldA <= 1.05 * high;
  return {
    headline: isFine
      ? `No harm: ${amps(toldA)} A is within the ${amps(high)} A that ${what} takes.`
      : `Too big: ${amps(toldA)} A is more than the ${amps(high)} A that ${what} should take.`,
    lines: [
      isFine
        ? 'It must have the setting for that battery; its own sheet’s limit comes first.'
        : 'It heats and wears it, unless the charger can be turned down. Its own sheet’s limit comes first.',
    ],
    verdict: isFine ? 'yes' : 'no',
    figures,
    cautions: chemistry === 'lfp' ? ['lithium-cold'] : ['battery-gas'],
  };
}
