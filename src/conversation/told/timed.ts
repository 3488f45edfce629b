import { factsOf } from '#intents/facts.ts';
import { whereOf } from '#intents/sun.ts';
import type { Stated } from '#rig/rig.ts';
import { ownKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { hoursUntil } from './until.ts';

/** Where a person's clock is, by the place known. */
const longitudeIn = ({ rigs }: Memory, { from, kind }: Message, facts: Stated): number | undefined =>
  [facts, rigs[ownKey(from, kind)], rigs['']]
    .map(known => known && whereOf(factsOf(known)).longitudeDeg)
    .find(deg => deg !== undefined);

/** "Until 7am" as hours from the message. */
export function timed(facts: Stated, memory: Memory, message: Message): Stated {
  if (facts.until === undefined || facts.durationH !== undefined) return facts;
  const durationH = hoursUntil(facts.until, message.at, longitudeIn(memory, message, facts));
  return durationH === undefined ? facts : { ...facts, durationH };
}
