/**
 * How far off what people tell of a rig usually is, and how rough readings are: standard deviations. Common practice,
 * and choices; none is fitted to any rig. In logarithms a spread of 0.3 is about 30 %.
 */

/** What is known of a rig before its first reading, by the order of the state. */
export const before = {
  /** Share of the charge that is missing: anything. */
  missing: { mean: 0.35, sd: 0.35 },
  /** The draw against what was told: duty cycles, heat and forgotten things. */
  draw: { mean: 0, sd: 0.35 },
  /** The day's draw against the night's, beyond what the model knows of heat and hours. */
  byDay: { mean: 0, sd: 0.08 },
  /** The capacity against the label: a battery in use holds less sooner than more. */
  capacity: { mean: -0.03, sd: 0.25 },
  /** What the panel makes against what place, month and size give: tilt, dust, shade. */
  sun: { mean: 0, sd: 0.35 },
} as const;

/** How far it wanders in a day, of each but the level. */
export const wanders = { draw: 0.05, byDay: 0.02, capacity: 0.005, sun: 0.05 } as const;

/** Share missing at which fridges and battery protection cut out, so that no more goes out. */
export const flatAt = 0.95;

/** How far one day is off the usual: share of a day's use, and of a day's sun. */
export const dayToDay = { use: 0.07, sun: 0.35 } as const;

/** How rough a reading is: points of charge, Ah a share of the label, a share of what flows. */
export const rough = {
  percent: 0.015,
  usedShare: 0.015,
  usedAh: 1,
  /** What a lithium battery's own counter says is left; some are set by the label all the same. */
  leftShare: 0.05,
  /**
   * Volts at rest, at the least, and how many standard deviations the span of published tables is: most of that span
   * is the same at each reading of one battery, so it says little of what went out between two.
   */
  restVolts: 0.05,
  restSpan: 5,
  /** Added below a tenth of the charge. */
  flat: 0.04,
  /** A compressor is on or off when somebody looks: one that runs 35 % of the time is off by 1.35 times its mean. */
  cyclingAmps: 1.35,
  steadyAmps: 0.25,
  sunAmps: 0.6,
  leastAmps: 0.3,
} as const;

/**
 * Standard deviations beyond which a reading counts for less, beyond which it was charged by something
 * unknown, and beyond which it fits nothing; and the share by which it must be fuller to have been charged without sun. */
export const surprising = { less: 1.8, charged: 1.8, odd: 3.2, rise: 0.04 } as const;

/** Days without a reading after which the level is anybody's guess. */
export const longestGapDays = 7;
