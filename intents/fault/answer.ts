import type { Figure } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, workingOf } from '../figures.ts';
import type { Fault } from './compute.ts';

/** From this loss on, V, things that cool or cut out early mind it. Common practice. */
const muchV = 0.4;

/** What the figures say of it, in a sentence; nothing where they say nothing. */
function finding({ drop, load, day, level }: Fault): string | undefined {
  if (load && load.explored.figures.acLoad.value > load.ratingW)
    return `The load is about ${decimals(load.explored.figures.acLoad.value, 0)} W, the inverter ${decimals(load.ratingW, 0)} W: that alone trips it.`;
  if (drop) {
    const { voltageDrop, current } = drop.figures;
    const lost = `That cable loses about ${plain(voltageDrop.value)} V at ${plain(current.value)} A`;
    return `${lost}: ${voltageDrop.value >= muchV ? 'thicker cable is the cure' : 'the cable itself is thick enough, so look at its joints'}.`;
  }
  if (level) return `At rest that reading is about ${decimals(level.value, 0)} % full.`;
  if (!day) return undefined;
  const { dailyUse, usableCapacity } = day.figures;
  const gives = `You use about ${plain(dailyUse.value)} Ah a day, and a healthy battery gives about ${plain(usableCapacity.value)} Ah`;
  return dailyUse.value > usableCapacity.value
    ? `${gives}: it is simply too small.`
    : `${gives}: it should last, so test the battery and look for a hidden draw.`;
}

function figuresOf({ drop, load, day, level }: Fault): Record<string, Figure> {
  return {
    ...(load && { acLoad: figure(load.explored.figures.acLoad, 'W') }),
    ...(drop && { voltageDrop: figure(drop.figures.voltageDrop, 'V') }),
    ...(level && { stateOfCharge: figure(level, '%') }),
    ...(day && {
      dailyUse: figure(day.figures.dailyUse, 'Ah'),
      usableCapacity: figure(day.figures.usableCapacity, 'Ah'),
    }),
  };
}

/** What to check, likeliest first, with the reading that tells. */
export function answerFault(facts: Facts, fault: Fault): Reply {
  const { symptom, drop, load, day } = fault;
  const found = finding(fault);
  const trace = (load?.explored ?? drop ?? day)?.trace;
  return {
    headline: symptom.likely,
    lines: [found, symptom.tells, ...symptom.next].filter(line => line !== undefined).slice(0, 4),
    verdict: symptom.isFuse ? 'no' : null,
    figures: figuresOf(fault),
    working: trace && workingOf(trace),
    cautions: [...(symptom.isFuse ? (['no-fuse'] as const) : []), ...loadCautions(facts)],
    next: drop ? ['show the working'] : [],
  };
}
