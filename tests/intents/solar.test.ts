import { describe, expect, test } from 'vitest';
import type { Figure } from '#answer/answer.ts';
import { print } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import { meanChargeV } from '#engine/battery/round-trip.ts';
import { solarSize } from '#intents/solar-size/intent.ts';
import { solarYield } from '#intents/solar-yield/intent.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Facts } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const asked = (facts: Facts, cues: readonly Cue[] = []) => settingWith({}, { facts, cues: new Set(cues) });
const size = (facts: Facts, cues?: readonly Cue[]) =>
  solarSize.reply(solarSize.needs.parse(facts), asked(facts, cues));
const yields = (facts: Facts, cues?: readonly Cue[]) =>
  solarYield.reply(
    solarYield.needs.parse(facts) as Parameters<typeof solarYield.reply>[0],
    asked(facts, cues),
  );
const figureOf = (figures: Readonly<Record<string, Figure>> | undefined, name: string) =>
  present(figures)[name] as { value: number; low: number; high: number };
const panel = (powerW?: number, controller?: 'mppt' | 'pwm', count = 1): NonNullable<Facts['solar']> => [
  { count, powerW, controller },
];
const load = (name: string, draw: object): NonNullable<Facts['loads']> => [
  { name, count: 1, supply: 'dc', ...draw },
];

/** Bounds by hand: Ah × volts over sun hours and what arrives, 0.65–0.85 with MPPT, 0.55–0.70 with PWM. */
const sizes: readonly [name: string, facts: Facts, min: number, max: number][] = [
  [
    '30 Ah a day, five sun hours, MPPT',
    { dailyUseAh: 30, peakSunHours: 5, solar: panel(undefined, 'mppt') },
    84,
    140,
  ],
  [
    '30 Ah a day, five sun hours, PWM',
    { dailyUseAh: 30, peakSunHours: 5, solar: panel(undefined, 'pwm') },
    102,
    165,
  ],
  [
    '600 Wh a day, four sun hours',
    { dailyUseWh: 600, peakSunHours: 4, solar: panel(undefined, 'mppt') },
    176,
    290,
  ],
  [
    '1.2 A fridge in Tasmania in June, flat',
    { loads: load('fridge', { currentA: 1.2 }), place: 'Hobart', month: 6 },
    285,
    420,
  ],
  [
    'the same angled at the sun',
    { loads: load('fridge', { currentA: 1.2 }), place: 'Hobart', month: 6, mount: 'tilted' },
    140,
    260,
  ],
  ['the same in January', { loads: load('fridge', { currentA: 1.2 }), place: 'Hobart', month: 1 }, 65, 100],
];

describe('what panel', () => {
  test.for(sizes)('%s', ([, facts, min, max]) => {
    const { value, low, high } = figureOf(size(facts).figures, 'panelPower');
    expect(value).toBeGreaterThanOrEqual(min);
    expect(value).toBeLessThanOrEqual(max);
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
  });

  test.for<[watts: number, verdict: string]>([
    [300, 'yes'],
    [110, 'tight'],
    [50, 'no'],
  ])('is %d W enough for 30 Ah a day with five sun hours: %s', ([watts, verdict]) => {
    expect(size({ dailyUseAh: 30, peakSunHours: 5, solar: panel(watts) }, ['ask-can-it']).verdict).toBe(
      verdict,
    );
  });

  test('straight off the panel a kettle of ten times its watts is a plain no', () => {
    const facts: Facts = {
      loads: [{ name: 'kettle', count: 1, powerW: 2200, supply: 'ac' }],
      solar: panel(250),
      without: ['battery'],
    };
    const reply = size(facts, ['ask-can-it', 'carry-over']);
    expect(reply.verdict).toBe('no');
    expect(reply.headline).toMatch(/^No: 250 W .* draws about 2[45]\d\d W/);
  });

  test('straight off the panel at night there is no sun, whatever its size', () => {
    const facts: Facts = { loads: load('fan', { powerW: 15, hoursPerDay: 9 }) };
    const reply = size(facts, ['carry-over', 'night']);
    expect(reply.verdict).toBe('no');
    expect(print(reply)).toMatch(/no sun at night.*battery/s);
  });

  test('a small thing straight off a bigger panel runs while the sun is on it', () => {
    expect(
      size({ loads: load('fan', { powerW: 15 }), solar: panel(100), without: ['battery'] }).verdict,
    ).toBe('tight');
  });

  test('in polar night there is no answer in watts', () => {
    const reply = size({ dailyUseAh: 20, latitudeDeg: 75, longitudeDeg: 15, month: 12 });
    expect(reply.headline).toMatch(/sun doesn't rise/);
    expect(present(reply.figures).panelPower).toBeUndefined();
    expect(JSON.stringify(reply.figures)).not.toMatch(/null/);
  });

  test('without anything to run it asks', () => {
    expect(solarSize.needs.safeParse({ place: 'Dubbo' }).success).toBe(false);
  });
});

/** Bounds by hand: watts × sun hours × what arrives. */
const made: readonly [name: string, facts: Facts, minWh: number, maxWh: number][] = [
  ['200 W, five sun hours, MPPT', { solar: panel(200, 'mppt'), peakSunHours: 5 }, 650, 850],
  ['two 100 W, five sun hours, PWM', { solar: panel(100, 'pwm', 2), peakSunHours: 5 }, 550, 700],
  ['150 W in Broome in September', { solar: panel(150, 'mppt'), place: 'Broome', month: 9 }, 640, 900],
  ['150 W in Scotland in December', { solar: panel(150, 'mppt'), place: 'Scotland', month: 12 }, 20, 65],
  ['100 W under full cloud', { solar: panel(100), peakSunHours: 5, sky: 'overcast' }, 35, 190],
  ['100 W under trees', { solar: panel(100), peakSunHours: 5, shade: 'heavy' }, 15, 130],
];

describe('what a panel makes', () => {
  test.for(made)('%s', ([, facts, min, max]) => {
    const { figures } = yields(facts);
    const energy = figureOf(figures, 'dailyYieldEnergy');
    expect(energy.value).toBeGreaterThanOrEqual(min);
    expect(energy.value).toBeLessThanOrEqual(max);
    // A PWM passes amps, and those flow at the battery's volts on charge.
    const volts = facts.solar?.[0]?.controller === 'pwm' ? meanChargeV('agm', 'sun')[0] : 12;
    expect(energy.value / figureOf(figures, 'dailyYield').value).toBeCloseTo(volts, 9);
  });

  test('a lithium battery counts at 12.8 V, two in series at 25.6 V', () => {
    const volts = (facts: Facts) => {
      const { figures } = yields({ solar: panel(100), peakSunHours: 5, ...facts });
      return figureOf(figures, 'dailyYieldEnergy').value / figureOf(figures, 'dailyYield').value;
    };
    const batteries: Facts['batteries'] = [{ count: 2, capacityAh: 100, chemistry: 'lfp' }];
    expect(volts({ batteries })).toBeCloseTo(12.8, 6);
    expect(volts({ batteries, arrangement: 'series' })).toBeCloseTo(25.6, 6);
    expect(volts({ systemVoltageV: 24 })).toBeCloseTo(24, 6);
  });

  test('with loads it says whether it covers them', () => {
    const facts = (currentA: number): Facts => ({
      solar: panel(200),
      peakSunHours: 5,
      loads: load('fridge', { currentA, isAverage: true }),
    });
    expect(yields(facts(1), ['ask-can-it']).verdict).toBe('yes');
    expect(yields(facts(2.2), ['ask-can-it']).verdict).toBe('tight');
    expect(yields(facts(4), ['ask-can-it']).verdict).toBe('no');
    expect(yields({ solar: panel(200), peakSunHours: 5 }).verdict).toBeNull();
  });

  test('the month of the message is taken where none is said', () => {
    expect(yields({ solar: panel(100), place: 'Dubbo' }).headline).toMatch(/Dubbo in January/);
  });

  test('an unknown place is said to be unknown, and one of several is named', () => {
    expect(print(yields({ solar: panel(100), place: 'Xyzzyville' }))).toMatch(
      /don't know where Xyzzyville is/,
    );
    expect(print(yields({ solar: panel(100), place: 'Springfield' }))).toMatch(
      /in Springfield \(Missouri\) in .*I took Springfield in Missouri; there are others/s,
    );
    expect(print(yields({ solar: panel(100), place: 'Perth' }))).not.toMatch(/I took/);
    // A name that campers use is taken, and the answer says whose it is.
    expect(print(yields({ solar: panel(100), place: 'Perth' }))).toMatch(/in Perth \(Australia\) in/);
    expect(print(yields({ solar: panel(100), place: 'Perth, Scotland' }))).toMatch(/in Perth, Scotland in/);
    expect(print(yields({ solar: panel(100), place: 'Dubbo' }))).toMatch(/in Dubbo in/);
  });

  test('a panel without watts is asked for', () => {
    expect(solarYield.needs.safeParse({ place: 'Dubbo', solar: panel(undefined, 'mppt') }).success).toBe(
      false,
    );
  });

  test('answers are short, whole and printable, working included', () => {
    for (const [, facts] of made) {
      const reply = yields(facts);
      expect(print(reply).length).toBeLessThan(800);
      expect(print(reply, { isWorkingShown: true })).not.toMatch(/NaN|undefined|Infinity/);
      expect(present(reply.working)().length).toBeGreaterThan(3);
    }
  });
});
