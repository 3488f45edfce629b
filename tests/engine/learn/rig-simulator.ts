import { present } from '#basics/present.ts';
/**
 * Rigs in the field, for judging what is learnt of one by its readings. A model of its own, in steps of ten minutes:
 * a Markov sky, air with warm spells, a compressor that cycles on and off, people who use more on some days,
 * charge lost on the way in, an unannounced drive where the battery is nearly flat, and readings by people: rough,
 * missing now and then, copied late, one in twenty plainly wrong. It shares no line with the engine and was written
 * before what it judges. All shares here are invented, about what common practice knows of such gear.
 */

/** What somebody reads off, with the moment that it is told at. */
export interface SimReading {
  readonly at: number;
  readonly percent?: number;
  readonly restVolts?: number;
  readonly usedAh?: number;
  readonly netA?: number;
  /** What is wrong with it, for the test's own account. */
  readonly flaw?: 'stale' | 'wrong';
}

/** What an owner reads: a gauge of the real charge, amp hours counted, either by turns, or rested volts. */
type Reads = 'percent' | 'used' | 'percent or used' | 'volts';

export interface SimRig {
  readonly reads: Reads;
  /** What its owner tells of it. */
  readonly told: {
    readonly capacityAh: number;
    readonly chemistry: 'agm' | 'lfp';
    readonly fridgeA: number;
    readonly lightsA: number;
    readonly lightsH: number;
    /** What its panel is said to make a day, Ah; absent: no panel. */
    readonly sunAhPerDay?: number;
  };
  readonly readings: readonly SimReading[];
  /** Hours that it really lasts from full for each share of its capacity used, by its draw about the last reading. */
  readonly hoursPerShare: number;
  /** The same by what was told. */
  readonly toldHoursPerShare: number;
}

/** A stream of numbers from 0 to 1 that is the same for the same seed (mulberry32). */
function stream(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const stepH = 1 / 6;
/** How long a compressor rests before it has to run, h of its mean draw. */
const spellAh = 0.4;
/** Five in the afternoon of the day it all begins, UTC, where the camp lies on the meridian. */
const startsAt = Date.UTC(2026, 0, 10, 17);
const wayIn = { agm: 0.9, lfp: 0.97 } as const;
/** Share of a clear day's sun that comes through, and the chance that the next hour has the same sky. */
const skies = [
  { share: 1.25, stays: 0.93 },
  { share: 0.85, stays: 0.88 },
  { share: 0.3, stays: 0.9 },
] as const;

/** @param days how long it is read for */
export function simulateRig(seed: number, days = 3): SimRig {
  const random = stream(seed * 7919 + 17);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const sign = (): number => (random() < 0.5 ? -1 : 1);

  const chemistry = random() < 0.5 ? 'agm' : 'lfp';
  const fridgeA = Math.round(between(8, 25)) / 10;
  const lightsA = Math.round(between(3, 12)) / 10;
  const lightsH = 4;
  const toldDayAh = fridgeA * 24 + lightsA * lightsH;
  const capacityAh = Math.round((toldDayAh * between(1.6, 5)) / 10) * 10;
  const sunAhPerDay = random() < 0.3 ? undefined : Math.round(toldDayAh * between(0.5, 1.2));

  // Thirty per cent off what was told: in the draw, in the capacity, or some in each.
  const mode = random();
  const off = between(0.26, 0.34);
  const side = sign();
  const drawFactor = mode < 0.5 ? 1 + side * off : mode < 0.75 ? 1 : 1 + side * off * 0.5;
  const capacityFactor = mode < 0.5 ? 1 : mode < 0.75 ? 1 - off : 1 - side * off * 0.5;
  const sunFactor = 1 + sign() * between(0.26, 0.34);
  const capacity = capacityAh * capacityFactor;
  const nightShare = between(0.85, 1); // a fridge rests at night

  // What kind of reader its owner is.
  const style = random();
  const reads: Reads =
    style < 0.45
      ? 'percent'
      : style < 0.6
        ? 'used'
        : style < 0.85 || chemistry === 'lfp'
          ? 'percent or used'
          : 'volts';
  const alsoAmps = random() < 0.3;
  const voltsOff = normal() * 0.03;
  const gaugeOff = normal() * 1;

  let level = between(0.75, 1);
  let sky = Math.floor(random() * 3);
  let warm = normal() * 3;
  let isOn = true;
  let warmthAh = 0;
  let eager = 1;
  let lastA = 0;
  let driveH = 0;
  const steps = Math.round(((days + 2) * 24) / stepH);
  const past: { level: number; netA: number }[] = [];
  const drawn: number[] = [];
  const readings: SimReading[] = [];
  const due = new Set<number>();
  for (let day = 0; day <= days; day++) {
    // Seven in the morning and six in the evening, an hour or so off.
    if (day > 0) due.add(Math.round(((day - 1) * 24 + 14 + normal() * 0.7) / stepH));
    due.add(Math.max(2, Math.round((day * 24 + 1 + normal() * 0.7) / stepH)));
  }
  for (let step = 0; step < steps; step++) {
    const hour = (17 + step * stepH) % 24;
    if (Math.abs(hour % 1) < 1e-6 && random() > present(skies[sky]).stays)
      sky = (sky + 1 + (random() < 0.4 ? 1 : 0)) % 3;
    if (Math.abs(hour) < stepH / 2) {
      warm = 0.7 * warm + normal() * 2;
      eager = Math.max(0.5, 1 + normal() * 0.25);
    }
    const air = 1 + 0.025 * (warm + 5 * Math.cos((2 * Math.PI * (hour - 15)) / 24));
    const rest = hour >= 22 || hour < 6 ? nightShare : 2 - nightShare;
    const meanA = fridgeA * drawFactor * air * (0.5 + 0.5 * rest);
    // The compressor runs at three times its mean draw, a third of the time, in spells.
    const onA = fridgeA * drawFactor * 3;
    // By its thermostat: what warms the box has to be pumped out again, in spells.
    warmthAh += (meanA - (isOn ? onA : 0)) * stepH;
    if (warmthAh > spellAh * fridgeA) isOn = true;
    if (warmthAh < 0) isOn = false;
    const lights = hour >= 18 && hour < 22 ? lightsA * drawFactor * eager : 0;
    const odd = random() < 0.01 ? between(2, 8) * stepH : 0;
    const outA = (isOn ? onA : 0) + lights + odd;
    const height = Math.max(0, Math.sin((Math.PI * (hour - 6)) / 12));
    const sunA =
      sunAhPerDay === undefined
        ? 0
        : ((sunAhPerDay * sunFactor) / 7.64) * height * present(skies[sky]).share * between(0.85, 1.15);
    if (level < 0.2) driveH = 3;
    const driveA = driveH > 0 ? 20 * (level < 0.8 ? 1 : 0.4) : 0;
    driveH = Math.max(0, driveH - stepH);
    const inA = (sunA + driveA) * (1 + (level > 0.9 && chemistry === 'agm' ? -0.3 : 0));
    lastA = inA - outA;
    const gained = lastA > 0 ? lastA * wayIn[chemistry] ** 0.5 : lastA;
    level = Math.min(1, Math.max(0.02, level + (gained * stepH) / capacity));
    past.push({ level, netA: lastA });
    drawn.push(outA);
    if (!due.has(step) || random() < 0.1) continue;
    const luck = random();
    const flaw = luck < 0.05 ? 'wrong' : luck < 0.1 ? 'stale' : undefined;
    const seen =
      flaw === 'stale'
        ? present(past[Math.max(0, step - Math.round(between(2, 5) / stepH))])
        : present(past[step]);
    const shown = flaw === 'wrong' ? between(0.05, 1) : seen.level;
    const at = startsAt + (step + 1) * stepH * 3600_000;
    const percent = Math.min(100, Math.max(0, Math.round(100 * shown + gaugeOff + normal() * 1)));
    const usedAh = Math.max(0, Math.round(((1 - shown) * capacity + normal() * 1) * 2) / 2);
    const isPercent = reads === 'percent' || (reads === 'percent or used' && random() < 0.5);
    const surface = seen.netA > 0 ? 0.06 : 0;
    const restVolts = Math.round((11.85 + 0.9 * shown + voltsOff + normal() * 0.02 + surface) * 100) / 100;
    const netA = alsoAmps ? Math.round(seen.netA * 10) / 10 : undefined;
    readings.push({
      at,
      ...(isPercent ? { percent } : reads === 'volts' ? { restVolts } : { usedAh }),
      ...(netA === undefined ? {} : { netA }),
      ...(flaw ? { flaw } : {}),
    });
  }
  // What it draws in the two days before and after the last reading is to come, more or less, again.
  const middle = Math.round((days * 24) / stepH);
  const around = drawn.slice(Math.max(0, middle - Math.round(48 / stepH)), middle + Math.round(48 / stepH));
  const meanA = around.reduce((sum, a) => sum + a, 0) / around.length;
  return {
    reads,
    told: {
      capacityAh,
      chemistry,
      fridgeA,
      lightsA,
      lightsH,
      ...(sunAhPerDay === undefined ? {} : { sunAhPerDay }),
    },
    readings,
    hoursPerShare: capacity / meanA,
    toldHoursPerShare: (capacityAh * 24) / toldDayAh,
  };
}
