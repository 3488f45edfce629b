/** A picture as data: what it shows, not how. A reply hands it over as a function, made only when somebody looks. */
export type Chart = ChargeChart | BarsChart | ClaimsChart | MonthsChart | PlanChart | WiringChart;

interface Titled {
  readonly title: string;
  /** What is assumed, under the title. */
  readonly note: string;
}

/** A charge of the battery, %, so many hours from the start. */
export interface ChargePoint {
  readonly atH: number;
  readonly percent: number;
  readonly lowPercent: number;
  readonly highPercent: number;
}

/** Something that the words tell of the line, in the same words: "lowest 38 %", "day 2, 7 am". */
interface ChargeMark {
  readonly atH: number;
  readonly percent: number;
  readonly says: string;
}

/** The battery's charge over the hours, with its plausible band and the line not to cross. */
export interface ChargeChart extends Titled {
  readonly kind: 'charge';
  /** The clock, where the start is told or taken; without it the hours count from now. */
  readonly clock?: {
    /** Hour of the day (0–24) at the left edge. */
    readonly startHour: number;
    /** Names of the days, the first one first: "Friday", "day 1". */
    readonly dayNames: readonly string[];
    /** Sunset and sunrise, hours of the day. */
    readonly nightFrom: number;
    readonly nightTo: number;
  };
  readonly points: readonly ChargePoint[];
  readonly limitPercent: number;
  /** What the title is about: where it is lowest, or reaches the limit. */
  readonly mark: ChargeMark;
  /** How long it shall last, where that is told. */
  readonly wanted?: { readonly atH: number; readonly says: string };
  /** As it was before a "what if": its likely line, and what was said of it. */
  readonly before?: {
    readonly points: readonly { readonly atH: number; readonly percent: number }[];
    readonly mark: { readonly atH: number; readonly percent: number };
    readonly says: string;
  };
  /** Where what is drawn ends before what was asked. */
  readonly cut?: string;
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

/** What panels make a day in each month, with a good and a bad year, against the use where it is known. */
export interface MonthsChart extends Titled {
  readonly kind: 'months';
  readonly unit: string;
  /** January first. */
  readonly months: readonly { readonly value: number; readonly low: number; readonly high: number }[];
  /** The month that the answer is about, 1 to 12. */
  readonly month: number;
  readonly use?: number;
}

/** A trip day by day: what goes out, what is on offer, how low it gets. */
export interface PlanChart extends Titled {
  readonly kind: 'plan';
  readonly unit: string;
  readonly limitPercent: number;
  readonly days: readonly {
    readonly name: string;
    readonly outAh: number;
    /** On offer, by source. */
    readonly sunAh: number;
    readonly drivingAh: number;
    readonly pluggedAh: number;
    readonly lowestPercent: number;
    readonly endPercent: number;
  }[];
  readonly cut?: string;
}

/** One run of cable with its fuse. */
export interface WiringLead {
  readonly areaMm2: number;
  /** One way. */
  readonly lengthM: number;
  /** None where none is needed: one panel, or two side by side. */
  readonly fuseA?: number;
  /** "blade", "class T style, high-breaking". */
  readonly fuseKind?: string;
}

/** Things in a row on a rig's bus bar: "starter battery", "25 A DC-DC charger". */
export interface WiringBranch {
  readonly side: 'in' | 'out';
  /** Farthest from the battery first: two at most where it charges, one where it runs. */
  readonly boxes: readonly {
    readonly name: string;
    /** A word below it: "mains not drawn". */
    readonly also?: string;
    /** Its cable towards the battery. */
    readonly lead: WiringLead;
  }[];
}

/** A schematic of a rig's wiring: what hangs on the battery, by which cable, behind which fuse. */
export interface WiringChart extends Titled {
  readonly kind: 'wiring';
  readonly battery: string;
  /** From the battery to the bus bar; none where one cable alone is drawn. */
  readonly main?: WiringLead;
  readonly branches: readonly WiringBranch[];
  /** What isn't drawn, and why: "and 3 more". */
  readonly cut?: string;
  /** In the picture itself, so that it never goes round without them. */
  readonly cautions: readonly string[];
}
