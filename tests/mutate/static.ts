/** The part of a report of Stryker's that the sample is drawn from; lines and columns count from 1. */
export interface Report {
  readonly files: Readonly<
    Record<
      string,
      {
        readonly mutants: readonly {
          readonly status: string;
          readonly statusReason?: string;
          readonly location: { readonly start: Place; readonly end: Place };
        }[];
      }
    >
  >;
}
interface Place {
  readonly line: number;
  readonly column: number;
}

/** Numbers from 0 to 1 that come again from the same seed (mulberry32). */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * A seeded sample of the mutants that `ignoreStatic` leaves out, as places to mutate: each needs all tests anew, so that
 * all of them would take days. Stryker counts the columns of a place from 0.
 */
export function staticSample(report: Report, size: number, seed: number): string[] {
  const places = Object.entries(report.files).flatMap(([path, { mutants }]) =>
    mutants
      .filter(({ status, statusReason }) => status === 'Ignored' && /static/i.test(statusReason ?? ''))
      .map(
        ({ location: { start, end } }) =>
          `${path}:${start.line}:${start.column - 1}-${end.line}:${end.column - 1}`,
      ),
  );
  const random = randomFrom(seed);
  return [...new Set(places)]
    .map(place => [random(), place] as const)
    .sort(([a], [b]) => a - b)
    .slice(0, size)
    .map(([, place]) => place);
}
