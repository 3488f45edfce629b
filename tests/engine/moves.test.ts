import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { applianceOf, things } from '#catalog/appliances.ts';
import type { Assumption, Values } from '#engine/assumption.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { dropOn } from '#engine/cable/choose.ts';
import { conductorAssumptions } from '#engine/cable/conductor.ts';
import { type Charge, chargeAssumptions, chargeOf } from '#engine/charging/charge.ts';
import { likelyOf } from '#engine/explore.ts';
import { dayOf, type Use, useAssumptions } from '#engine/loads/model.ts';
import { dailyYield, type SolarCase, solarAssumptions } from '#engine/solar/model.ts';
import { chemistries, type Load } from '#rig/rig.ts';

// Whatever is said to be taken for granted bears on the figure: moved from its low end to its high one, it moves that.

const moves = (list: readonly Assumption[], figure: (values: Values) => number): string[] => {
  const likely = likelyOf(list);
  return list
    .filter(({ low, high }) => low !== high)
    .filter(({ name, low, high }) => {
      const [a, b] = [figure({ ...likely, [name]: low }), figure({ ...likely, [name]: high })];
      return !(Math.abs(a - b) > 1e-9 * Math.max(1, Math.abs(a)));
    })
    .map(({ name }) => name);
};

test('of a day’s use: whatever runs, on the battery and on mains', () => {
  const still: string[] = [];
  // What no figure is typical of is asked about; what runs day and night leaves an inverter no time to idle.
  const typical = things
    .map(({ id }) => ({ id, row: applianceOf(id) }))
    .filter(({ row }) => row !== undefined);
  for (const { id, row } of typical)
    for (const supply of ['dc', 'ac'] as const) {
      const load: Load = { name: id, count: 1, supply };
      const fan: Load = { name: 'fan', count: 1, supply: 'dc', powerW: 20, hoursPerDay: 5 };
      const use: Use = { loads: [load, fan], voltageV: 12, isInverterLeftOn: supply === 'ac' };
      // A fridge's draw bears on the amps while it runs.
      const figure = (values: Values) => {
        const { dailyUse, currentA } = dayOf(use, values);
        return dailyUse + currentA / 1000;
      };
      const none = moves(useAssumptions(use), figure).filter(
        name => !(name === 'idleShare' && row?.hoursPerDay[1] === 24),
      );
      still.push(...none.map(name => `${id} on ${supply}: ${name}`));
    }
  expect(typical.length).toBeGreaterThan(60);
  expect(still).toEqual([]);
});

test('of what panels make', () => {
  const place = { latitudeDeg: -30, longitudeDeg: 150, month: 6 } as const;
  const cases: SolarCase[] = [
    {},
    { sky: 'sunny' },
    { peakSunHours: 6, sky: 'overcast' },
    { ...place },
    { ...place, mount: 'tilted', shade: 'half' },
    { ...place, sky: 'overcast' },
    { latitudeDeg: 50, month: 4 },
    { latitudeDeg: 50, longitudeDeg: 10 },
  ];
  for (const c of cases) {
    const panel = { ...c, powerW: 100, nominalVoltageV: 12 };
    expect(moves(solarAssumptions(c), values => dailyYield(panel, values).dailyYieldEnergyWh)).toEqual([]);
  }
});

test('of what a battery has to use, and of a charge', () => {
  for (const chemistry of chemistries) {
    const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry, stateOfChargePercent: 40 }]));
    const figure = (values: Values) => usableCapacityAh({ bank, currentA: 8 }, values);
    // Warm as it is, its temperature takes nothing off.
    expect(moves(bankAssumptions(bank), figure).filter(name => name !== 'batteryTemperature')).toEqual([]);
    const charge: Charge = { bank, isSizeAssumed: false, isIsolator: false, targetPercent: 100 };
    const hours = (values: Values) => chargeOf(charge, 20, values).timeH;
    expect(moves(chargeAssumptions(charge), hours).filter(name => name !== 'batteryTemperature')).toEqual([]);
  }
});

test('of the drop on a cable', () => {
  const about = { lengthM: 5, currentA: 20, continuousA: 20, voltageV: 12 };
  const six = { areaMm2: 6, size: 6, as: 'metric' } as const;
  expect(moves(conductorAssumptions(six), values => dropOn(six, about, values).percent)).toEqual([]);
});
