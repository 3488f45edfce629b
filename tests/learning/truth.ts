import { present } from '#basics/present.ts';
import { placeMeanC, type SimulatedRig } from './rig.ts';
import { stepsPerH } from './weather.ts';

/** Step of an hour since the midnight before the rig was told. */
export const stepAt = (hour: number): number => Math.round(hour * stepsPerH);

/** Amps out of the battery at each step: a fridge whose duty goes by a lagging warmth, the hour and the days. */
export function drawA(rig: SimulatedRig): number[] {
  const { habits, evening, weather } = rig;
  let boxC = placeMeanC(rig);
  return weather.airC.map((airC, step) => {
    const hourSince = step / stepsPerH;
    const [hour, day] = [hourSince % 24, Math.floor(hourSince / 24)];
    boxC += (airC - boxC) / (2.5 * stepsPerH);
    const isWaking = hour >= 7 && hour < 22;
    // Sixteen parts of a day awake, nine asleep: the mean stays 1.
    const byHour = 1 + habits.wakingMore * (isWaking ? 9 / 24 : -15 / 24);
    const byWarmth = Math.max(0.25, 1 + habits.perDegree * (boxC - placeMeanC(rig)));
    const byAge = 1 + habits.driftPerDay * Math.min(6, hourSince / 24);
    const fridge = rig.fridgeA * byHour * byWarmth * byAge;
    const since = hour - habits.eveningStartH;
    const isOn = evening && since >= 0 && since < evening.hours;
    return rig.drawFactor * (fridge + (isOn ? evening.currentA * present(habits.eveningShare[day]) : 0));
  });
}

/** Amps that the panel would bring at each step, before the battery takes less. */
function sunA(rig: SimulatedRig): number[] {
  return rig.weather.sunWm2.map((sun, step) => {
    const cellC = present(rig.weather.airC[step]) + 0.03 * sun;
    const heat = 1 - 0.004 * Math.max(0, cellC - 25);
    return (rig.sunFactor * rig.panelW * (sun / 1000) * 0.78 * heat) / 13;
  });
}

/** What the battery holds at a temperature, Ah: lead gives less in the cold (common practice). */
function holdsAh(rig: SimulatedRig, airC: number): number {
  const perDegree = rig.chemistry === 'agm' ? 0.006 : 0.002;
  const batteryC = placeMeanC(rig) + (airC - placeMeanC(rig)) / 3;
  return rig.capacityAh * rig.capacityFactor * Math.min(1.03, 1 + perDegree * (batteryC - 25));
}

export interface Course {
  /** True level of each step, 0–1, of what the battery holds. */
  readonly level: readonly number[];
  /** Amps into the battery (minus: out of it). */
  readonly netA: readonly number[];
  readonly draw: readonly number[];
  /** A low-voltage cut-out fell at some step. */
  readonly wasCut: boolean;
}

/** The days as they went, from the hour the rig was told. */
export function courseOf(rig: SimulatedRig, fromHour: number, toHour: number): Course {
  const [draw, sun] = [drawA(rig), sunA(rig)];
  const level: number[] = [];
  const netA: number[] = [];
  let now = rig.startPercent / 100;
  let isCut = false;
  let wasCut = false;
  for (let step = 0; step <= stepAt(toHour); step++) {
    if (now < 0.06) isCut = true;
    if (now > 0.2) isCut = false;
    wasCut ||= isCut;
    const out = isCut ? 0 : present(draw[step]);
    const full = rig.chemistry === 'agm' ? 0.85 : 0.97;
    const most = rig.capacityAh * (now < full ? 0.25 : Math.max(0, (0.25 * (1 - now)) / (1 - full)));
    const net = Math.min(present(sun[step]), most + out) - out;
    const kept = net > 0 ? net * (rig.chemistry === 'agm' ? 0.92 : 0.985) : net;
    if (step >= stepAt(fromHour)) {
      now += kept / stepsPerH / holdsAh(rig, present(rig.weather.airC[step]));
      now = Math.min(1, Math.max(0, now));
    }
    level.push(now);
    netA.push(net);
  }
  return { level, netA, draw, wasCut };
}

/** Hours that it truly lasts from a level down to a floor with no charging, from an hour on; NaN: longer than simulated. */
export function trueRunTimeH(rig: SimulatedRig, draw: readonly number[], fromHour: number, floor: number) {
  let now = rig.askedPercent / 100;
  for (let step = stepAt(fromHour); step < draw.length; step++) {
    const less = present(draw[step]) / stepsPerH / holdsAh(rig, present(rig.weather.airC[step]));
    if (now - less <= floor) return (step + (now - floor) / less) / stepsPerH - fromHour;
    now -= less;
  }
  return Number.NaN;
}

/** The rig in the usual weather of its place and month, with the habits of a usual day. */
export function usual(rig: SimulatedRig): SimulatedRig {
  const swing = (step: number) => Math.cos((2 * Math.PI * (((step / stepsPerH) % 24) - 15)) / 24);
  const airC = rig.weather.airC.map((_, step) => placeMeanC(rig) + rig.town.swing * swing(step));
  const habits = { ...rig.habits, eveningShare: rig.habits.eveningShare.map(() => 1) };
  return { ...rig, habits, weather: { ...rig.weather, airC } };
}
