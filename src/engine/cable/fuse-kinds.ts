/** A kind of fuse by its name in the trade, and what it can break. */
export interface FuseKind {
  readonly name: string;
  /** Ratings it is sold in, A. */
  readonly fromA: number;
  readonly toA: number;
  /** Highest direct voltage that it is usually marked for, V. */
  readonly mostV: number;
  /** Breaking capacity at that voltage, A. */
  readonly breaksA: number;
}

/**
 * Kinds for a battery, the plainest first. Voltages and breaking capacities: makers' sheets that agree, from memory;
 * common practice. The part's own sheet comes first.
 */
export const batteryFuses: readonly FuseKind[] = [
  { name: 'blade', fromA: 1, toA: 40, mostV: 32, breaksA: 1000 },
  { name: 'small bolt-down', fromA: 30, toA: 200, mostV: 32, breaksA: 1000 },
  { name: 'large bolt-down', fromA: 100, toA: 500, mostV: 32, breaksA: 2000 },
  { name: 'bolt-down strip', fromA: 35, toA: 750, mostV: 32, breaksA: 6000 },
  { name: 'blade marked 80 V', fromA: 1, toA: 40, mostV: 80, breaksA: 1000 },
  { name: 'bolt-down strip marked 80 V', fromA: 35, toA: 400, mostV: 80, breaksA: 2500 },
  { name: 'high-breaking, class T style', fromA: 1, toA: 1200, mostV: 125, breaksA: 20_000 },
];

/** Up to here a circuit hangs on a fuse block behind the bank's main fuse, A; above, its fuse sits at the bank. Common practice. */
export const branchA = 40;

/** What guards a panel's lead: marked for the volts of a string, which a battery's fuse is not. Common practice. */
export const panelFuse: FuseKind = {
  name: 'in-line solar fuse',
  fromA: 1,
  toA: 60,
  mostV: 1000,
  breaksA: 20_000,
};

/** Volts of a full 12 V block on charge, the highest of all kinds, V. Makers' sheets that agree (common practice). */
export const fullBlockV = 14.8;

/**
 * Resistance of a 100 Ah block of 12 V at the first moment of a short, mΩ, on the low side so that the current is on
 * the high side; after a minute it is two to four times as much. Makers' sheets, from memory; common practice.
 */
export const shortMilliohm = { lfp: 2, agm: 5, gel: 6, flooded: 7, 'lead-acid': 5 } as const;
