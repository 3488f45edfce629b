import { duration, sentence } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { type Bank, bankOfOne } from '#engine/battery/bank.ts';
import { cyclesAt } from '#engine/battery/life.ts';
import { requiredCapacityAh } from '#engine/battery/required.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { figure } from './figures.ts';
import { isFrostLikely } from './frost.ts';
import { bankOrUsual, dayUse, type PairCase, type Weighed } from './weighed.ts';

/** One battery of a size and kind. */
export const inKind = (capacityAh: number, chemistry: Chemistry): Bank =>
  bankOfOne({ capacityAh, chemistry });

/** What it gives from full, Ah. */
export const usableOf = (bank: Bank, facts: Facts): Explored<'usable'> =>
  explore<'usable'>(bankAssumptions(bank, facts.depthOfDischargePercent), 'usable', (values, trace) => ({
    usable: usableCapacityAh({ bank, currentA: 0, temperatureC: facts.ambientC }, values, trace),
  }));

/** kg, about. */
export const weightKg = ({ chemistry, capacityAh }: Pick<Bank, 'chemistry' | 'capacityAh'>): number =>
  chemistryRow(chemistry).weightKgPerAh * capacityAh;

const cycles = (chemistry: Chemistry): string =>
  decimals(cyclesAt(chemistry, chemistryRow(chemistry).depth[0]), 0);

/** A day that takes more than this of what AGM gives wears it soon. Common practice. */
const deepShare = 0.6;
/** Under this a lithium battery is seldom charged without being warmed, °C. */
const coldC = 5;

/** AGM or lithium of one size, for how it is used and how cold it gets. */
export function agmOrLithium(about: PairCase): Weighed {
  const { facts } = about;
  const { capacityAh } = bankOrUsual(facts);
  const told = facts.batteries?.find(b => b.chemistry !== undefined && b.chemistry !== 'lfp')?.chemistry;
  const kind = told === undefined || told === 'lead-acid' ? 'agm' : told;
  const name = chemistryRow(kind).name;
  const [lead, lithium] = [inKind(capacityAh, kind), inKind(capacityAh, 'lfp')];
  const [a, b] = [usableOf(lead, facts), usableOf(lithium, facts)];
  const [leadAh, lithiumAh] = [a.figures.usable.value, b.figures.usable.value];
  const usedAh = dayUse(about);
  const isCold = (facts.ambientC ?? 20) < coldC || isFrostLikely(facts);
  const isDeep = usedAh !== undefined && usedAh > deepShare * leadAh;
  const sameAh = requiredCapacityAh(
    { needAh: leadAh, chemistry: 'lfp', currentA: 0 },
    likelyOf(bankAssumptions(lithium)),
  );
  const size = `${plain(capacityAh)} Ah`;
  const lasts = (ah: number): string =>
    usedAh === undefined ? `${plain(ah)} Ah` : duration((24 * ah) / usedAh).replace('about ', '');
  const gives = `${size} gives ${lasts(lithiumAh)}, ${name} ${lasts(leadAh)}`;
  const isLithium = isDeep || (!isCold && usedAh === undefined);
  const better = isLithium ? 'lithium' : name;
  return {
    headline: isLithium
      ? `Lithium for you: ${gives}.`
      : isCold
        ? `${sentence(name)} for you, as it charges in frost: ${size} has ${plain(leadAh)} Ah to use, lithium ${plain(lithiumAh)} Ah.`
        : `${sentence(name)} will do: a day takes ${plain(present(usedAh))} Ah of its ${plain(leadAh)} Ah; lithium has ${plain(lithiumAh)}.`,
    lines: [
      `${plain(sameAh)} Ah of lithium does what ${size} of ${name} does, at ${plain(weightKg(inKind(sameAh, 'lfp')))} kg against ${plain(weightKg(lead))} kg, and stands about ${cycles('lfp')} cycles against ${cycles(kind)}.`,
      isDeep
        ? `About ${plain(present(usedAh))} Ah a day takes more than ${name} likes out of it each day: it would wear soon.`
        : '',
      isCold && isLithium ? 'In frost it needs a warm place or a heater before it may be charged.' : '',
      isLithium
        ? `${sentence(name)} where money counts or you go out seldom; it also suits an old charger as it is.`
        : 'Lithium pays where you run it low most days, and where weight counts.',
    ],
    figures: {
      usableCapacityAgm: figure(a.figures.usable, 'Ah'),
      usableCapacityLfp: figure(b.figures.usable, 'Ah'),
    },
    better,
    explored: isLithium ? b : a,
    cautions: ['lithium-cold', 'mixed-batteries'],
  };
}
