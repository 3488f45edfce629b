import { present } from '#basics/present.ts';
import { nominalVoltage } from '#engine/battery/bank.ts';
import { decimals, plain } from '#quantity/round.ts';
import { inKind, usableOf, weightKg } from '../../agm-or-lithium.ts';
import { figure } from '../../figures.ts';
import type { PairCase, Weighed } from '../../weighed.ts';

/** More than this nobody lifts well alone, kg. Common practice. */
const liftKg = 30;

/** One big battery or two of half its size. */
export function oneOrTwo({ facts }: PairCase): Weighed {
  const told = (facts.batteries ?? []).filter(b => b.role !== 'starter' && b.capacityAh !== undefined);
  const totals = told.map(b => b.count * present(b.capacityAh));
  const capacityAh = totals.length > 0 ? Math.max(...totals) : 200;
  const chemistry = told.find(b => b.chemistry)?.chemistry ?? 'agm';
  const one = inKind(capacityAh, chemistry);
  const found = usableOf(one, facts);
  const kg = weightKg(one);
  const isHeavy = kg > liftKg;
  const volts = decimals(nominalVoltage(12, chemistry), 0);
  const ah = plain(found.figures.usable.value);
  const better = isHeavy ? 'two' : 'one';
  return {
    headline: isHeavy
      ? `Two for you: both ways give about ${ah} Ah, and one alone weighs about ${plain(kg)} kg.`
      : `One for you: both ways give about ${ah} Ah, and one has fewer joints to fail.`,
    lines: [
      `Weight about ${plain(kg)} kg in one, ${plain(kg / 2)} kg each in two.`,
      'Two must be alike in kind, size, age and charge; leads off opposite corners, so that they share.',
      `Should one of two fail, half is left; both stay at ${volts} V in parallel.`,
    ],
    figures: { usableCapacity: figure(found.figures.usable, 'Ah') },
    better,
    explored: found,
    cautions: ['mixed-batteries', 'fuse-at-battery'],
  };
}
