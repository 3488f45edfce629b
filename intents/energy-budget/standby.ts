import type { Reply } from '#answer/reply.ts';
import { rounded } from '#answer/say.ts';
import { plain } from '#quantity/round.ts';
import type { Stated } from '#rig/rig.ts';

/** What a van takes with everything off: under the first it is usual, over the second something is on, A. Common practice. */
const standbyA = { usual: 0.1, much: 0.5 } as const;

/** Words for a current that goes out while nothing is said to run; undefined where none is told. */
export function answerStandby({ netCurrentA, loads }: Stated): Reply | undefined {
  if (netCurrentA === undefined || netCurrentA >= 0 || loads?.length) return undefined;
  const amps = -netCurrentA;
  const daily = `${plain(amps)} A all the time is about ${rounded(24 * amps)} Ah a day`;
  const judged =
    amps <= standbyA.usual
      ? 'that is usual with everything off'
      : amps <= standbyA.much
        ? 'more than needed with everything off'
        : 'something is on';
  return {
    headline: `${daily}: ${judged}.`,
    lines: [
      'Usual are 0.02 to 0.1 A: alarms, sensors, the radio’s memory, USB sockets with a light.',
      'Pull one fuse after another and watch the number: where it drops is what takes it.',
    ],
    verdict: null,
    next: ['what is idle draw?'],
  };
}
