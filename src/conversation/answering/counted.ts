import { english } from '#answer/speech.ts';
import { intentNamed } from '#intents';
import { describeLoad } from '#intents/describe.ts';
import { hasTypical } from '#intents/facts.ts';
import { type ToldFact, toldFacts, unusedOf, type Worked } from '#intents/unused.ts';
import { placeNote } from '#intents/which-place.ts';
import { powerBankCellV } from '#rig/cell.ts';
import { hasDraw } from '#rig/merge.ts';
import type { Stated, StatedLoad } from '#rig/rig.ts';
import type { Interpreted } from '../interpret.ts';
import { isIntent } from '../questions.ts';
import { isNear, leftNumbers } from '../told/left-numbers.ts';
import { isSame } from './facts-in-words.ts';
import { factsInWords, wholly } from './unused-in-words.ts';

const mostListed = 6;

/**
 * One short line of the loads that an answer counted, where a misreading would else go unseen: of two or more, of any
 * that was guessed or came from memory.
 */
function countedLine(read: Interpreted, full: Worked, left: readonly unknown[]): string | undefined {
  const { intent, facts, setting } = read;
  const loads = (facts.loads ?? [])
    .filter(isCountable)
    .filter(load => !left.some(one => isSame([one], [load])));
  const isPlain = loads.length < 2 && loads.every(hasDraw) && !setting.recalled.has('loads');
  // A net current read off holds all that runs: no thing was counted by itself.
  const isMeasured = facts.netCurrentA !== undefined && intent.takes.includes('netCurrentA');
  if (intent.isItemised || isPlain || isMeasured || loads.length === 0) return undefined;
  if (!isCountedIn(read, full)) return undefined;
  const typical = english.say('typical', 'typical');
  const parts = loads
    .slice(0, mostListed)
    .map(load => (hasDraw(load) ? describeLoad(load) : `${describeLoad(load)} (${typical})`));
  const rest = loads.length - parts.length;
  const all = rest > 0 ? [...parts, english.say('more-loads', '{rest} more', { rest: String(rest) })] : parts;
  return english.say('counted', 'Counted: {loads}.', { loads: all.join('; ') });
}

/** Whether an answer hangs on what memory lends of loads: a reading judged by its volts does not, though they are known. */
function isCountedIn({ intent, facts, heard, setting }: Interpreted, full: Worked): boolean {
  if (heard.facts.loads || !facts.loads || facts.dailyUseAh !== undefined) return true;
  const none = unusedOf(intent, { facts, told: { loads: facts.loads }, setting }, full);
  return none.length < toldFacts({ loads: facts.loads }).length;
}

/** Things told without a figure, of which no usual one is known either: they count for nothing, and somebody may think they do. */
function unknownLine({ intent, facts }: Interpreted): string | undefined {
  const isWhole = [facts.dailyUseAh, facts.dailyUseWh, facts.netCurrentA].some(told => told !== undefined);
  // A cable's or a fuse's current is told beside what it is for.
  if (isWhole || !intent.takes.includes('dailyUseAh')) return undefined;
  const unknown = (facts.loads ?? []).filter(load => !isCountable(load)).map(({ name }) => name);
  if (unknown.length === 0) return undefined;
  const things = unknown.slice(0, mostListed).join(', ');
  return english.say('unknown-draw', 'Not counted, as I know no figure of it: {things}.', { things });
}

const isCountable = (load: StatedLoad): boolean => hasDraw(load) || hasTypical(load.name);

/** What of an answer can be told: the facts that it doesn't hang on, and a line that names them. */
interface Unused {
  readonly facts: readonly ToldFact[];
  /** Numbers of the message that are in no fact and that the question didn't take from the words either. */
  readonly unread: Interpreted['heard']['unread'];
  readonly line?: string;
}

/** The facts told that a question has no use for, or that change nothing. One without a sum takes the numbers that it names. */
function unusedFacts({ intent, facts, heard, setting }: Interpreted, full: Worked): readonly ToldFact[] {
  if (!intent.hasNoSum) return unusedOf(intent, { facts, told: heard.facts, setting }, full);
  const taken = intent.numbersBeside?.(heard);
  return taken
    ? toldFacts(heard.facts).filter(({ value }) => typeof value === 'number' && !taken.some(isNear(value)))
    : [];
}

/** What a warning speaks of is not left out, whatever the sum does with it: lithium, and how cold it is. */
const spokenOf: ReadonlySet<unknown> = new Set(['chemistry', 'ambientC']);

/** What of gear goes without saying: its name or kind alone, and how large a fridge is. */
const unsaidOfGear: ReadonlySet<unknown> = new Set(['name', 'kind', 'volumeL']);

/** What goes without saying: the trade's 12 V, and what changes no sum. */
const goesUnsaid = ({ path, value }: ToldFact): boolean =>
  (path[0] === 'systemVoltageV' && value === nominalV) ||
  value === 'pure-sine' ||
  // A day's yield that is told is what an answer of the sun is held against.
  path[0] === 'solarAhPerDay' ||
  path[0] === 'solarWhPerDay' ||
  (path.length > 1 && unsaidOfGear.has(path.at(-1)));
const nominalV = 12;

/** What was told and is no part of the sum, numbers that are no fact among it. A fault has no sum. */
function unusedIn(read: Interpreted, full: Worked): Unused {
  const { intent, heard } = read;
  const isCold = read.hazards.includes('cold-charge');
  // What the other question of the message takes is counted there.
  const { beside } = heard;
  const counted: readonly string[] = beside && isIntent(beside) ? intentNamed(beside).takes : [];
  const found = unusedFacts(read, full).filter(
    ({ path }) => !(isCold && spokenOf.has(path.at(-1))) && !counted.includes(String(path[0])),
  );
  const { unread, named } = leftNumbers(intent, heard);
  const said = found.filter(fact => !goesUnsaid(fact));
  const parts = intent.name === 'fault' ? [] : [...factsInWords(heard.facts, said), ...named];
  if (parts.length === 0) return { facts: found, unread };
  const listed = parts.slice(0, mostListed).join('; ');
  const line = english.say('left-out', 'Not counted here: {parts}.', { parts: listed });
  return { facts: found, unread, line };
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
): { readonly lines: string[]; readonly unused: readonly ToldFact[]; readonly unread?: Unused['unread'] } {
  // A rig that is noted has no sum; its place is kept.
  if (full.reply.figures === undefined) return { lines: placeLine(read, full, []), unused: [] };
  const { facts, unread, line } = unusedIn(read, full);
  const left = wholly(read.heard.facts, facts).flatMap(([key, row]) => (key === 'loads' ? [row] : []));
  const lines = [countedLine(read, full, left), unknownLine(read), cellLine(read.facts), line].filter(
    one => one !== undefined,
  );
  return { lines: [...placeLine(read, full, facts), ...lines], unused: facts, unread };
}
