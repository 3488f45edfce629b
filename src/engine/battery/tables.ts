import type { Chemistry } from '#rig/rig.ts';

/** What sets one battery chemistry apart. Shares of one; volts and resistance for a nominal 12 V block. Ranges are likely, low, high. */
export interface ChemistryRow {
  readonly name: string;
  readonly nominalV: number;
  /** Share of capacity to use, by common practice: likely, low, high. */
  readonly depth: readonly [number, number, number];
  /** Peukert exponent: likely, low, high. */
  readonly peukert: readonly [number, number, number];
  /** Hours of the rated capacity. */
  readonly ratedHours: number;
  /** Continuous and short discharge limits, and the charge limit, per hour of capacity (C). */
  readonly dischargeC: number;
  readonly surgeC: number;
  readonly chargeC: number;
  /** Internal resistance of a 100 Ah block after a minute of load, mΩ; it falls as the block grows. */
  readonly resistanceMilliohm: number;
  /** Weight, kg for each Ah of a 12 V block. */
  readonly weightKgPerAh: number;
  /** Charge cycles to 80 % of capacity by depth of discharge. */
  readonly cycles: readonly (readonly [depth: number, cycles: number])[];
  /** Capacities that shops commonly stock as one 12 V block, Ah. */
  readonly usualSizesAh: readonly number[];
  readonly source: string;
}

const leadSizesAh = [7, 12, 18, 26, 40, 55, 75, 100, 120, 150, 200, 260] as const;

/**
 * Depth of discharge: common practice. Peukert: textbook ranges. C-rates, resistance, weight: makers' sheets
 * that agree, common practice. Cycles: flooded at 50 and 80 %, and lithium cells at 80 and 100 %, as published
 * for golf-cart batteries and LFP cells at 25 °C; the others makers' sheets that agree (from memory).
 */
export const chemistryTable: Readonly<Record<Exclude<Chemistry, 'lead-acid'>, ChemistryRow>> = {
  agm: {
    name: 'AGM',
    nominalV: 12,
    depth: [0.5, 0.47, 0.58],
    peukert: [1.1, 1.05, 1.15],
    ratedHours: 20,
    dischargeC: 1,
    surgeC: 3,
    chargeC: 0.3,
    resistanceMilliohm: 9,
    weightKgPerAh: 0.3,
    cycles: [
      [0.3, 1200],
      [0.5, 600],
      [0.8, 350],
      [1, 220],
    ],
    usualSizesAh: leadSizesAh,
    source: 'common practice',
  },
  gel: {
    name: 'gel',
    nominalV: 12,
    depth: [0.5, 0.47, 0.58],
    peukert: [1.15, 1.1, 1.25],
    ratedHours: 20,
    dischargeC: 0.5,
    surgeC: 2,
    chargeC: 0.2,
    resistanceMilliohm: 12,
    weightKgPerAh: 0.31,
    cycles: [
      [0.3, 1800],
      [0.5, 750],
      [0.8, 500],
      [1, 300],
    ],
    usualSizesAh: leadSizesAh,
    source: 'common practice',
  },
  flooded: {
    name: 'flooded',
    nominalV: 12,
    depth: [0.5, 0.4, 0.55],
    peukert: [1.25, 1.2, 1.4],
    ratedHours: 20,
    dischargeC: 0.33,
    surgeC: 3,
    chargeC: 0.13,
    resistanceMilliohm: 13,
    weightKgPerAh: 0.26,
    cycles: [
      [0.3, 1300],
      [0.5, 750],
      [0.8, 225],
      [1, 150],
    ],
    usualSizesAh: leadSizesAh,
    source: 'common practice',
  },
  lfp: {
    name: 'lithium',
    nominalV: 12.8,
    depth: [0.8, 0.75, 1],
    peukert: [1.03, 1.02, 1.05],
    ratedHours: 20,
    dischargeC: 1,
    surgeC: 2,
    chargeC: 0.5,
    resistanceMilliohm: 8,
    weightKgPerAh: 0.12,
    cycles: [
      [0.5, 8000],
      [0.8, 5000],
      [1, 3500],
    ],
    usualSizesAh: [10, 20, 30, 50, 75, 100, 120, 150, 200, 300],
    source: 'common practice',
  },
};

/** The row of a chemistry; "lead-acid" without more is read as AGM, the usual second battery. */
export const chemistryRow = (chemistry: Chemistry): ChemistryRow =>
  chemistryTable[chemistry === 'lead-acid' ? 'agm' : chemistry];

/** Between the nominal volts of a lead-acid block and of a lithium one, V: either is one block of 12 V. */
const betweenKindsV = 12.4;

/** Blocks of 12 V in series in so many nominal volts, of whichever kind. */
export const blocksAt = (nominalV: number): number => Math.max(1, Math.round(nominalV / betweenKindsV));

/** Share of rated capacity at a battery temperature (°C): the inverse of IEEE 485 table 1's cell size factors (from memory). */
export const leadAcidCapacityByTemperature: readonly (readonly [temperatureC: number, sizeFactor: number])[] =
  [
    [-3.9, 1.52],
    [-1.1, 1.43],
    [1.7, 1.35],
    [4.4, 1.3],
    [7.2, 1.25],
    [10, 1.19],
    [12.8, 1.15],
    [15.6, 1.11],
    [18.3, 1.08],
    [21.1, 1.04],
    [25, 1],
    [26.7, 0.98],
    [29.4, 0.96],
    [32.2, 0.94],
    [35, 0.93],
    [37.8, 0.91],
  ];

/**
 * Charge that lithium iron phosphate takes by cell temperature (°C), per hour of capacity (C): cell makers' sheets
 * that agree: a tenth up to 5 °C, a fifth up to 15 °C, half up to 50 °C.
 */
export const lithiumChargeByTemperature: readonly (readonly [belowC: number, share: number])[] = [
  [0, 0],
  [5, 0.1],
  [15, 0.2],
  [50, 0.5],
  [60, 0.1],
  [Number.POSITIVE_INFINITY, 0],
];

/**
 * Share of its discharge current that lithium iron phosphate gives by cell temperature (°C): cell makers' sheets
 * that agree: nothing below −20 and above 60 °C, half of it below freezing.
 */
export const lithiumDischargeByTemperature: readonly (readonly [belowC: number, share: number])[] = [
  [-20, 0],
  [0, 0.5],
  [60, 1],
  [Number.POSITIVE_INFINITY, 0],
];

/**
 * A starter battery: how much of it may go and the engine still starts. Down to about 12.4 V at rest; the rest
 * is for cranking. Common practice.
 */
export const starterReserve = { share: [0.27, 0.2, 0.4], capacityAh: [70, 50, 90] } as const;

/** For years of daily cycling: share that a day may take of lead-acid (common practice), and what is left at the end of its life (IEEE 1013). */
export const dailyDepth = { leadAcid: 0.3, endOfLife: 0.8 } as const;

/** Days a battery should carry alone, where nobody says: AS/NZS 4509.2 takes 2 to 3 with a generator at hand (from memory). */
export const autonomyDays = 2;
