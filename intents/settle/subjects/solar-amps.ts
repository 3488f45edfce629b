import { present } from '#basics/present.ts';
import { solarAssumptions } from '#engine/solar/model.ts';
import { plain } from '#quantity/round.ts';
import { bestWOf, chargingV, fineShare } from '../../panel-amps.ts';
import { blocksOf, panelsW, sunOf } from '../../sun.ts';
import type { Subject } from '../dispute.ts';
import { probe } from './probe.ts';

/** "That panel gives 13 A." "More like 7." */
export const solarAmpsSubject: Subject = {
  name: 'solar amps',
  intent: 'solar-yield',
  fits: ({ dimension, facts, argued, cues }) =>
    dimension === 'current' && argued === 'solar-yield' && !cues.has('fuse') && panelsW(facts) !== undefined
      ? 3
      : 0,
  missing: () => undefined,
  solve: ({ facts, at }) => {
    const powerW = present(panelsW(facts));
    const sun = sunOf(facts, at);
    const volts = chargingV * blocksOf(facts);
    const best = bestWOf(powerW, sun) / volts;
    const usual = best * Math.sqrt(fineShare);
    const { explored } = probe(solarAssumptions(sun), () => usual);
    return {
      answer: { value: usual, low: fineShare * best, high: best },
      dimension: 'current',
      says: 'at clear noon it gives',
      explored,
      wouldMean: value => {
        const watts = value * volts;
        return watts > powerW
          ? `would take ${plain(watts)} W, more than its label`
          : `would mean ${plain((100 * watts) / powerW)} % of the label into the battery`;
      },
      measure:
        'To find out, read the controller about noon under a clear sky, with a battery that isn’t full.',
    };
  },
};
