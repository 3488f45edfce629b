import type { Intent } from '#intents/intent.ts';
import { whereFacts } from '#intents/sun.ts';
import type { Stated } from '#rig/rig.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { underSun } from '../questions.ts';
import type { FactSource } from '../whose/origins.ts';
import { personKey } from './recall.ts';
import { pick } from './remembered.ts';

/** So long a place that was told in the chat is where they all are, ms: a day's camp. */
const freshMs = 12 * 3_600_000;

const isPlaced = (facts: Stated): boolean => (facts.place ?? facts.latitudeDeg) !== undefined;

/**
 * Where and when a question about the sun is of, where neither it nor anything of the asker's tells: a group camps in one
 * place, and who told it last told it for all. The answer says whose words that is.
 * @param told what is known already: a place told anew goes with its own month
 */
export function whereTheyCamp(
  { frames }: Memory,
  { from, at }: Message,
  { name }: Intent,
  told: Stated,
): FactSource | undefined {
  if (!underSun.has(name) || isPlaced(told) || told.peakSunHours !== undefined) return undefined;
  const last = frames.findLast(frame => isPlaced(frame.facts) && at.getTime() - frame.at <= freshMs);
  if (!last) return undefined;
  const who = last.from === personKey(from) ? undefined : last.from;
  return { who, facts: pick(last.facts, whereFacts) };
}
