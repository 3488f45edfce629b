/** How well a box keeps the warmth out. */
export type Insulation = 'thin' | 'usual' | 'good' | 'thick' | 'very thick';

export interface InsulationRow {
  /** Of the foam, m. */
  readonly thicknessM: number;
  /** Of the foam, W/(m·K): new polyurethane has 0.020–0.024, aged or soft foam 0.025–0.035. */
  readonly conductivity: number;
  /** What lid, seals, hinges and pipes let in, as a share of the walls. */
  readonly sealsShare: number;
  /** Where it is met. */
  readonly says: string;
}

/**
 * Classes of insulation. Conductivity: handbooks of refrigeration and buildings, from memory. Thickness and seals:
 * common practice, from memory.
 */
export const insulations: Readonly<Record<Insulation, InsulationRow>> = {
  thin: { thicknessM: 0.025, conductivity: 0.026, sealsShare: 0.35, says: 'light and soft boxes' },
  usual: {
    thicknessM: 0.035,
    conductivity: 0.024,
    sealsShare: 0.3,
    says: 'camping boxes, uprights of vans and boats',
  },
  good: { thicknessM: 0.04, conductivity: 0.022, sealsShare: 0.25, says: 'better boxes and freezers' },
  thick: { thicknessM: 0.07, conductivity: 0.022, sealsShare: 0.1, says: 'household chest freezers' },
  'very thick': {
    thicknessM: 0.11,
    conductivity: 0.022,
    sealsShare: 0.1,
    says: 'chests made for solar power',
  },
};

/** What is the same of all boxes and compressors. Each from memory, common practice where nothing else is said. */
export const cooling = {
  /** Surface for each edge squared: a cube has 6, a box half as long again as wide 6.3. */
  shape: 6.3,
  /** How far the cold plate is below the box, and the condenser above the air, K. */
  plateBelowK: 14,
  condenserAboveK: 15,
  /** Friction, fan and electronics, as a lift more, K: real ones fall less with the lift than Carnot's ratio. */
  lossK: 37,
  /**
   * Share of Carnot's ratio with the losses counted as lift. A fridge at 25 °C comes to 1.6 W of heat for a watt, a
   * freezer to 1.2: makers' sheets of small compressors of 12 V have 1.1–1.7 between −30 and −10 °C.
   */
  carnotShare: 0.529,
} as const;

/** A kind of thing that cools, as it is met in camps. */
export interface CoolerKind {
  readonly insulation: Insulation;
  /** Openings and warm goods, as a share of what the walls let in: low, likely, high. */
  readonly goodsShare: readonly [low: number, likely: number, high: number];
  /** A usual box, L, and the draw of its compressor, W. */
  readonly volumeL: number;
  readonly powerW: number;
  /** Heat pumped for a watt, as a multiple of what small compressors of 12 V pump; 1 where absent. */
  readonly pumping?: number;
}

/**
 * A dozen cans a day cooled by 20 K are 4 to 6 W, a third of what the walls of 40 L let in at 25 °C; openings and
 * frost come on top. Freezers have better walls, are opened less and filled with what is frozen. Common practice.
 */
export const coolerKinds = {
  fridge: { insulation: 'usual', goodsShare: [0.3, 0.65, 1], volumeL: 40, powerW: 45 },
  freezer: { insulation: 'good', goodsShare: [0.1, 0.35, 0.7], volumeL: 40, powerW: 50 },
} as const satisfies Readonly<Record<string, CoolerKind>>;

/** How far the usual box may be off, as factors: where the draw was told, and where nothing was. Common practice. */
export const volumeSpread = { told: [0.65, 1.5], open: [0.5, 2] } as const;

/** How far the walls of a box whose litres were told may be off the usual, as factors. Sheets of one size differ so, from memory. */
export const leakSpread = [0.75, 1.3] as const;
