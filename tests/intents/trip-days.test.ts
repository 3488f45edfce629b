import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import { accountByDay } from '#engine/trip/by-day.ts';
import type { TripFacts } from '#intents/trip/compute.ts';
import { asksByDay } from '#intents/trip/days.ts';
import { trip } from '#intents/trip/intent.ts';
import { dayName } from '#intents/trip/when.ts';
import type { Facts } from '#rig/rig.ts';
import { nothingSaid, settingWith } from './setting.ts';

const said = (text: string) => ({
  ...nothingSaid,
  recognised: { text, tokens: [], words: text.split(' '), mentions: [] },
});
const reply = (facts: Facts, text = 'day by day') =>
  trip.reply(trip.needs.parse(facts) as TripFacts, settingWith({}, said(text)));
const days = (facts: Facts, text?: string) =>
  (reply(facts, text).lines ?? []).filter(l => /^Days? |day:/.test(l));
const value = (facts: Facts, key: string) => (present(reply(facts).figures)[key] as { value: number }).value;

const camp: Facts = {
  batteries: [{ count: 1, capacityAh: 100, chemistry: 'lfp' }],
  dailyUseAh: 40,
  chargers: [{ kind: 'dcdc', currentA: 25 }],
};
const planned: Facts = {
  ...camp,
  days: [{ drivingH: 3 }, {}, { generatorH: 2 }, { sky: 'overcast' }],
  solar: [{ count: 1, powerW: 150 }],
  place: 'darwin',
  month: 7,
};

describe('a trip told day by day', () => {
  test.each([
    'give me a day plan',
    'plan of the days',
    'plan for each day please',
    'show me each day',
    'what level each morning and evening',
  ])('"%s" asks for it', text => expect(asksByDay(text.split(' '))).toBe(true));

  test('a turn of a plan is a plan: the words are kept with the question', () => {
    const facts = trip.needs.parse(planned) as TripFacts;
    const told = present(trip.reply(facts, settingWith({ subject: 'by-day' }, said('make it sunny'))).lines);
    expect(told[0]).toMatch(/^Day 1: /);
  });

  test('the level of each morning and evening, as the hours have it', () => {
    const [first, second] = days({ ...camp, durationH: 48, startHour: 12 });
    // 40 Ah a day of 100 Ah, evenly: 12 to 19 h takes 11.7 Ah, and to 7 h 31.7 Ah
    expect(first).toMatch(/evening 88 %/);
    expect(second).toMatch(/morning 68 %, evening 48 %/);
  });

  test('a line for each day, with what it brings', () => {
    const [first, second, third, fourth, ...more] = days(planned);
    expect(more).toEqual([]);
    expect(first).toMatch(/^Day 1: out 25 Ah; on offer: driving \d+ \(there about noon\), sun \d+; /);
    expect(second).toMatch(/^Day 2: out 40 Ah; on offer: sun \d+; /);
    expect(third).toMatch(/generator 40/);
    expect(fourth).toMatch(/sun \d+ \(overcast\)/);
  });

  test('only where the days are asked for', () => {
    expect(days(planned, 'will it last')).toEqual([]);
    expect(days(planned, 'give it to me day by day please')).toHaveLength(4);
    expect(asksByDay(['we', 'drive', 'each', 'day'])).toBe(false);
  });

  test('the days have the names of the week where it is known, fourteen of them at most', () => {
    expect(days({ ...planned, startWeekday: 5 })[0]).toMatch(/^Friday: /);
    const month = { ...camp, drivingHoursPerDay: 2, durationH: 24 * 20 };
    const lines = present(reply(month).lines);
    // Days that are alike stand in one line, and none is left out.
    expect(lines.filter(l => /^Day/.test(l)).length).toBeLessThanOrEqual(14);
    expect(lines.join('\n')).toMatch(/^Days \d–20: /m);
    expect(print(reply(month)).length).toBeLessThan(2000);
    expect([dayName(0), dayName(3, 5)]).toEqual(['Day 1', 'Monday']);
  });

  test('a generator counts on its day, and is cautioned; ruled out it counts no more', () => {
    const without = { ...planned, days: present(planned.days).map(({ generatorH: _, ...day }) => day) };
    expect(value(planned, 'endCharge')).toBeGreaterThan(value(without, 'endCharge'));
    expect(reply(planned).cautions).toContain('carbon-monoxide');
    expect(value({ ...planned, without: ['generator'] }, 'endCharge')).toBeCloseTo(
      value(without, 'endCharge'),
      9,
    );
  });

  const onMains: Facts = {
    ...camp,
    loads: [{ name: 'fridge', count: 1, supply: 'dc', currentA: 2, isAverage: true }],
    dailyUseAh: undefined,
    chargers: [{ kind: 'mains', currentA: 15 }],
    days: [{}, { mainsH: true }, {}],
  };
  /** Told in one go, not day by day. */
  const text = (facts: Facts) => (reply(facts, 'will it last').lines ?? []).join('\n');

  test('a night on mains fills it, is named on both of its days, and is cautioned', () => {
    const lines = days(onMains);
    expect(lines[0]).not.toMatch(/mains/);
    expect(lines[1]).toMatch(/on offer: mains 87/);
    expect(lines[2]).toMatch(/on offer: mains 131/);
    expect(text(onMains)).toMatch(/the hook-up fills it on its nights/);
    expect(text(onMains)).not.toMatch(/not counted/);
    expect(reply(onMains).cautions).toContain('hook-up');
    expect(reply(onMains).cautions).not.toContain('carbon-monoxide');
    expect(reply({ ...onMains, days: [{}, {}, {}] }).cautions).not.toContain('hook-up');
    const none = { ...onMains, days: [{}, {}, {}] };
    expect(value(onMains, 'lowestCharge')).toBeGreaterThan(value(none, 'lowestCharge') + 10);
    expect(value(onMains, 'endCharge')).toBeGreaterThan(value(none, 'endCharge') + 40);
  });

  test('hours told on mains are those hours; ruled out they count no more', () => {
    const hours = (mainsH: number) => value({ ...onMains, days: [{}, { mainsH }, {}] }, 'endCharge');
    expect(hours(2)).toBeLessThan(hours(5) - 10);
    expect(hours(15)).toBeCloseTo(value(onMains, 'endCharge'), 9);
    const none = value({ ...onMains, days: [{}, {}, {}] }, 'endCharge');
    for (const source of ['mains', 'charging'])
      expect(value({ ...onMains, without: [source] }, 'endCharge')).toBeCloseTo(none, 9);
  });

  test('a generator’s watts hold back its own days, and no night on mains', () => {
    const small = { kind: 'generator', powerW: 200 } as const;
    const both: Facts = {
      ...onMains,
      chargers: [...present(onMains.chargers), small],
      days: [{ generatorH: 2 }, { mainsH: true }, {}],
    };
    const lines = days(both);
    expect(lines[0]).toMatch(/generator 1\d\b/);
    expect(lines[1]).toMatch(/mains 87/);
    expect(text(both)).toMatch(/a generator and the hook-up fill it on their days/);
    expect(days({ ...both, days: [{ mainsH: true }, { generatorH: 2 }] })[1]).toMatch(/generator and mains/);
  });

  test('a flooded battery on charge is to be vented', () => {
    const batteries = [{ count: 1, capacityAh: 100, chemistry: 'flooded' as const }];
    expect(reply({ ...onMains, batteries }).cautions).toContain('battery-gas');
  });

  test('an overcast day costs, on whichever day it is', () => {
    const on = (day: number) =>
      value({ ...planned, days: [0, 1, 2, 3].map(d => (d === day ? { sky: 'overcast' } : {})) }, 'endCharge');
    const fair = value({ ...planned, days: [{}, {}, {}, {}] }, 'endCharge');
    for (const day of [1, 2, 3]) expect(on(day)).toBeLessThanOrEqual(fair + 1e-9);
    expect(on(3)).toBeLessThan(fair - 5);
  });

  test('it goes to the end of the last day that was told', () => {
    const lines = days({ ...camp, days: [{ drivingH: 1 }, { drivingH: 0 }] });
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/^Day 2: out 40 Ah; morning \d+ %, evening \d+ %, ends at \d+ %\.$/);
  });
});

test('hours become days: sums, the lowest of each and its hour, the end', () => {
  const hour = (atH: number, chargeAh: number, sunAh = 0) => ({
    atH,
    chargeAh,
    useAh: 1,
    sunAh,
    drivingAh: 0,
    pluggedAh: 0,
  });
  const accounts = accountByDay([hour(1, 90), hour(2, 80), hour(3, 85, 6), hour(4, 84)], 22, 100);
  expect(accounts).toMatchObject([
    { day: 0, useAh: 2, sunAh: 0, lowestPercent: 80, lowestHour: 24, endPercent: 80 },
    { day: 1, useAh: 2, sunAh: 6, lowestPercent: 84, lowestHour: 2, endPercent: 84 },
  ]);
});
