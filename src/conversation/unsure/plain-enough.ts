import type { IntentName } from '#answer/answer.ts';
import { isPartOf } from '#basics/part-of.ts';
import { intentNamed } from '#intents';
import { isMedicalNamed } from '#intents/facts.ts';
import type { Heard } from '../hear.ts';
import { asksAfterWord } from './asks-word.ts';

// Doubts of reading that a careful person would not ask about: the likeliest is answered, with what it counted.

export interface Reading {
  readonly intent: IntentName;
  readonly stated: Readonly<Record<string, unknown>>;
  readonly probability: number;
}

type Row = Readonly<Record<string, unknown>>;

/** A reading less likely than this is none. */
const leastHeld = 0.045;
/** As likely as this, one reading is likelier than all others. */
const leastFirst = 0.5;
/** The same of things without figures, of which each other reading leaves out one. */
const leastFirstBare = 0.4;
/** Less sure than this of the whole reading, it is asked about all the same: fitted to groups that no weight had seen. */
const leastWhole = 0.5;
/** The same where another question may be meant. */
const leastOfOthers = 0.6;
/** The same where nearly all is typical, as no figures are told: what was counted is listed by name. */
const leastBare = 0.2;
const mostOfBare = 2;
/** With more figures than this one of them is too easily taken amiss. */
const mostFigures = 4;

/** What of a row is no figure: an answer takes a typical one, and lists by name what it counted. */
const plainLoad: ReadonlySet<string> = new Set(['name', 'count', 'supply', 'volumeL']);
const plainKeys: Readonly<Record<string, ReadonlySet<string>>> = {
  loads: plainLoad,
  batteries: new Set(['role']),
};
/** Facts that stand in the answer's first lines, so that one too many is seen. */
const seen: ReadonlySet<string> = new Set([
  'durationH',
  'until',
  'mount',
  'netCurrentA',
  'volts',
  'voltsTaken',
  'targetChargePercent',
]);

const rowsOf = (value: unknown): readonly Row[] => (Array.isArray(value) ? (value as Row[]) : []);

/** The rows with a figure, as one text. */
const figuresIn = (rows: readonly Row[], plain: ReadonlySet<string>): string =>
  rows
    .filter(row => Object.keys(row).some(key => !plain.has(key)))
    .map(row => JSON.stringify(row))
    .sort()
    .join(' ');

const namesIn = (rows: readonly Row[]): Set<unknown> => new Set(rows.map(row => row.name));

/** "AGM or lithium?" holds two against each other: without one of them it is no question. */
const isOfTwo = ({ intent, stated }: Reading): boolean =>
  intent === 'battery-type' && rowsOf(stated.batteries).length === 2;

/** Whether a reading tells the figures of the likeliest and no more: it may leave out things named without a figure, and what is seen. */
function leavesOut(first: Reading, { stated }: Reading): boolean {
  const keys = new Set([...Object.keys(first.stated), ...Object.keys(stated)]);
  return [...keys].every(key => {
    const [mine, other] = [first.stated[key], stated[key]];
    if (JSON.stringify(mine) === JSON.stringify(other)) return true;
    // "Fridge and a fan" takes nothing out of what it tells.
    if (key === 'removed') return mine === undefined;
    if (key === 'batteries' && isOfTwo(first)) return isPartOf(rowsOf(other), rowsOf(mine));
    const plain = plainKeys[key];
    if (!plain) return other === undefined && seen.has(key);
    const [rows, others] = [rowsOf(mine), rowsOf(other)];
    if (figuresIn(rows, plain) !== figuresIn(others, plain)) return false;
    const names = namesIn(rows);
    return key !== 'loads' || [...namesIn(others)].every(name => names.has(name));
  });
}

/** What no question takes as a figure. */
const ofTalk: ReadonlySet<string> = new Set(['claims', 'term', 'owner', 'choice', 'voltsTaken', 'without']);

/** Whether a question takes all that its reading tells: what it leaves out would be asked by another. */
function takesAll({ intent, stated }: Reading): boolean {
  const takes: readonly string[] = intentNamed(intent).takes;
  return Object.keys(stated).every(key => takes.includes(key) || ofTalk.has(key));
}

/** Whether it tells of gear: times and claims alone are a part of some talk. */
const isOfGear = ({ stated }: Reading): boolean =>
  Object.keys(stated).some(key => !seen.has(key) && !ofTalk.has(key));

/** Whether somebody's health hangs on it: then nothing unsure is taken. */
export const isMedical = ({ stated }: Reading): boolean =>
  rowsOf(stated.loads).some(({ name }) => isMedicalNamed(String(name)));

const isSameTold = (one: Reading, other: Reading): boolean =>
  JSON.stringify(one.stated) === JSON.stringify(other.stated);

/** Whether the things that it tells have no figure. */
const isBare = ({ stated }: Reading): boolean => {
  const loads = rowsOf(stated.loads);
  return loads.length > 0 && figuresIn(loads, plainLoad) === '';
};

/**
 * Whether one reading is likelier than all others together, and these either ask another question of the very same
 * facts, or leave out what has no figure ("a fridge, a pump and some lights" without the pump).
 */
function isFullest(readings: readonly Reading[], { certainty, cues, hazards, recognised }: Heard): boolean {
  const [first, ...others] = readings;
  const rivals = others.filter(({ probability }) => probability >= leastHeld);
  const isOneQuestion = rivals.every(({ intent }) => intent === first?.intent);
  const figures = recognised.mentions.filter(({ kind }) => kind === 'amount' || kind === 'number');
  const isAllBare = first !== undefined && isBare(first) && figures.length <= mostOfBare;
  const least = isAllBare ? leastBare : isOneQuestion ? leastWhole : leastOfOthers;
  if (
    !first ||
    figures.length > mostFigures ||
    first.probability < (isOneQuestion && isBare(first) ? leastFirstBare : leastFirst) ||
    certainty < least ||
    !hazards.every(code => code === 'starter-flat' && first.intent === 'starter-reserve') ||
    // What turns a question that nobody remembers is none of its own.
    (cues.has('what-if') && recognised.words.includes('if'))
  )
    return false;
  // What is told to be kept is no question.
  if (first.intent === 'rig' || (first.intent !== 'term' && !isOfGear(first))) return false;
  if (!takesAll(first) || isMedical(first)) return false;
  return rivals.every(one => (one.intent === first.intent ? leavesOut(first, one) : isSameTold(first, one)));
}

/**
 * Whether a reading only names things, of which an answer takes typical figures and lists by name what it counted:
 * saying that back to be confirmed would tell no more.
 */
export const isOnlyNamed = (reading: Reading, { recognised }: Heard): boolean =>
  isBare(reading) &&
  !isMedical(reading) &&
  recognised.mentions.filter(({ kind }) => kind === 'amount' || kind === 'number').length <= mostOfBare;

/** "What is the alternator?": a word is asked after, whatever it is a part of. */
const isOfWord = ([first]: readonly Reading[], heard: Heard): boolean =>
  first?.intent === 'term' && asksAfterWord(heard) && heard.hazards.length === 0;

/** Whether the likeliest reading is taken though it isn't sure: the others would be answered alike. */
export const isPlainEnough = (readings: readonly Reading[], heard: Heard): boolean =>
  readings[0]?.intent === heard.intent && (isFullest(readings, heard) || isOfWord(readings, heard));
