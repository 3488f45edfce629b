import type { Reply } from '#answer/reply.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import { starterPercent } from './compute.ts';

/** Volts at rest of a starter battery, and whether it will still turn the engine over. Common practice. */
const starts = [
  { fromV: 12.4, says: 'Yes, most likely' },
  { fromV: 12.2, says: 'Probably, if it’s sound and not cold' },
  { fromV: 12, says: 'Doubtful' },
  { fromV: 0, says: 'Hardly' },
] as const;

/** Colder than this an engine is hard to turn over, °C. Common practice. */
const coldBelowC = 5;

/** Whether it starts, by the volts read. */
const startsBy = (volts: number, ambientC: number | undefined): string => {
  const says = starts.find(({ fromV }) => volts >= fromV)?.says ?? 'Hardly';
  const value = starterPercent(volts);
  const level = value < 5 ? 'flat' : `about ${decimals(5 * Math.round(value / 5), 0)} % full`;
  const cold = ambientC !== undefined && ambientC < coldBelowC ? ', less so in the cold' : '';
  return `${says}${cold}: ${significant(volts, 4)} V at rest is ${level}.`;
};

/** Words for whether an engine starts, where the volts of its battery are told and nothing that runs is; undefined else. */
export function answerStartsAt({ ambientC }: Pick<Facts, 'ambientC'>, told: Stated): Reply | undefined {
  const { volts, loads, durationH } = told;
  if (volts === undefined || loads || durationH !== undefined) return undefined;
  return {
    headline: startsBy(volts, ambientC),
    lines: [
      'Diesels and cold mornings need more, old batteries give less. Under 12.4 V, run the engine or charge it before the night.',
      'If it only clicks, charge it or jump it rather than cranking on.',
    ],
    verdict: null,
    next: ['what second battery do I need?'],
  };
}
