import { withChargerOn } from '#rig/on-generator.ts';
import type { Heard } from '../hear.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { betweenRivals } from '../whose/rivals.ts';
import { withTogether } from '../whose/together.ts';
import { withOwner } from '../whose/whose.ts';
import { withAnother } from './another.ts';
import { asDriven } from './as-driven.ts';
import { asPut } from './as-put.ts';
import { answeringBack } from './asked-back.ts';
import { calledOn } from './called.ts';
import { withoutDispute } from './dispute.ts';
import { forSelf } from './for-self.ts';
import { ofThem } from './of-them.ts';
import { ofVolts } from './of-volts.ts';
import { onAtOnce } from './on-at-once.ts';
import { guessedAt, overHours } from './over-hours.ts';
import { overnight } from './overnight.ts';
import { putBack } from './put-back.ts';
import { ofTheirs } from './retake.ts';
import { seenLess } from './seen-less.ts';
import { sumTold } from './sums-told.ts';
import { toldCloser } from './told-closer.ts';

type Step = (memory: Memory, message: Message, heard: Heard) => Heard;

/** What a line may be of what was just asked or answered, each step on what the one before leaves. */
const steps: readonly Step[] = [
  toldCloser,
  ofVolts,
  seenLess,
  overnight,
  withAnother,
  putBack,
  forSelf,
  overHours,
  guessedAt,
  withTogether,
  onAtOnce,
];

/** A message as its own words and the talk make it likely to be meant, before any question is taken: whose, of what, how much. */
export function asMeant(memory: Memory, message: Message, read: Heard): Heard {
  const said = calledOn({ ...read, facts: withChargerOn(read.facts) }, message);
  const whose = betweenRivals(memory, message, withOwner(memory, message, said));
  const argued = withoutDispute(memory, message, whose);
  const own = answeringBack(memory, message, asDriven(sumTold(argued)));
  const turn = ofThem(memory, message, asPut(ofTheirs(memory, message, own)));
  return steps.reduce((heard, step) => step(memory, message, heard), turn);
}
