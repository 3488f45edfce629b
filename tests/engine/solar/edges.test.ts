import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { latitudeMonth } from '#climate/latitude.ts';
import { clearnessAt } from '#climate/world.ts';
import { usualTrip } from '#engine/battery/round-trip.ts';
import { airAboutFridge, airTemperature, dayTemperature } from '#engine/solar/air.ts';
import { averagePeakSunHours, clearnessFor, clearnessOf } from '#engine/solar/climate.ts';
import { climateAt } from '#engine/solar/climate-at.ts';
import { hourlyShares } from '#engine/solar/hourly.ts';
import {
  dailyYield,
  panelPowerFor,
  peakSunHours,
  type SolarCase,
  solarAssumptions,
} from '#engine/solar/model.ts';
import { controllerAssumptions, panelAssumptions } from '#engine/solar/panel.ts';
import { daySpread, monthSpread, nineInTen, yearSpread } from '#engine/solar/spread.ts';
import type { Station } from '#engine/solar/stations.ts';
import { dayLengthOf, outsideRadiationOf } from '#engine/solar/sun.ts';
import { tiltedRadiation } from '#engine/solar/tilt.ts';
import { Trace } from '#rule/trace.ts';

const names = (c: SolarCase) => solarAssumptions(c).map(a => a.name);
const one = (c: SolarCase, name: string) => solarAssumptions(c).find(a => a.name === name);

describe('clearness by latitude alone', () => {
  test('its span holds other places on it, and other years', () => {
    const { clearness, clearnessSd } = latitudeMonth(35, 7);
    const { value, low, high } = clearnessFor(35, undefined, 7);
    expect(value).toBe(clearness);
    expect(value - low).toBeGreaterThan(nineInTen * clearnessSd);
    expect(value - low).toBeLessThan(nineInTen * (clearnessSd + 0.12 * value));
    expect(high - value).toBeCloseTo(value - low, 9);
    const days = clearnessFor(35, undefined, 7, 2);
    expect(days.low).toBeLessThan(low);
    // Clear sky is the ceiling.
    expect(clearnessFor(18, undefined, 1, 2).high).toBe(0.78);
    const bright = clearnessFor(-17.9, 122.2, 8);
    expect(bright.value * 1.08).toBeGreaterThan(0.78);
    expect(bright.high).toBe(0.78);
    expect(bright.low).toBeLessThan(bright.value * 0.925);
  });
});

describe('points of one’s own before the grid', () => {
  /** A point that is brighter than the grid by a ratio in every month. */
  const point = (name: string, latitudeDeg: number, longitudeDeg: number, ratio: number): Station => ({
    name,
    latitudeDeg,
    longitudeDeg,
    months: Array.from(
      { length: 12 },
      (_, m) =>
        ratio * clearnessAt(latitudeDeg, longitudeDeg, m + 1) * outsideRadiationOf(latitudeDeg, m + 1),
    ),
    how: 'memory',
    source: 'made up',
  });
  const here = point('here', -30, 150, 1.1);
  const grid = (longitudeDeg: number) => clearnessAt(-30, longitudeDeg, 3);

  test('at a point it is the point’s; less and less up to 300 km; nothing beyond', () => {
    expect(clearnessOf([here], -30, 150)(3)).toMatchObject({
      value: expect.closeTo(1.1 * grid(150), 9),
      nearestKm: 0,
      station: 'here',
    });
    // A degree of longitude is 96.3 km there: 192.6 km, so (300 − 192.6) / 260 of the deviation in logarithms.
    expect(clearnessOf([here], -30, 152)(3).value).toBeCloseTo(1.1 ** 0.413 * grid(152), 3);
    const beyond = clearnessOf([here], -30, 153.2)(3);
    expect(beyond).toMatchObject({ value: grid(153.2), nearestKm: 300 });
    expect(beyond.station).toBeUndefined();
  });

  test('between two it is their mean, the nearer first', () => {
    const there = point('there', -30, 151, 0.9);
    const half = clearnessOf([here, there], -30, 150.5)(3);
    const ratio = half.value / grid(150.5);
    // 48 km from each.
    expect(ratio).toBeCloseTo(Math.sqrt(1.1 * 0.9) ** 0.968, 2);
    expect(clearnessOf([there, here], -30, 150.1)(3).station).toBe('here');
    expect(clearnessOf([there, here], -30, 150.1)(3).value / grid(150.1)).toBeGreaterThan(1.05);
  });

  test('polar night has no clearness of its own', () => {
    const pole = { ...point('pole', 80, 20, 1), months: Array<number>(12).fill(0) };
    expect(clearnessOf([pole], 80, 20)(12).value).toBe(clearnessAt(80, 20, 12));
  });

  test('the span holds the model’s error and bad years: wider in dull climates, far north and far from a point', () => {
    const spread = (k: number, lat: number, near: number) => monthSpread(k, lat, near);
    // Root of the sum of squares of 6 % and, by the table at 0.50, 9 %; nine in ten lie within 1.645 of them.
    expect(spread(0.5, -30, 1)).toBeCloseTo(1.645 * Math.sqrt(0.06 ** 2 + 0.09 ** 2), 9);
    expect(spread(0.5, -30, 0)).toBeCloseTo(1.645 * Math.sqrt(0.08 ** 2 + 0.09 ** 2), 9);
    expect(spread(0.3, -30, 0)).toBeCloseTo(1.645 * Math.sqrt(0.08 ** 2 + 0.18 ** 2), 9);
    expect(spread(0.5, 63, 0)).toBeCloseTo(1.645 * Math.sqrt(0.14 ** 2 + 0.09 ** 2), 9);
    expect(spread(0.5, -75, 0)).toBeCloseTo(1.645 * Math.sqrt(0.2 ** 2 + 0.09 ** 2), 9);
    // Over few days the days count: half as many tell anything new. Over a day or two, all of their spread.
    expect(monthSpread(0.5, -30, 0, 8)).toBeCloseTo(1.645 * Math.hypot(0.08, 0.09, 0.32 / 2), 9);
    expect(monthSpread(0.5, -30, 0, 1)).toBeCloseTo(1.645 * Math.hypot(0.08, 0.09, 0.32), 9);
    expect([0.1, 0.2, 0.225, 0.65, 0.8].map(yearSpread)).toEqual([
      0.22,
      0.22,
      expect.closeTo(0.215, 9),
      0.05,
      0.05,
    ]);
    expect([0.2, 0.475, 0.7].map(daySpread)).toEqual([0.76, expect.closeTo(0.35, 9), 0.19]);
  });

  test('without a month: the mean, from the worst to the best', () => {
    const year = averagePeakSunHours(-34, 151, 'sunny');
    const hours = Array.from({ length: 12 }, (_, m) => 0.73 * outsideRadiationOf(-34, m + 1));
    expect(year.value).toBeCloseTo(hours.reduce((a, b) => a + b) / 12, 9);
    expect(year).toMatchObject({
      name: 'sunnyPeakSunHours',
      low: Math.min(...hours),
      high: Math.max(...hours),
    });
    const mixed = averagePeakSunHours(-34, 151, 'mixed');
    expect(mixed.name).toBe('peakSunHours');
    expect(mixed.value).toBeLessThan(year.value);
  });
});

test('the span of a trip is wider than that of a month, and never goes below a quarter', () => {
  const month = clearnessFor(-32.2, 148.6, 6);
  const trip = clearnessFor(-32.2, 148.6, 6, 3);
  expect(trip.value).toBe(month.value);
  expect(trip.low).toBeLessThan(month.low);
  expect(trip.why).toContain('spells');
  const dull = clearnessFor(60.4, 5.3, 1, 1);
  expect(dull.low).toBeCloseTo(dull.value / 4, 9);
});

describe('air by day', () => {
  test('by latitude alone: 0.222 of the day’s range below its top, and as far off as places on it differ', () => {
    const where = { latitudeDeg: -38, month: 7 };
    const { dayMaxC, nightMinC, temperatureSdK } = latitudeMonth(-38, 7);
    const day = dayTemperature(where);
    expect(day.value).toBe(Math.round(dayMaxC - 0.2223 * (dayMaxC - nightMinC)));
    expect(day.high - day.value).toBe(Math.round(Math.hypot(6, nineInTen * temperatureSdK)));
    expect(day.value - day.low).toBe(day.high - day.value);
    expect(airTemperature(where).value).toBe(Math.round((dayMaxC + nightMinC) / 2));
    // 4.5 K a kilometre by day.
    const high = (heightM: number) => dayTemperature({ ...where, heightM }).value;
    expect(high(0) - high(2000)).toBe(9);
  });

  test('without a month it is the year’s, from the coldest to the warmest', () => {
    const months = Array.from({ length: 12 }, (_, m) => dayTemperature({ latitudeDeg: 38, month: m + 1 }));
    const year = dayTemperature({ latitudeDeg: 38 });
    const mean = months.reduce((sum, { value }) => sum + value, 0) / 12;
    expect(Math.abs(year.value - mean)).toBeLessThan(1);
    const middle = (of: 'low' | 'high') => months.map(month => (month.value + month[of]) / 2);
    expect(Math.abs(year.low - Math.min(...middle('low')))).toBeLessThanOrEqual(1);
    expect(Math.abs(year.high - Math.max(...middle('high')))).toBeLessThanOrEqual(1);
  });

  test('about a fridge it is no colder than a van or tent is kept', () => {
    const warm = { latitudeDeg: -12.4, longitudeDeg: 130.9, month: 1 };
    expect(airAboutFridge(warm)).toEqual({ ...airTemperature(warm), name: 'ambientC' });
    const cold = { latitudeDeg: 61, longitudeDeg: 10, month: 1 };
    const outside = airTemperature(cold);
    expect(outside.value).toBeLessThan(0);
    expect(airAboutFridge(cold)).toMatchObject({ value: 10, low: outside.low, high: 18 });
    expect(airAboutFridge(cold).why).not.toBe(outside.why);
  });

  test('of a place by day and night, at its height', () => {
    const leh = { latitudeDeg: 34.2, longitudeDeg: 77.6, month: 7 };
    const [{ dayMaxC, nightMinC }] = [present(climateAt(34.2, 77.6)[6])];
    expect(airTemperature(leh).value).toBe(Math.round((dayMaxC + nightMinC) / 2));
    // A cosine about 3 pm under a sun like one about noon: 0.222 of the range below its top.
    expect(dayTemperature(leh).value).toBe(Math.round(dayMaxC - 0.2223 * (dayMaxC - nightMinC)));
    expect(airTemperature(leh)).toMatchObject({
      low: airTemperature(leh).value - 6,
      high: airTemperature(leh).value + 6,
    });
    expect(airTemperature({ ...leh, heightM: 5300 }).value).toBeLessThan(airTemperature(leh).value - 7);
    expect(airTemperature({ ...leh, heightM: 5300 }).why).toContain('at 5300 m');
    const year = airTemperature({ latitudeDeg: 34.2, longitudeDeg: 77.6 });
    expect(year.low).toBeLessThan(-5);
    expect(year.high).toBeGreaterThan(15);
  });

  test('without a place a fair day, cooler in the mountains', () => {
    expect(dayTemperature({})).toMatchObject({ value: 25, low: 15, high: 35 });
    expect(airTemperature({ month: 5 })).toMatchObject({ value: 25, low: 20, high: 32 });
    expect(airTemperature({ heightM: 3000 })).toMatchObject({ value: 10, low: 5, high: 17 });
  });
});

describe('what is taken for granted', () => {
  test('a panel: heat unless it was told, shade only where there is some', () => {
    const losses = ['dirtLoss', 'wiringLoss', 'mismatchLoss', 'reflectionLoss'];
    const heat = ['mountHeating', 'powerCoefficient'];
    const panel = (c: SolarCase) => panelAssumptions(c).map(a => a.name);
    expect(panel({})).toEqual([...heat, 'dayTemperature', ...losses]);
    expect(panel({ ambientC: 30 })).toEqual([...heat, ...losses]);
    expect(panel({ ambientC: 30, shade: 'none' })).toEqual([...heat, ...losses]);
    expect(panel({ ambientC: 30, shade: 'half' })).toEqual([...heat, ...losses, 'shadeShare']);
    expect(controllerAssumptions({ controller: 'mppt' })).toMatchObject([
      { low: 0.92, why: 'MPPT, common practice' },
    ]);
    expect(controllerAssumptions({})).toMatchObject([
      { low: 0.75, why: expect.stringMatching(/named none/) },
    ]);
  });

  test('the sun: told, by month, by year, or of nowhere', () => {
    expect(names({ peakSunHours: 5 })).not.toContain('peakSunHours');
    expect(names({ peakSunHours: 5, sky: 'overcast' })[0]).toBe('overcastShare');
    expect(names({ peakSunHours: 2, sky: 'overcast' })[0]).toBe('mountHeating');
    expect(names({ sky: 'overcast' })[0]).toBe('overcastPeakSunHours');
    expect(names({ latitudeDeg: 30, month: 4 })[0]).toBe('clearness');
    expect(names({ latitudeDeg: 30, month: 4, sky: 'sunny' })[0]).toBe('sunnyClearness');
    expect(names({ latitudeDeg: 30 })[0]).toBe('peakSunHours');
    expect(names({ latitudeDeg: 30, month: 4 })).not.toContain('panelTilt');
    expect(names({ latitudeDeg: 30, month: 4, mount: 'flat' })).not.toContain('panelTilt');
  });

  test('a month that was told without a place may be anywhere: a wide range', () => {
    const sun = (c: SolarCase) => present(solarAssumptions(c)[0]);
    // Taken from the calendar it is a fair day of the season.
    expect(sun({ month: 6 })).toMatchObject({ value: 5, low: 3.5, high: 6.5 });
    expect(sun({ month: 6, isMonthTold: true })).toMatchObject({ value: 5, low: 2.5, high: 7.4 });
    expect(sun({ month: 12, isMonthTold: true })).toMatchObject({ value: 5, low: 0.4, high: 6.5 });
    expect(sun({ month: 12, isMonthTold: true, sky: 'sunny' }).low).toBeCloseTo(0.48, 9);
    expect(sun({ month: 12, isMonthTold: true, sky: 'overcast' })).toMatchObject({
      value: 1.2,
      high: expect.closeTo(2.925, 9),
    });
    expect(sun({ month: 12, isMonthTold: true, sky: 'overcast' }).low).toBeCloseTo(0.06, 9);
    expect(sun({ month: 12, isMonthTold: true, latitudeDeg: -34 }).name).toBe('clearness');
  });

  test('a stand is angled like the latitude, between 15 and 60°', () => {
    const tilt = (latitudeDeg: number) =>
      present(one({ latitudeDeg, month: 4, mount: 'tilted' }, 'panelTilt'));
    expect([3, -35, 70].map(lat => tilt(lat).value)).toEqual([15, 35, 60]);
    expect(tilt(-35)).toMatchObject({ low: 23, high: 47, unit: '°' });
  });
});

describe('values that are brought and values that are not', () => {
  const at = { latitudeDeg: -34, longitudeDeg: 151, month: 6 };
  const tilted = { ...at, mount: 'tilted' as const };
  const plane = (clearness: number, tiltDeg: number) =>
    tiltedRadiation({ latitudeDeg: -34, month: 6, clearness, tiltDeg });
  const likely = clearnessFor(-34, 151, 6).value;

  test('what is missing has its likely value, what is brought its own', () => {
    expect(peakSunHours(at)).toBeCloseTo(plane(likely, 0), 9);
    expect(peakSunHours(at, { clearness: 0.4 })).toBeCloseTo(plane(0.4, 0), 9);
    expect(peakSunHours(tilted)).toBeCloseTo(plane(likely, 34), 9);
    expect(peakSunHours(tilted, { clearness: 0.4 })).toBeCloseTo(plane(0.4, 34), 9);
    expect(peakSunHours(tilted, { panelTilt: 20 })).toBeCloseTo(plane(likely, 20), 9);
    expect(peakSunHours(tilted, { clearness: 0.4, panelTilt: 20 })).toBeCloseTo(plane(0.4, 20), 9);
    expect(peakSunHours({ ...at, sky: 'sunny' })).toBeCloseTo(plane(0.73, 0), 9);
    expect(peakSunHours({ ...at, sky: 'overcast' }, { overcastClearness: 0.2 })).toBeCloseTo(
      plane(0.2, 0),
      9,
    );
    expect(peakSunHours({ peakSunHours: 5, sky: 'overcast' })).toBeCloseTo(1.1, 9);
    expect(peakSunHours({ peakSunHours: 5, sky: 'overcast' }, { overcastShare: 0.3 })).toBeCloseTo(1.5, 9);
    expect(peakSunHours({ peakSunHours: 2, sky: 'overcast' })).toBe(2);
    expect(peakSunHours({ sky: 'sunny' }, { sunnyPeakSunHours: 7 })).toBe(7);
  });

  test('heat by how strong the sun is while it shines: hours of the place, or twelve', () => {
    const trace = new Trace();
    dailyYield({ ...at, powerW: 100, nominalVoltageV: 12 }, {}, trace);
    const step = (t: Trace) =>
      t.steps.find(s => s.kind === 'rule' && s.rule.name === 'sunWhileItShines') as unknown as {
        inputs: { N: number };
      };
    expect(step(trace).inputs.N).toBeCloseTo(dayLengthOf(-34, 6), 9);
    for (const c of [{}, { latitudeDeg: -34 }, { month: 6 }] as SolarCase[]) {
      const other = new Trace();
      dailyYield({ ...c, powerW: 100, nominalVoltageV: 12 }, {}, other);
      expect(step(other).inputs.N).toBe(12);
    }
    const pwm = new Trace();
    dailyYield({ ...at, controller: 'pwm', powerW: 100, nominalVoltageV: 12 }, {}, pwm);
    expect(step(pwm).inputs.N).toBeCloseTo(dayLengthOf(-34, 6), 9);
  });

  test('a panel for lead is bigger by what lead does not give back', () => {
    const at12 = panelPowerFor(30, { ...at, nominalVoltageV: 12, chemistry: 'agm' }).panelPowerW;
    const lithium = panelPowerFor(30, { ...at, nominalVoltageV: 12.8, chemistry: 'lfp' }).panelPowerW;
    const [lead, lfp] = [usualTrip('agm'), usualTrip('lfp')];
    expect(at12 / lithium).toBeCloseTo((lead.inV * lfp.chargeShare) / (lead.chargeShare * lfp.inV), 9);
    // From half to nearly full lead gives back seven eighths of its charge, at 13.4 V; lithium 99 % at 13.3 V.
    expect(at12 / lithium).toBeGreaterThan(1.1);
    expect(at12 / lithium).toBeLessThan(1.18);
    expect(panelPowerFor(30, { ...at, nominalVoltageV: 12 }).panelPowerW).toBeCloseTo(at12, 9);
  });
});

describe('edges of the sun', () => {
  test('where it does not rise there are no shares and no gain', () => {
    expect(hourlyShares(85, 12)).toEqual(Array(24).fill(0));
    const flat = tiltedRadiation({ latitudeDeg: 68, month: 12, clearness: 0.4, tiltDeg: 0 });
    expect(tiltedRadiation({ latitudeDeg: 68, month: 12, clearness: 0.4, tiltDeg: 60 })).toBe(flat);
    const low = tiltedRadiation({ latitudeDeg: 60, month: 12, clearness: 0.4, tiltDeg: 0 });
    expect(tiltedRadiation({ latitudeDeg: 60, month: 12, clearness: 0.4, tiltDeg: 60 })).toBeGreaterThan(
      2 * low,
    );
  });

  test('flat ground needs no line of tilt', () => {
    const trace = new Trace();
    tiltedRadiation({ latitudeDeg: -34, month: 6, clearness: 0.5, tiltDeg: 0 }, trace);
    expect(trace.steps.map(s => (s.kind === 'rule' ? s.rule.name : ''))).not.toContain(
      'tiltedPlaneRadiation',
    );
  });
});
