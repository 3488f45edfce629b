import type { Chemistry } from '#rig/rig.ts';

type Span = readonly [likely: number, low: number, high: number];

/** How a chemistry takes charge. Shares of one; volts for a nominal 12 V block at 25 °C. */
export interface ChargeRow {
  readonly kind: Exclude<Chemistry, 'lead-acid'>;
  /** Share of the charge put in that stays, while it is not nearly full. */
  readonly efficiency: Span;
  /** The same at the very end, just before it is full; lithium's stays as it is. */
  readonly topEfficiency: Span;
  /** State of charge (0–1) from which it falls, in a straight line, to that at the end. */
  readonly topFrom: number;
  /** Time constant of the ampere-hour law at 25 °C, h. */
  readonly timeConstantH: Span;
  /** Where a charger calls it full. */
  readonly fullAt: Span;
  /** State of charge at which people charge, where nobody says: as deep as the kind is usually used, %. */
  readonly usualStart: Span;
  /** Absorption and float, V. */
  readonly absorptionV: Span;
  readonly floatV: number;
  readonly source: string;
}

/**
 * Efficiency of lead-acid: above 95 % while low, 91 % from empty to 84 %, about a half in the last part (Stevens &
 * Corey, Sandia); 85 ± 5 % over a whole charge, so that 105–110 % (AGM, gel) and 110–120 % (flooded) go back in.
 * LFP 99 % throughout. Time constants: acceptance curves of makers' sheets, AGM 1–2 h, gel and flooded longer; LFP
 * tapers over the last few per cent only. Volts: makers' sheets that agree (common practice; from memory).
 */
export const chargeTable: Readonly<Record<ChargeRow['kind'], ChargeRow>> = {
  agm: {
    kind: 'agm',
    efficiency: [0.97, 0.94, 0.985],
    topEfficiency: [0.5, 0.35, 0.75],
    topFrom: 0.8,
    timeConstantH: [1.2, 0.9, 1.8],
    fullAt: [0.97, 0.95, 0.98],
    usualStart: [50, 40, 60],
    absorptionV: [14.4, 14.2, 14.7],
    floatV: 13.5,
    source: 'common practice',
  },
  gel: {
    kind: 'gel',
    efficiency: [0.97, 0.94, 0.985],
    topEfficiency: [0.45, 0.32, 0.7],
    topFrom: 0.8,
    timeConstantH: [2, 1.5, 2.8],
    fullAt: [0.97, 0.95, 0.98],
    usualStart: [50, 40, 60],
    absorptionV: [14.2, 14, 14.4],
    floatV: 13.4,
    source: 'common practice',
  },
  flooded: {
    kind: 'flooded',
    efficiency: [0.96, 0.92, 0.98],
    topEfficiency: [0.42, 0.34, 0.6],
    topFrom: 0.75,
    timeConstantH: [2.2, 1.6, 3],
    fullAt: [0.97, 0.95, 0.98],
    usualStart: [50, 40, 60],
    absorptionV: [14.6, 14.4, 14.8],
    floatV: 13.8,
    source: 'common practice',
  },
  lfp: {
    kind: 'lfp',
    efficiency: [0.99, 0.97, 0.995],
    topEfficiency: [0.99, 0.97, 0.995],
    topFrom: 1,
    timeConstantH: [0.2, 0.1, 0.35],
    fullAt: [0.995, 0.99, 0.997],
    usualStart: [20, 10, 30],
    absorptionV: [14.4, 14, 14.6],
    floatV: 13.5,
    source: 'common practice',
  },
};

/** The row of a chemistry; "lead-acid" without more is read as AGM. */
export const chargeRow = (chemistry: Chemistry): ChargeRow =>
  chargeTable[chemistry === 'lead-acid' ? 'agm' : chemistry];

/** State of charge of a battery that people call flat, %. Common practice. */
export const flatPercent: Span = [10, 0, 20];

/** On an alternator's lower and varying voltage the last part takes longer by this factor. Common practice. */
export const isolatorSlowness = 1.5;

/** Change of charging voltage of a 12 V lead-acid block, V/K: −3 mV a cell; published −18 to −30 mV. Common practice. */
export const voltageCompensation = { perK: -0.018, low: -0.03, high: -0.018 } as const;

/** Steady current of a usual charge, per hour of capacity (C), likely and from a small to a big one: of panels, and of chargers. Common practice. */
export const usualRateC = { sun: [0.07, 0.03, 0.15], charger: [0.12, 0.06, 0.2] } as const satisfies Record<
  string,
  Span
>;

/** Each so many kelvin below 25 °C a battery takes its last part half as fast: charge acceptance in handbooks, from memory. */
export const coldHalvingK = 20;
