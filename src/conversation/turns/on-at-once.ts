import { isSpotted } from '#intents/spotting.ts';
import type { Heard } from '../hear.ts';
import { lastFrame } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';

// "Two 60 A DC-DCs on it at once?" after how hard a battery may be charged: their sum is held against that.

const mostWords = 14;
/** A danger of amps over a limit: the sum itself tells whether they are. */
const summedUp = 'over-current';
const atOnce: readonly string[] = [
  'at_once|same_time|together|both|two|three|couple|pair -batteries -how_long -fuse -cable -wire',
];

/** A short question of chargers after one of charging a battery of a size: of that battery. */
export function onAtOnce(memory: Memory, message: Message, heard: Heard): Heard {
  const { facts, recognised, words, corrects } = heard;
  const frame = message.onto ?? lastFrame(memory, message.from);
  if (frame?.intent !== 'charge-time' && frame?.intent !== 'charge-path') return heard;
  const { chargers, ...others } = facts;
  const isSized = frame.facts.batteries?.some(({ capacityAh }) => capacityAh !== undefined) === true;
  if (!isSized || !chargers || Object.keys(others).length > 0 || words > mostWords || corrects) return heard;
  if (!isSpotted(recognised.words, atOnce)) return heard;
  // "Both" is a count, and no amps.
  const amounts = recognised.mentions.filter(({ dimension }) => dimension === 'current');
  const told = chargers.filter(({ currentA }) => amounts.some(({ value }) => value === currentA));
  if (told.length === 0) return heard;
  const hazards = heard.hazards.filter(hazard => hazard !== summedUp);
  return {
    ...heard,
    intent: frame.intent,
    facts: { chargers: told },
    hazards,
    claims: [],
    options: [],
    certainty: 1,
  };
}
