import { exactly } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { decimals, plain } from '#quantity/round.ts';
import { isCooler, runFor } from '../../hours-told.ts';
import { hasUse, useOf } from '../../use.ts';
import { type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';
import { voltageIn } from './use.ts';

const dayH = 24;

/** "It uses 96 Ah a day." "No, 45." */
export const dailyUseSubject: Subject = {
  name: 'daily use',
  intent: 'energy-budget',
  fits: d => {
    if (d.dimension !== 'charge' && d.dimension !== 'energy') return 0;
    return 1 + weigh(d, 'loads') + (d.cues.has('ask-total') ? 2 : 0);
  },
  missing: d => (hasUse(d.facts) ? undefined : 'what runs on it (say “fridge 1.2A”)'),
  solve: ({ facts: told, dimension, at, argued }) => {
    // What was asked of some hours is argued about for those.
    const { durationH = dayH } = told;
    const isOfHours = durationH < dayH && (argued === undefined || argued === 'energy-budget');
    const facts = isOfHours ? runFor(told, durationH) : told;
    const share = isOfHours && facts.loads?.every(isCooler) ? durationH / dayH : 1;
    const voltageV = voltageIn(facts);
    const use = useOf(facts, voltageV, undefined, at);
    const scale = dimension === 'energy' ? voltageV : 1;
    const { explored } = probe(
      useAssumptions(use),
      (values, trace) => dailyUseAh(use, values, trace) * scale * share,
    );
    const [only] = use.loads.length === 1 ? use.loads : [];
    const currentA = only && (only.currentA ?? (only.powerW ?? 0) / voltageV) * only.count;
    return {
      answer: explored.figures.answer,
      dimension: present(dimension),
      says: isOfHours ? `in ${exactly(durationH)} it takes` : 'a day takes',
      explored,
      wouldMean: value => {
        const ah = value / scale;
        if (isOfHours)
          return currentA && Math.abs(ah / durationH / currentA - 1) < 0.03
            ? undefined
            : `would be ${plain(ah / durationH)} A all that time`;
        if (!currentA) return `would be ${plain(ah / 24)} A on average, day and night`;
        const hours = ah / currentA;
        if (hours > 24.01) return `is more than it could draw running all 24 hours`;
        return `would mean it runs ${plain(hours)} of 24 hours (${decimals((100 * hours) / 24, 0)} % of the time)`;
      },
      measure: isOfHours
        ? 'Amps times hours are amp hours.'
        : 'To find out, clamp or shunt the wire for a day: compressors cycle, so one reading tells little.',
    };
  },
};
