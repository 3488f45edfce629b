import { describe, expect, test } from 'vitest';
import { bankOf } from '#engine/battery/bank.ts';
import { dayOf } from '#engine/loads/model.ts';
import { airTemperature } from '#engine/solar/air.ts';
import { hourlyShares, solarAssumptions } from '#engine/solar/model.ts';
import { acceptance, acceptanceAssumptions } from '#engine/trip/accept.ts';
import { simulate, startOf, tripAssumptions } from '#engine/trip/model.ts';
import { sharesOf, useByHour } from '#engine/trip/profile.ts';
import {
  driveOn,
  drives,
  drivingA,
  drivingAssumptions,
  sunAssumptions,
  sunByHour,
  type TripSun,
} from '#engine/trip/sources.ts';
import type { Load } from '#rig/rig.ts';
import { likelyOf, likelyRun, tripWith } from './cases.ts';

const byron = { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 3, controller: 'mppt' } as const;
const agm = bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }])!;
const agm24 = bankOf([{ count: 2, capacityAh: 100, chemistry: 'agm' }], 'series')!;
const lfp = bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp' }])!;
const sum = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);
const names = (list: readonly { readonly name: string }[]) => list.map(a => a.name);

describe('what a trip takes for granted', () => {
  test('without charging nothing of charging', () => {
    const list = names(tripAssumptions(tripWith({})));
    expect(list).toEqual(['depthOfDischarge', 'peukertExponent', 'age']);
    expect(names(tripAssumptions(tripWith({ driving: { hoursPerDay: 0 } })))).toEqual(list);
  });

  test('with sun or driving how much is kept, and how fast lead takes its last part', () => {
    const driven = names(tripAssumptions(tripWith({ driving: { hoursPerDay: 1 } })));
    expect(driven).toEqual([
      'depthOfDischarge',
      'peukertExponent',
      'age',
      'chargerCurrent',
      'alternatorShare',
      'chargeEfficiency',
      'timeConstant',
    ]);
    const sunny = names(tripAssumptions(tripWith({ chemistry: 'lfp', sun: { powerW: 100, sun: byron } })));
    expect(sunny).toContain('chargeEfficiency');
    expect(sunny).toContain('clearness');
    expect(sunny).not.toContain('timeConstant');
    expect(acceptanceAssumptions('lfp')).toEqual([]);
    expect(acceptanceAssumptions('gel')).toEqual([
      { name: 'timeConstant', value: 2, low: 1.5, high: 2.8, unit: 'h', why: expect.stringContaining('gel') },
    ]);
  });

  test('the air is the place’s and the month’s, over day and night, where both are known', () => {
    const fridge: Load = { name: 'fridge', count: 1, supply: 'dc', powerW: 45 };
    const air = (sun: object) =>
      tripAssumptions({
        ...tripWith({}),
        use: { loads: [fridge], voltageV: 12 },
        sun: { powerW: 100, sun },
      }).filter(a => a.name === 'ambientC');
    const { value, low, high } = airTemperature(byron);
    expect(air(byron)).toMatchObject([{ value, low, high }]);
    // Byron Bay in March, by climate tables: 26 °C by day and 19 °C by night.
    expect(Math.abs(value - 22.5)).toBeLessThan(2);
    expect(air(byron)[0]!.why).toContain('day and night');
    for (const sun of [{}, { latitudeDeg: -28.6 }, { month: 3 }])
      expect(air(sun)).toMatchObject([{ value: 25, low: 17, high: 33 }]);
  });

  test('a told yield needs no sun; a sky for the last days has names of its own', () => {
    expect(sunAssumptions({ ahPerDay: 40, sun: byron })).toEqual([]);
    const usual = names(solarAssumptions(byron));
    expect(names(sunAssumptions({ powerW: 100, sun: byron }))).toEqual(usual);
    const tail = { powerW: 100, sun: { ...byron, sky: 'overcast' as const }, skyLastDays: 2 };
    const own = ['overcastClearness on the last days', 'reflectionLoss on the last days'];
    expect(names(sunAssumptions(tail))).toEqual([...usual, ...own]);
    expect(names(sunAssumptions({ ...tail, ahPerDay: 40 }))).toEqual([...usual, ...own]);
    // The same sky all along adds nothing.
    expect(names(sunAssumptions({ ...tail, sun: byron }))).toEqual(usual);
  });

  test('a start: as told, with the first drive of a plan, else in the afternoon', () => {
    expect(startOf(tripWith({ startHour: 6 }))).toBe(6);
    expect(startOf(tripWith({ driving: { planH: [2] } }))).toBe(9);
    expect(startOf(tripWith({ driving: { hoursPerDay: 2 } }))).toBe(16);
  });
});

describe('the sun by the hour', () => {
  const day = (trip: TripSun, values = {}, leftH = 100) => {
    const { byHour, dayAh } = sunByHour(trip, 12, values);
    return { hours: byHour(leftH), dayAh };
  };

  test('adds up to the day, and leaves out the first and last glancing light', () => {
    const { hours, dayAh } = day({ powerW: 100, sun: byron });
    expect(sum(hours)).toBeCloseTo(dayAh, 9);
    const shares = hourlyShares(-28.6, 3);
    expect(shares.filter(s => s > 0).length).toBeGreaterThan(hours.filter(h => h > 0).length);
    // Every hour gives two points of a hundred of the day; noon gains what is shared out again.
    const kept = sum(shares.map(s => Math.max(0, s - 0.02)));
    expect(hours[12]).toBeCloseTo((dayAh * (shares[12]! - 0.02)) / kept, 9);
    expect(Math.min(...hours)).toBe(0);
  });

  test('twice the volts, half the amp hours; no panel or no sun, nothing', () => {
    const at12 = sunByHour({ powerW: 100, sun: byron }, 12, {}).dayAh;
    expect(sunByHour({ powerW: 100, sun: byron }, 24, {}).dayAh).toBeCloseTo(at12 / 2, 9);
    expect(day({ sun: byron })).toEqual({ hours: Array(24).fill(0), dayAh: 0 });
    expect(sunByHour(undefined, 12, {}).dayAh).toBe(0);
    expect(sum(sunByHour(undefined, 12, {}).byHour(5))).toBe(0);
  });

  test('a told yield is the day’s, with the hours of the place or of the equator', () => {
    expect(day({ ahPerDay: 40, sun: byron }).dayAh).toBe(40);
    const { hours } = day({ ahPerDay: 40, sun: {} });
    expect(sum(hours)).toBeCloseTo(40, 9);
    expect(hours[11]).toBeCloseTo(hours[12]!, 9);
  });

  test('polar night: shares of nothing stay nothing', () => {
    expect(sum(day({ powerW: 100, sun: { latitudeDeg: 80, month: 12 } }).hours)).toBe(0);
  });

  test('the last days have their own sky, from their own hour on', () => {
    const tail: TripSun = { powerW: 100, sun: { ...byron, sky: 'overcast' }, skyLastDays: 2 };
    const { byHour, dayAh } = sunByHour(tail, 12, {});
    const usual = sunByHour({ powerW: 100, sun: byron }, 12, {}).dayAh;
    const dull = sunByHour({ powerW: 100, sun: { ...byron, sky: 'overcast' } }, 12, {}).dayAh;
    expect(dayAh).toBeCloseTo(usual, 9);
    expect(sum(byHour(48.5))).toBeCloseTo(usual, 9);
    expect(sum(byHour(48))).toBeCloseTo(dull, 9);
    expect(sum(byHour(1))).toBeCloseTo(dull, 9);
    // Their own value moves them and no other day.
    const moved = sunByHour(tail, 12, { 'overcastClearness on the last days': 0.08 });
    expect(sum(moved.byHour(1))).toBeLessThan(0.6 * dull);
    expect(sum(moved.byHour(60))).toBeCloseTo(usual, 9);
    // Of a told yield the last days bring the same share as of a panel's.
    const told = sunByHour({ ...tail, ahPerDay: 40 }, 12, {});
    expect(told.dayAh).toBe(40);
    expect(sum(told.byHour(60))).toBeCloseTo(40, 9);
    expect(sum(told.byHour(1))).toBeCloseTo((40 * dull) / usual, 6);
    // Where no panel brings anything, a told yield is what it is.
    const dark = sunByHour({ ahPerDay: 40, skyLastDays: 1, sun: { latitudeDeg: 80, month: 12 } }, 12, {});
    expect(dark.dayAh).toBe(40);
    expect(sum(dark.byHour(1))).toBe(40 * sum(hourlyShares(80, 12)));
  });
});

describe('driving', () => {
  test('whether there is any', () => {
    expect(drives(undefined)).toBe(false);
    expect(drives({})).toBe(false);
    expect(drives({ hoursPerDay: 0, planH: [0, 0] })).toBe(false);
    expect(drives({ planH: [0, 1] })).toBe(true);
    expect(drives({ hoursPerDay: 0.5 })).toBe(true);
    expect(drivingAssumptions(undefined, agm)).toEqual([]);
    expect(drivingAssumptions({ hoursPerDay: 0 }, agm)).toEqual([]);
  });

  test('an isolator where nobody said, a smart alternator by half of the time', () => {
    expect(names(drivingAssumptions({ hoursPerDay: 1 }, agm))).toEqual(['chargerCurrent', 'alternatorShare']);
    expect(drivingA({ hoursPerDay: 1 }, agm, {})).toBe(20);
    expect(drivingA({ hoursPerDay: 1, alternator: 'smart' }, agm, {})).toBe(10);
    expect(drivingA({ hoursPerDay: 1 }, agm, { chargerCurrent: 30 })).toBe(30);
    expect(drivingA({ charger: { kind: 'dcdc', currentA: 25 } }, agm, {})).toBe(0);
  });

  test('watts of a charger by the volts of the bank', () => {
    const charger = { kind: 'dcdc', powerW: 276 } as const;
    expect(drivingA({ hoursPerDay: 1, charger }, agm, {})).toBeCloseTo((276 / 13.8) * 0.97, 6);
    expect(drivingA({ hoursPerDay: 1, charger }, agm24, {})).toBeCloseTo((276 / 27.6) * 0.97, 6);
    expect(drivingA({ hoursPerDay: 1, charger }, lfp, {})).toBeCloseTo((276 / 13.6) * 0.97, 6);
  });

  test('from nine in the morning, earlier where the day would not hold it', () => {
    expect(driveOn({ hoursPerDay: 3 })(4)).toEqual({ fromHour: 9, hours: 3 });
    expect(driveOn({ hoursPerDay: 18 })(0)).toEqual({ fromHour: 6, hours: 18 });
    expect(driveOn({ planH: [0, 2], hoursPerDay: 5 })(1)).toEqual({ fromHour: 9, hours: 2 });
    expect(driveOn({ planH: [0, 2] })(0)).toBeUndefined();
    expect(driveOn({ planH: [0, 2] })(2)).toBeUndefined();
    expect(driveOn({})(0)).toBeUndefined();
    expect(driveOn(undefined)(0)).toBeUndefined();
  });
});

describe('hours of a day', () => {
  const thing = (rest: Partial<Load>): Load => ({
    name: 'gizmo',
    count: 1,
    supply: 'dc',
    currentA: 2,
    ...rest,
  });
  const hours = (load: Load, meanC = 25) => useByHour(dayOf({ loads: [load], voltageV: 12 }, {}), meanC);

  test('a day told as one number is even', () => {
    expect(useByHour(dayOf({ loads: [], dailyUseAh: 48, voltageV: 12 }, {}), 25)).toEqual(Array(24).fill(2));
  });

  test('a thing without a row runs from the evening on, one with a row at its times', () => {
    const gizmo = hours(thing({ hoursPerDay: 2 }));
    expect([gizmo[17], gizmo[18], gizmo[19], gizmo[20]]).toEqual([0, 2, 2, 0]);
    const pump = hours(thing({ name: 'water pump', hoursPerDay: 1.5 }));
    expect([7, 12, 18].map(h => pump[h])).toEqual([1, 1, 1]);
    expect(sum(pump)).toBeCloseTo(3, 9);
    const cpap = hours(thing({ name: 'cpap', hoursPerDay: 8 }));
    expect([21, 22, 23, 0, 5, 6].map(h => cpap[h])).toEqual([0, 2, 2, 2, 2, 0]);
  });

  test('what runs on, or hardly, is even; a part of an hour counts as a part', () => {
    expect(sharesOf([18], 24)).toEqual(Array(24).fill(1 / 24));
    expect(sharesOf([18], 0)).toEqual(Array(24).fill(1 / 24));
    const shares = sharesOf([18], 1.5);
    expect(shares[18]).toBeCloseTo(1 / 1.5, 9);
    expect(shares[19]).toBeCloseTo(0.5 / 1.5, 9);
    expect(shares[20]).toBe(0);
    expect(sharesOf([18], 23.5)[17]).toBeCloseTo(0.5 / 23.5, 9);
  });

  test('a fridge is hottest from two to four, whatever it is called with', () => {
    const fridge = hours(thing({ name: 'fridge', isAverage: true }), 30);
    expect(fridge[14]).toBeCloseTo(fridge[15]!, 9);
    expect(fridge[14]).toBeGreaterThan(fridge[13]!);
    expect(fridge[14]).toBeGreaterThan(1.2 * fridge[2]!);
    expect(sum(fridge)).toBeCloseTo(48, 9);
  });
});

describe('a trip in the cold and the heat', () => {
  test('lithium below freezing takes nothing of the sun', () => {
    const cold = tripWith({ chemistry: 'lfp', sun: { powerW: 200, sun: byron } });
    const trip = { ...cold, use: { ...cold.use, ambientC: -5 } };
    expect(likelyRun(trip).balance.sums.inAh).toBe(0);
    expect(likelyRun(cold).balance.sums.inAh).toBeGreaterThan(1);
  });

  test('cold lead holds less: IEEE 485 at 10 °C', () => {
    const trip = tripWith({});
    expect(likelyRun({ ...trip, use: { ...trip.use, ambientC: 10 } }).capacityAh).toBeCloseTo(100 / 1.19, 6);
    expect(likelyRun(trip).capacityAh).toBeCloseTo(100, 6);
  });

  test('the told heat or the place’s moves the hours of a fridge', () => {
    const fridge: Load = { name: 'fridge', count: 1, supply: 'dc', powerW: 45 };
    const trip = { ...tripWith({ durationH: 24, startHour: 0 }), use: { loads: [fridge], voltageV: 12 } };
    const noon = (t: typeof trip, values = {}) => {
      const found: number[] = [];
      simulate(t, { ...likelyOf(t), ...values }, undefined, h => found.push(h.useAh));
      return found[14]! / sum(found);
    };
    const told = { ...trip, use: { ...trip.use, ambientC: 10 } };
    expect(noon(told)).toBeGreaterThan(noon(trip, { ambientC: 35 }) + 0.005);
    expect(noon(told, { ambientC: 35 })).toBeCloseTo(noon(told), 12);
    expect(noon(trip, { ambientC: 10 })).toBeCloseTo(noon(told), 6);
  });

  test('it starts at what is in it, and the margin is counted from the depth', () => {
    const bank = { ...agm, stateOfChargePercent: 70 };
    const trip = { ...tripWith({ durationH: 10 }), bank };
    const { endCharge, lowestCharge, margin } = likelyRun(trip);
    expect(endCharge).toBeCloseTo(60, 6);
    expect(lowestCharge).toBeCloseTo(60, 6);
    expect(margin).toBeCloseTo(10, 6);
    expect(likelyRun({ ...trip, depthPercent: 80 }).margin).toBeCloseTo(40, 6);
  });

  test('an acceptance takes its time constant from the values', () => {
    const battery = { chemistry: 'agm' as const, capacityAh: 100, efficiency: 1 };
    expect(acceptance(battery)(6, 100, 1)).toBeCloseTo(6 * (1 - Math.exp(-1 / 1.2)), 9);
    expect(acceptance(battery, { timeConstant: 2 })(6, 100, 1)).toBeCloseTo(6 * (1 - Math.exp(-0.5)), 9);
    expect(acceptance({ ...battery, efficiency: 0.5 })(60, 10, 1)).toBeCloseTo(10, 9);
  });
});
