import { describe, expect, test } from 'vitest';
import type { Figure } from '#answer/answer.ts';
import { print } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import type { TripFacts } from '#intents/trip/compute.ts';
import { trip } from '#intents/trip/intent.ts';
import { moment } from '#intents/trip/when.ts';
import type { Facts } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const reply = (facts: Facts) => trip.reply(trip.needs.parse(facts) as TripFacts, settingWith());
const number = (f: Figure | undefined) => (f as { value: number }).value;
const fridge = (currentA: number): Facts['loads'] => [
  { name: 'fridge', count: 1, currentA, supply: 'dc', isAverage: true },
];
const lfp = (capacityAh: number): Facts['batteries'] => [{ count: 1, capacityAh, chemistry: 'lfp' }];
const agm = (capacityAh: number, count = 1): Facts['batteries'] => [{ count, capacityAh, chemistry: 'agm' }];

/** Bounds worked out by hand: what is used between two charges, over the capacity. */
const trips: readonly [
  name: string,
  facts: Facts,
  verdict: 'yes' | 'tight' | 'no',
  lowest: [min: number, max: number],
  end?: [min: number, max: number],
][] = [
  [
    'two small AGMs, 60 of 180 Ah used in three days without charging',
    { batteries: agm(90, 2), dailyUseAh: 20, durationH: 72, without: ['charging'] },
    'yes',
    [66, 67.4],
    [66, 67.4],
  ],
  [
    'Friday 6 pm to Sunday noon, 42 h at 1.7 A off 90 Ah',
    { batteries: agm(90), loads: fridge(1.7), startHour: 18, durationH: 42, without: ['charging'] },
    'no',
    [17, 25],
  ],
  [
    'a July week in the south of Spain, 200 W against 48 Ah a day',
    {
      batteries: lfp(100),
      loads: fridge(2),
      solar: [{ count: 1, powerW: 200 }],
      latitudeDeg: 37.4,
      longitudeDeg: -6,
      month: 7,
      durationH: 168,
      without: ['driving'],
    },
    'yes',
    [60, 78],
    [90, 100],
  ],
  [
    'three December nights in the south of England on 100 W',
    {
      batteries: agm(110),
      loads: [{ name: 'heater', count: 1, currentA: 1.5, supply: 'dc', hoursPerDay: 24 }],
      solar: [{ count: 1, powerW: 100 }],
      latitudeDeg: 51.2,
      month: 12,
      durationH: 72,
    },
    // A battery at 10 °C holds five sixths: 92 Ah, against 96 used by the last morning.
    'no',
    [0, 10],
  ],
  [
    'three hours of driving a day with a 30 A DC-DC against 43 Ah',
    {
      batteries: lfp(100),
      loads: fridge(1.8),
      chargers: [{ kind: 'dcdc', currentA: 30 }],
      drivingHoursPerDay: 3,
      durationH: 72,
    },
    'yes',
    [54, 81],
  ],
  [
    'four hours on the first day, then three days parked: 92 h at 40 Ah a day is more than 150 Ah',
    {
      batteries: lfp(150),
      dailyUseAh: 40,
      chargers: [{ kind: 'dcdc', currentA: 25 }],
      drivingPlanH: [4, 0, 0, 0, 3],
    },
    'no',
    [0, 3],
  ],
  [
    'panels that make 50 Ah a day against 40 used',
    {
      batteries: lfp(100),
      dailyUseAh: 40,
      solar: [{ count: 1, powerW: 200 }],
      solarAhPerDay: 50,
      durationH: 72,
    },
    'yes',
    [60, 85],
    [90, 100],
  ],
  [
    'an overcast end of a tropical dry-season trip',
    {
      batteries: lfp(100),
      loads: fridge(1.2),
      solar: [{ count: 1, powerW: 120 }],
      latitudeDeg: -12.5,
      month: 7,
      sky: 'overcast',
      skyLastDays: 2,
      durationH: 72,
    },
    'yes',
    [40, 76],
  ],
];

describe('a trip day by day', () => {
  test.for(trips)('%s', ([, facts, verdict, [min, max], end]) => {
    const answer = reply(facts);
    const lowest = number(answer.figures?.lowestCharge);
    expect(answer.verdict).toBe(verdict);
    expect(lowest).toBeGreaterThanOrEqual(min);
    expect(lowest).toBeLessThanOrEqual(max);
    if (end) {
      expect(number(answer.figures?.endCharge)).toBeGreaterThanOrEqual(end[0]);
      expect(number(answer.figures?.endCharge)).toBeLessThanOrEqual(end[1]);
    }
    const text = print(answer, { isWorkingShown: true });
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    expect(print(answer).length).toBeLessThan(1000);
  });

  test('ranges hold their value and stay between empty and full', () => {
    for (const [, facts] of trips)
      for (const key of ['lowestCharge', 'endCharge']) {
        const f = present(reply(facts).figures)[key] as { value: number; low: number; high: number };
        expect(f.low).toBeGreaterThanOrEqual(0);
        expect(f.low).toBeLessThanOrEqual(f.value);
        expect(f.value).toBeLessThanOrEqual(f.high);
        expect(f.high).toBeLessThanOrEqual(100);
      }
  });

  test('without a number of days three are taken, and said', () => {
    const answer = reply({ batteries: lfp(100), dailyUseAh: 20 });
    expect(print(answer)).toMatch(/so I took 3 days/);
  });

  test('a trip that fails names battery, sun and driving that would do', () => {
    const answer = reply({ batteries: agm(100), dailyUseAh: 40, durationH: 72 });
    expect(answer.verdict).toBe('no');
    expect(print(answer)).toMatch(
      /do one of these: drive [\d.]+ h a day, add .*\d+ W (?:of solar|panel) or carry about \d+ Ah of the same battery\./,
    );
  });

  test('a tight trip is told what would make it sure, more than there is', () => {
    const answer = reply({
      batteries: agm(100),
      dailyUseAh: 20,
      solar: [{ count: 1, powerW: 100 }],
      durationH: 120,
      latitudeDeg: -42.9,
      month: 5,
    });
    expect(answer.verdict).toBe('tight');
    const [, watts] = /To be safe,? .*have (\d+) W of solar in all/.exec(print(answer)) ?? [];
    expect(Number(watts)).toBeGreaterThan(100);
  });

  test('what is ruled out is not proposed', () => {
    const answer = reply({ batteries: agm(100), dailyUseAh: 40, durationH: 72, without: ['charging'] });
    expect(print(answer)).not.toMatch(/of solar|panel|drive/);
  });

  test('a day of the week is named where it is known', () => {
    const facts: Facts = {
      batteries: agm(90),
      dailyUseAh: 40,
      durationH: 42,
      startHour: 18,
      startWeekday: 5,
    };
    expect(print(reply(facts))).toMatch(/Sunday at noon/);
  });

  test('a battery without its size, or no load, is asked for', () => {
    expect(trip.needs.safeParse({ durationH: 72 }).success).toBe(false);
    expect(trip.needs.safeParse({ batteries: agm(100) }).success).toBe(false);
  });

  test('lithium behind an isolator is cautioned', () => {
    const answer = reply({
      batteries: lfp(100),
      dailyUseAh: 30,
      chargers: [{ kind: 'isolator' }],
      drivingHoursPerDay: 2,
    });
    expect(answer.cautions).toContain('mixed-batteries');
  });
});

test.for([
  [0, 16, undefined, 'day 1 at 4 pm'],
  [15, 16, undefined, 'day 2 at 7 am'],
  [88, 16, undefined, 'day 5 at 8 am'],
  [137, 16, undefined, 'the last morning at 9 am'],
  [143, 16, undefined, 'the last afternoon at 3 pm'],
  [42, 18, 5, 'Sunday at noon'],
  [6, 18, 6, 'Sunday at midnight'],
] as const)('%d h after %d o’clock is %s%s', ([at, start, weekday, want]) => {
  expect(moment(at, { startHour: start, durationH: 120, startWeekday: weekday })).toBe(want);
});
