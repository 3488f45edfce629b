import { applianceOf } from '#catalog/appliances.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { isSpotted } from '../spotting.ts';
import { ratingOfPeakW } from './compute.ts';

/** Words that say that only one runs at a time. */
const oneByOne: readonly string[] = [
  'not_at_once|not_at_the_same_time|not_together|not_both|one_at_a_time|one_after_the_other|never_together|never_both',
];
/** Words that make the figure of a microwave what it takes, and not what it cooks with. */
const ofItsPlate: readonly string[] = ['plate|back|input|rating_label|label|consumes|draws|takes'];

const wattsOf = ({ name, powerW, currentA, count }: Load): number =>
  count *
  (powerW ?? (currentA === undefined ? undefined : 12 * currentA) ?? applianceOf(name)?.powerW[1] ?? 0);

/** The bigger of two figures told of a thing that cooks with one and takes the other: that of its plate. */
function isOfPlate({ name, powerW }: Load, { recognised: { words, mentions } }: ParsedMessage): boolean {
  const most = applianceOf(name)?.inputFactor?.[2];
  if (powerW === undefined || most === undefined || !isSpotted(words, ofItsPlate)) return false;
  return mentions.some(
    ({ kind, value }) =>
      (kind === 'number' || kind === 'amount') && powerW / value > 1.1 && powerW / value <= 1.15 * most,
  );
}

/**
 * The facts as the message means them: of things that never run together the biggest, a microwave's plate as its input,
 * an inverter sold by its peak at what it keeps up, which is half of that as a rule.
 */
export function asAsked(facts: Facts, parsed: ParsedMessage): Facts {
  const { loads = [], inverter } = facts;
  const isOneByOne = loads.length > 1 && isSpotted(parsed.recognised.words, oneByOne);
  const biggest = isOneByOne ? loads.toSorted((a, b) => wattsOf(b) - wattsOf(a)).slice(0, 1) : loads;
  const meant = biggest.map(load => (isOfPlate(load, parsed) ? { ...load, isInput: true } : load));
  const isPeakAlone = inverter?.surgeW !== undefined && inverter.powerW === undefined;
  return {
    ...facts,
    ...(facts.loads && { loads: meant }),
    ...(isPeakAlone && { inverter: { ...inverter, powerW: ratingOfPeakW(inverter.surgeW ?? 0) } }),
  };
}

/** Whether an inverter was told by its peak alone. */
export const isPeakAlone = ({ inverter }: Facts): boolean =>
  inverter?.surgeW !== undefined && inverter.powerW === undefined;
