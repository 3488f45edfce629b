import { present } from '#basics/present.ts';
import { dailyEnergy } from '#engine/loads/rules.ts';
import { plain } from '#quantity/round.ts';
import { run } from '#rule/rule.ts';
import { type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';
import { toldVoltage } from './use.ts';

/** "5 A are 60 W." "No, 5 W." */
export const powerSubject: Subject = {
  name: 'power',
  intent: 'convert',
  fits: d => {
    if (d.dimension !== 'power' || d.cues.has('solar')) return 0;
    return 1 + (d.facts.loads?.some(l => l.currentA !== undefined) ? weigh(d, 'loads') + 1 : 0);
  },
  missing: d =>
    d.facts.loads?.some(l => l.currentA !== undefined)
      ? undefined
      : 'how many amps it draws, and at how many volts',
  solve: ({ facts }) => {
    const voltageV = toldVoltage(facts);
    const amps = present(facts.loads).reduce((sum, l) => sum + l.count * (l.currentA ?? 0), 0);
    // One hour of it: amp hours times volts are watt hours, so amps times volts are watts.
    const { explored } = probe([], (_, trace) => run(dailyEnergy, { Q: amps, V: voltageV }, trace));
    return {
      answer: explored.figures.answer,
      dimension: 'power',
      says: 'it takes',
      explored,
      wouldMean: value => `would be right at ${plain(value / amps)} V`,
      measure: `Amps times volts are watts: ${plain(amps)} A × ${plain(voltageV)} V.`,
    };
  },
};
