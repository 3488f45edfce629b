import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';

/** The dangers that a message by itself is answered with. */
export const dangersIn = (text: string): readonly HazardCode[] =>
  converse(emptyMemory(), { chat: 'camp', from: 'kim', text, at: new Date(0), kind: 'group' }).answer.hazards;
