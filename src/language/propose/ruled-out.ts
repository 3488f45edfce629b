import { chargerDcdc, chargerGenerator, chargerMains, without } from './slots.ts';

/** A source that is named beside a "not" may be ruled out, or be there and something else of it denied. */
const withoutOr: Readonly<Record<string, readonly number[]>> = {
  generator: [without, chargerGenerator],
  dcdc: [without, chargerDcdc],
  mains: [without, chargerMains],
};
const ruledOut: readonly number[] = [without];

/** The slots that a source named beside a "not" may fill. */
export const slotsOfRuledOut = (key: string): readonly number[] => withoutOr[key] ?? ruledOut;
