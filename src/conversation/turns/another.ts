import { intentNamed } from '#intents';
import { isSpotted } from '#intents/spotting.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
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

/** Words that put a battery of a size told beside the one there is. */
const beside =
  'another|extra|second|brings|bring|brought|adds|add|adding|chucks|chuck|throws|throw|lends|lend';
const mostSizedWords = 14;

/** "And if one of us brings another 50 Ah": one more, of the same kind where none is told. */
function besideIt(frame: Frame, heard: Heard): Stated | undefined {
  const { recognised, facts, words } = heard;
  const [one, other] = facts.batteries ?? [];
  const amounts = recognised.mentions.filter(({ kind }) => kind === 'amount');
  const [size, more] = amounts;
  const isSize = size?.dimension === 'charge' && size.rate === undefined && !more;
  const old =
    onlyOne(frame.facts, 'batteries') && frame.facts.batteries?.find(({ role }) => role !== 'starter');
  if (!isSize || !old || other || facts.loads || words > mostSizedWords) return undefined;
  if (!isSpotted(recognised.words, [`${beside} -a_day -per_day -each_day -a_night -use -uses -panel`]))
    return undefined;
  const { dailyUseAh: _use, ...rest } = facts;
  return { ...rest, batteries: [{ ...one, capacityAh: size.value }] };
}

/**
 * A turn of a question that adds one more like it, or doubles what it has, with the count that comes of it. What is told
 * with a size of its own ("another 100 Ah"), asked by itself ("do I need a second battery?") or told as gear stays as it is.
 */
export function withAnother(memory: Memory, { onto, from }: Message, heard: Heard): Heard {
  const frame = onto ?? ownFrame(memory.frames, from) ?? memory.frames.at(-1);
  if (!frame || frame.asked !== undefined || !opensTurn(heard)) return heard;
  const isOfIt = heard.intent === frame.intent || heard.certainty < leastSure;
  if (!isOfIt || !isIntent(frame.intent) || heard.corrects) return heard;
  const { words } = heard.recognised;
  const takes: readonly string[] = intentNamed(frame.intent).takes;
  const certainty = Math.max(heard.certainty, leastSure);
  const sized = takes.includes('batteries') ? besideIt(frame, heard) : undefined;
  if (sized) {
    const cues = new Set<Cue>([...heard.cues, 'add']);
    return { ...heard, intent: frame.intent, facts: sized, cues, options: [], certainty };
  }
  if (heard.words > mostWords) return heard;
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
      certainty,
    };
  }
  return heard;
}
