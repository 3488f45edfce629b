import { present } from '#basics/present.ts';
import { chargeAtRest, isOnCharge, restVoltsAt } from '#engine/battery/rest.ts';
import { decimals } from '#quantity/round.ts';
import type { Chemistry } from '#rig/rig.ts';
import type { Dispute, Subject } from '../dispute.ts';
import { probe } from './probe.ts';

const chemistryOf = ({ facts }: Dispute): Chemistry =>
  facts.batteries?.find(b => b.chemistry)?.chemistry ?? 'agm';

/** "12.2 V is half full." "It's nearly flat." */
export const chargeLevelSubject: Subject = {
  name: 'charge level',
  intent: 'charge-level',
  fits: d => (d.dimension !== 'percent' ? 0 : d.facts.volts === undefined ? 0.5 : 5),
  missing: d =>
    d.facts.volts === undefined ? 'the volts it reads at rest, and the battery type' : undefined,
  solve: d => {
    const volts = present(d.facts.volts);
    const chemistry = chemistryOf(d);
    const { explored } = probe([], (_, trace) => chargeAtRest(volts, chemistry, trace).value);
    const isHeld = isOnCharge(volts, chemistry) || d.facts.voltsTaken === 'charging';
    return {
      answer: chargeAtRest(volts, chemistry),
      dimension: 'percent',
      says: isHeld ? 'on charge volts tell little, at rest it would be' : 'it is',
      explored,
      wouldMean: value => `would read about ${decimals(restVoltsAt(value, chemistry), 2)} V at rest`,
      measure:
        'To find out, take everything off it for some hours and read again; a shunt monitor tells it better.',
    };
  },
};
