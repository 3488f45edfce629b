import { present } from '#basics/present.ts';
import { circuitAssumptions, circuitCurrents, circuitKindOf, circuitUseOf } from '#engine/cable/circuit.ts';
import { fuseFor, fuseRatingsA, protect } from '#engine/cable/fuse.ts';
import { fuseFactor } from '#engine/cable/tables.ts';
import { likelyOf } from '#engine/explore.ts';
import { plain, significant } from '#quantity/round.ts';
import { type Dispute, type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';
import { voltageIn } from './use.ts';

/** The circuit that is argued about, where its current can be known. */
export function circuitIn(d: Dispute) {
  const kind = circuitKindOf(d.facts, d.recalled);
  if (!kind) return undefined;
  // The trade reckons drop and current at 12 or 24 V.
  const voltageV = 12 * Math.max(1, Math.round(voltageIn(d.facts) / 12));
  return { kind, use: circuitUseOf(kind, d.facts), facts: d.facts, voltageV, mainsV: d.mainsV };
}

/** "A 10 A fuse." "No, 15." */
export const fuseSubject: Subject = {
  name: 'fuse',
  intent: 'fuse-size',
  fits: d => {
    if (d.dimension !== 'current') return 0;
    const isTold =
      d.facts.loads?.some(l => l.currentA !== undefined) || d.facts.cable?.currentA !== undefined;
    return (d.cues.has('fuse') || d.argued === 'fuse-size' ? 5 : 0) + (isTold ? 1 + weigh(d, 'loads') : 0);
  },
  missing: d => (circuitIn(d) ? undefined : 'the current it has to carry, in amps'),
  solve: d => {
    const circuit = present(circuitIn(d));
    const { explored } = probe(
      circuitAssumptions(circuit),
      (values, trace) => fuseFor(circuitCurrents(circuit, values, trace).continuousA, trace).ratingA,
    );
    const { value, low, high } = explored.figures.answer;
    const runsA = circuitCurrents(circuit, likelyOf(circuitAssumptions(circuit))).continuousA;
    const { leastAreaMm2 } = protect(runsA);
    const next = fuseRatingsA.find(a => a > high) ?? high;
    return {
      // One rating up is as good where the cable carries it.
      answer: { value, low, high: next },
      dimension: 'current',
      says: 'it wants a fuse of',
      explored,
      wouldMean: ratingA => {
        if (ratingA < runsA * fuseFactor * 0.995)
          return `suits up to ${plain(ratingA / fuseFactor)} A running, and this is ${plain(runsA)} A`;
        return `needs copper of ${significant(protect(ratingA / fuseFactor).leastAreaMm2)} mm² or more behind it`;
      },
      measure: `A fuse is at least 125 % of the running current and never above what the cable carries: ${significant(leastAreaMm2)} mm² or more here.`,
      cautions: ['fuse-at-battery'],
    };
  },
};
