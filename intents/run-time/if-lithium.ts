import type { Reply } from '#answer/reply.ts';
import { lasting } from '#answer/say.ts';
import type { RequestContext } from '../intent.ts';
import { answerRunTime } from './answer.ts';
import type { RunTime, RunTimeFacts } from './compute.ts';

/** Above this level a lithium battery has some left to use, %. */
const lithiumFloorPercent = 20;

/** The facts with a lithium battery, where nobody said its kind and lead-acid would have nothing left to use; undefined else. */
export function ifLithium(facts: RunTimeFacts, { figures, bank }: RunTime): RunTimeFacts | undefined {
  const isOpen = bank.isChemistryAssumed && (bank.stateOfChargePercent ?? 100) > lithiumFloorPercent;
  if (!isOpen || figures.runTime.value > 0 || facts.volts !== undefined) return undefined;
  return { ...facts, batteries: facts.batteries.map(battery => ({ ...battery, chemistry: 'lfp' as const })) };
}

/** Words for both kinds: nothing left on the one, so long on the other. */
export function answerIfLithium(facts: RunTimeFacts, result: RunTime, setting: RequestContext): Reply {
  const reply = answerRunTime(facts, result, setting);
  return {
    ...reply,
    headline: `Lead-acid has nothing left to use at that; lithium lasts ${lasting(result.figures.runTime)}.`,
    lines: [
      'Which kind is it? Lead-acid stops at half, lithium at about 20 %.',
      ...(reply.lines ?? []).slice(0, 2),
    ],
    verdict: null,
  };
}
