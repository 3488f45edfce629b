import { intentNamed } from '#intents';
import { isSpotted } from '#intents/spotting.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { isIntent } from '../questions.ts';
import { leastSure } from '../unsure/sureness.ts';
import { opensTurn } from './lean.ts';

// "What if we add a second battery the same?", "and if we double the panels": one more of what the question counts.

type Kind = 'batteries' | 'solar';

const more = 'another|second|2nd|extra|additional|one_more|1_more';
const twice = 'double|doubled|doubling|twice';
const kinds: readonly (readonly [key: Kind, words: string])[] = [
  ['batteries', 'battery|batteries|batt|bank'],
  ['solar', 'panel|panels|solar|blanket'],
];
/** What has a size of its own is told by that. */
const sizes = ['capacityAh', 'energyWh', 'powerW', 'voltageV', 'chemistry'] as const;
/** What asks how it is done, or whether it is needed. */
const but = '-how -charge -charging -connect -wire -wiring -join -need -why -which -where';
const mostWords = 12;

const isSized = (row: object): boolean => sizes.some(size => size in row);

/** The only row of its kind that a question went by, but for what starts the engine. */
function onlyOne(facts: Stated, key: Kind): { readonly count?: number | undefined } | undefined {
  const rows: readonly { readonly role?: string; readonly count?: number | undefined }[] = facts[key] ?? [];
  const [one, ...others] = rows.filter(({ role }) => role !== 'starter');
  return one && others.length === 0 && isSized(one) ? one : undefined;
}

/**
 * A turn of a question that adds one more like it, or doubles what it has, with the count that comes of it. What is told
 * with a size of its own ("another 100 Ah"), asked by itself ("do I need a second battery?") or told as gear stays as it is.
 */
export function withAnother(memory: Memory, { onto, from }: Message, heard: Heard): Heard {
  const frame = onto ?? ownFrame(memory.frames, from) ?? memory.frames.at(-1);
  if (!frame || frame.asked !== undefined || heard.words > mostWords || !opensTurn(heard)) return heard;
  const isOfIt = heard.intent === frame.intent || heard.certainty < leastSure;
  if (!isOfIt || !isIntent(frame.intent) || heard.corrects) return heard;
  const { words } = heard.recognised;
  const takes: readonly string[] = intentNamed(frame.intent).takes;
  for (const [key, gear] of kinds) {
    const isTwice = isSpotted(words, [`${twice} ${gear} ${but}`]);
    if (!takes.includes(key) || !(isTwice || isSpotted(words, [`${more} ${gear} ${but}`]))) continue;
    const one = onlyOne(frame.facts, key);
    if (!one || heard.facts[key]?.some(isSized)) continue;
    const before = one.count ?? 1;
    const facts: Stated = { ...heard.facts, [key]: [{ count: isTwice ? 2 * before : before + 1 }] };
    return {
      ...heard,
      intent: frame.intent,
      facts,
      options: [],
      certainty: Math.max(heard.certainty, leastSure),
    };
  }
  return heard;
}
