import { english } from '#answer/speech.ts';
import { describeLoad } from '#intents/describe.ts';
import { hasDraw } from '#rig/merge.ts';
import type { Stated } from '#rig/rig.ts';
import { partsOf } from './facts-in-words.ts';
import type { Interpreted } from './interpret.ts';

const mostListed = 6;

/**
 * One short line of the loads that an answer counted, where a misreading would else go unseen: of two or more, of any
 * that was guessed or came from memory.
 */
function countedLine({ intent, facts, setting }: Interpreted): string | undefined {
  const loads = facts.loads ?? [];
  const isPlain = loads.length < 2 && loads.every(hasDraw) && !setting.recalled.has('loads');
  if (intent.isItemised || isPlain || loads.length === 0) return undefined;
  const typical = english.say('typical', 'typical');
  const parts = loads
    .slice(0, mostListed)
    .map(load => (hasDraw(load) ? describeLoad(load) : `${describeLoad(load)} (${typical})`));
  const rest = loads.length - parts.length;
  const all = rest > 0 ? [...parts, english.say('more-loads', '{rest} more', { rest: String(rest) })] : parts;
  return english.say('counted', 'Counted: {loads}.', { loads: all.join('; ') });
}

/** Facts that are told for their own sake, so that one which a question can't take is named. */
const worthNaming = [
  'loads',
  'batteries',
  'solar',
  'chargers',
  'dailyUseAh',
  'dailyUseWh',
  'durationH',
  'drivingHoursPerDay',
  'chargeUsedAh',
  'chargeLeftAh',
  'volts',
  'netCurrentA',
  'fuseA',
] as const satisfies readonly (keyof Stated)[];

/** One short line of what was told and is no part of the sum: the question has no use for it. */
function leftOutLine({ intent, heard }: Interpreted): string | undefined {
  const { takes } = intent;
  const unused = Object.fromEntries(
    worthNaming.flatMap(key =>
      heard.facts[key] === undefined || takes.includes(key) ? [] : [[key, heard.facts[key]]],
    ),
  ) as Stated;
  const parts = partsOf(unused, {});
  if (parts.length === 0) return undefined;
  return english.say('left-out', 'Not part of this sum: {parts}.', {
    parts: parts.slice(0, mostListed).join('; '),
  });
}

/** What an answer counted, and what was told and not counted: a line each, where there is any. */
export const countedLines = (read: Interpreted): string[] =>
  [countedLine(read), leftOutLine(read)].filter(line => line !== undefined);
