import type { CoolerKind } from './cooler-table.ts';

/** A thing that cools and is made for a house or for gas, as far as it differs from a camping one. */
export interface HouseholdKind extends CoolerKind {
  /** Mean of its compartments, weighted by their volume, °C. */
  readonly setPointC: number;
  /** Draw of the compressor while it runs, W: low, likely, high. */
  readonly drawsW: readonly [low: number, likely: number, high: number];
  /** Starting power as a multiple of the running power. */
  readonly surge: number;
  /** The same of one that starts hard. */
  readonly hardSurge: number;
}

/** Induction motors that start against pressure ask for three to eight times their running power. Common practice. */
const compressorSurge = 5;
const hardCompressorSurge = 8;

/**
 * Household cold appliances. Draws: 110 W of refrigerators and 190 W of fridge-freezers and chests in a stock of 2010
 * (Richardson et al., domestic electricity demand model), less in new ones. Pumping: sheets of household compressors
 * have 1.5–1.8 W of heat for a watt where those of 12 V have 1.1–1.3, from memory. With these a closed fridge of
 * 300 L at 32 °C takes what 10 CFR 430.32(a) allows one, to 10 %. Volumes and openings: common practice.
 */
export const householdKinds = {
  /** A quarter of it a freezer at −18 °C, the rest at 4 °C. */
  fridge: {
    insulation: 'good',
    goodsShare: [0.1, 0.25, 0.6],
    volumeL: 300,
    powerW: 120,
    pumping: 1.35,
    setPointC: -1.5,
    drawsW: [80, 120, 200],
    surge: compressorSurge,
    hardSurge: hardCompressorSurge,
  },
  /** Bar and bench fridges, without a freezer. */
  small: {
    insulation: 'usual',
    goodsShare: [0.1, 0.25, 0.6],
    volumeL: 100,
    powerW: 80,
    pumping: 1.1,
    setPointC: 4,
    drawsW: [60, 80, 120],
    surge: compressorSurge,
    hardSurge: hardCompressorSurge,
  },
  freezer: {
    insulation: 'thick',
    goodsShare: [0.05, 0.15, 0.4],
    volumeL: 200,
    powerW: 110,
    pumping: 1.35,
    setPointC: -18,
    drawsW: [70, 110, 190],
    surge: compressorSurge,
    hardSurge: hardCompressorSurge,
  },
} as const satisfies Readonly<Record<string, HouseholdKind>>;

/** Bar fridges end where household fridges begin, L. Common practice. */
export const smallBelowL = 150;

/** A fridge of so many litres and more is a household one, unless it is told to run on 12 V. Common practice. */
export const householdFromL = 200;

/** Portables that also have a mains plug draw less than this, household compressors more, W. Common practice. */
export const householdFromW = 75;

/** No household cold appliance that comes along has more, L. Common practice. */
export const largestHouseholdL = 600;

/**
 * What a three-way (absorption) fridge's 12 V heater draws, W, all the time: 10–15 A by makers' sheets of 80 to 180 L.
 * Common practice, from memory.
 */
export const threeWayDrawsW = [100, 135, 180] as const;
