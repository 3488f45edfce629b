/** A picture as data: what it shows, not how. A reply hands it over as a function, made only when somebody looks. */
export type Chart = ChargeChart | BarsChart | ClaimsChart;

interface Titled {
  readonly title: string;
  /** What is assumed, in one line under the title. */
  readonly note: string;
}

/** The battery's charge over the hours, with its plausible band and the line not to cross. */
export interface ChargeChart extends Titled {
  readonly kind: 'charge';
  /** Hour of the day (0–24) at the left edge. */
  readonly startHour: number;
  /** Name of the first day: "Fri", "day 1"; the following ones are counted on from it. */
  readonly dayNames: readonly string[];
  readonly points: readonly {
    readonly atH: number;
    readonly percent: number;
    readonly lowPercent: number;
    readonly highPercent: number;
  }[];
  readonly limitPercent: number;
}

/** A day's use, a bar a load, biggest first. */
export interface BarsChart extends Titled {
  readonly kind: 'bars';
  readonly unit: string;
  readonly bars: readonly { readonly name: string; readonly value: number }[];
}

/** What people claim, on the range of the answer. */
export interface ClaimsChart extends Titled {
  readonly kind: 'claims';
  readonly unit: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly claims: readonly { readonly who: string; readonly value: number }[];
}
