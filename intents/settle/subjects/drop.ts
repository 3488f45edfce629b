import { present } from '#basics/present.ts';
import { dropOn } from '#engine/cable/choose.ts';
import { circuitAssumptions } from '#engine/cable/circuit.ts';
import { conductorAssumptions, conductorOf } from '#engine/cable/conductor.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Subject } from '../dispute.ts';
import { missingOfRun, runOf } from './cable.ts';
import { circuitIn } from './fuse.ts';
import { probe } from './probe.ts';

/** "It loses 0.3 V." "At least one." */
export const dropSubject: Subject = {
  name: 'drop',
  intent: 'cable-size',
  fits: d => {
    const isLoss = d.dimension === 'voltage' || d.dimension === 'percent';
    if (!isLoss || (!d.facts.cable && !d.cues.has('ask-drop'))) return 0;
    return 3 + (d.cues.has('ask-drop') ? 2 : 0) + (conductorOf(d.facts.cable) ? 1 : 0);
  },
  missing: d =>
    conductorOf(d.facts.cable) ? missingOfRun(d) : 'the size of the cable (say “6mm²” or “8 AWG”)',
  solve: d => {
    const conductor = present(conductorOf(d.facts.cable));
    const isVolts = d.dimension === 'voltage';
    const assumptions = [...conductorAssumptions(conductor), ...circuitAssumptions(present(circuitIn(d)))];
    const { explored } = probe(assumptions, (values, trace) => {
      const { dropV, percent } = dropOn(conductor, runOf(d, values), values, trace);
      return isVolts ? dropV : percent;
    });
    const { value } = explored.figures.answer;
    return {
      answer: explored.figures.answer,
      dimension: present(d.dimension),
      says: 'it loses',
      explored,
      wouldMean: claimed =>
        `would be right on ${significant((conductor.areaMm2 * value) / claimed, 2)} mm² of copper`,
      measure: `To find out, read the volts at both ends while it runs: here about ${plain(value)} ${isVolts ? 'V' : '%'} apart.`,
    };
  },
};
