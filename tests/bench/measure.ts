import { present } from '#basics/present.ts';
/** One line of the report: what, measured, against what, and whether the goal is met (absent: no goal). */
export interface Line {
  readonly what: string;
  readonly value: string;
  readonly goal?: string;
  readonly isMet?: boolean;
}

export interface Section {
  readonly title: string;
  readonly lines: readonly Line[];
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);

export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (sorted.length - 1) * share;
  const low = Math.floor(at);
  return present(sorted[low]) + (present(sorted[Math.ceil(at)]) - present(sorted[low])) * (at - low);
}

/** Milliseconds that a piece of work takes. */
export function timed(work: () => void): number {
  const began = performance.now();
  work();
  return performance.now() - began;
}

/**
 * Runs several pieces of work in turn, `rounds` times over, so that a slow moment of the machine meets all of
 * them alike; one round first for warming up. Gives the median time of each in ms.
 */
export function interleaved<K extends string>(
  rounds: number,
  work: Readonly<Record<K, () => void>>,
): Record<K, number> {
  const names = Object.keys(work) as K[];
  const times = Object.fromEntries(names.map(name => [name, [] as number[]])) as Record<K, number[]>;
  for (const name of names) work[name]();
  for (let round = 0; round < rounds; round++) for (const name of names) times[name].push(timed(work[name]));
  return Object.fromEntries(names.map(name => [name, median(times[name])])) as Record<K, number>;
}

/** Keeps a result alive, so that the work that made it is not left out. */
const sink: { last?: unknown } = {};
export const keep = (value: unknown): void => {
  sink.last = value;
};

export const round = (value: number, digits = 2): string =>
  value >= 100 ? Math.round(value).toLocaleString('en-AU') : Number(value.toPrecision(digits + 1)).toString();
export const times = (ratio: number): string => `${round(ratio)} ×`;

/** CPU time of this process so far, ms: what else runs on the machine moves it little. */
export function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
