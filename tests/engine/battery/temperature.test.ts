import { describe, expect, test } from 'vitest';
import { batteryTemperature, type Stand } from '#engine/battery/temperature.ts';
import { airTemperature } from '#engine/solar/air.ts';

const alps = { latitudeDeg: 46.5, longitudeDeg: 9.84, month: 1 };
const darwin = { latitudeDeg: -12.46, longitudeDeg: 130.84, month: 11 };

describe('a battery’s temperature', () => {
  test('nowhere in particular: that of the label, give or take ten', () => {
    expect(batteryTemperature({})).toMatchObject({
      name: 'batteryTemperature',
      value: 25,
      low: 15,
      high: 35,
    });
  });

  test('the air of place and month in the vehicle', () => {
    const air = airTemperature(darwin);
    const { value, low, high, why } = batteryTemperature(darwin);
    expect([value, low, high]).toEqual([air.value, air.low - 4, air.high + 8]);
    expect(why).toMatch(/^in the vehicle; /);
    expect(value).toBeGreaterThan(25);
  });

  test('in frost it is kept above freezing where somebody lives, and may be as cold as the air', () => {
    const air = airTemperature(alps);
    expect(air.value).toBeLessThan(0);
    const at = (stand: Stand) => batteryTemperature(alps, stand);
    expect(at('vehicle')).toMatchObject({ value: 10, low: air.low - 4 });
    expect(at('inside').value).toBe(10);
    expect(at('outside')).toMatchObject({ value: air.value });
    expect(at('engine').value).toBe(air.value + 15);
    for (const stand of ['inside', 'vehicle', 'outside', 'engine'] as const)
      expect(at(stand).high).toBeGreaterThanOrEqual(at(stand).value);
  });

  test('a told height cools, with a place and without', () => {
    const low = batteryTemperature({ ...darwin, heightM: 0 }).value;
    expect(batteryTemperature({ ...darwin, heightM: 2000 }).value).toBeLessThan(low - 8);
    expect(batteryTemperature({ heightM: 3000 }).value).toBeLessThan(15);
  });
});
