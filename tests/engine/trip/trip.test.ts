import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { runTime } from '#engine/battery/rules.ts';
import { explore } from '#engine/explore.ts';
import { dailyUseAh, dayOf } from '#engine/loads/model.ts';
import { simulate, startOf, type Trip, tripAssumptions } from '#engine/trip/model.ts';
import { coolerShares, sharesOf, useByHour } from '#engine/trip/profile.ts';
import { adverseValues, leastDrivingH, smallestBatteryAh, smallestPanelW } from '#engine/trip/search.ts';
import { printStep } from '#rule/print.ts';
import { run } from '#rule/rule.ts';
import { Trace } from '#rule/trace.ts';
import { likelyOf, likelyRun, tripWith } from './cases.ts';

const sum = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);

describe('the simple sum and the hours agree', () => {
  // Common practice: 50 Ah out of a 100 Ah AGM at 1 A last 50 h.
  test.for([
    ['agm', 100, 24, 50],
    ['lfp', 100, 48, 40],
    ['agm', 200, 120, 20],
  ] as const)('%s of %d Ah at %d Ah a day reaches its limit after %d h', ([chemistry, ah, useAh, hours]) => {
    const trip = tripWith({ chemistry, ah, useAh, durationH: 200 });
    const values = likelyOf(trip);
    const { balance, capacityAh } = simulate(trip, values);
    const usable = capacityAh * present(values.depthOfDischarge);
    expect(balance.limitAtH).toBeCloseTo(run(runTime, { Q_usable: usable, I: useAh / 24 }), 6);
    expect(balance.limitAtH).toBeCloseTo(hours, 6);
  });

  test('what is left after t hours at I is C − I·t', () => {
    const trip = tripWith({ ah: 90, useAh: 1.7 * 24, durationH: 42, startHour: 18 });
    expect(likelyRun(trip).endCharge).toBeCloseTo((100 * (90 - 71.4)) / 90, 6);
  });
});

describe('a level that is no more than likely', () => {
  const level = {
    name: 'stateOfCharge',
    value: 60,
    low: 50,
    high: 70,
    unit: '%',
    why: 'by its volts',
  } as const;
  const trip = tripWith({ ah: 100, useAh: 24, durationH: 12 });

  test('goes before the bank’s own, and is among what is taken for granted', () => {
    const taken = tripAssumptions({ ...trip, level });
    expect(taken.map(a => a.name)).toContain('stateOfCharge');
    expect(tripAssumptions(trip).map(a => a.name)).not.toContain('stateOfCharge');
    const values = Object.fromEntries(taken.map(a => [a.name, a.value]));
    expect(simulate({ ...trip, level }, values).endCharge).toBeCloseTo(48, 6);
  });
});

test('on mains the outlets carry what runs on mains, with nothing from the charger', () => {
  const kettle = { name: 'kettle', count: 1, powerW: 1200, hoursPerDay: 2, supply: 'ac' } as const;
  const lamp = { name: 'lamp', count: 1, powerW: 12, hoursPerDay: 24, supply: 'dc' } as const;
  const base = tripWith({ ah: 400, useAh: 1, durationH: 24, startHour: 0 });
  const used = (loads: Trip['use']['loads'], days: Trip['days']) => {
    const trip = { ...base, use: { loads, voltageV: 12 }, days };
    return simulate(trip, likelyOf(trip)).balance.sums.useAh;
  };
  const wholeDay = [{ mainsH: 24 }, {}];
  const without = used([lamp], [{}, {}]);
  expect(without).toBeCloseTo(24, 6);
  expect(used([lamp], wholeDay)).toBeCloseTo(without, 6);
  // Part of the day is before the mains are on: at nine.
  expect(used([kettle, lamp], wholeDay)).toBeGreaterThan(without - 1e-6);
  expect(used([kettle, lamp], wholeDay)).toBeLessThan(used([kettle, lamp], [{}, {}]) - 50);
});

describe('a day in hours', () => {
  const lamps = { name: 'light', count: 1, powerW: 12, hoursPerDay: 4, supply: 'dc' } as const;
  const fridge = { name: 'fridge', count: 1, currentA: 1, isAverage: true, supply: 'dc' } as const;
  const use = { loads: [lamps, fridge], voltageV: 12 };

  test('adds up to the use of the day', () => {
    expect(sum(useByHour(dayOf(use, {}), 25))).toBeCloseTo(dailyUseAh(use, {}), 9);
    expect(sum(useByHour(dayOf(use, {}), 25))).toBeCloseTo(28, 9);
  });
  test('lights are an evening thing', () => {
    const byHour = useByHour(dayOf({ ...use, loads: [lamps] }, {}), 25);
    expect(byHour.slice(18, 22)).toEqual([1, 1, 1, 1]);
    expect(sum(byHour.slice(0, 18))).toBe(0);
  });
  test('a fridge works hardest in the afternoon heat and least before dawn', () => {
    const shares = coolerShares(4, 25);
    expect(sum(shares)).toBeCloseTo(1, 9);
    expect([14, 15]).toContain(shares.indexOf(Math.max(...shares)));
    expect([2, 3]).toContain(shares.indexOf(Math.min(...shares)));
  });
  test.for([
    [[18], 30],
    [[19, 6], 8],
    [[7, 12, 18], 0.25],
    [[22], 8],
  ] as const)('shares from %j over %d h sum to one', ([starts, hours]) => {
    expect(sum(sharesOf(starts, hours))).toBeCloseTo(1, 9);
  });
  test('a night goes over midnight', () => {
    expect(sharesOf([22], 8)[3]).toBeCloseTo(1 / 8, 9);
  });
});

const sunny: Trip = tripWith({
  useAh: 40,
  durationH: 168,
  sun: { powerW: 150, sun: { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 3, controller: 'mppt' } },
});

describe('sun and driving', () => {
  test('the lowest point of a sunny camp is in the morning', () => {
    const { balance } = likelyRun(sunny);
    const hour = (startOf(sunny) + balance.lowest.atH) % 24;
    expect(hour).toBeGreaterThanOrEqual(6);
    expect(hour).toBeLessThanOrEqual(11);
  });
  test('overcast last days end lower than the usual sky, and the days before are the same', () => {
    const cloudy = {
      ...sunny,
      sun: {
        ...present(sunny.sun),
        skyLastDays: 2,
        sun: { ...present(sunny.sun).sun, sky: 'overcast' as const },
      },
    };
    expect(likelyRun(cloudy).endCharge).toBeLessThan(likelyRun(sunny).endCharge - 10);
    const levels = (trip: Trip) => {
      const found: number[] = [];
      simulate(trip, likelyOf(trip), undefined, h => found.push(h.chargeAh));
      return found.slice(0, 168 - 48);
    };
    expect(levels(cloudy)).toEqual(levels(sunny));
  });
  test('a told yield is the sun of every day', () => {
    expect(likelyRun(tripWith({ sun: { ahPerDay: 50, powerW: 200, sun: {} } })).dailySun).toBe(50);
  });
  test('a plan drives on its days only; a charger gives 97 % of its label', () => {
    const planned = tripWith({
      useAh: 40,
      durationH: 96,
      startHour: 0,
      driving: { charger: { kind: 'dcdc', currentA: 20 } },
      days: [0, 2, 0, 1].map(drivingH => ({ drivingH })),
    });
    expect(likelyRun(planned).balance.sums.drivingAh).toBeCloseTo(3 * 20 * 0.97, 9);
  });
});

describe('searches on the same trip', () => {
  const short = tripWith({ useAh: 40, durationH: 96 });
  const values = likelyOf(short);

  test('the smallest battery just lasts, one of 2 % less does not', () => {
    const ah = present(smallestBatteryAh(short, values));
    // 40 Ah a day for four days are 160 Ah: half of 320 Ah.
    expect(ah).toBeGreaterThanOrEqual(320);
    expect(ah).toBeLessThan(322);
    expect(likelyRun(tripWith({ useAh: 40, durationH: 96, ah })).margin).toBeGreaterThanOrEqual(0);
    expect(likelyRun(tripWith({ useAh: 40, durationH: 96, ah: ah * 0.98 })).margin).toBeLessThan(0);
  });
  test('the smallest panel just lasts', () => {
    const at = (powerW: number) => likelyRun({ ...short, sun: { powerW, sun: {} } }).margin;
    const powerW = present(smallestPanelW(short, values));
    expect(at(powerW)).toBeGreaterThanOrEqual(0);
    expect(at(powerW * 0.95)).toBeLessThan(0);
  });
  test('the least driving just lasts', () => {
    const charger = { kind: 'dcdc', currentA: 25 } as const;
    const trip = { ...short, driving: { hoursPerDay: 0, charger } };
    const hours = present(leastDrivingH(trip, values));
    expect(hours).toBeGreaterThan(0.3);
    expect(likelyRun({ ...trip, driving: { hoursPerDay: hours, charger } }).margin).toBeGreaterThanOrEqual(0);
    expect(likelyRun({ ...trip, driving: { hoursPerDay: hours * 0.9, charger } }).margin).toBeLessThan(0);
  });
  test('what surely lasts is more than what likely lasts', () => {
    const sure = adverseValues(sunny, tripAssumptions(sunny));
    const likely = likelyOf(sunny);
    expect(present(smallestBatteryAh(sunny, sure))).toBeGreaterThan(
      present(smallestBatteryAh(sunny, likely)),
    );
    expect(present(smallestPanelW(sunny, sure))).toBeGreaterThan(present(smallestPanelW(sunny, likely)));
    const { margin } = explore(tripAssumptions(sunny), 'margin', values => ({
      margin: simulate(sunny, values).margin,
    })).figures;
    expect(simulate(sunny, sure).margin).toBeLessThan(margin.value);
    expect(simulate(sunny, sure).margin).toBeGreaterThan(margin.low - 0.3 * (margin.value - margin.low));
  });
  test('in polar night no panel is big enough', () => {
    const dark = { ...short, sun: { powerW: 100, sun: { latitudeDeg: 75, month: 12 } } };
    expect(smallestPanelW(dark, likelyOf(dark))).toBeUndefined();
  });
});

describe('the working', () => {
  test('tells the lowest charge as it was computed', () => {
    const trace = new Trace();
    const { lowestCharge } = simulate(sunny, likelyOf(sunny), trace);
    const steps = trace.steps.map(printStep);
    expect(steps.find(s => s.name === 'chargeLevel')?.value).toBeCloseTo(lowestCharge, 9);
    expect(steps.map(s => s.name)).toEqual(expect.arrayContaining(['chargeAtPoint', 'dailyYieldCharge']));
  });
});
