import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import type { Assumption, Values, ValuesToSet } from '#engine/assumption.ts';
import { airAboutFridge } from '#engine/solar/air.ts';
import { turnedBeamFactor } from '#engine/solar/facing.ts';
import { nineInTen } from '#engine/solar/spread.ts';
import { meanDay, sunDay } from '#engine/solar/sun.ts';
import { factsOf } from '#intents/facts.ts';
import type { Range } from '#quantity/range.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';
import { settingWith } from '../intents/setting.ts';
import { type Random, randomFrom } from './random.ts';

/**
 * Ranges held against chance: all that nobody told is drawn, what an answer assumes and what it passes over, and the
 * figure worked out again. Nine in ten should come to lie in the range that the answer states.
 */

const drawn = vi.hoisted(() => ({ random: undefined as unknown }));

/** The ends of an assumption hold nine cases in ten, to each side by itself; none is drawn through nought. */
function draw({ low, value, high }: Assumption, random: Random): number {
  const z = random.normal();
  const x = z < 0 ? value + ((value - low) * z) / nineInTen : value + ((high - value) * z) / nineInTen;
  return value > 0 ? Math.max(x, value / 20) : x;
}

vi.mock('#engine/explore.ts', async original => {
  const real = await original<typeof import('#engine/explore.ts')>();
  return {
    ...real,
    explore: (
      assumptions: readonly Assumption[],
      main: string,
      compute: (values: Values, trace?: Trace) => Record<string, number>,
    ) => {
      if (!drawn.random) return real.explore(assumptions, main, compute);
      const values: ValuesToSet = {};
      for (const a of assumptions) values[a.name] = draw(a, drawn.random as Random);
      const trace = new Trace();
      const figures = Object.fromEntries(
        Object.entries(compute(capped(values), trace)).map(([key, x]) => [
          key,
          { value: x, low: x, high: x },
        ]),
      );
      return { figures, ranked: [], trace };
    },
  };
});

/** Shares that can't pass the whole. */
const shares = /efficiency|^age$|fullAt|depthOfDischarge|Loss$|[sS]hare/i;
const capped = (values: Values): Values =>
  Object.fromEntries(
    Object.entries(values).map(([name, x]) => [name, shares.test(name) ? Math.min(1, present(x)) : x]),
  );

/** What is true of one camp and is in no answer's words. */
interface Camp {
  /** Air and battery about the day's mean, °C. */
  readonly airC: number;
  /** The battery's volts while it gives, against the nominal ones. */
  readonly volts: number;
  /** Energy on a panel that lies "flat" on a roof which doesn't, against one that does. */
  readonly slope: number;
}

/** A roof or pitch is off the level by up to 5° whichever way, and two thirds of a month's sun are direct. Common practice. */
function slopeGain(latitudeDeg: number, month: number, random: Random): number {
  const turned = turnedBeamFactor(
    sunDay(latitudeDeg, meanDay(month)),
    random.even(0, 5),
    random.even(0, 180),
  );
  return 1 + 0.6 * (turned - 1);
}

/** The air where camps are, with no place said: its own guess, not ours. Common practice. */
const anywhere: Assumption = {
  name: 'airTemperature',
  low: 17,
  value: 24,
  high: 32,
  unit: '°C',
  why: 'camping weather',
};

/** Batteries stand in the air about them, and give at 11.9 to 12.9 V of 12. */
const campOf = (random: Random, { latitudeDeg, longitudeDeg, month }: Facts): Camp => ({
  airC: draw(
    latitudeDeg === undefined ? anywhere : airAboutFridge({ latitudeDeg, longitudeDeg, month }),
    random,
  ),
  volts: random.even(0.99, 1.075),
  slope: slopeGain(latitudeDeg ?? 40, month ?? 1, random),
});

interface Question {
  readonly name: string;
  readonly facts: Stated;
  /** The figure that the answer states first, by the facts as they are in a camp. */
  readonly figure: (facts: Facts, camp?: Camp) => Range;
}

const setting = settingWith();

/** A load in watts takes the fewer amps the higher the volts are. */
const wattsAt = (facts: Facts, volts: number): Facts => ({
  ...facts,
  ...(facts.loads && {
    loads: facts.loads.map(one => ({ ...one, ...(one.powerW && { powerW: one.powerW / volts }) })),
  }),
});
const warm = (facts: Facts, camp: Camp | undefined): Facts =>
  camp ? { ...wattsAt(facts, camp.volts), ambientC: facts.ambientC ?? camp.airC } : facts;

const { computeRunTime } = await import('#intents/run-time/compute.ts');
const { computeBatterySize } = await import('#intents/battery-size/compute.ts');
const { computeEnergyBudget } = await import('#intents/energy-budget/compute.ts');
const { computeSolarSize } = await import('#intents/solar-size/compute.ts');
const { computeSolarYield } = await import('#intents/solar-yield/compute.ts');
const { computeChargeTime } = await import('#intents/charge-time/compute.ts');
const { computeInverterCheck } = await import('#intents/inverter-check/compute.ts');
const { computeTrip } = await import('#intents/trip/compute.ts');

const times = (range: Range, by: number): Range => ({
  value: range.value * by,
  low: range.low * by,
  high: range.high * by,
});

const agm = [{ capacityAh: 100, chemistry: 'agm' as const }];
const lfp = [{ capacityAh: 100, chemistry: 'lfp' as const }];
const perth = { place: 'perth', latitudeDeg: -31.95, longitudeDeg: 115.86, month: 6 };
const camping = [
  { name: 'fridge', powerW: 45 },
  { name: 'light', powerW: 5, hoursPerDay: 4 },
];

const questions: readonly Question[] = [
  {
    name: 'run-time: fridge in watts on an AGM',
    facts: { loads: camping, batteries: agm },
    figure: (facts, camp) => computeRunTime(warm(facts, camp) as never, setting).figures.runTime,
  },
  {
    name: 'run-time: a thing without figures on lithium',
    facts: { loads: [{ name: 'fridge' }], batteries: lfp },
    figure: (facts, camp) => computeRunTime(warm(facts, camp) as never, setting).figures.runTime,
  },
  {
    name: 'battery-size: three days of a fridge and lights',
    facts: { loads: camping, durationH: 72 },
    figure: (facts, camp) =>
      computeBatterySize(warm(facts, camp) as never, setting).explored.figures.batteryCapacity,
  },
  {
    name: 'energy-budget: fridge, lights, laptop',
    facts: { loads: [...camping, { name: 'laptop' }] },
    figure: (facts, camp) => computeEnergyBudget(warm(facts, camp), setting).explored.figures.dailyUse,
  },
  {
    name: 'solar-size: 40 Ah a day in Perth in June',
    facts: { dailyUseAh: 40, ...perth },
    figure: (facts, camp) =>
      times(computeSolarSize(facts, setting).figures.panelPower, 1 / (camp?.slope ?? 1)),
  },
  {
    name: 'solar-yield: 200 W in Perth in June',
    facts: { solar: [{ powerW: 200 }], ...perth },
    figure: (facts, camp) =>
      times(
        computeSolarYield(facts as never, setting).figures.dailyYield,
        (camp?.slope ?? 1) / (camp?.volts ?? 1),
      ),
  },
  {
    name: 'charge-time: 50 % of an AGM by mains',
    facts: {
      batteries: [{ ...present(agm[0]), stateOfChargePercent: 50 }],
      chargers: [{ kind: 'mains', currentA: 15 }],
    },
    figure: (facts, camp) => computeChargeTime(warm(facts, camp), setting).figures.chargeTime,
  },
  {
    name: 'inverter-check: a kettle on 2,000 W',
    facts: {
      loads: [{ name: 'kettle', supply: 'ac', powerW: 1200 }],
      inverter: { powerW: 2000 },
      batteries: lfp,
    },
    figure: facts => computeInverterCheck(facts, setting).figures.batteryCurrent,
  },
  {
    name: 'trip: four days with 120 W in Perth in June',
    facts: {
      loads: camping,
      batteries: [{ capacityAh: 120, chemistry: 'agm' }],
      solar: [{ powerW: 120 }],
      durationH: 96,
      ...perth,
    },
    figure: (facts, camp) => computeTrip(warm(facts, camp) as never, setting.at, 230).figures.lowestCharge,
  },
];

const draws = 3000;

describe(`${draws} camps: nine in ten lie within the range that is stated`, () => {
  const told: string[] = [];
  afterAll(() => console.log(told.join('\n')));
  beforeEach(() => {
    drawn.random = undefined;
  });

  test.for(questions.map(question => [question.name, question] as const))('%s', ([name, question]) => {
    const facts = factsOf(question.facts);
    const stated = question.figure(facts);
    const random = randomFrom(13);
    let within = 0;
    let below = 0;
    drawn.random = random;
    for (let i = 0; i < draws; i++) {
      const { value } = question.figure(facts, campOf(random, facts));
      if (value < stated.low) below++;
      else if (value <= stated.high) within++;
    }
    drawn.random = undefined;
    const share = within / draws;
    told.push(
      `${name}: ${stated.low.toFixed(1)}–${stated.high.toFixed(1)}, ${(100 * share).toFixed(1)} % within, ${((100 * below) / draws).toFixed(1)} % below`,
    );
    expect(share).toBeGreaterThanOrEqual(0.88);
    expect(share).toBeLessThanOrEqual(0.98);
  });
});
