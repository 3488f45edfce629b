import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { meanChargeV } from '#engine/battery/round-trip.ts';
import { dayOf } from '#engine/loads/model.ts';
import { airTemperature } from '#engine/solar/air.ts';
import { hourlyShares, type Sky, solarAssumptions } from '#engine/solar/model.ts';
import { simulate, startOf, tripAssumptions } from '#engine/trip/model.ts';
import { driveOf, planOf, type TripDay } from '#engine/trip/plan.ts';
import { sharesOf, useByHour } from '#engine/trip/profile.ts';
import { drivingA, drivingAssumptions, pluggedA } from '#engine/trip/sources.ts';
import { skiesOf, sunOffers, type TripSun, yieldsOf } from '#engine/trip/suns.ts';
import type { Load } from '#rig/rig.ts';
import { likelyOf, likelyRun, tripWith } from './cases.ts';

const byron = { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 3, controller: 'mppt' } as const;
const agm = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }]));
const agm24 = present(bankOf([{ count: 2, capacityAh: 100, chemistry: 'agm' }], 'series'));
const lfp = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp' }]));
const sum = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);
const names = (list: readonly { readonly name: string }[]) => list.map(a => a.name);

describe('what a trip takes for granted', () => {
  test('without charging nothing of charging', () => {
    const list = names(tripAssumptions(tripWith({})));
    expect(list).toEqual(['depthOfDischarge', 'peukertExponent', 'age', 'batteryTemperature']);
    expect(names(tripAssumptions(tripWith({ driving: { hoursPerDay: 0 } })))).toEqual(list);
  });

  test('with sun or driving how much is kept, and how fast lead takes its last part', () => {
    const driven = names(tripAssumptions(tripWith({ driving: { hoursPerDay: 1 } })));
    expect(driven).toEqual([
      'depthOfDischarge',
      'peukertExponent',
      'age',
      'batteryTemperature',
      'chargerCurrent',
      'alternatorShare',
      'chargeEfficiency',
      'topEfficiency',
      'timeConstant',
    ]);
    const sunny = names(tripAssumptions(tripWith({ chemistry: 'lfp', sun: { powerW: 100, sun: byron } })));
    expect(sunny).toContain('chargeEfficiency');
    expect(sunny).toContain('clearness');
    expect(sunny).not.toContain('timeConstant');
    const gel = tripAssumptions(tripWith({ chemistry: 'gel', driving: { hoursPerDay: 1 } }));
    expect(gel.at(-1)).toEqual({
      name: 'timeConstant',
      value: 2,
      low: 1.5,
      high: 2.8,
      unit: 'h',
      why: expect.stringContaining('gel'),
    });
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
    expect(present(air(byron)[0]).why).toContain('day and night');
    for (const sun of [{}, { latitudeDeg: -28.6 }, { month: 3 }])
      expect(air(sun)).toMatchObject([{ value: 25, low: 17, high: 33 }]);
  });

  test('a told yield needs no sun; a sky for the last days has names of its own', () => {
    const assumed = (trip: TripSun, told: readonly (Sky | undefined)[] = []) =>
      names(skiesOf(trip, 12, told).assumptions);
    expect(assumed({ ahPerDay: 40, sun: byron })).toEqual([]);
    const usual = names(solarAssumptions(byron));
    expect(assumed({ powerW: 100, sun: byron })).toEqual(usual);
    const tail = { powerW: 100, sun: { ...byron, sky: 'overcast' as const }, skyLastDays: 2 };
    const own = ['overcastClearness on the last days', 'reflectionLoss on the last days'];
    expect(assumed(tail)).toEqual([...usual, ...own]);
    expect(assumed({ ...tail, ahPerDay: 40 })).toEqual([...usual, ...own]);
    // The same sky all along adds nothing.
    expect(assumed({ ...tail, sun: byron })).toEqual(usual);
    // Days that are told have each their sky; those of none have the usual one.
    expect(assumed(tail, ['sunny', undefined, 'overcast', 'mixed', 'sunny'])).toEqual([
      ...usual,
      'sunnyClearness on sunny days',
      'overcastClearness on overcast days',
      'reflectionLoss on overcast days',
    ]);
  });

  test('a start: as told, with the first drive of a plan, else in the afternoon', () => {
    expect(startOf(tripWith({ startHour: 6 }))).toBe(6);
    expect(startOf(tripWith({ days: [{ drivingH: 2 }] }))).toBe(9);
    expect(startOf(tripWith({ driving: { hoursPerDay: 2 } }))).toBe(16);
  });
});

describe('the sun of a day', () => {
  const made = (trip: TripSun, values = {}, told: readonly (Sky | undefined)[] = [], voltageV = 12) => {
    const skies = skiesOf(trip, voltageV, told);
    return { ...sunOffers(trip, skies, () => yieldsOf(skies, values)), skies };
  };

  test('by the hour it adds up to the day, and leaves out the first and last glancing light', () => {
    const { skies, offers, dayAh } = made({ powerW: 100, sun: byron });
    expect(sum(skies.shares)).toBeCloseTo(1, 9);
    expect(offers).toEqual([{ dayWh: expect.closeTo(12 * dayAh, 6), dayAh: 0 }]);
    const shares = hourlyShares(-28.6, 3);
    expect(shares.filter(s => s > 0).length).toBeGreaterThan(skies.shares.filter(h => h > 0).length);
    // Every hour gives two points of a hundred of the day; noon gains what is shared out again.
    const kept = sum(shares.map(s => Math.max(0, s - 0.02)));
    expect(skies.shares[12]).toBeCloseTo((present(shares[12]) - 0.02) / kept, 9);
    expect(Math.min(...skies.shares)).toBe(0);
  });

  test('twice the watts, twice the yield; twice the volts, half the amp hours; no panel, nothing', () => {
    const at12 = made({ powerW: 100, sun: byron }).dayAh;
    expect(made({ powerW: 250, sun: byron }).dayAh).toBeCloseTo(2.5 * at12, 9);
    expect(made({ powerW: 100, sun: byron }, {}, [], 24).dayAh).toBeCloseTo(at12 / 2, 9);
    expect(made({ sun: byron })).toMatchObject({ offers: [{ dayWh: 0, dayAh: 0 }], dayAh: 0 });
  });

  test('a PWM passes amps, and a told yield is amps', () => {
    const { offers, dayAh } = made({ powerW: 100, sun: { ...byron, controller: 'pwm' } });
    expect(offers).toEqual([{ dayWh: 0, dayAh: expect.closeTo(dayAh, 9) }]);
    expect(made({ ahPerDay: 40, sun: byron })).toMatchObject({
      offers: [{ dayWh: 0, dayAh: 40 }],
      dayAh: 40,
    });
    const { shares } = made({ ahPerDay: 40, sun: {} }).skies;
    expect(shares[11]).toBeCloseTo(present(shares[12]), 9);
  });

  test('polar night: shares of nothing stay nothing', () => {
    expect(sum(made({ powerW: 100, sun: { latitudeDeg: 80, month: 12 } }).skies.shares)).toBe(0);
  });

  test('the last days have their own sky, and of a told yield the same share', () => {
    const tail: TripSun = { powerW: 100, sun: { ...byron, sky: 'overcast' }, skyLastDays: 2 };
    const { offers, dayAh, skies } = made(tail);
    const usual = present(made({ powerW: 100, sun: byron }).offers[0]).dayWh;
    const dull = present(made({ powerW: 100, sun: { ...byron, sky: 'overcast' } }).offers[0]).dayWh;
    expect(skies.lastSkyH).toBe(48);
    expect(dayAh).toBeCloseTo(usual / 12, 9);
    expect(offers.map(o => o.dayWh)).toEqual([expect.closeTo(usual, 6), expect.closeTo(dull, 6)]);
    // Their own value moves them and no other day.
    const moved = made(tail, { 'overcastClearness on the last days': 0.08 }).offers;
    expect(present(moved[1]).dayWh).toBeLessThan(0.6 * dull);
    expect(present(moved[0]).dayWh).toBeCloseTo(usual, 9);
    const told = made({ ...tail, ahPerDay: 40 });
    expect(told.dayAh).toBe(40);
    expect(told.offers.map(o => o.dayAh)).toEqual([40, expect.closeTo((40 * dull) / usual, 6)]);
    // Where no panel brings anything, a told yield is what it is.
    const dark = made({ ahPerDay: 40, skyLastDays: 1, sun: { latitudeDeg: 80, month: 12, sky: 'overcast' } });
    expect(dark.offers.map(o => o.dayAh)).toEqual([40, 40]);
  });

  test('each day its sky: a sunny one brings more than the usual, an overcast one less', () => {
    const { offers, skies } = made({ powerW: 100, sun: byron }, {}, ['overcast', undefined, 'sunny']);
    const at = (sky: Sky | undefined) => present(offers[skies.placeOf(sky)]).dayWh;
    expect(at('overcast')).toBeLessThan(0.6 * at(undefined));
    expect(at('sunny')).toBeGreaterThan(1.1 * at(undefined));
    expect(at('mixed')).toBe(at(undefined));
    expect(skies.lastSkyH).toBe(0);
  });
});

describe('driving', () => {
  test('whether there is any decides what is assumed', () => {
    const has = (trip: Parameters<typeof tripWith>[0]) =>
      names(tripAssumptions(tripWith(trip))).includes('chargerCurrent');
    expect(has({ driving: {} })).toBe(false);
    expect(has({ driving: { hoursPerDay: 2 }, days: [{ drivingH: 0 }, { drivingH: 0 }] })).toBe(false);
    expect(has({ days: [{ drivingH: 0 }, { drivingH: 1 }] })).toBe(true);
    expect(has({ driving: { hoursPerDay: 0.5 } })).toBe(true);
  });

  test('what is plugged in has names of its own', () => {
    const list = names(tripAssumptions(tripWith({ days: [{ generatorH: 2 }], plug: { generatorW: 1000 } })));
    expect(list).toContain('chargerCurrent plugged in');
    expect(list).toContain('chargerEfficiency plugged in');
    expect(list).not.toContain('chargerCurrent');
    expect(pluggedA({ charger: { kind: 'mains', currentA: 20 } }, agm, {})).toBeCloseTo(19.4, 9);
    expect(pluggedA({ charger: { kind: 'mains', currentA: 50 }, generatorW: 600 }, agm, {})).toBeCloseTo(
      (600 * 0.85 * 0.87 * 0.8) / 14.4,
      6,
    );
    expect(pluggedA({}, agm, { 'chargerCurrent plugged in': 12 })).toBe(12);
  });

  test('on mains no generator holds a charger back', () => {
    const plug = { charger: { kind: 'mains', currentA: 50 }, generatorW: 600 } as const;
    expect(pluggedA(plug, agm, {}, { isOnMains: true })).toBeCloseTo(50 * 0.97, 9);
    const days = [{ generatorH: 1 }, { mainsH: 1 }];
    const { sums } = likelyRun(tripWith({ days, plug, durationH: 48, startHour: 0 })).balance;
    expect(sums.pluggedAh).toBeCloseTo(50 * 0.97 + (600 * 0.85 * 0.87 * 0.8) / 14.4, 6);
  });

  test('on mains the battery carries what runs on 12 V alone', () => {
    const loads: Load[] = [
      { name: 'fan', count: 1, supply: 'dc', currentA: 2, hoursPerDay: 24 },
      { name: 'thing', count: 1, supply: 'ac', powerW: 600, hoursPerDay: 24 },
    ];
    const use = { loads, voltageV: 12 };
    const outAh = (days: readonly TripDay[]) =>
      likelyRun(
        tripWith({
          use,
          days,
          plug: { charger: { kind: 'mains', currentA: 1 } },
          durationH: 5,
          startHour: 18,
        }),
      ).balance.sums.useAh;
    expect(outAh([{ mainsH: 5 }])).toBeCloseTo(10, 6);
    expect(outAh([{ mainsH: 1 }])).toBeGreaterThan(200);
  });

  test('an isolator where nobody said, a smart alternator by half of the time', () => {
    expect(names(drivingAssumptions({ hoursPerDay: 1 }, agm))).toEqual(['chargerCurrent', 'alternatorShare']);
    expect(drivingA({ hoursPerDay: 1 }, agm, {})).toBe(20);
    expect(drivingA({ hoursPerDay: 1, alternator: 'smart' }, agm, {})).toBe(10);
    expect(drivingA({ hoursPerDay: 1 }, agm, { chargerCurrent: 30 })).toBe(30);
  });

  test('watts of a charger by the volts of the bank', () => {
    const charger = { kind: 'dcdc', powerW: 276 } as const;
    const [ofAgm, ofLfp] = [meanChargeV('agm')[0], meanChargeV('lfp')[0]];
    expect(drivingA({ charger }, agm, {})).toBeCloseTo((276 / ofAgm) * 0.97, 6);
    expect(drivingA({ charger }, agm24, {})).toBeCloseTo((276 / ofAgm / 2) * 0.97, 6);
    expect(drivingA({ charger }, lfp, {})).toBeCloseTo((276 / ofLfp) * 0.97, 6);
  });

  test('from nine in the morning, earlier where the day would not hold it', () => {
    expect(driveOf(3)).toEqual({ fromHour: 9, hours: 3 });
    expect(driveOf(18)).toEqual({ fromHour: 6, hours: 18 });
    const hours = (told: readonly TripDay[], everyDay: number) =>
      [0, 1, 2].map(day =>
        sum([...planOf(3, told, everyDay, () => 0).driving.slice(24 * day, 24 * day + 24)]),
      );
    // A plan that tells driving on any day tells it of all; one that tells none leaves it as on every day.
    expect(hours([{ drivingH: 0 }, { drivingH: 2 }], 5)).toEqual([0, 2, 0]);
    expect(hours([{ sky: 'sunny' }], 1.5)).toEqual([1.5, 1.5, 1.5]);
    expect(hours([], 0)).toEqual([0, 0, 0]);
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
    expect(fridge[14]).toBeCloseTo(present(fridge[15]), 9);
    expect(fridge[14]).toBeGreaterThan(present(fridge[13]));
    expect(fridge[14]).toBeGreaterThan(1.2 * present(fridge[2]));
    expect(sum(fridge)).toBeCloseTo(48, 9);
  });
});

describe('how a fridge is built tells its day', () => {
  const fridge = (rest: Partial<Load>): readonly number[] =>
    useByHour(dayOf({ loads: [{ name: 'fridge', count: 1, supply: 'dc', ...rest }], voltageV: 12 }, {}), 30);
  const swing = (byHour: readonly number[]): number => Math.max(...byHour) / Math.min(...byHour);

  test('a household one, its freezer colder than a cool box, swings less with the air', () => {
    const kitchen = swing(fridge({ supply: 'ac', volumeL: 300 }));
    expect(kitchen).toBeGreaterThan(1.2);
    expect(kitchen).toBeLessThan(swing(fridge({})) - 0.03);
  });
  test('a three-way one heats all day', () => {
    expect(swing(fridge({ build: 'three-way' }))).toBeCloseTo(1, 9);
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
      return present(found[14]) / sum(found);
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
});
