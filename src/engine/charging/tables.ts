type Span = readonly [likely: number, low: number, high: number];

/** Current where a charger's rating is not told, A. Common practice. */
export const usualChargerA: Readonly<
  Record<'dcdc' | 'isolator' | 'mains' | 'generator', { readonly range: Span; readonly why: string }>
> = {
  dcdc: { range: [25, 20, 40], why: 'a usual DC-DC charger' },
  isolator: { range: [20, 8, 35], why: 'what cable and battery let through; falls as it fills' },
  mains: { range: [20, 10, 30], why: 'a usual mains charger' },
  generator: { range: [20, 10, 30], why: 'a usual mains charger on it' },
};

/** Share of the driving time for which a smart alternator holds the voltage that an isolator needs. Common practice. */
export const smartAlternatorShare: Span = [0.5, 0.2, 1];

/** DC-DC charger: published 85–90 %, better ones 90–95 % (from memory); volts out, and in with the engine running. */
export const dcdc = { efficiency: [0.9, 0.85, 0.95] as Span, outV: 14.4, inV: [13.5, 12.8, 14.2] as Span };

/** An alternator has this many amps to spare for a house battery without being overworked. Common practice: half of a usual 80–120 A. */
export const alternatorSpareA = 50;

/** Mains charger: efficiency and power factor; a plain rectifier has 0.65, one with correction nearly 1. Common practice. */
export const mainsCharger = {
  efficiency: [0.87, 0.8, 0.92] as Span,
  powerFactor: [0.8, 0.65, 0.98] as Span,
  outV: 14.4,
};

/**
 * What a portable generator gives without a break, as a share of the figure that it is sold by: of a maximum 15 to 25 %
 * less (a touring magazine on caravan electricity, part 3); some go by their continuous watts.
 */
export const continuousShare: Span = [0.85, 0.75, 1];

/** Usual generator sizes, W (VA). Common practice. */
export const generatorSizesW = [800, 1000, 1600, 2000, 2400, 3000, 3500, 5000, 7000] as const;

/** What a generator stands for a moment while a motor starts, as a multiple of its rating; the motor starts slower on it. Common practice. */
export const generatorStartFactor: Span = [2, 1.6, 2.5];

/** Power factor of loads with a motor in them; heaters have 1. Common practice. */
export const motorPowerFactor = 0.85;

/** Loss by height: makers' rules differ in where they begin and how steep they are. */
export const altitudeRules = {
  /** From 1,000 m, 3 % a 500 m (common practice, industrial sets). */
  industrial: { k_z: 0.03, z_0: 1000, z_s: 500 },
  /** From 1,500 m, 3.5 % a 300 m (common practice). */
  high: { k_z: 0.035, z_0: 1500, z_s: 300 },
  /** Small petrol engines: 3.5 % a 300 m from the sea on (ISO 3046 and makers' practice, from memory). */
  petrol: { k_z: 0.035, z_0: 0, z_s: 300 },
} as const;

/** Loss by heat: 3 % a 5 K above 40 °C (common practice). */
export const heatRule = { k_T: 0.03, T_0: 40, T_s: 5 } as const;

/** Usual DC-DC chargers, A. Common practice. */
export const dcdcSizesA = [10, 15, 20, 25, 30, 40, 50, 60] as const;

/** A run from the alternator longer than this (one way, m) loses too much voltage for a plain isolator. Common practice. */
export const longRunM = 4;

/** What parks allow a generator, dB at m: US 36 CFR 2.12 (60 dBA at 50 ft); Queensland parks (65 dB at 7 m). */
export const noiseLimits = {
  unitedStates: { levelDb: 60, atM: 15.24 },
  queensland: { levelDb: 65, atM: 7 },
} as const;

/** Distance at which makers' sheets give a generator's noise, m. Common practice. */
export const plateDistanceM = 7;

/** An alternator that stays above this keeps a voltage-sensing relay closed, V. Common practice; a smart one may never reach it. */
export const isolatorClosesV = 13;
