import type { Reply } from '#answer/reply.ts';
import { span } from '#answer/say.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { figure } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { levelByVolts } from '../level.ts';
import { isSpotted } from '../spotting.ts';
import type { ChargeLevel } from './compute.ts';

/**
 * Volts of a 12 V battery that leave open which kind it is: from the first lead-acid at rest is full and lithium nearly
 * empty; from the second lead-acid reads them only while it charges, lithium at rest; over the last both are on charge.
 */
const openV = { from: 12.85, leadCharging: 13.15, to: 13.55 } as const;

/** Words of what charges: then the volts are the charger's on either kind. */
const ofCharging: readonly string[] = [
  'charger|charging|charged|charge|plugged|solar|sun|panel|panels|float|engine|driving|alternator|dcdc|regulator|controller|boost',
];

/** The same volts on either kind, where nobody said which it is: the one is full, the other far from it. Undefined else. */
export function answerEither(
  facts: Facts,
  { isChemistryAssumed, blocks, state, trace }: ChargeLevel,
  { parsed }: Pick<RequestContext, 'parsed'>,
): Reply | undefined {
  const { volts = 0, voltsTaken } = facts;
  const one = volts / blocks;
  if (!isChemistryAssumed || one < openV.from || one > openV.to) return undefined;
  if (voltsTaken === 'charging' || isSpotted(parsed.recognised.words, ofCharging)) return undefined;
  const isLoaded = state === 'load';
  const { value, low, high } = levelByVolts(volts, 'lfp', blocks, isLoaded, trace);
  const read = `${significant(volts, 4)} V`;
  const lithium = `about ${decimals(Math.round(value / 5) * 5, 0)} % (${span(low, high, '%')})`;
  return {
    headline:
      one < openV.leadCharging
        ? `At ${read} lead-acid is about full, lithium ${lithium}. Which is it?`
        : `At ${read} lithium ${isLoaded ? 'under load' : 'at rest'} is ${lithium}; lead-acid reads that only on charge.`,
    lines: [
      one < openV.leadCharging
        ? 'Just off a charger lead-acid reads high: let it rest a few hours, then read it.'
        : 'Nothing charging it? Then it is lithium. Something is? Read it again after some hours at rest.',
      'For lithium a shunt monitor is the real gauge: its volts hardly move.',
    ],
    verdict: null,
    figures: { stateOfCharge: figure({ value, low, high }, '%') },
    next: [`${read} lithium at rest`, `${read} agm at rest`],
  };
}
