import { present } from '#basics/present.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { requiredCapacityAh } from '#engine/battery/required.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { likelyOf } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { averageCurrent } from '#engine/loads/rules.ts';
import { decimals } from '#quantity/round.ts';
import { run } from '#rule/rule.ts';
import { batteryAir } from '../../battery-air.ts';
import { hasUse, useOf } from '../../use.ts';
import { type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';
import { kindIn } from './use.ts';

/** "You need 100 Ah." "The shop said 300." */
export const batterySizeSubject: Subject = {
  name: 'battery size',
  intent: 'battery-size',
  fits: d => {
    if (d.dimension !== 'charge' && d.dimension !== 'energy') return 0;
    const hours = d.facts.durationH ?? 0;
    if (hours <= 24 && !d.cues.has('ask-what-size') && d.argued !== 'battery-size') return 0;
    const uses = Math.max(weigh(d, 'loads'), weigh(d, 'dailyUseAh'), weigh(d, 'dailyUseWh'));
    return 1 + uses + (hours > 24 ? 2 : 0) + (bankIn(d.facts) ? -1 : 1);
  },
  missing: d => {
    if (!hasUse(d.facts)) return 'what runs on it (say “fridge 1.2A” or “40Ah a day”)';
    return d.facts.durationH === undefined ? 'for how many days it has to last' : undefined;
  },
  solve: ({ facts, dimension, at }) => {
    const kind = kindIn(facts);
    const use = useOf(facts, kind.voltageV, undefined, at);
    const hours = present(facts.durationH);
    const scale = dimension === 'energy' ? kind.voltageV : 1;
    const assumptions = [
      ...bankAssumptions(kind, facts.depthOfDischargePercent, batteryAir(facts, at)),
      ...useAssumptions(use),
    ];
    const needAh = (values: Parameters<typeof dailyUseAh>[1]): number =>
      (dailyUseAh(use, values) * hours) / 24;
    const { explored } = probe(assumptions, (values, trace) => {
      const dayAh = dailyUseAh(use, values, trace);
      const currentA = run(averageCurrent, { Q: dayAh, t_day: 24 }, trace);
      const input = {
        needAh: currentA * hours,
        chemistry: kind.chemistry,
        currentA,
        temperatureC: facts.ambientC,
      };
      return requiredCapacityAh(input, values, trace) * scale;
    });
    const likely = needAh(likelyOf(assumptions));
    return {
      answer: explored.figures.answer,
      dimension: present(dimension),
      says: 'it takes',
      explored,
      wouldMean: value => {
        const share = (100 * likely * scale) / value;
        if (share > 100.5) return `would be flat before the end: ${decimals(likely, 0)} Ah are used`;
        return `would mean using ${decimals(share, 0)} % of it`;
      },
      measure: 'It depends on how deep you are willing to go; a monitor shows what you really use a day.',
    };
  },
};
