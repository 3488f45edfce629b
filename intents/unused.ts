import type { Reply } from '#answer/reply.ts';
import { present } from '#basics/present.ts';
import { firstFigures, withFirstFigures } from '#engine/try-out.ts';
import type { Facts, Stated, StatedLoad } from '#rig/rig.ts';
import { type Intent, needsOf, type RequestContext } from './intent.ts';
import { withLearned } from './learned.ts';

/** Where a fact stands: "loads", 0, "powerW". */
type FactPath = readonly (string | number)[];

/** A fact that was told, and what was told. */
export interface ToldFact {
  readonly path: FactPath;
  readonly value: unknown;
}

/**
 * What is no amount that a sum could take: how a thing is called, how many, how a figure was meant. Hours until a time
 * are in `durationH`; what is ruled out, a place's coordinates and a battery's role agree with every answer.
 */
const apart: ReadonlySet<string> = new Set([
  'name',
  'count',
  'kind',
  'supply',
  'role',
  'isAverage',
  'isInput',
  'isOfCell',
  'isStation',
  'isRoundTrip',
  'build',
  'until',
  'without',
  'arrangement',
  'voltsTaken',
  'latitudeDeg',
  'longitudeDeg',
  'skyLastDays',
  'startWeekday',
]);

type Row = Readonly<Record<string, unknown>>;
const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isRows = (value: unknown): value is readonly Row[] => Array.isArray(value) && value.some(isRow);

/** Every fact of what was told, each as small as it can be taken or left; a thing without figures is one by itself. */
export function toldFacts(told: Stated): ToldFact[] {
  return Object.entries(told).flatMap(([key, value]): ToldFact[] => {
    if (apart.has(key) || value === undefined) return [];
    if (isRows(value)) return value.flatMap((row, i) => inRow([key, i], row, true));
    return isRow(value) ? inRow([key], value, false) : [{ path: [key], value }];
  });
}

function inRow(path: FactPath, row: Row, isThing: boolean): ToldFact[] {
  const figures = Object.entries(row).filter(([name, value]) => !apart.has(name) && value !== undefined);
  if (figures.length === 0) return isThing ? [{ path, value: row }] : [];
  return figures.map(([name, value]) => ({ path: [...path, name], value }));
}

/** The same fact among all that a question goes by: rows told now may stand at another place there. */
function pathIn(facts: Stated, told: Stated, { path }: ToldFact): FactPath {
  const [key, at, ...rest] = path;
  if (typeof at !== 'number') return path;
  const row = present(present((told as Record<string, readonly Row[]>)[key as string])[at]);
  const rows = (facts as Record<string, readonly Row[] | undefined>)[key as string] ?? [];
  if (JSON.stringify(rows[at]) === JSON.stringify(row)) return path;
  const same = rows.findIndex(one => JSON.stringify(one) === JSON.stringify(row));
  const alike = rows.findIndex(one => (one.name ?? one.kind) === (row.name ?? row.kind));
  return [present(key), same >= 0 ? same : alike >= 0 ? alike : at, ...rest];
}

const kinds: Readonly<Record<string, readonly unknown[]>> = {
  chemistry: ['lfp', 'agm', 'flooded'],
  sky: ['overcast', 'sunny', 'mixed'],
  controller: ['pwm', 'mppt'],
  wave: ['modified-sine', 'pure-sine'],
  mount: ['flat', 'tilted'],
  shade: ['heavy', 'none'],
  wear: ['tired', 'old'],
  alternator: ['smart', 'fixed'],
  place: ['darwin', 'oslo'],
};

/** Facts that have no nought to be a multiple of: what is tried is from their cold or low end to their hot or high one. */
const scales: Readonly<Record<string, readonly number[]>> = {
  ambientC: [-10, 45, 12, 30, 60],
  volts: [11.5, 14.6, 12.4, 13.3],
};

/** What a figure can be at least and at most: other values beyond that could not have been told, and would tell nothing. */
const bounds: Readonly<Record<string, readonly [least: number, most: number]>> = {
  stateOfChargePercent: [0, 100],
  targetChargePercent: [0, 100],
  depthOfDischargePercent: [1, 100],
  dutyPercent: [0, 100],
  hoursPerDay: [0, 24],
  minutesPerDay: [0, 1440],
  drivingHoursPerDay: [0, 24],
  drivingH: [0, 24],
  generatorH: [0, 24],
  mainsH: [0, 24],
  startHour: [0, 24],
  ageYears: [0, 60],
  volumeL: [2, 2000],
  peakSunHours: [0.1, 14],
  altitudeM: [-500, 9000],
  dropLimitPercent: [0.1, 50],
};

/** Far enough to pass any limit on the way, and small enough for a share or an hour of a day. */
function otherNumbers(name: string, value: number): readonly number[] {
  const [least, most] = bounds[name] ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const told = scales[name] ?? [value * 0.2, value * 3 + 1, value * 1.4, value * 0.05];
  return [...new Set(told.map(other => Math.min(most, Math.max(least, other))))];
}

/** What else might have been told in the place of a value; undefined: nothing. */
function others(name: string | number, value: unknown): readonly unknown[] {
  if (name === 'month') return [5, 2, 1, undefined].map(n => n && (((value as number) + n) % 12) + 1);
  if (name === 'awg') return [4, 18, undefined];
  if (name === 'voltageV' || name === 'systemVoltageV')
    return [...[24, 12, 6].filter(v => v !== value), undefined];
  if (typeof value === 'number') return [...otherNumbers(String(name), value), undefined];
  return [...(kinds[name as string] ?? []).filter(one => one !== value), undefined];
}

/** The facts with another value at a path. */
function withOther(facts: Stated, path: FactPath, value: unknown): Stated {
  const [key, ...rest] = path;
  if (key === undefined) return value as Stated;
  if (Array.isArray(facts)) {
    const changed =
      rest.length === 0 && value === undefined
        ? facts.filter((_, i) => i !== key)
        : facts.map((row, i) => (i === key ? withOther(row as Stated, rest, value) : row));
    return changed as unknown as Stated;
  }
  const inner = (facts as Record<string | number, unknown>)[key];
  const next =
    rest.length === 0 ? value : inner === undefined ? inner : withOther(inner as Stated, rest, value);
  const isGone = next === undefined || (Array.isArray(next) && next.length === 0);
  const { [key as keyof Stated]: _old, ...others } = facts;
  const placed = key === 'place' ? { latitudeDeg: undefined, longitudeDeg: undefined } : {};
  return { ...others, ...placed, ...(!isGone && { [key]: next }) };
}

/** What of a reply a fact may bear on; its lines apart, as some are worked out only where they are read. */
const keyOf = ({ headline, verdict, figures, cautions, assumed }: Reply): string =>
  JSON.stringify([headline, verdict, figures, cautions, assumed]);
const linesOf = ({ lines }: Reply): string => JSON.stringify(lines ?? null);
const wholeOf = (reply: Reply): string => keyOf(reply) + linesOf(reply);

const failed = 'the question can’t be answered so';

/** Answers a question with other facts; undefined where it couldn't be answered. */
function replied(intent: Intent, facts: Stated, setting: RequestContext): Reply | undefined {
  const taken = intent.takes.filter(key => facts[key] !== undefined).map(key => [key, facts[key]]);
  const parsed = needsOf(intent, setting.subject).safeParse(Object.fromEntries(taken));
  return parsed.success
    ? intent.reply(withLearned(parsed.data as Facts, setting.learned), setting)
    : undefined;
}

/** An answer, and the first figures that it came to. */
export interface Worked {
  readonly reply: Reply;
  readonly figures?: Readonly<Record<string, number>>;
}

/** Works an answer out. */
export function worked(reply: () => Reply): Worked {
  const { result, figures } = withFirstFigures(reply);
  return { reply: result, figures };
}

/** The first figures of an answer; where it has none, all of it. */
const firstOf = (answered: () => string): string => {
  let whole = '';
  const figures = firstFigures(() => {
    whole = answered();
  });
  return figures ? JSON.stringify(figures) : whole;
};

/**
 * Whether each answer of a question hangs on a fact by the question's own word. Not of one battery of several, nor of
 * loads beside a day's use told as one number, nor of a draw told twice: there the one may stand for the other.
 */
function isSure({ hangsOn, alsoHangsOn }: Intent, facts: Stated, { path }: ToldFact): boolean {
  const name = path.filter(step => typeof step === 'string').join('.');
  if (!hangsOn?.has(name)) return alsoHangsOn?.(facts).includes(name) ?? false;
  if (path[0] === 'batteries') return facts.batteries?.length === 1;
  if (path[0] !== 'loads') return true;
  const isOneNumber = facts.dailyUseAh !== undefined || facts.dailyUseWh !== undefined;
  return !isOneNumber && !facts.loads?.some(isToldTwice);
}

const isOne = (told: readonly unknown[]): boolean => told.filter(x => x !== undefined).length <= 1;

const isToldTwice = (load: StatedLoad): boolean =>
  !isOne([load.currentA, load.powerW, load.energyWhPerDay, load.chargeAhPerDay]) ||
  !isOne([load.hoursPerDay, load.minutesPerDay, load.hoursOnce]);

/**
 * The facts told that an answer doesn't hang on: with other values, and without it, it would be the same to the last
 * figure, caution and word. Of most facts the first figures tell that they are used: only what moves none of them, at
 * any value, is tried through the whole answer.
 * @param facts all that the question goes by
 * @param told what was told now
 * @param worked the answer as it was worked out
 */
export function unusedOf(
  intent: Intent,
  {
    facts,
    told,
    setting,
  }: { readonly facts: Stated; readonly told: Stated; readonly setting: RequestContext },
  { reply, figures }: Worked,
): ToldFact[] {
  const answered = (other: Stated): string => {
    const now = replied(intent, other, setting);
    return now ? wholeOf(now) : failed;
  };
  let first: string | undefined;
  let key: string | undefined;
  let lines: string | undefined;
  // What can't be answered without a fact hangs on it; another value that can't be meant tells nothing.
  const isFirstSame = (other: Stated, isLeftOut: boolean): boolean => {
    first ??= figures ? JSON.stringify(figures) : wholeOf(reply);
    const now = firstOf(() => answered(other));
    return now === failed ? !isLeftOut : now === first;
  };
  // Asked only of what has the same first figures.
  const isWholeSame = (other: Stated): boolean => {
    const now = replied(intent, other, setting);
    if (!now) return true;
    key ??= keyOf(reply);
    if (keyOf(now) !== key) return false;
    lines ??= linesOf(reply);
    return linesOf(now) === lines;
  };
  const isUnused = (fact: ToldFact): boolean => {
    if (isSure(intent, facts, fact)) return false;
    const path = pathIn(facts, told, fact);
    const tried = others(present(path.at(-1)), fact.value)
      // A share of nought is nought again.
      .filter(value => value !== fact.value);
    const isSame = (hasStayed: (other: Stated, isLeftOut: boolean) => boolean): boolean =>
      tried.every(value => hasStayed(withOther(facts, path, value), value === undefined));
    // Of most facts the first other value tells that they are used. An answer without figures was compared whole already.
    return isSame(isFirstSame) && (!figures || isSame(isWholeSame));
  };
  const isTaken = ({ path }: ToldFact): boolean => intent.takes.includes(path[0] as keyof Facts);
  return toldFacts(told).filter(fact => !isTaken(fact) || isUnused(fact));
}
