import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bridge, convertKind, type Kind, kinds } from '#engine/loads/convert.ts';
import { areaOfGauge, gaugeName, gaugeOfArea } from '#quantity/gauge.ts';

test.for<[value: number, from: Kind, to: Kind, volts: number, hours: number, want: number]>([
  [60, 'power', 'current', 12, 1, 5],
  [5, 'current', 'power', 12, 1, 60],
  [100, 'charge', 'energy', 12.8, 1, 1280],
  [1280, 'energy', 'charge', 12.8, 1, 100],
  [60, 'power', 'charge', 12, 5, 25],
  [25, 'charge', 'power', 12, 5, 60],
  [2, 'current', 'charge', 12, 8, 16],
  [16, 'charge', 'current', 12, 8, 2],
  [40, 'power', 'energy', 12, 3, 120],
  [120, 'energy', 'power', 12, 3, 40],
  [2, 'current', 'energy', 12, 8, 192],
  [192, 'energy', 'current', 12, 8, 2],
  [7, 'power', 'power', 12, 8, 7],
])('%s of %s as %s at %s V over %s h is %s', ([value, from, to, voltageV, hours, want]) => {
  expect(convertKind({ value, from, to, voltageV, hours })).toBeCloseTo(want, 9);
});

test('there and back is where one was', () => {
  const kind = fc.constantFrom(...kinds);
  const number = fc.double({ min: 0.01, max: 5000, noNaN: true });
  fc.assert(
    fc.property(kind, kind, number, number, number, (from, to, value, voltageV, hours) => {
      const there = convertKind({ value, from, to, voltageV, hours });
      const back = convertKind({ value: there, from: to, to: from, voltageV, hours });
      return Math.abs(back - value) < 1e-9 * value;
    }),
  );
});

test('volts bridge watts and amps, hours bridge a draw and an amount', () => {
  expect(bridge('power', 'current')).toEqual({ volts: true, hours: false });
  expect(bridge('current', 'charge')).toEqual({ volts: false, hours: true });
  expect(bridge('power', 'charge')).toEqual({ volts: true, hours: true });
});

test('gauges: ten steps are ten times the copper, and back', () => {
  expect(areaOfGauge(10) / areaOfGauge(20)).toBeCloseTo(10, 0);
  for (const n of [-3, 0, 4, 8, 17]) expect(gaugeOfArea(areaOfGauge(n))).toBeCloseTo(n, 9);
  expect([8, 0, -1, -3].map(gaugeName)).toEqual(['8 AWG', '1/0 AWG', '2/0 AWG', '4/0 AWG']);
});
