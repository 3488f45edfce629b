import { present } from '#basics/present.ts';
import { type Random, randomFrom } from '../ranges/random.ts';
import { meanC, type Town, towns, type Weather, weatherOf } from './weather.ts';

export const styles = ['percent', 'volts', 'amps', 'used', 'left', 'mixed'] as const;
export type Style = (typeof styles)[number];
/** How many of each forty rigs report in a style. */
const share: Readonly<Record<Style, number>> = { percent: 10, volts: 8, amps: 6, used: 4, left: 4, mixed: 8 };

interface Evening {
  readonly name: string;
  readonly currentA: number;
  readonly hours: number;
}

/** A rig as its owner tells it, and as it is. Factors: true over told. */
export interface SimulatedRig {
  readonly seed: number;
  readonly style: Style;
  readonly town: Town;
  readonly month: number;
  readonly chemistry: 'agm' | 'lfp';
  readonly capacityAh: number;
  readonly fridgeA: number;
  readonly evening: Evening | undefined;
  /** 0: none. */
  readonly panelW: number;
  readonly drawFactor: number;
  readonly capacityFactor: number;
  readonly sunFactor: number;
  /** Ah a day as told. */
  readonly toldDailyAh: number;
  readonly weather: Weather;
  /** The level that the run time is asked from, %. */
  readonly askedPercent: number;
  readonly startPercent: number;
  readonly habits: Habits;
}

interface Habits {
  /** More duty a degree above the place's mean, share. */
  readonly perDegree: number;
  /** How much more the fridge works at the waking hours than at night, share. */
  readonly wakingMore: number;
  /** What frost and wear add a day, share. */
  readonly driftPerDay: number;
  /** Amps while the compressor runs; 0: it runs slowly all the time. */
  readonly compressorA: number;
  /** What each day does with the evening's loads. */
  readonly eveningShare: readonly number[];
  readonly eveningStartH: number;
}

/** 20–40 % off, in the likelier direction two times of three. */
function off(random: Random, isMostlyMore: boolean): number {
  const size = random.even(0.2, 0.4);
  const isMore = random.even(0, 1) < (isMostlyMore ? 0.65 : 0.35);
  return isMore ? 1 + size : 1 - size;
}

const pick = <T>(random: Random, from: readonly T[]): T =>
  present(from[Math.min(from.length - 1, Math.floor(random.even(0, from.length)))]);

const round = (value: number, to: number): number => Math.round(value / to) * to;

const order = styles.flatMap(style => Array.from({ length: share[style] }, () => style));
/** The rigs days that are simulated: three of readings, and as long as the longest run time. */
const daysSimulated = 24;

export function rigOf(number: number): SimulatedRig {
  const random = randomFrom(number * 7919 + 14);
  const style = present(order[number % order.length]);
  const town = pick(random, towns);
  const month = pick(random, [1, 3, 4, 5, 7, 9, 10, 12]);
  const chemistry = random.even(0, 1) < 0.55 ? 'agm' : 'lfp';
  const fridgeA = Number(round(random.even(0.9, 2.2), 0.1).toFixed(1));
  const evening =
    random.even(0, 1) < 0.5
      ? undefined
      : {
          name: pick(random, ['lights', 'tv']),
          currentA: pick(random, [0.8, 1, 1.5, 2]),
          hours: pick(random, [3, 4, 5]),
        };
  const toldDailyAh = fridgeA * 24 + (evening ? evening.currentA * evening.hours : 0);
  const hasSolar = random.even(0, 1) < 0.7;
  // Without sun the battery was bought for the three days.
  const capacityAh = round(toldDailyAh * (hasSolar ? random.even(2.2, 3.6) : random.even(4.6, 6)), 5);
  const panelW = hasSolar ? round((toldDailyAh * 13 * random.even(0.7, 1.4)) / 3.6, 10) : 0;
  const [drawFactor, capacityFactor, sunFactor] = [off(random, true), off(random, false), off(random, false)];
  const habits: Habits = {
    perDegree: random.even(0.02, 0.045),
    wakingMore: random.even(0.05, 0.4),
    driftPerDay: 0.02 * random.normal(),
    compressorA: random.even(0, 1) < 0.5 ? random.even(3.5, 5.5) : 0,
    eveningShare: Array.from({ length: daysSimulated }, () => Math.max(0.3, 1 + 0.25 * random.normal())),
    eveningStartH: random.even(17.5, 19.5),
  };
  const askedPercent = pick(random, chemistry === 'agm' ? [100, 90, 80] : [100, 80, 60]);
  const startPercent = hasSolar ? random.even(80, 100) : 100;
  const weather = weatherOf(random, town, month, daysSimulated);
  return {
    seed: number,
    style,
    town,
    month,
    chemistry,
    capacityAh,
    fridgeA,
    evening,
    panelW,
    drawFactor,
    capacityFactor,
    sunFactor,
    toldDailyAh,
    weather,
    askedPercent,
    startPercent,
    habits,
  };
}

export const placeMeanC = (rig: SimulatedRig): number => meanC(rig.town, rig.month);
