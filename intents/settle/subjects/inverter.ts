import type { Verdict } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { inputFactorOf } from '#engine/loads/reading.ts';
import { decimals } from '#quantity/round.ts';
import type { Load } from '#rig/rig.ts';
import { type Dispute, type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';

/** Loads that would go through the inverter: those on mains, else those told in watts. */
const through = ({ facts }: Dispute): readonly Load[] => {
  const mains = facts.loads?.filter(l => l.supply === 'ac') ?? [];
  return mains.length > 0 ? mains : (facts.loads?.filter(l => l.powerW !== undefined) ?? []);
};

/** Watts of one load while it runs: what it takes, and what it asks for when it starts. */
function watts(load: Load): { readonly runs: number; readonly starts: number } {
  const row = applianceOf(load.name);
  const runs = (load.powerW ?? row?.powerW[1] ?? 0) * load.count * (inputFactorOf(load)?.[1] ?? 1);
  return { runs, starts: runs * (row?.surge ?? 1) };
}

/** "It runs on that inverter." "It doesn't." */
export const inverterSubject: Subject = {
  name: 'inverter',
  intent: 'inverter-check',
  fits: d => {
    const isPower = d.dimension === undefined || d.dimension === 'power';
    if (!isPower || (!d.cues.has('inverter') && d.facts.inverter === undefined)) return 0;
    if (d.cues.has('solar') && d.dimension === 'power') return 0;
    return 2 + weigh(d, 'inverter') + (through(d).length > 0 ? 1 : 0);
  },
  missing: d => {
    if (d.facts.inverter?.powerW === undefined) return "the inverter's rating in watts";
    return through(d).length > 0 ? undefined : 'what shall run on it, in watts';
  },
  solve: d => {
    const ratingW = present(present(d.facts.inverter).powerW);
    const surgeW = present(d.facts.inverter).surgeW ?? 2 * ratingW;
    const loads = through(d).map(watts);
    const runsW = loads.reduce((sum, w) => sum + w.runs, 0);
    const startsW = runsW + Math.max(0, ...loads.map(w => w.starts - w.runs));
    const { explored } = probe([], (_, trace) => {
      trace?.lookup({
        name: 'acLoad',
        says: `${decimals(runsW, 0)} W against ${decimals(ratingW, 0)} W`,
        value: runsW,
        unit: 'W',
        source: 'sum of the loads',
      });
      return runsW;
    });
    const verdict: Verdict = runsW > ratingW ? 'no' : startsW > surgeW ? 'tight' : 'yes';
    const load = `${decimals(runsW, 0)} W`;
    const rating = `a ${decimals(ratingW, 0)} W inverter`;
    const headlines = {
      no: `No: ${load} is more than ${rating} gives, however short it is: it cuts out, or the inverter suffers.`,
      tight: `Tight: ${load} runs on ${rating}, but starting may ask for ${decimals(startsW, 0)} W.`,
      yes: `Yes: ${load} is within what ${rating} gives.`,
    };
    return {
      answer: explored.figures.answer,
      dimension: 'power',
      verdict,
      headline: headlines[verdict],
      says: 'it takes',
      explored,
      wouldMean: () => undefined,
      measure:
        verdict === 'no'
          ? `It would be right with an inverter of ${decimals(Math.ceil((runsW * 1.2) / 100) * 100, 0)} W or more; the surge rating is for motors starting, not for heating.`
          : 'Read the plate: it is the watts taken that count, not those given out.',
      cautions: verdict === 'tight' ? ['surge'] : [],
    };
  },
};
