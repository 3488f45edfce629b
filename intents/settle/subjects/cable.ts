import { present } from '#basics/present.ts';
import type { Assumption, Values } from '#engine/assumption.ts';
import { choosePair, dropOn, type Run } from '#engine/cable/choose.ts';
import { circuitAssumptions, circuitCurrents } from '#engine/cable/circuit.ts';
import { type Conductor, conductorAssumptions, conductorsSold, gaugeFor } from '#engine/cable/conductor.ts';
import { fuseFor } from '#engine/cable/fuse.ts';
import { carriesA, surroundingAssumptions } from '#engine/cable/surroundings.ts';
import { dropLimits } from '#engine/cable/tables.ts';
import { likelyOf, taken } from '#engine/explore.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Dispute, EnoughOrNot, Subject } from '../dispute.ts';
import { circuitIn } from './fuse.ts';
import { probe } from './probe.ts';

/** A grain of grace for what is sold by rounded sizes. */
const grace = 1.03;

/** Squares this near each other are one size. */
const sameSize = 0.005;

/** A size as it is sold, or copper of any other area. */
const copper = (areaMm2: number): Conductor =>
  [...conductorsSold('metric'), ...conductorsSold('gauge')].find(
    one => Math.abs(one.areaMm2 / areaMm2 - 1) < sameSize,
  ) ?? { areaMm2, as: 'auto', size: areaMm2 };

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
      ...conductorAssumptions(conductorsSold('metric')[0], d.facts.ambientC),
      ...circuitAssumptions(circuit),
      ...surroundingAssumptions(d.facts.ambientC),
      { name: 'dropLimit', ...limit, why, unit: '%' },
    ];
    // As the cable's own question chooses: by the drop, and by the fuse that the copper must carry.
    const as = d.claims.length > 0 && d.claims.every(({ unit }) => unit === 'AWG') ? 'gauge' : 'metric';
    const { explored } = probe(
      assumptions,
      (values, trace) => choosePair(runOf(d, values), as, values, trace).conductor.areaMm2,
    );
    const likely: Values = likelyOf(assumptions);
    const about = runOf(d, likely);
    const fuseA = fuseFor(about.continuousA).ratingA;
    const chosenMm2 = explored.figures.answer.value;
    const judged = (areaMm2: number): EnoughOrNot => {
      const isEnough =
        dropOn(copper(areaMm2), about, likely).percent <= taken(likely, 'dropLimit') * grace &&
        carriesA(copper(areaMm2), likely) >= fuseA;
      if (!isEnough) return 'under';
      return areaMm2 > chosenMm2 * grace ? 'over' : 'right';
    };
    return {
      answer: explored.figures.answer,
      dimension: 'area',
      says: 'it takes',
      explored,
      judged,
      ...(as === 'gauge' && { needs: `${gaugeFor(chosenMm2)} AWG` }),
      wouldMean: areaMm2 => {
        const { percent, dropV } = dropOn(copper(areaMm2), about, likely);
        const isThin =
          carriesA(copper(areaMm2), likely) < fuseA ? `, and can't stand its ${fuseA} A fuse` : '';
        const how = { under: 'is too thin: it ', right: '', over: 'is more than it needs: it ' }[
          judged(areaMm2)
        ];
        return `${how}would lose ${plain(percent)} % (${significant(dropV, 2)} V)${isThin}`;
      },
      measure: `I took ${plain(about.lengthM)} m one way at ${plain(about.currentA)} A; auto cable in mm is its outside, not its copper.`,
      cautions: ['fuse-at-battery'],
    };
  },
};
