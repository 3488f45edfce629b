import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import type { Assumption } from '#engine/assumption.ts';
import { type Bank, bankOf } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { cyclesAt } from '#engine/battery/life.ts';
import { chargeAtRest } from '#engine/battery/rest.ts';
import { batteryTemperature } from '#engine/battery/temperature.ts';
import { bankAssumptions, knownAge, temperatureFactor } from '#engine/battery/usable.ts';
import { circuitAssumptions } from '#engine/cable/circuit.ts';
import { conductorAssumptions, conductorOf } from '#engine/cable/conductor.ts';
import { panelLeadAssumptions } from '#engine/cable/panels.ts';
import { surroundingAssumptions } from '#engine/cable/surroundings.ts';
import { type Charge, chargeAssumptions } from '#engine/charging/charge.ts';
import { continuousAssumption, generatorAssumptions, startAssumption } from '#engine/charging/generator.ts';
import { type Source, sourceAssumptions } from '#engine/charging/source.ts';
import { loadedVoltage } from '#engine/inverter/check.ts';
import { throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { dayOf, useAssumptions } from '#engine/loads/model.ts';
import { chargeOver, meanwhileAssumptions } from '#engine/loads/over.ts';
import { airAboutFridge, airTemperature, dayTemperature } from '#engine/solar/air.ts';
import { clearnessFor } from '#engine/solar/climate.ts';
import { coldestMorning } from '#engine/solar/cold.ts';
import { peakSunHours, type SolarCase, solarAssumptions } from '#engine/solar/model.ts';
import { sunHoursAnywhere } from '#engine/solar/sky.ts';
import { wiringAssumptions } from '#engine/solar/wiring.ts';
import { tripAssumptions } from '#engine/trip/model.ts';
import { type Chemistry, chemistries, type Load, type Solar } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';
import { unitsOfRules } from '../rules/units.ts';

// Every assumption and every line of working can be told to a person: it has a name, a unit that is known, a reason.

const bank = (chemistry?: Chemistry): Bank => present(bankOf([{ count: 1, capacityAh: 100, chemistry }]));
const load = (name: string, rest: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'dc', ...rest });
const banks = [undefined, ...chemistries].map(kind => bank(kind));
const worn: Bank[] = banks.flatMap(b => [
  { ...b, ageYears: 4 },
  { ...b, wear: 'old' as const },
  { ...b, wear: 'tired' as const },
]);
const panels: Solar[] = [
  { count: 2, powerW: 100 },
  { count: 1, powerW: 300, openCircuitV: 39 },
  { count: 1, powerW: 300 },
];
const places = [
  {},
  { heightM: 2500 },
  { latitudeDeg: -36, month: 7 },
  { latitudeDeg: -36.2, longitudeDeg: 149.1 },
  { latitudeDeg: 60, longitudeDeg: 10, month: 1, heightM: 800 },
];

const charges: Charge[] = banks.flatMap(b =>
  [100, 80, 60].flatMap(targetPercent =>
    [true, false].map(is => ({ bank: b, targetPercent, isIsolator: is, isSizeAssumed: is })),
  ),
);
const level = {
  name: 'stateOfCharge',
  value: 40,
  low: 30,
  high: 50,
  unit: '%',
  why: 'by its volts',
} as const;
const told: Charge[] = banks.flatMap(b => [
  { bank: b, isIsolator: false, isSizeAssumed: false, isFlat: true },
  { bank: b, isIsolator: false, isSizeAssumed: false, level },
  { bank: b, isIsolator: false, isSizeAssumed: true, missingAh: 40 },
  { bank: b, isIsolator: false, isSizeAssumed: false, missingAh: 40, temperatureC: 5 },
]);
const sources: Source[] = (['dcdc', 'isolator', 'mains', 'generator'] as const).flatMap(kind =>
  ([undefined, 'smart', 'fixed'] as const).flatMap(alternator =>
    [{}, { currentA: 20 }, { powerW: 300 }, { currentA: 20, generatorW: 1000, altitudeM: 1200 }].map(
      rest => ({
        kind,
        alternator,
        row: chargeRow('agm'),
        blocks: 1,
        ...rest,
      }),
    ),
  ),
);
const suns: SolarCase[] = [
  {},
  { sky: 'sunny' },
  { sky: 'overcast' },
  { peakSunHours: 5, sky: 'overcast' },
  { latitudeDeg: -30 },
  { latitudeDeg: -30, longitudeDeg: 150, month: 4 },
  { latitudeDeg: -30, longitudeDeg: 150, month: 4, mount: 'tilted', controller: 'pwm', shade: 'half' },
  { latitudeDeg: 50, month: 1, sky: 'sunny', controller: 'mppt', shade: 'heavy' },
  { latitudeDeg: 50, month: 1, sky: 'overcast', ambientC: 3 },
];
const use = {
  loads: [
    load('fridge'),
    load('freezer', { powerW: 60, supply: 'ac' }),
    load('fan'),
    load('microwave', { supply: 'ac' }),
  ],
  voltageV: 12,
};

// Made within the tests, so that a mutant meets the test that sees it.
const all: readonly (readonly [where: string, list: () => readonly Assumption[]])[] = [
  ['a bank', () => banks.flatMap(b => [...bankAssumptions(b), ...bankAssumptions(b, 70)])],
  ['a worn bank', () => worn.flatMap(b => [...bankAssumptions(b), ...knownAge(b)])],
  [
    'the air',
    () => places.flatMap(where => [dayTemperature(where), airTemperature(where), airAboutFridge(where)]),
  ],
  ['the coldest morning', () => places.map(coldestMorning)],
  [
    'panels in strings',
    () =>
      places.flatMap(where =>
        panels.flatMap(one =>
          wiringAssumptions({ panels: [one], blocks: 1, isShaded: false, controller: 'pwm', where }),
        ),
      ),
  ],
  ['a lead of panels', () => panels.flatMap(one => panelLeadAssumptions([one]))],
  ['what lies about a cable', () => [undefined, 45].flatMap(surroundingAssumptions)],
  ['what runs meanwhile', () => meanwhileAssumptions(use)],
  [
    'a month without a place',
    () => (['sunny', 'mixed', 'overcast'] as const).flatMap(sky => [1, 6].map(m => sunHoursAnywhere(m, sky))),
  ],
  ['a charge', () => [...charges, ...told].flatMap(chargeAssumptions)],
  ['a source', () => sources.flatMap(sourceAssumptions)],
  [
    'a generator',
    () => [continuousAssumption, ...generatorAssumptions({ altitudeM: 1500 }), startAssumption],
  ],
  ['loads', () => useAssumptions(use)],
  ['an outlet', () => wattsAssumptions({ loads: use.loads, mainsV: 230 })],
  ['volts under load', () => [undefined, true, false].map(isLithium => loadedVoltage(24, isLithium))],
  [
    'a conductor',
    () => [undefined, { areaMm2: 6 }, { awg: 8 }].flatMap(cable => conductorAssumptions(conductorOf(cable))),
  ],
  [
    'a circuit',
    () =>
      (['dcdc', 'charger'] as const).flatMap(kind =>
        circuitAssumptions({ kind, use: 'critical', facts: { chargers: [{ kind: 'dcdc' }] }, voltageV: 12 }),
      ),
  ],
  ['the sun', () => suns.flatMap(solarAssumptions)],
  [
    'what stays of a charge',
    () => chemistries.flatMap(kind => [true, false].flatMap(is => storageAssumptions(kind, is))),
  ],
  [
    'a temperature',
    () =>
      suns.flatMap(sun =>
        (['inside', 'vehicle', 'outside', 'engine'] as const).map(stand => batteryTemperature(sun, stand)),
      ),
  ],
  [
    'a trip',
    () =>
      banks.flatMap(b =>
        suns.flatMap(sun =>
          tripAssumptions({
            bank: b,
            use,
            sun: { powerW: 100, sun, skyLastDays: 2 },
            driving: { hoursPerDay: 1 },
            durationH: 72,
          }),
        ),
      ),
  ],
];

/** Units of assumptions beyond those of rules. */
const known = new Set([...Object.keys(unitsOfRules), '°']);

test.for(all)('everything taken for granted of %s has a name, a unit, an order and a reason', ([, made]) => {
  const list = made();
  expect(list.length).toBeGreaterThan(1);
  for (const { name, unit, low, value, high, why } of list) {
    expect(name).toMatch(/^[a-z][A-Za-z0-9 ]+$/);
    expect(known, name).toContain(unit);
    expect(why, name).toMatch(/^[a-zA-Z0-9][^{}]{2,}$/);
    expect(why, name).not.toMatch(/undefined|NaN|Stryker|\bnull\b/);
    expect(low, name).toBeLessThanOrEqual(value);
    expect(value, name).toBeLessThanOrEqual(high);
  }
});

/** What is a share or a factor, and has no unit; everything else that is taken for granted has one. */
const bare =
  /(Share|Efficiency|Loss|[cC]learness|Factor|Exponent|Output)$|^(age|depthOfDischarge|fullAt|slowPart|input factor|openings)$/;

test('a name has the same unit wherever it is taken, and only shares and factors have none', () => {
  const units = new Map<string, Set<string>>();
  for (const [, made] of all)
    for (const { name, unit } of made()) {
      const plain = name
        .replace(/ (on the last days|on \w+ days|plugged in)$/, '')
        .replace(/^.* (?=power$|input factor$|hours a day$|volume$|walls$|openings$)/, '');
      units.set(plain, (units.get(plain) ?? new Set()).add(unit));
    }
  for (const [name, own] of units) {
    expect([...own], name).toHaveLength(1);
    expect(own.has(''), name).toBe(bare.test(name));
  }
});

describe('lines of working that come from no formula', () => {
  test.for<[says: string, of: (trace: Trace) => unknown, line: object]>([
    [
      'cycles',
      trace => cyclesAt('agm', 0.5, trace),
      { name: 'cycles', says: 'cycles of AGM at 50 % depth', value: 600, unit: '' },
    ],
    [
      'volts of flooded',
      trace => chargeAtRest(12.15, 'flooded', trace),
      { says: 'how full at rest, from the table of flooded volts, 12.15 V', value: 50, unit: '%' },
    ],
    [
      'volts of lead-acid',
      trace => chargeAtRest(24.42, 'lead-acid', trace),
      { says: 'how full at rest, from the table of lead-acid volts, 12.21 V', value: expect.closeTo(50, 6) },
    ],
    [
      'cold lead',
      trace => temperatureFactor({ chemistry: 'agm' }, 10, trace),
      {
        name: 'temperatureFactor',
        says: 'k_temp = 1 ÷ 1.19, the size factor at 10 °C',
        value: 1 / 1.19,
        unit: '',
        source: 'IEEE 485 table 1',
      },
    ],
    [
      'watts at once',
      trace =>
        throughWatts(
          { loads: [load('kettle', { powerW: 1000 }), load('tv', { powerW: 40.4 })], mainsV: 230 },
          {},
          trace,
        ),
      { name: 'acLoad', says: 'P = 1000 W + 40 W', value: 1040.4, unit: 'W', source: 'sum of the loads' },
    ],
    [
      'a day of two loads',
      trace =>
        dayOf(
          {
            loads: [load('fridge', { currentA: 1 }), load('tv', { currentA: 2, hoursPerDay: 3 })],
            voltageV: 12,
          },
          {},
          trace,
        ),
      { name: 'dailyUse', says: 'Q = 24 Ah + 6 Ah', value: 30, unit: 'Ah', source: 'sum of the loads' },
    ],
    [
      'part of a day',
      trace => chargeOver(dayOf({ loads: [load('fridge', { currentA: 1 })], voltageV: 12 }, {}), 4.46, trace),
      {
        name: 'chargeOverTime',
        says: 'what each load takes within 4.5 h',
        value: expect.closeTo(4.46, 9),
        unit: 'Ah',
        source: 'sum of the loads',
      },
    ],
    [
      'sun hours for want of a place',
      trace => peakSunHours({}, {}, trace),
      {
        name: 'peakSunHours',
        says: 'taken for want of place and month',
        value: 5,
        unit: 'h',
        source: 'common practice',
      },
    ],
  ])('%s', ([, of, line]) => {
    const trace = new Trace();
    of(trace);
    const step = present(trace.steps.at(-1));
    expect(step).toMatchObject({ kind: 'lookup', ...line });
    expect(step.kind === 'lookup' && step.source.length).toBeGreaterThan(10);
  });

  test.for<[says: string, of: (trace: Trace) => unknown]>([
    ['lead at 25 °C', trace => temperatureFactor({ chemistry: 'agm' }, 25, trace)],
    ['lithium at 15 °C', trace => temperatureFactor({ chemistry: 'lfp' }, 15, trace)],
    ['no mains load', trace => throughWatts({ loads: [], mainsV: 230 }, {}, trace)],
    ['a told day', trace => dayOf({ loads: [], dailyUseAh: 20, voltageV: 12 }, {}, trace)],
  ])('%s needs no line', ([, of]) => {
    const trace = new Trace();
    of(trace);
    expect(trace.steps).toEqual([]);
  });

  test('lithium in the cold has one', () => {
    const trace = new Trace();
    expect(temperatureFactor({ chemistry: 'lfp' }, 5, trace)).toBeCloseTo(0.9, 9);
    expect(trace.steps).toHaveLength(1);
  });
});

describe('how a climate is told', () => {
  test.for<[lat: number, lon: number | undefined, month: number, why: RegExp]>([
    [-33.93, 151.17, 1, /^average January by climate tables, [A-Z]\w+; good and bad years in the range$/],
    [-31, 146, 12, /^average December by climate tables, Bourke nearest; good and bad years in the range$/],
    [-30, undefined, 6, /^usual for the latitude and month$/],
    [-30, -100, 6, /^average June by satellite tables; good and bad years in the range$/],
  ])('%d, %s in month %d', ([lat, lon, month, why]) => {
    expect(clearnessFor(lat, lon, month).why).toMatch(why);
  });
});
