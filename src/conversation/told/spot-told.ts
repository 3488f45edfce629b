import type { Recognised } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';

const degrees: ReadonlySet<string> = new Set(['°', 'º', 'deg', 'degree', 'degrees']);
/** What follows the degrees, and the sign that it gives them. */
const sides: Readonly<Record<string, readonly [axis: 'latitude' | 'longitude', sign: 1 | -1]>> = {
  n: ['latitude', 1],
  north: ['latitude', 1],
  s: ['latitude', -1],
  south: ['latitude', -1],
  e: ['longitude', 1],
  east: ['longitude', 1],
  w: ['longitude', -1],
  west: ['longitude', -1],
};
const axes: Readonly<Record<string, 'latitude' | 'longitude'>> = {
  latitude: 'latitude',
  lat: 'latitude',
  longitude: 'longitude',
  lon: 'longitude',
  long: 'longitude',
};
const most = { latitude: 90, longitude: 180 } as const;

/** A latitude or longitude told as a number of degrees: its degrees with their sign, and the number as it stands. */
interface Told {
  readonly axis: 'latitude' | 'longitude';
  readonly deg: number;
  readonly number: number;
}

/**
 * The latitude or longitude whose number is the token `at`: "35° S", "35 degrees south", "33.9S", "latitude -35".
 * Without a side or a sign after "latitude" it is none: north and south are half a year apart.
 */
function toldAt({ tokens }: Recognised, at: number): Told | undefined {
  const number = tokens[at];
  if (number?.kind !== 'number' || number.value === undefined) return undefined;
  const word = (i: number): string => tokens[i]?.text ?? '';
  const isMinus = word(at - 1) === '-';
  const named = axes[word(at - (isMinus ? 2 : 1))];
  const glued = /^[°º]([nsew])$/.exec(word(at + 1))?.[1];
  const hasDegrees = degrees.has(word(at + 1));
  const side = sides[glued ?? word(at + (hasDegrees ? 2 : 1))];
  const isClose = tokens[at + 1]?.start === number.end && number.text.includes('.');
  const isMeant = glued !== undefined || hasDegrees || named !== undefined || isClose;
  const axis = side?.[0] ?? (isMinus ? named : undefined);
  if (!isMeant || axis === undefined || number.value > most[axis]) return undefined;
  return { axis, deg: (side?.[1] ?? -1) * number.value, number: number.value };
}

/**
 * The facts with the latitude, and the longitude, that the words tell in degrees, and without what the same numbers
 * were taken for: an air temperature, watts of a panel.
 */
export function withSpotTold(facts: Stated, recognised: Recognised): Stated {
  const told = recognised.tokens.map((_, i) => toldAt(recognised, i)).filter(one => one !== undefined);
  const latitudeDeg = told.find(({ axis }) => axis === 'latitude')?.deg;
  if (latitudeDeg === undefined) return facts;
  const isOne = (value: number | undefined): boolean =>
    value !== undefined && told.some(({ number }) => number === Math.abs(value));
  const { ambientC, solar, place, longitudeDeg: _before, ...rest } = facts;
  const panels = solar?.filter(({ powerW }) => solar.length < 2 || !isOne(powerW));
  const longitudeDeg = told.find(({ axis }) => axis === 'longitude')?.deg;
  const isPlace = place !== undefined && !(place in axes) && !/[°º]/.test(place);
  return {
    ...rest,
    latitudeDeg,
    ...(longitudeDeg !== undefined && { longitudeDeg }),
    ...(isPlace && { place }),
    ...(panels && { solar: panels }),
    ...(ambientC !== undefined && !isOne(ambientC) && { ambientC }),
  };
}
