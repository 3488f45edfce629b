import { present } from '#basics/present.ts';
import { without } from '#basics/without.ts';
import { factsOf } from '#intents/facts.ts';
import { isExplained } from '#intents/rig-expected.ts';
import { spotted } from '#intents/spotting.ts';
import { hasUse } from '#intents/use.ts';
import type { Rig, Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import type { Frame } from '../memory.ts';

/** How long amps at a glance still tell what flows (ms): by then a compressor has been on and off. */
const glanceMs = 30 * 60_000;
/** How long volts at rest still tell how full it is (ms): a usual rig draws a few points in that time. */
const restMs = 2 * 3600_000;

/** Words before a level that make it one to reckon from, and how many words may stand between. Choices. */
const before = {
  from: 3,
  starting: 4,
  start: 4,
  if: 5,
  once: 6,
  when: 6,
  until: 4,
  till: 4,
  to: 0,
} as const;
/** Words that make a level one of now, whatever stands before it. */
const nowWords: ReadonlySet<string> = new Set(['now', 'currently', 'atm', 'here']);
/** "It is full" tells; "a full battery" and "from full" suppose. */
const isFull = ['is_full|its_full|im_full|were_full|are_full|batterys_full|still_full|full_now|now_full'];

/** Whether a word stands as the number of a level: "90 %" or "90 percent". */
const isLevelAt = (words: readonly string[], at: number): boolean =>
  (words[at] === '' || /^\d/.test(present(words[at]))) && /^(%|per|pc|pct|percent)/.test(words[at + 1] ?? '');

/**
 * Whether the level of a message is only supposed ("how long from 90 %?", "if it's at half", "with a full battery"),
 * so that it tells nothing of the battery now.
 */
export function isSupposed({ recognised: { words }, facts }: Heard): boolean {
  if (!facts.batteries?.some(battery => battery.stateOfChargePercent !== undefined)) return false;
  const levels = words.flatMap((_, at) => (isLevelAt(words, at) ? [at] : []));
  // Told in a word, as "full", "half", "flat": a state only where it is said to be.
  if (levels.length === 0) return words.includes('full') && !spotted(words, isFull, pattern => [pattern]);
  return levels.some(at => {
    for (const [word, reach] of Object.entries(before)) {
      const from = words.lastIndexOf(word, at - 1);
      if (from < 0 || at - from - 1 > reach) continue;
      const between = words.slice(from + 1, at);
      const isDownTo = word === 'to' && ['down', 'up'].includes(words[from - 1] ?? '');
      if (!isDownTo && !between.some(one => nowWords.has(one))) return true;
    }
    return false;
  });
}

/** Whether a question is about the battery as it is now: it tells no level, no draw and no charging of its own. */
const isOfNow = ({ facts }: Heard): boolean =>
  (['loads', 'dailyUseAh', 'dailyUseWh', 'chargeUsedAh', 'chargeLeftAh', 'without', 'volts'] as const).every(
    key => facts[key] === undefined,
  ) && !facts.batteries?.some(({ stateOfChargePercent }) => stateOfChargePercent !== undefined);

/** Turns what was before plainly ("what if 200 Ah?"): the same glance is meant still, and a level is only thought of. */
export const isPlainTurn = ({ cues }: Heard): boolean =>
  (['what-if', 'make-it', 'correction', 'same-again'] as const).some(cue => cues.has(cue));

/**
 * What memory lends, without the readings that tell nothing any more of what is asked: a glance at the amps holds half
 * an hour, and only for a question of now; volts at rest hold two hours.
 * @param ageMs since the readings were told
 */
export function stillTold(facts: Stated | undefined, ageMs: number, heard: Heard): Stated | undefined {
  if (!facts) return undefined;
  const isGlance = ageMs <= glanceMs && (isOfNow(heard) || isPlainTurn(heard));
  const amps = isGlance ? facts : without(facts, 'netCurrentA');
  return ageMs <= restMs ? amps : without(amps, 'volts', 'voltsTaken');
}

/** Volts at rest told a little while ago, for a question of now that tells no level of its own. */
export function restNow(facts: Stated, ageMs: number, heard: Heard): Stated {
  const { volts, voltsTaken } = facts;
  const isRest = volts !== undefined && voltsTaken === 'rest';
  return isRest && ageMs <= restMs && isOfNow(heard) ? { volts, voltsTaken } : {};
}

/** The facts without what draws. */
export const withoutUse = (facts: Stated): Stated => without(facts, 'loads', 'dailyUseAh', 'dailyUseWh');

/**
 * Whether amps stand for the draw of all that runs: they go out, and no loads are known that explain them. A fridge
 * that happens to run or rest is explained by what is known of it; a kettle is not.
 * @param amps into the battery; minus is out of it
 * @param sources what was told and is remembered, the nearest first
 */
export function isDrawTold(amps: number, sources: readonly (Stated | undefined)[], at: Date): boolean {
  if (amps >= 0) return false;
  const [told] = sources;
  if (told && hasUse(factsOf(withoutAmps(told)))) return false;
  const known = sources.map(one => one && withoutAmps(one)).find(one => one && hasUse(factsOf(one)));
  return known === undefined || !isExplained(-amps, known as Rig, at);
}

const withoutAmps = (facts: Stated): Stated => without(facts, 'netCurrentA');

/**
 * When the readings among the facts of a question were told (ms), where that was not with it.
 * @param before the question that it turns
 */
export function readAt(told: Stated, facts: Stated, before: Frame | undefined): number | undefined {
  const keys = (['netCurrentA', 'volts'] as const).filter(key => facts[key] !== undefined);
  if (!before || keys.length === 0 || keys.some(key => told[key] !== undefined)) return undefined;
  return before.readAt ?? before.at;
}
