import { sentence } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { batteryAir } from '../../battery-air.ts';
import { factsOf } from '../../facts.ts';
import { hasUse, useOf } from '../../use.ts';
import type { Dispute, Subject } from '../dispute.ts';

const isWhole = (rig: Facts): boolean => bankIn(rig) !== undefined && hasUse(rig);

/** The rigs of people that can be compared, by owner. */
const rivals = (d: Dispute): (readonly [owner: string, rig: Facts])[] =>
  [...new Map(Object.entries(d.rigs).map(([owner, rig]) => [rig, [owner, rig] as const])).values()]
    .map(([owner, rig]) => [owner, factsOf(rig)] as const)
    .filter(([, rig]) => isWhole(rig));

/** How long (h) a rig lasts on what its battery holds. */
function lasts(rig: Facts, { at, mainsV }: Pick<Dispute, 'at' | 'mainsV'>) {
  const bank = present(bankIn(rig));
  return exploreRunTime({
    bank,
    use: useOf(rig, bank.voltageV, mainsV, at),
    temperatureC: rig.ambientC,
    assumptions: bankAssumptions(bank, undefined, batteryAir(rig, at)),
  });
}

const named = (owner: string): string => (owner === '' ? "the chat's" : `${sentence(owner)}'s`);

/** "Whose fridge goes warm first?" Compares the rigs that the chat knows. */
export const whoseSubject: Subject = {
  name: 'whose',
  fits: d => (d.cues.has('ask-whose') ? 3 + rivals(d).length : 0),
  missing: d =>
    rivals(d).length < 2 ? 'two rigs to compare: each one’s battery and what runs on it' : undefined,
  solve: d => {
    const ranked = rivals(d)
      .map(([owner, rig]) => ({ owner, found: lasts(rig, d) }))
      .sort((a, b) => a.found.figures.runTime.value - b.found.figures.runTime.value);
    const [first, second] = ranked as [(typeof ranked)[number], (typeof ranked)[number]];
    const days = (entry: typeof first): string =>
      `${named(entry.owner)} after about ${plain(entry.found.figures.runTime.value)} h`;
    const isClose = first.found.figures.runTime.high > second.found.figures.runTime.low;
    return {
      answer: first.found.figures.runTime,
      dimension: 'time',
      closest: first.owner,
      headline: `${sentence(named(first.owner))} runs out first: ${ranked.map(days).join(', ')}.`,
      says: 'the first lasts',
      explored: first.found,
      wouldMean: () => undefined,
      measure: isClose
        ? 'They are so close that age and heat of the batteries may turn it round.'
        : 'The gap is wider than what age, depth and heat of the batteries usually move.',
    };
  },
};
