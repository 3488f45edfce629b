import type { IntentName } from '#answer/answer.ts';
import { holds } from '#rig/correct.ts';
import { gearIn, hasGear } from '#rig/gear.ts';
import type { Heard } from './hear.ts';
import type { Frame, Memory } from './memory.ts';
import type { Message } from './message.ts';
import { lastFrame, rigFor } from './recall.ts';
import { factsIn, leastSure, readingsOf } from './two-readings.ts';

// A message taken for another question than reading put first, by what the talk and its own words make likely.

/** Whether a value is put right that stands in a question: the talk confirms how it was read. */
export const isSlipOf = (frame: Frame | undefined, { corrects }: Heard): boolean =>
  corrects?.from !== undefined && frame !== undefined && holds(frame.facts, corrects.from);

/** A message that puts right or takes out what the question before has is about that question, whatever its words look like. */
export function ofFrame(memory: Memory, message: Message, heard: Heard): Heard {
  const frame = lastFrame(memory, message.from);
  const { intent, removed } = heard;
  if (!frame) return heard;
  // "Show the working, Rick never believes anyone": of what was just answered.
  const isWorking = heard.cues.has('ask-working') && Object.keys(heard.facts).length === 0;
  if (isWorking && frame.asked === undefined) return { ...heard, intent: frame.intent, options: [] };
  if (!['none', 'unclear', 'rig'].includes(intent)) return heard;
  const isSlip = isSlipOf(frame, heard);
  const isGone = removed.some(name =>
    frame.facts.loads?.some(load => load.name.includes(name) || name.includes(load.name)),
  );
  const hasRig = rigFor(memory, heard, message.from, message.kind) !== undefined;
  const isOfFrame = (isSlip || isGone) && !(intent === 'rig' && hasRig);
  return isOfFrame ? { ...heard, intent: frame.intent, options: [] } : heard;
}

/** As likely as this, a message that asks nothing tells of gear. */
const leastTold = 0.4;

const isAsking = ({ cues }: Heard): boolean =>
  [...cues].some(cue => cue === 'question-mark' || cue.startsWith('ask-'));

/** An unsure message taken for one question, where that is likely enough. */
function unsureOf(heard: Heard, name: IntentName): Heard | undefined {
  if (heard.certainty >= leastSure) return undefined;
  const reading = readingsOf(heard).find(
    ({ intent, probability }) => intent === name && probability >= leastTold,
  );
  return reading && { ...heard, intent: name, facts: factsIn(reading.stated, heard) };
}

/**
 * What an unsure message tells of gear, where it asks nothing: noting it can be taken back, and asking whether it was
 * a question would only be in the way.
 */
export function toldGear(heard: Heard): Heard | undefined {
  const rig = isAsking(heard) ? undefined : unsureOf(heard, 'rig');
  return rig && hasGear(gearIn(rig.facts)) ? rig : undefined;
}

/** An amount and the unit that it is wanted in ("60 W in amps") are a question of their own, whatever was asked before. */
export function toldUnits(heard: Heard): Heard | undefined {
  return heard.conversion === undefined ? undefined : unsureOf(heard, 'convert');
}
