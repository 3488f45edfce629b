import { intents } from '#intents';
import type { Evidence, Intent } from '#intents/intent.ts';
import type { Said } from '#language/said.ts';
import { isAsking } from './follow-up.ts';
import type { Last } from './memory.ts';

/** A question that the message may be, with the reasons and their sum. */
export interface Candidate {
  readonly intent: Intent;
  readonly weight: number;
  readonly evidence: readonly Evidence[];
}

/** Below this sum of evidence nothing is understood. */
export const threshold = 2;

/** Whether charging on the way is told of. */
const brings = ({ facts }: Said): boolean =>
  (facts.solar ??
    facts.solarAhPerDay ??
    facts.solarWhPerDay ??
    facts.drivingHoursPerDay ??
    facts.drivingPlanH) !== undefined;

/** A plain answer to what was asked back can't be much else; a turn with a question of its own may be that. */
const weightOf = (said: Said, last: Last): number => (isAsking(said) ? 4 : last.asked ? 7 : 6.5);

/** All questions with any evidence for them, the weightiest first; ties stay in the order of `intents/index.ts`. */
export function candidates(said: Said, last: Last | undefined, isFollowUp: boolean): Candidate[] {
  const found: Candidate[] = [];
  for (const intent of intents) {
    const evidence = intent.asks(said);
    if (last?.intent === intent.name) {
      if (isFollowUp) evidence.push({ because: 'turns the question before', weight: weightOf(said, last) });
      else if (evidence.length > 0) evidence.push({ because: 'same subject as before', weight: 0.3 });
    }
    // A run time that gets sun or driving is a trip: only the hour-by-hour balance takes both.
    if (intent.name === 'trip' && isFollowUp && last?.intent === 'run-time' && brings(said))
      evidence.push({
        because: 'sun or driving joins the run time before',
        weight: weightOf(said, last) + 0.5,
      });
    // What turns a question is not gear to keep: "what if I use my mate's 120 Ah lithium".
    if (intent.name === 'rig' && isFollowUp && !said.cues.has('rig') && !said.cues.has('save'))
      evidence.push({ because: 'but turns the question before', weight: -4 });
    const weight = evidence.reduce((sum, e) => sum + e.weight, 0);
    if (weight > 0) found.push({ intent, weight, evidence });
  }
  return found.sort((a, b) => b.weight - a.weight);
}
