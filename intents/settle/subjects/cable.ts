import { present } from '#basics/present.ts';
import type { Assumption, Values } from '#engine/assumption.ts';
import { dropOn, type Run } from '#engine/cable/choose.ts';
import { circuitAssumptions, circuitCurrents } from '#engine/cable/circuit.ts';
import { ampacityA, type Conductor, conductorAssumptions, conductorsSold } from '#engine/cable/conductor.ts';
import { fuseFor } from '#engine/cable/fuse.ts';
import { dropLimits } from '#engine/cable/tables.ts';
import { likelyOf, taken } from '#engine/explore.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Dispute, Subject } from '../dispute.ts';
import { circuitIn } from './fuse.ts';
import { probe } from './probe.ts';

/** Copper of any area, as if it were sold. */
const copper = (areaMm2: number): Conductor => ({ areaMm2, as: 'auto', size: areaMm2 });

/** One way, m. */
const lengthOf = ({ facts: { cable } }: Dispute): number | undefined =>
  cable?.lengthM === undefined ? undefined : cable.isRoundTrip ? cable.lengthM / 2 : cable.lengthM;

/** The run that is argued about. */
export function runOf(d: Dispute, values: Values): Run {
  const circuit = present(circuitIn(d));
  const { cableA, continuousA, ofV } = circuitCurrents(circuit, values);
  return { lengthM: present(lengthOf(d)), currentA: cableA, continuousA, voltageV: ofV };
}

export const missingOfRun = (d: Dispute): string | undefined => {
  if (!circuitIn(d)) return 'the current on the cable, in amps';
  return lengthOf(d) === undefined ? 'how long the cable is, one way' : undefined;
};

/** "4 mm² will do." "No, 10." */
export const cableSubject: Subject = {
  name: 'cable',
  intent: 'cable-size',
  fits: d => (d.dimension === 'area' ? 5 : 0),
  missing: missingOfRun,
  solve: d => {
    const circuit = present(circuitIn(d));
    const told = d.facts.cable?.dropLimitPercent;
    const limit = told === undefined ? dropLimits[circuit.use] : { value: told, low: told, high: told };
    const why = told === undefined ? dropLimits[circuit.use].why : 'as you said';
    const assumptions: Assumption[] = [
      ...conductorAssumptions(copper(1)),
      ...circuitAssumptions(circuit),
      { name: 'dropLimit', ...limit, why, unit: '%' },
    ];
    const { explored } = probe(assumptions, (values, trace) => {
      // The drop falls as the copper grows: that on one mm² tells how many are needed.
      const onOne = dropOn(copper(1), runOf(d, values), values, trace).percent;
      return onOne / taken(values, 'dropLimit');
    });
    const likely: Values = likelyOf(assumptions);
    const about = runOf(d, likely);
    const fuseA = fuseFor(about.continuousA).ratingA;
    const sold = conductorsSold('metric').find(
      c => c.areaMm2 >= explored.figures.answer.value * 0.97 && ampacityA(c.areaMm2) >= fuseA,
    );
    return {
      answer: explored.figures.answer,
      dimension: 'area',
      says: 'it takes',
      explored,
      wouldMean: areaMm2 => {
        const { percent, dropV } = dropOn(copper(areaMm2), about, likely);
        const isThin = ampacityA(areaMm2) < fuseA ? `, and can't stand its ${fuseA} A fuse` : '';
        return `would lose ${plain(percent)} % (${significant(dropV, 2)} V)${isThin}`;
      },
      measure: `${sold ? `The next size sold is ${significant(sold.areaMm2)} mm². ` : ''}I took ${plain(about.lengthM)} m one way at ${plain(about.currentA)} A; auto cable in mm is its outside, not its copper.`,
      cautions: ['fuse-at-battery'],
    };
  },
};
