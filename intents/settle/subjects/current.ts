import { present } from '#basics/present.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { runningCurrentA } from '#engine/loads/model.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { useOf } from '../../use.ts';
import { type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';
import { toldVoltage } from './use.ts';

const hasWatts = ({ loads }: Facts): boolean => !!loads?.some(load => load.powerW !== undefined);

/** "It draws 8 A." "No, 1.2." */
export const currentSubject: Subject = {
  name: 'current',
  intent: 'convert',
  fits: d => {
    if (d.dimension !== 'current' || d.cues.has('fuse')) return 0;
    return 1 + (hasWatts(d.facts) ? weigh(d, 'loads') + 1 : 0);
  },
  missing: d => (hasWatts(d.facts) ? undefined : 'how many watts it is, and the voltage'),
  solve: ({ facts }) => {
    const voltageV = toldVoltage(facts);
    const use = useOf(facts, voltageV);
    const loads = use.loads.filter(l => l.powerW !== undefined);
    const isMains = loads.some(l => l.supply === 'ac');
    const { explored } = probe(isMains ? [inverterEfficiency] : [], (values, trace) =>
      loads.reduce((sum, load) => sum + load.count * runningCurrentA(load, use, values, trace), 0),
    );
    const watts = loads.reduce((sum, load) => sum + load.count * present(load.powerW), 0);
    return {
      answer: explored.figures.answer,
      dimension: 'current',
      says: 'it draws',
      explored,
      wouldMean: value =>
        `would be right at ${plain(watts / value)} V${isMains ? ' without an inverter' : ''}`,
      measure: `Watts divided by volts are amps: ${plain(watts)} W ÷ ${plain(voltageV)} V. A clamp meter on the wire shows it.`,
    };
  },
};
