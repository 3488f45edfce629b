import { present } from '#basics/present.ts';
import type { Random } from '../ranges/random.ts';

/**
 * Weather of one rig, drawn: a mean for the place and month, days that hang together, a daily swing, and a sky that
 * stays or turns (a Markov chain). Rough figures from memory; nothing here comes from the engine.
 */
export interface Town {
  readonly name: string;
  readonly latDeg: number;
  readonly lonDeg: number;
  /** Mean temperature of January and July, °C. */
  readonly january: number;
  readonly july: number;
  /** Half of a day's swing, °C. */
  readonly swing: number;
  /** How likely a clear, a mixed, an overcast spell is. */
  readonly sky: readonly [number, number, number];
}

export const towns: readonly Town[] = [
  { name: 'Dubbo', latDeg: -32.2, lonDeg: 148.6, january: 26, july: 9, swing: 7.5, sky: [5, 3, 2] },
  { name: 'Mildura', latDeg: -34.2, lonDeg: 142.2, january: 25, july: 10, swing: 7.5, sky: [5, 3, 2] },
  { name: 'Broome', latDeg: -18, lonDeg: 122.2, january: 30, july: 21, swing: 5, sky: [5, 4, 1] },
  { name: 'Albany', latDeg: -35, lonDeg: 117.9, january: 19, july: 12, swing: 4, sky: [3, 4, 3] },
  { name: 'Longreach', latDeg: -23.4, lonDeg: 144.3, january: 31, july: 15, swing: 8, sky: [7, 2, 1] },
  { name: 'Ceduna', latDeg: -32.1, lonDeg: 133.7, january: 22, july: 11, swing: 6.5, sky: [5, 3, 2] },
  { name: 'Coffs Harbour', latDeg: -30.3, lonDeg: 153.1, january: 23, july: 13, swing: 4.5, sky: [3, 4, 3] },
  { name: 'Bright', latDeg: -36.7, lonDeg: 147, january: 21, july: 6, swing: 8, sky: [4, 3, 3] },
];

export const meanC = (town: Town, month: number): number =>
  (town.january + town.july) / 2 + ((town.january - town.july) / 2) * Math.cos(((month - 1) * Math.PI) / 6);

/** Steps of an hour that everything is reckoned in. */
export const stepsPerH = 10;

export interface Weather {
  /** Air temperature of each step, °C. */
  readonly airC: readonly number[];
  /** Sun on a flat panel of each step, W/m². */
  readonly sunWm2: readonly number[];
}

/** Sine of the sun's height at an hour of local solar time (textbook geometry; Cooper's declination). */
function sunHeight(latDeg: number, dayOfYear: number, hour: number): number {
  const rad = Math.PI / 180;
  const declination = 23.45 * rad * Math.sin((2 * Math.PI * (284 + dayOfYear)) / 365);
  const latitude = latDeg * rad;
  const turn = 15 * rad * (hour - 12);
  return (
    Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(turn)
  );
}

/** Share of the clear sun that a clear, a mixed, an overcast sky lets through, and how far it jumps about. */
const through = [
  [0.97, 0.03],
  [0.68, 0.22],
  [0.28, 0.12],
] as const;

export function weatherOf(random: Random, town: Town, month: number, days: number): Weather {
  const airC: number[] = [];
  const sunWm2: number[] = [];
  const spell = (): number => {
    const at = random.even(0, 10);
    return at < town.sky[0] ? 0 : at < town.sky[0] + town.sky[1] ? 1 : 2;
  };
  let sky = spell();
  let warmer = 3 * random.normal();
  let cloud = 0;
  for (let step = 0; step < days * 24 * stepsPerH; step++) {
    const hour = (step / stepsPerH) % 24;
    if (step % (24 * stepsPerH) === 0) warmer = 0.6 * warmer + 2.4 * random.normal();
    // A spell of weather lasts some nine hours.
    if (step % (3 * stepsPerH) === 0 && random.even(0, 1) < 0.33) sky = spell();
    cloud = 0.85 * cloud + 0.53 * random.normal();
    const [share, jump] = present(through[sky]);
    const height = sunHeight(town.latDeg, month * 30.4 - 20, hour);
    // Haurwitz (1945): the sun of a clear sky.
    const clear = height > 0.01 ? 1098 * height * Math.exp(-0.057 / height) : 0;
    sunWm2.push(clear * Math.min(1.05, Math.max(0.08, share + jump * cloud)));
    const swing = town.swing * (sky === 2 ? 0.55 : 1) * Math.cos((2 * Math.PI * (hour - 15)) / 24);
    airC.push(meanC(town, month) + warmer + swing);
  }
  return { airC, sunWm2 };
}
