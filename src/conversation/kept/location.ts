import type { Answer } from '#answer/answer.ts';
import { english } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { intentNamed } from '#intents';
import { located } from '#intents/rig/located.ts';
import type { Facts } from '#rig/rig.ts';
import { toAnswer } from '../answering/answer.ts';
import type { Heard } from '../hear.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { withRig } from '../whose/shared.ts';
import { ownKey } from './recall.ts';

/** A location shared without words: where the sun is from now on, in the rig that the chat goes by. */
export interface Located {
  readonly memory: Memory;
  readonly answer: Answer;
  /** What was shared, as if it had been said in words. */
  readonly heard: Heard;
}

/** The sharer's own rig in a group, where they have one; else the chat's. */
const rigKey = ({ rigs }: Memory, { from, kind }: Message): string =>
  rigs[ownKey(from, kind)] ? ownKey(from, kind) : '';

/** Notes a shared location. @param heard what the message says besides: nothing */
export function noteLocation(memory: Memory, message: Message, heard: Heard): Located {
  const { where, reply } = located(present(message.location));
  const key = rigKey(memory, message);
  const { place: _place, ...rest } = memory.rigs[key] ?? {};
  const rig = { ...rest, ...where };
  const { say } = english;
  const next = rig.solar?.length
    ? say('next-yield', 'what will the solar make?')
    : say('next-panel', 'what solar do I need?');
  return {
    memory: { ...memory, rigs: withRig(memory, key, rig) },
    answer: toAnswer({ ...reply, rig, next: [next] }, { intent: 'rig', heard }),
    heard: { ...heard, facts: where },
  };
}

/** Whether the question before hangs on the sun and where it is, so that it is worth answering again. */
export const hangsOnPlace = (last: Frame | undefined): boolean =>
  last !== undefined &&
  last.asked === undefined &&
  last.facts.peakSunHours === undefined &&
  intentNamed(last.intent).takes.includes('latitudeDeg') &&
  hasSun(last);

const hasSun = ({ intent, facts }: Frame): boolean =>
  intent === 'solar-size' || (facts as Facts).solar !== undefined;
