import { present } from '#basics/present.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { decimals } from '#quantity/round.ts';
import { hasUse } from '../../use.ts';
import { type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';

/** "You can use 100 Ah of it." "Only half." */
export const usableSubject: Subject = {
  name: 'usable capacity',
  fits: d => {
    if (!['charge', 'energy', 'percent'].includes(d.dimension ?? '') || !bankIn(d.facts)) return 0;
    if (d.dimension === 'percent' && (d.facts.volts !== undefined || d.facts.cable)) return 0;
    return hasUse(d.facts) || d.facts.solar ? 0.5 : 1 + weigh(d, 'batteries');
  },
  missing: d => (bankIn(d.facts) ? undefined : "the battery's size (say “100Ah AGM”)"),
  solve: ({ facts, dimension }) => {
    const bank = present(bankIn(facts));
    const scale =
      dimension === 'energy' ? bank.voltageV : dimension === 'percent' ? 100 / bank.capacityAh : 1;
    const assumptions = bankAssumptions(bank, facts.depthOfDischargePercent);
    const { explored } = probe(
      assumptions,
      (values, trace) =>
        usableCapacityAh({ bank, currentA: 0, temperatureC: facts.ambientC }, values, trace) * scale,
    );
    return {
      answer: explored.figures.answer,
      dimension: present(dimension),
      says: 'you can use',
      explored,
      wouldMean: value => {
        const share = (100 * value) / (bank.capacityAh * scale);
        return share > 100.5
          ? 'is more than the label'
          : `would ${100 - share < 0.5 ? 'run it flat' : `run it down to ${decimals(100 - share, 0)} %`}`;
      },
      measure:
        'It depends on how deep you go: half of a lead-acid battery, four fifths of a lithium one, is common practice.',
    };
  },
};
