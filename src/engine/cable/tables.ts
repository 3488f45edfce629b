/**
 * Standard sizes, mm², and their largest resistance at 20 °C, mΩ/m, plain copper.
 * flexible: IEC 60228 class 5. solid: class 1 and 2. vehicle: ISO 6722-1 / ISO 19642 (from memory).
 */
export interface SizeRow {
  readonly areaMm2: number;
  readonly flexible: number;
  readonly solid?: number;
  readonly vehicle?: number;
}

/** IEC 60228 tables 1 to 3; rows 0.75, 4, 16 and from 150 on from memory. */
export const sizes: readonly SizeRow[] = [
  { areaMm2: 0.5, flexible: 39, solid: 36, vehicle: 37.1 },
  { areaMm2: 0.75, flexible: 26, solid: 24.5, vehicle: 24.7 },
  { areaMm2: 1, flexible: 19.5, solid: 18.1, vehicle: 18.5 },
  { areaMm2: 1.5, flexible: 13.3, solid: 12.1, vehicle: 12.7 },
  { areaMm2: 2.5, flexible: 7.98, solid: 7.41, vehicle: 7.6 },
  { areaMm2: 4, flexible: 4.95, solid: 4.61, vehicle: 4.71 },
  { areaMm2: 6, flexible: 3.3, solid: 3.08, vehicle: 3.1 },
  { areaMm2: 10, flexible: 1.91, solid: 1.83, vehicle: 1.82 },
  { areaMm2: 16, flexible: 1.21, solid: 1.15, vehicle: 1.16 },
  { areaMm2: 25, flexible: 0.78, solid: 0.727, vehicle: 0.743 },
  { areaMm2: 35, flexible: 0.554, solid: 0.524, vehicle: 0.527 },
  { areaMm2: 50, flexible: 0.386, solid: 0.387, vehicle: 0.368 },
  { areaMm2: 70, flexible: 0.272, solid: 0.268, vehicle: 0.259 },
  { areaMm2: 95, flexible: 0.206, solid: 0.193, vehicle: 0.196 },
  { areaMm2: 120, flexible: 0.161, solid: 0.153, vehicle: 0.153 },
  { areaMm2: 150, flexible: 0.129, solid: 0.124 },
  { areaMm2: 185, flexible: 0.106, solid: 0.0991 },
  { areaMm2: 240, flexible: 0.0801, solid: 0.0754 },
];

/** Thinnest conductor to lay, mm²: thinner breaks. ISO 10133 (from memory). */
export const leastAreaMm2 = 1;

/** Resistivity of annealed copper at 20 °C, Ω·mm²/m: 1/58, IEC 60028. */
export const copperResistivity = 1 / 58;

/** Change of copper's resistance, 1/K at 20 °C. IEC 60028. */
export const copperCoefficient = 0.00393;

/** How much more resistance flexible cable has than its nominal area of copper would: IEC 60228 class 5 over 1/58. */
export const layFactor = { value: 1.12, low: 1.02, high: 1.2 } as const;

/** Gauges that are sold, thin to thick; 0 to −3 are 1/0 to 4/0. */
export const gauges = [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3] as const;

/** Air that the table of currents is for, °C. ABYC E-11 (from memory). */
export const tableAirC = 30;

/** Share of its current that each wire keeps in a bundle of so many or more that carry current. ABYC E-11 (from memory). */
export const bundleShares: readonly (readonly [wires: number, share: number])[] = [
  [3, 0.7],
  [4, 0.6],
  [7, 0.5],
  [25, 0.4],
];

/**
 * Australian auto cable: the trade's "mm" is the outside of the insulation; strands, their diameter, mm, and the
 * lower of the currents it is sold for, A. Common practice: two makers' tables that agree on the copper.
 */
export const autoCable: readonly {
  readonly tradeMm: number;
  readonly strands: number;
  readonly strandMm: number;
  readonly soldForA?: number;
}[] = [
  { tradeMm: 2, strands: 7, strandMm: 0.32, soldForA: 5 },
  { tradeMm: 3, strands: 16, strandMm: 0.3, soldForA: 10 },
  { tradeMm: 4, strands: 26, strandMm: 0.3, soldForA: 15 },
  { tradeMm: 5, strands: 41, strandMm: 0.3 },
  { tradeMm: 6, strands: 65, strandMm: 0.3, soldForA: 48 },
];

/**
 * How much voltage a circuit may lose, %. ISO 10133 and ABYC E-11: 3 % for what is critical, 10 % for the rest;
 * 5 % for the rest is what recreational-vehicle practice asks for. What cools is critical, as it cuts out by its volts:
 * installation sheets of 12 V compressor fridges ask for 1 mm² a metre (4 mm² to 4 m, 6 mm² to 6 m). low and high: what others would take.
 */
export const dropLimits = {
  critical: {
    value: 3,
    low: 3,
    high: 5,
    why: 'for charging, inverters and fridges, ISO 10133 and common practice',
  },
  general: { value: 5, low: 3, high: 5, why: 'for general circuits, common practice; 3 % is better' },
  lamps: { value: 10, low: 5, high: 10, why: 'for lamps and the like, ISO 10133' },
} as const;
export type CircuitUse = keyof typeof dropLimits;

/** Usual fuse ratings, A. Blade: ISO 8820-3 and its makers' range. Bolt-down: the usual strip and bolt series, ISO 8820-5 (from memory). */
export const fuseSeries: readonly { readonly name: string; readonly ratingsA: readonly number[] }[] = [
  { name: 'blade', ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40] },
  { name: 'small bolt-down', ratingsA: [30, 40, 50, 60, 70, 80, 100, 125, 150, 200] },
  { name: 'large bolt-down', ratingsA: [100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 500] },
];

/** A fuse holds a continuous current of four fifths of its rating: 125 %. NEC practice (from memory). */
export const fuseFactor = 1.25;

/** Bright sun pushes a panel this far above its label for long. Common practice, after the American electrical code (from memory). */
export const brightSunFactor = 1.25;

/** Short-circuit current of a crystalline panel against that at full power. Makers' labels that agree (common practice). */
export const shortAgainstFull = 1.07;

/** Colour of blade fuses. Common practice, as ISO 8820-3 has it. */
export const bladeColours: Readonly<Record<number, string>> = {
  5: 'tan',
  7.5: 'brown',
  10: 'red',
  15: 'blue',
  20: 'yellow',
  25: 'clear',
  30: 'green',
};
