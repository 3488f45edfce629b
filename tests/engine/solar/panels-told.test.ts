import { describe, expect, test } from 'vitest';
import { chemistryRow } from '#engine/battery/tables.ts';
import { circuitAssumptions } from '#engine/cable/circuit.ts';
import { airTemperature, dayTemperature, heightOf } from '#engine/solar/air.ts';
import { coldestMorning } from '#engine/solar/cold.ts';
import { dailyYield, flowingAh } from '#engine/solar/model.ts';
import { fewestInSeries, fullPowerVolts, toldOpenV } from '#engine/solar/module.ts';
import { wiringAssumptions } from '#engine/solar/wiring.ts';
import { judgeWiring } from '#engine/solar/wiring-fit.ts';
import type { Solar } from '#rig/rig.ts';

const panel = (count: number, openCircuitV?: number, powerW = 100): Solar => ({
  count,
  powerW,
  openCircuitV,
});

test('open-circuit volts of unlike panels are their mean, each panel counted', () => {
  expect(toldOpenV([panel(2, 22), panel(1, 40)])).toBeCloseTo((22 + 22 + 40) / 3, 9);
  expect(toldOpenV([panel(2, 22), panel(1)])).toBeUndefined();
});

test('a PWM at 24 V has twice the volts of panels for 12 V, a large one too: it may be one for a roof on 12 V alone', () => {
  const at = (blocks: number, powerW: number) =>
    fullPowerVolts({ blocks, panels: [panel(1, undefined, powerW)] });
  const [small, large] = [at(1, 100), at(1, 300)];
  expect(large.value).toBe(small.value);
  expect(large.high).toBeGreaterThan(1.5 * small.high);
  for (const powerW of [100, 300]) {
    const { value, low, high, why } = at(2, powerW);
    expect([value, low, high]).toEqual([2 * small.value, 2 * small.low, 2 * small.high]);
    expect(why).toBe('panels for 24 V, or as many for 12 V in series');
  }
});

test.for([
  // panels, volts of each, batteries of 12 V in series: a panel for 12 V charges 12 V, two in series 24 V.
  [1, 22, 1, 1],
  [4, 22, 1, 1],
  [2, 22, 2, 2],
  [4, 22, 2, 2],
  [3, 22, 2, 3],
  [4, 22, 4, 4],
  [2, 44, 2, 1],
  [1, 22, 2, undefined],
] as const)('%d panels of %d V on %d × 12 V: %s in a string', ([count, openV, blocks, fewest]) => {
  expect(fewestInSeries(count, openV, blocks)).toBe(fewest);
});

describe('panels of which one has no label', () => {
  const fitOf = (panels: readonly Solar[]) =>
    judgeWiring({ panels, blocks: 1, isShaded: false, controller: 'mppt' }, 1, {
      stringVoltage: 22,
      coldVoltage: { value: 24, low: 23, high: 25 },
      chargeCurrent: 10,
    });
  test('two that are unlike side by side are told so, whatever a third is', () => {
    expect(fitOf([panel(1, 22), panel(1, 40)]).reason).toBe('unlike-volts');
    expect(fitOf([panel(1, 22), panel(1), panel(1, 40)]).reason).toBe('unlike-volts');
    expect(fitOf([panel(1, 22), panel(1), panel(1, 22)]).reason).not.toBe('unlike-volts');
  });
});

test('a battery of 24 V is charged at twice the volts of one of 12 V, likely and at both ends', () => {
  const chargingOf = (blocks: number) =>
    wiringAssumptions({ panels: [panel(2, 22)], blocks, isShaded: false }).find(
      ({ name }) => name === 'chargingVoltage',
    );
  const [one, two] = [chargingOf(1), chargingOf(2)];
  for (const end of ['value', 'low', 'high'] as const)
    expect(two?.[end]).toBeCloseTo(2 * (one?.[end] ?? Number.NaN), 9);
  expect(one?.low).toBeLessThan(one?.value ?? 0);
  expect(one?.high).toBeGreaterThan(one?.value ?? 99);
});

test('through a PWM amps flow, through an MPPT watts at the volts of charging', () => {
  const sun = { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 3, powerW: 160, nominalVoltageV: 12 };
  const pwm = { ...sun, controller: 'pwm' as const };
  const made = dailyYield(pwm, {});
  expect(flowingAh(made, pwm)).toBe(made.dailyYieldAh);
  const mppt = { ...sun, controller: 'mppt' as const };
  const volts = dailyYield(mppt, {}).dailyYieldEnergyWh / flowingAh(dailyYield(mppt, {}), mppt);
  // Higher than at rest, lower than absorption.
  expect(volts).toBeGreaterThan(chemistryRow('agm').nominalV);
  expect(volts).toBeLessThan(14.4);
});

test('a lead of panels goes by those whose watts are known', () => {
  const facts = (solar: readonly Solar[]) =>
    circuitAssumptions({ kind: 'solar', use: 'critical', voltageV: 12, facts: { solar: [...solar] } });
  const known = panel(2, 22);
  expect(facts([known, { count: 1 }])).toEqual(facts([known]));
  expect(facts([{ count: 1, powerW: 100 }]).map(({ name }) => name)).toContain('openCircuitVoltage');
});

test('a height follows from both coordinates or from none', () => {
  expect(heightOf({ latitudeDeg: -35.3, longitudeDeg: 149.1 })).toBeGreaterThan(150);
  expect(heightOf({ latitudeDeg: -35.3 })).toBeUndefined();
  expect(heightOf({ longitudeDeg: 149.1 })).toBeUndefined();
  expect(heightOf({ heightM: 1200 })).toBe(1200);
});

test('the colder the nights of a place, the further its coldest falls below them; warm places keep the least', () => {
  // Published record-low practice: an inland winter night of −15 °C mean goes some 15 K lower, a mild coast some 7 K.
  const inland = coldestMorning({ latitudeDeg: 53.5, longitudeDeg: -113.5, month: 1 });
  const coast = coldestMorning({ latitudeDeg: -28.6, longitudeDeg: 153.6, month: 7 });
  expect(inland.value).toBeLessThan(-24);
  expect(inland.value).toBeGreaterThan(-42);
  expect(coast.value).toBeGreaterThan(0);
  expect(coast.value).toBeLessThan(12);
});

test('where nobody named a place, the air is told for what it is asked of', () => {
  expect(dayTemperature({}).why).toContain('day');
  expect(airTemperature({}).why).toContain('weather');
  expect(dayTemperature({}).value).toBeGreaterThanOrEqual(airTemperature({}).value);
});
