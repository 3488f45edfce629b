import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { chargePath } from '#intents/charge-path/intent.ts';
import { chargeTime } from '#intents/charge-time/intent.ts';
import { generator } from '#intents/generator/intent.ts';
import type { Intent, RequestContext } from '#intents/intent.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Battery, Charger, Facts } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const battery = (rest: Partial<Battery>): Battery[] => [{ count: 1, ...rest }];
const agm = (capacityAh: number, stateOfChargePercent?: number) =>
  battery({ capacityAh, chemistry: 'agm', stateOfChargePercent });
const lfp = (capacityAh: number, stateOfChargePercent?: number) =>
  battery({ capacityAh, chemistry: 'lfp', stateOfChargePercent });
const dcdc = (currentA?: number): Charger => ({ kind: 'dcdc', currentA });
const mains = (currentA?: number): Charger => ({ kind: 'mains', currentA });

const reply = (intent: Intent, facts: Facts, cues: Cue[] = [], setting: Partial<RequestContext> = {}) =>
  intent.reply(intent.needs.parse(facts), settingWith(setting, { cues: new Set(cues) }));
const lacks = (intent: Intent, facts: Facts) =>
  intent.needs.safeParse(facts).error?.issues.map(issue => issue.message) ?? [];
const value = (of: ReturnType<typeof reply>, name: string) => Number(of.figures?.[name]?.value);
const whole = (of: ReturnType<typeof reply>) => [of.headline, ...(of.lines ?? [])].join('\n');

// Cell makers' sheets that agree: none below 0 °C, a tenth of the capacity up to 5 °C; lead-acid: common practice.
describe('whether a battery may be charged at a temperature', () => {
  const asked = (chemistry: Battery['chemistry'], ambientC: number) =>
    reply(chargeTime, { batteries: battery({ chemistry }), ambientC });
  test.each([
    ['lfp', -0.5, 'no'],
    ['lfp', 0, 'tight'],
    ['lfp', 4.9, 'tight'],
    ['lfp', 25, 'yes'],
    ['lfp', 61, 'no'],
    ['agm', -10, 'yes'],
    ['flooded', 20, 'yes'],
  ] as const)('%s at %d °C: %s', (chemistry, ambientC, verdict) => {
    expect(asked(chemistry, ambientC).verdict).toBe(verdict);
  });
  test('near freezing it says how gently, and warns', () => {
    const gently = asked('lfp', 2);
    expect(gently.headline).toMatch(/10 A into each 100 Ah/);
    expect(gently.cautions).toContain('lithium-cold');
    expect(whole(asked('agm', -10))).toMatch(/frozen/);
  });
  test('with a size and a charger the time is asked for', () => {
    const of = reply(chargeTime, { batteries: lfp(100, 50), chargers: [mains(20)], ambientC: 12 });
    expect(value(of, 'chargeTime')).toBeGreaterThan(0);
  });
});

describe('what a charger put back in the hours told, into no battery named', () => {
  test.each([
    [{ chargers: [dcdc(25)], drivingHoursPerDay: 2 }, 45, 50, /hours of driving/],
    [{ chargers: [mains(10)], durationH: 3 }, 27, 30, /in 3 hours/],
  ] as const)('%j', (facts, low, high, says) => {
    const of = reply(chargeTime, facts as never);
    expect(value(of, 'chargePutBack')).toBeGreaterThan(low);
    expect(value(of, 'chargePutBack')).toBeLessThan(high);
    expect(of.headline).toMatch(says);
  });
  test('not where a battery is told: then how full it gets is', () => {
    const of = reply(chargeTime, { chargers: [dcdc(25)], drivingHoursPerDay: 2, batteries: lfp(100, 40) });
    expect(of.figures).not.toHaveProperty('chargePutBack');
  });
});

describe('how long to charge', () => {
  const hours = (facts: Facts, cues: Cue[] = [], setting: Partial<RequestContext> = {}) =>
    value(reply(chargeTime, facts, cues, setting), 'chargeTime');

  test('what is missing is asked for', () => {
    expect(lacks(chargeTime, {})).toHaveLength(2);
    expect(lacks(chargeTime, { batteries: agm(100) })[0]).toMatch(/what charges it/);
    expect(lacks(chargeTime, { chargers: [mains(10)] })[0]).toMatch(/battery's size/);
    expect(lacks(chargeTime, { chargers: [mains(10)], chargeNeededAh: 30 })).toEqual([]);
  });

  test('every figure has a range that holds it', () => {
    const { figures } = reply(chargeTime, { batteries: agm(100, 50), chargers: [mains(20)] });
    for (const f of Object.values(present(figures))) {
      if (typeof f.value !== 'number' || !('low' in f)) throw new Error('a figure without a range');
      expect(f.low).toBeLessThanOrEqual(f.value);
      expect(f.high).toBeGreaterThanOrEqual(f.value);
    }
  });

  test('is the time enough: yes, tight, no', () => {
    const facts = { batteries: lfp(100, 50), chargers: [dcdc(25)] };
    const verdict = (durationH: number) => reply(chargeTime, { ...facts, durationH }, ['ask-can-it']).verdict;
    expect([verdict(4), verdict(2.35), verdict(1)]).toEqual(['yes', 'tight', 'no']);
    expect(whole(reply(chargeTime, { ...facts, durationH: 1 }))).toMatch(
      /In 60 minutes it gets to about 74 %/,
    );
  });

  test('hours of driving a day count for a day, or for each of several', () => {
    const facts = { batteries: lfp(200, 20), chargers: [dcdc(25)], drivingHoursPerDay: 3 };
    expect(reply(chargeTime, facts).verdict).toBe('no');
    expect(reply(chargeTime, { ...facts, durationH: 72 }).verdict).toBe('yes');
  });

  test('how long, with a stay of days told in passing, is no yes-or-no', () => {
    const facts = { batteries: agm(100, 60), chargers: [mains(10)], durationH: 72 };
    expect(reply(chargeTime, facts, ['ask-how-long']).verdict).toBeNull();
  });

  /** AGM keeps 97 % until 20 % are missing, then less and less, to 50 % at full: what the last fifth of 100 Ah asks for. */
  const lastFifth = (missingAh: number): number =>
    (20 / 0.47) * Math.log(0.97 / (0.5 + (0.47 * missingAh) / 20));

  test('a day’s use put back, and Ah told', () => {
    const daily = reply(chargeTime, { chargers: [dcdc(25)], dailyUseAh: 40 });
    expect(value(daily, 'chargeNeeded')).toBeCloseTo(23 / 0.97 + lastFifth(3), 6);
    expect(daily.headline).toMatch(/of driving to put a day's use back/);
    const told = reply(chargeTime, { chargers: [dcdc(20)], chargeNeededAh: 40, batteries: lfp(100) });
    expect(value(told, 'chargeNeeded')).toBeCloseTo(40 / 0.99, 6);
  });

  test.for([
    ['agm', agm(100, 40)],
    ['lithium', lfp(100, 40)],
  ] as const)('the same Ah go into %s whatever it is charged by', ([, batteries]) => {
    const needed = (facts: Facts): number =>
      value(reply(chargeTime, { batteries, ...facts }), 'chargeNeeded');
    const byMains = needed({ chargers: [mains(15)] });
    expect(needed({ chargers: [dcdc(25)] })).toBeCloseTo(byMains, 9);
    expect(needed({ solar: [{ count: 1, powerW: 200 }] })).toBeCloseTo(byMains, 9);
    expect(
      value(
        reply(generator, { batteries, chargers: [mains(15), { kind: 'generator', powerW: 2000 }] }),
        'chargeNeeded',
      ),
    ).toBeCloseTo(byMains, 9);
  });

  test('loads of the rig are not what is to be put back when a battery is to be filled', () => {
    const facts = {
      batteries: agm(100),
      chargers: [dcdc(25)],
      loads: [{ name: 'fridge', count: 1, currentA: 1, supply: 'dc' as const }],
    };
    const filled = reply(chargeTime, facts, ['full'], { recalled: new Set(['loads', 'batteries'] as const) });
    expect(value(filled, 'chargeNeeded')).toBeCloseTo(30 / 0.97 + lastFifth(3), 6);
    expect(value(reply(chargeTime, facts), 'chargeNeeded')).toBeCloseTo(7 / 0.97 + lastFifth(3), 6);
  });

  test('several chargers: the one that is spoken of', () => {
    const facts = { batteries: lfp(200, 20), chargers: [mains(10), dcdc(40)] };
    expect(hours(facts, ['drive'])).toBeLessThan(hours(facts, ['mains']) / 3);
    expect(hours(facts)).toBeCloseTo(hours(facts, ['mains']), 9);
  });

  test('a charger on a small generator gives what the generator lets it', () => {
    const facts = (powerW: number) => ({
      batteries: lfp(200, 20),
      chargers: [mains(50), { kind: 'generator' as const, powerW }],
    });
    expect(hours(facts(500))).toBeGreaterThan(1.5 * hours(facts(2000)));
    expect(reply(chargeTime, facts(500)).cautions).toContain('carbon-monoxide');
  });

  test('a panel: hours of full sun, and days', () => {
    const facts = { batteries: lfp(200, 20), solar: [{ count: 1, powerW: 200 }] };
    const one = reply(chargeTime, facts);
    expect(one.headline).toMatch(/of full sun to fill it/);
    expect(whole(one)).toMatch(/In usual weather that takes about 3 days/);
    const two = { ...facts, solar: [{ count: 2, powerW: 200 }] };
    expect(hours(two)).toBeLessThan(0.6 * hours(facts));
    // Days are not held against hours in one line.
    expect(reply(chargeTime, { ...facts, durationH: 48 }).headline).toMatch(/^No: it takes .* of full sun/);
    expect(hours({ batteries: lfp(200, 20), solarAhPerDay: 60, peakSunHours: 5 })).toBeCloseTo(
      160 / 0.99 / 12,
      0,
    );
  });

  test('an isolator promises no full battery, and none for lithium', () => {
    const facts = { batteries: agm(100, 50), chargers: [{ kind: 'isolator' as const }] };
    expect(whole(reply(chargeTime, facts))).toMatch(/an isolator rarely fills a battery/);
    expect(hours({ ...facts, alternator: 'smart' })).toBeGreaterThan(
      hours({ ...facts, alternator: 'fixed' }),
    );
    expect(reply(chargeTime, { ...facts, batteries: lfp(100, 50) }).cautions).toContain('mixed-batteries');
  });

  test('lithium in the cold: refused below freezing, and said', () => {
    const cold = reply(chargeTime, { batteries: lfp(100, 50), chargers: [mains(20)], ambientC: -4 });
    expect(cold).toMatchObject({ verdict: 'no', cautions: ['lithium-cold'] });
    expect(cold.headline).toMatch(/below freezing/);
    expect(cold.figures).not.toHaveProperty('chargeTime');
  });

  test('full enough already', () => {
    const done = reply(chargeTime, {
      batteries: agm(100, 90),
      chargers: [mains(20)],
      targetChargePercent: 80,
    });
    expect(done.headline).toMatch(/there already/);
  });

  test('a big DC-DC charger: mind the alternator', () => {
    const cautions = (a: number) =>
      reply(chargeTime, { batteries: lfp(200, 20), chargers: [dcdc(a)] }).cautions;
    expect(cautions(60)).toContain('alternator-share');
    expect(cautions(25)).not.toContain('alternator-share');
  });
});

describe('isolator or DC-DC charger', () => {
  const pick = (facts: Facts) => reply(chargePath, facts).figures?.recommendation?.value;

  test('by battery, alternator and run', () => {
    expect(pick({ batteries: lfp(100) })).toBe('dcdc');
    expect(pick({ batteries: agm(100), alternator: 'smart' })).toBe('dcdc');
    expect(pick({ batteries: agm(100), alternator: 'fixed' })).toBe('isolator');
    expect(pick({ batteries: battery({ chemistry: 'flooded', count: 2 }), volts: 14.1 })).toBe('isolator');
    expect(pick({ batteries: agm(100), alternator: 'fixed', cable: { lengthM: 7 } })).toBe('dcdc');
    expect(pick({ batteries: agm(100), alternator: 'fixed', cable: { lengthM: 7, isRoundTrip: true } })).toBe(
      'isolator',
    );
    expect(pick({})).toBe('dcdc');
  });

  test('says why, and a size that suits the bank', () => {
    const text = whole(reply(chargePath, { batteries: lfp(200), alternator: 'smart' }));
    expect(text).toMatch(/^DC-DC charger: lithium/);
    expect(text).toMatch(/Also: a smart alternator/);
    expect(text).toMatch(/About 50 A suits that battery/);
  });

  // AGM 0.3 C, lithium 0.5 C at most: makers' sheets that agree.
  test.each([
    [agm(100), 40, /Too big: 40 A is more than that battery should take \(about 30 A\)/],
    [agm(100), 25, /25 A suits that battery/],
    [lfp(100), 40, /40 A is the most that battery should see|40 A suits/],
    [battery({ capacityAh: 100, chemistry: 'lfp', maxCurrentA: 20 }), 40, /Too big/],
  ])('%j with a %d A charger', (batteries, currentA, says) => {
    expect(whole(reply(chargePath, { batteries, chargers: [dcdc(currentA)] }))).toMatch(says);
  });
});

describe('what generator', () => {
  const gen = (powerW?: number): Charger => ({ kind: 'generator', powerW });
  const kettle = { name: 'kettle', count: 1, powerW: 1500, supply: 'ac' as const };

  test('for a charger: yes, tight, no', () => {
    const verdict = (powerW: number) => reply(generator, { chargers: [mains(40), gen(powerW)] }).verdict;
    expect([verdict(2000), verdict(1000), verdict(600)]).toEqual(['yes', 'tight', 'no']);
    const {
      low,
      value: likely,
      high,
    } = present(reply(generator, { chargers: [mains(40), gen(2000)] }).figures?.generatorPower) as {
      low: number;
      value: number;
      high: number;
    };
    // Without a break it gives three quarters at the worst; below what is likely needed nothing is tight.
    expect([verdict(high / 0.75 + 1), verdict(likely + 1), verdict(likely - 1), verdict(low - 1)]).toEqual([
      'yes',
      'tight',
      'no',
      'no',
    ]);
  });

  test('none told: the next usual size, a tenth to spare', () => {
    const sized = reply(generator, { chargers: [mains(30)] });
    expect(sized.headline).toMatch(/^A 800 W generator: the 30 A charger needs about 620 W/);
    expect(sized.verdict).toBeNull();
    expect(sized.cautions).toEqual(['carbon-monoxide', 'park-rules']);
  });

  test('charger and loads add up; a motor counts with its start', () => {
    const both = reply(generator, { chargers: [mains(20), gen(2000)], loads: [kettle] });
    expect(value(both, 'generatorPower')).toBeCloseTo(1500 + (20 * 14.4) / 0.87 / 0.8, 6);
    // Of 2,000 W it gives 1,700 without a break.
    expect(both.verdict).toBe('tight');
    expect(both.lines?.join('\n')).toMatch(/can keep up about 1700 W/);
    expect(reply(generator, { chargers: [mains(20), gen(1900)], loads: [kettle] }).verdict).toBe('no');
    const cooler = { name: 'air conditioner', count: 1, powerW: 1000, supply: 'ac' as const };
    expect(value(reply(generator, { loads: [cooler] }), 'generatorPower')).toBeCloseTo(2000, 6);
  });

  test('how long it runs, for a battery or a day’s use', () => {
    const one = reply(generator, { chargers: [mains(50), gen(2000)], batteries: lfp(200, 25) });
    expect(value(one, 'chargeTime')).toBeGreaterThan(3);
    expect(value(one, 'chargeTime')).toBeLessThan(3.8);
    const daily = reply(generator, { chargers: [mains(30), gen(2000)], batteries: agm(200), dailyUseAh: 60 });
    // From 67 to 97 %: 26 Ah at 97 %, then 34 Ah at less and less.
    expect(26 / 0.97 + (40 / 0.47) * Math.log(0.97 / 0.5705)).toBeCloseTo(72, 1);
    expect(whole(daily)).toMatch(/about 72 Ah a day goes in/);
  });

  test('what is missing is asked for', () => {
    expect(lacks(generator, { chargers: [gen(1000)] })[0]).toMatch(/what it will run or charge/);
  });
});
