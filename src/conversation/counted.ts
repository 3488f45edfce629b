import { english } from '#answer/speech.ts';
import { describeLoad } from '#intents/describe.ts';
import { type ToldFact, unusedOf, type Worked } from '#intents/unused.ts';
import { placeNote } from '#intents/which-place.ts';
import { powerBankCellV } from '#rig/cell.ts';
import { hasDraw } from '#rig/merge.ts';
import type { Stated } from '#rig/rig.ts';
import { isSame } from './facts-in-words.ts';
import type { Interpreted } from './interpret.ts';
import { factsInWords, wholly } from './unused-in-words.ts';

const mostListed = 6;

/**
 * One short line of the loads that an answer counted, where a misreading would else go unseen: of two or more, of any
 * that was guessed or came from memory.
 */
function countedLine({ intent, facts, setting }: Interpreted, left: readonly unknown[]): string | undefined {
  const loads = (facts.loads ?? []).filter(load => !left.some(one => isSame([one], [load])));
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

/** What of an answer can be told: the facts that it doesn't hang on, and a line that names them. */
interface Unused {
  readonly facts: readonly ToldFact[];
  readonly line?: string;
}

/** What was told and is no part of the sum: the question has no use for it, or it changes nothing. */
function unusedIn({ intent, facts, heard, setting }: Interpreted, full: Worked): Unused {
  if (intent.hasNoSum) return { facts: [] };
  const told = heard.facts;
  const found = unusedOf(intent, { facts, told, setting }, full);
  const parts = factsInWords(told, found);
  if (parts.length === 0) return { facts: found };
  const listed = parts.slice(0, mostListed).join('; ');
  return { facts: found, line: english.say('left-out', 'Not counted here: {parts}.', { parts: listed }) };
}

/** At what volts a power bank's mAh are counted. */
function cellLine({ batteries }: Stated): string | undefined {
  const bank = batteries?.find(battery => battery.isOfCell);
  if (!bank) return undefined;
  const gaps = { mah: english.decimals(1000 * (bank.capacityAh ?? 0), 0), volts: String(powerBankCellV) };
  return english.say('power-bank', 'Its {mah} mAh are at the {volts} V of its cells.', gaps);
}

/** For which of several places of a name it is, where that bears on it. */
function placeLine(
  { facts, setting }: Interpreted,
  { reply }: Worked,
  unused: readonly ToldFact[],
): string[] {
  if (unused.some(({ path }) => path[0] === 'place')) return [];
  const note = placeNote(facts, setting, [reply.headline, ...(reply.lines ?? [])].join('\n'));
  return note === undefined ? [] : [note];
}

/** What an answer counted, and what was told and not counted: a line each, where there is any. */
export function countedLines(
  read: Interpreted,
  full: Worked,
): { readonly lines: string[]; readonly unused: readonly ToldFact[] } {
  // A rig that is noted has no sum; its place is kept.
  if (full.reply.figures === undefined) return { lines: placeLine(read, full, []), unused: [] };
  const { facts, line } = unusedIn(read, full);
  const left = wholly(read.heard.facts, facts).flatMap(([key, row]) => (key === 'loads' ? [row] : []));
  const lines = [countedLine(read, left), cellLine(read.facts), line].filter(one => one !== undefined);
  return { lines: [...placeLine(read, full, facts), ...lines], unused: facts };
}
