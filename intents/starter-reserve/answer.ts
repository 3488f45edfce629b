import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { exactly, isSaidAlike, lasting, sentence, timeSpan } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { enough, figure, reasons } from '../figures.ts';
import type { StarterTime } from './compute.ts';

const sizeOf = ({ bank, isSizeAssumed }: StarterTime): string =>
  `${isSizeAssumed ? 'a usual' : 'the'} ${decimals(bank.capacityAh, 0)} Ah starter battery`;

function headline(facts: Facts, { explored }: StarterTime, verdict: Verdict): string {
  const { runTime } = explored.figures;
  const time = lasting(runTime);
  if (verdict === null) return `${sentence(time)} before starting is at risk.`;
  const isAlike = isSaidAlike(runTime.value, present(facts.durationH));
  const wanted = isAlike ? exactly(present(facts.durationH)) : 'that';
  if (verdict === 'yes') return `Yes, it should still start after ${wanted}: it’s good for ${time}.`;
  if (verdict === 'tight') return `Tight: it may not start after ${wanted}; it’s good for ${time}.`;
  if (wanted === exactly(runTime.value))
    return `No, don't count on it: ${wanted} is about all it’s good for (${timeSpan(runTime)}).`;
  return `No, don't count on it starting after ${wanted}: it’s good for ${time}.`;
}

/** What a start needs is a limit: once the likely reserve is passed it is no. */
const spares = (runTime: Range, wantedH: number): Exclude<Verdict, null> =>
  runTime.value < wantedH ? 'no' : enough(runTime, wantedH);

/** Words for what a starter battery can spare. */
export function answerStarterReserve(facts: Facts, result: StarterTime): Reply {
  const { explored, bank } = result;
  const { runTime, usableCapacity, dailyUse } = explored.figures;
  const wantedH = facts.durationH;
  const verdict = wantedH === undefined ? null : spares(runTime, wantedH);
  const drawnAh = wantedH === undefined ? undefined : (dailyUse.value * wantedH) / 24;
  const spareAh = significant(usableCapacity.value, 2);
  const lines = [
    drawnAh === undefined
      ? `You draw about ${significant(dailyUse.value / 24, 2)} A, and ${sizeOf(result)} has only about ${spareAh} Ah to spare.`
      : `That takes about ${plain(drawnAh)} Ah, and ${sizeOf(result)} has only about ${spareAh} Ah to spare.`,
    'Below 12.4 V at rest, stop and start the engine. An old battery or a cold morning leaves less.',
  ];
  return {
    headline: headline(facts, result, verdict),
    lines,
    verdict,
    figures: { runTime: figure(runTime, 'h'), usableCapacity: figure(usableCapacity, 'Ah') },
    ...reasons(explored),
    // What it has to spare stands in a line.
    assumedInLines: ['depthOfDischarge'],
    cautions: ['starter-reserve', ...loadCautions(facts, bank)],
    next: ['what second battery do I need?', 'isolator or dcdc?', 'show the working'],
  };
}
