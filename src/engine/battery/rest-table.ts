import type { Chemistry } from '#rig/rig.ts';

/** At a state of charge (%), the volts of a rested 12 V block at 25 °C: what is likely, and the span that published tables give. */
export type RestRow = readonly [percent: number, lowV: number, likelyV: number, highV: number];

/**
 * Resting volts by chemistry, from empty to full. Published tables differ by up to 30 points of charge at the
 * same voltage; the spans hold them. Flooded: battery makers' tables, and 6 × (gravity + 0.845). AGM and gel
 * read higher at the same charge, by their stronger acid. Lithium: four cells; between 20 and 80 % it hardly
 * moves. Common practice: makers' sheets and measurements that agree.
 */
export const restVolts: Readonly<Record<Chemistry, readonly RestRow[]>> = {
  flooded: [
    [0, 10.5, 11.4, 11.6],
    [10, 11.31, 11.68, 11.8],
    [25, 11.7, 11.95, 12.01],
    [30, 11.78, 12, 12.05],
    [50, 12.03, 12.15, 12.2],
    [60, 12.15, 12.24, 12.28],
    [75, 12.33, 12.4, 12.45],
    [90, 12.46, 12.53, 12.6],
    [100, 12.6, 12.67, 12.73],
  ],
  agm: [
    [0, 10.5, 11.6, 11.8],
    [10, 11.5, 11.82, 11.95],
    [25, 11.78, 12.02, 12.12],
    [50, 12.08, 12.27, 12.36],
    [75, 12.38, 12.52, 12.62],
    [90, 12.58, 12.73, 12.8],
    [100, 12.75, 12.9, 13.15],
  ],
  gel: [
    [0, 10.5, 11.7, 11.85],
    [10, 11.5, 11.85, 11.95],
    [25, 11.78, 12.02, 12.1],
    [50, 12.08, 12.3, 12.38],
    [75, 12.38, 12.56, 12.65],
    [90, 12.58, 12.75, 12.82],
    [100, 12.7, 12.87, 13],
  ],
  'lead-acid': [
    [0, 10.5, 11.5, 11.8],
    [10, 11.31, 11.75, 11.95],
    [25, 11.7, 11.98, 12.12],
    [50, 12.03, 12.21, 12.36],
    [75, 12.33, 12.46, 12.62],
    [90, 12.46, 12.62, 12.8],
    [100, 12.6, 12.75, 13.15],
  ],
  lfp: [
    [0, 10, 10.8, 11.6],
    [10, 12, 12.6, 12.85],
    [20, 12.7, 12.92, 13],
    [30, 12.88, 13.02, 13.12],
    [40, 12.96, 13.09, 13.2],
    [50, 13, 13.13, 13.24],
    [60, 13.06, 13.18, 13.28],
    [70, 13.12, 13.22, 13.32],
    [80, 13.17, 13.26, 13.36],
    [90, 13.25, 13.33, 13.44],
    [95, 13.3, 13.38, 13.5],
    [100, 13.38, 13.5, 13.65],
  ],
};

/** Above this a block (12 V) isn't at rest but on charge: above any table's full battery, V. */
export const chargingAboveV: Readonly<Record<Chemistry, number>> = {
  flooded: 12.95,
  agm: 13.15,
  gel: 13.1,
  'lead-acid': 13.15,
  lfp: 13.65,
};
