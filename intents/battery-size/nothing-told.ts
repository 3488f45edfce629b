import type { Reply } from '#answer/reply.ts';
import { rounded } from '#answer/say.ts';
import { decimals } from '#quantity/round.ts';
import { chemistryName, wantedTime } from '../words.ts';
import { type BatterySize, batteriesFor, type Next } from './compute.ts';

/** Words for the battery of a usual fridge, where nobody said what is to run, and what to tell. */
export function answerForFridge(reply: Reply, { explored, other, durationH, chemistry }: BatterySize): Reply {
  const ah = rounded(explored.figures.batteryCapacity.value);
  const kind = chemistryName(chemistry);
  const or = other ? `, or ${rounded(other.explored.figures.batteryCapacity.value)} Ah of lithium` : '';
  return {
    ...reply,
    headline: `For a usual fridge alone, ${wantedTime(durationH)}: about ${ah} Ah of ${kind}${or}.`,
    lines: [
      ...(reply.lines ?? []).slice(0, 2),
      'What else runs, for how many days, and what charges it? That changes it most.',
    ],
    next: ['fridge and lights, 3 days', '40Ah a day for 2 days'],
  };
}

const size = (found: Next | undefined): string => {
  if (!found) return 'more than is usual';
  return found.count === 1 ? `${found.sizeAh} Ah` : `${found.count} × ${found.sizeAh} Ah`;
};

/** Words for the smallest battery that gives what an inverter takes flat out. */
export function answerForInverter(powerW: number): Reply {
  const { amps, lithium, agm } = batteriesFor(powerW);
  return {
    headline: `Flat out, ${decimals(powerW, 0)} W takes about ${rounded(amps)} A: ${size(lithium)} of lithium or ${size(agm)} of AGM.`,
    lines: [
      'That is to give the amps; how long it lasts depends on what you run. Run less on it and a smaller one does.',
      'What will you run on it, and for how long?',
    ],
    verdict: null,
    cautions: ['big-current'],
    next: ['fridge and lights, 3 days', 'kettle 10 minutes a day'],
  };
}
