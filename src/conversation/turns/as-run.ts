import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';

// "A fan 0.8 A for 9 hours, how long?": whose the hours are that stand behind a thing.

type Option = Heard['options'][number];
type Row = Readonly<Record<string, unknown>>;

const loadsOf = ({ stated }: Pick<Option, 'stated'>): readonly Row[] =>
  Array.isArray(stated.loads) ? (stated.loads as Row[]) : [];

const timeKeys = ['hoursPerDay', 'hoursOnce', 'minutesPerDay'] as const;

/** The hours of the one load that has some in another reading and none in the first, all else being told alike. */
function hoursApart(first: Option, other: Option): number | undefined {
  if (first.intent !== other.intent) return undefined;
  const [mine, theirs] = [loadsOf(first), loadsOf(other)];
  const keys = new Set([...Object.keys(first.stated), ...Object.keys(other.stated)]);
  keys.delete('loads');
  keys.delete('durationH');
  const isAlike = [...keys].every(
    key => JSON.stringify(first.stated[key]) === JSON.stringify(other.stated[key]),
  );
  if (!isAlike || mine.length !== theirs.length) return undefined;
  const bare = (row: Row): string =>
    JSON.stringify(
      Object.entries(row)
        .filter(([key]) => !(timeKeys as readonly string[]).includes(key))
        .sort(([a], [b]) => a.localeCompare(b)),
    );
  if (mine.some((row, at) => bare(row) !== bare(theirs[at] ?? {}))) return undefined;
  const isTimed = (row: Row | undefined): boolean => timeKeys.some(key => row?.[key] !== undefined);
  const [one, ...more] = theirs.filter((row, at) => isTimed(row) && !isTimed(mine[at]));
  if (more.length > 0 || theirs.filter(isTimed).length !== mine.filter(isTimed).length + 1) return undefined;
  const hours = one?.hoursPerDay ?? one?.hoursOnce;
  // Hours that are another thing's already were told once.
  const isTaken = mine.some(row => timeKeys.some(key => row[key] === hours));
  return typeof hours === 'number' && !isTaken ? hours : undefined;
}

/** Less likely than this a reading is none. */
const leastLikely = 0.03;

/**
 * Of readings that differ in whether hours are a thing's each day or the span of the question, the thing's, where no span
 * of hours can be meant: "how long" is asked and a span would be its answer, a thing is added with them, or they would
 * be in no fact at all beside a span of days. As unsure as it was, for what else it may be.
 */
export function asRun({ frames }: Memory, { from, onto }: Message, heard: Heard): Heard {
  const { facts, cues, options } = heard;
  const [first] = options;
  if (!first || first.intent !== heard.intent || !facts.loads?.length) return heard;
  const own = onto ?? ownFrame(frames, from);
  // What goes into a question of how long is no answer to it.
  const isOfIt = own?.facts.durationH === undefined && own?.cues?.includes('ask-how-long');
  const isNoSpan = isOfIt || (['ask-how-long', 'add', 'and-with'] as const).some(cue => cues.has(cue));
  /** The hours of a thing each day in one reading that are a span in another, or nothing. */
  const hoursOf = (run: Option, other: Option): number | undefined => {
    const hours = hoursApart(other, run);
    if (hours === undefined || !loadsOf(run).some(row => row.hoursPerDay === hours)) return undefined;
    const isSpan = isNoSpan && run.stated.durationH === undefined && other.stated.durationH === hours;
    return isSpan || run.stated.durationH === other.stated.durationH ? hours : undefined;
  };
  const run = options.find(
    one =>
      one.probability >= leastLikely &&
      (hoursOf(one, first) !== undefined ||
        (one === first && options.some(other => hoursOf(one, other) !== undefined))),
  );
  if (!run) return heard;
  const base = run === first ? options.find(other => hoursOf(run, other) !== undefined) : first;
  const hours = base && hoursApart(base, run);
  const isOfOne = (one: Option): boolean =>
    one === run || hoursOf(run, one) !== undefined || (base && hoursApart(base, one)) === hours;
  // Those are one doubt, and the words settle it.
  const probability = options.filter(isOfOne).reduce((sum, one) => sum + one.probability, 0);
  const { durationH: _span, ...rest } = facts;
  const span = run.stated.durationH === undefined ? rest : facts;
  const told = loadsOf(run);
  const loads = facts.loads.map((load, at) => {
    const { hoursPerDay: _a, hoursOnce: _b, minutesPerDay: _c, ...bare } = load;
    const { hoursPerDay } = told[at] ?? {};
    return typeof hoursPerDay === 'number' ? { ...bare, hoursPerDay } : load;
  });
  return {
    ...heard,
    facts: { ...span, loads },
    certainty: Math.min(1, heard.certainty + probability - first.probability),
    options: [{ ...run, probability }, ...options.filter(one => !isOfOne(one))],
  };
}
