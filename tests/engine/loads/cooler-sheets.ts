import type { Cooler } from '#engine/loads/cooler.ts';

/** A figure of a maker's sheet, a label or a test, closed and empty unless said: what went in, what it took. */
export interface Sheet {
  readonly says: string;
  readonly box: Pick<Cooler, 'volumeL' | 'insulation' | 'setPointC'>;
  readonly ambientC: number;
  /** Average power, W. */
  readonly averageW: number;
}

const fridge40 = { volumeL: 40, insulation: 'good', setPointC: 5 } as const;
const upright = (volumeL: number) => ({ volumeL, insulation: 'usual', setPointC: 5 }) as const;

/** All from memory, rounded, makers unnamed: how they were tested is known no better than is said here. */
export const sheets: readonly Sheet[] = [
  { says: 'portable of 40 L at 20 °C, 0.4 Ah an hour', box: fridge40, ambientC: 20, averageW: 0.4 * 12 },
  { says: 'portable of 40 L at 32 °C, 0.9 Ah an hour', box: fridge40, ambientC: 32, averageW: 0.9 * 12 },
  {
    says: 'portable of 47 L at 30 °C, 0.87 Ah an hour',
    box: { ...fridge40, volumeL: 47, setPointC: 3 },
    ambientC: 30,
    averageW: 0.87 * 12,
  },
  {
    says: 'portable of 40 L as a freezer at 32 °C, 2.1 Ah an hour',
    box: { ...fridge40, setPointC: -15 },
    ambientC: 32,
    averageW: 2.1 * 12,
  },
  { says: 'upright of 49 L at 25 °C, 270 Wh a day', box: upright(49), ambientC: 25, averageW: 270 / 24 },
  { says: 'upright of 65 L at 25 °C, 300 Wh a day', box: upright(65), ambientC: 25, averageW: 300 / 24 },
  { says: 'upright of 85 L at 25 °C, 345 Wh a day', box: upright(85), ambientC: 25, averageW: 345 / 24 },
  { says: 'upright of 130 L at 25 °C, 460 Wh a day', box: upright(130), ambientC: 25, averageW: 460 / 24 },
  {
    says: 'household chest freezer of 200 L at 25 °C, 0.66 kWh a day',
    box: { volumeL: 200, insulation: 'thick', setPointC: -18 },
    ambientC: 25,
    averageW: 660 / 24,
  },
  {
    says: 'solar chest freezer of 165 L at 32 °C, 430 Wh a day',
    box: { volumeL: 165, insulation: 'very thick', setPointC: -18 },
    ambientC: 32,
    averageW: 430 / 24,
  },
];

/** Consumption in one air over that in another: of a fridge at 4 °C. From memory. */
export const ratios: readonly (readonly [says: string, hotC: number, coolC: number, ratio: number])[] = [
  ['household fridges by their energy tests', 32, 16, 2.4],
  ['chests for vaccines', 43, 32, 1.6],
  ['from mild to tropical', 43, 25, 2.3],
];

/** Built for the tropics, a fridge in use holds its set point at 43 °C and rests a fifth of the time. Common practice, from memory. */
export const tropical = { ambientC: 43, duty: 0.8 } as const;
