import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import { batteryType } from '#intents/battery-type/intent.ts';
import { compare } from '#intents/compare/intent.ts';
import { needsOf } from '#intents/intent.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const reply = (stated: Stated, subject: string) =>
  compare.reply(needsOf(compare, subject).parse(stated), settingWith({ subject }));
const value = (of: ReturnType<typeof reply>, name: string) => Number(of.figures?.[name]?.value);
const better = (stated: Stated, subject: string) => reply(stated, subject).figures?.better?.value;
const named = (text: string) => present(compare.subjectIn)(recognise(text).words, text);

const agm = { capacityAh: 100, chemistry: 'agm' } as const;

describe('pairs that campers name', () => {
  test.each([
    ['AGM or lithium?', 'agm-lithium'],
    ['a panel or a generator for 40Ah a day', 'panel-generator'],
    ['DC-DC or isolator', 'dcdc-isolator'],
    ['12V or 24V for a 3000W inverter', 'twelve-24'],
    ['one big battery or two small ones', 'one-two'],
    ['PWM or MPPT for 200W', 'pwm-mppt'],
    ['fridge on gas or on 12V', 'gas-12v'],
    ['a bigger battery or a panel first?', 'grow'],
    ['another battery or another panel', 'battery-panel'],
  ])('"%s" is %s', (text, name) => expect(named(text)).toBe(name));

  test.each([
    '12V or 230V kettle',
    'the fridge or the electric blanket',
    'one 200W panel or two 120W panels',
  ])('"%s" is none of them', text => expect(named(text)).toBeUndefined());

  test('asks for a day’s use where it hangs on that, for nothing where not', () => {
    const asks = (subject: string) => !needsOf(compare, subject).safeParse({}).success;
    expect(['panel-generator', 'battery-panel'].map(asks)).toEqual([true, true]);
    expect(['pwm-mppt', 'twelve-24', 'gas-12v', 'dcdc-isolator', 'agm-lithium'].some(asks)).toBe(false);
  });
});

describe('which for you', () => {
  // AGM 100 Ah × 0.5 = 50 Ah, lithium × 0.8 = 80 Ah: 36 Ah a day is 72 % of what AGM gives
  test('lithium where each day runs AGM low, AGM where it doesn’t, and in frost', () => {
    const deep = reply({ batteries: [agm], dailyUseAh: 36 }, 'agm-lithium');
    expect(value(deep, 'usableCapacityAgm')).toBeCloseTo(50, 0);
    expect(value(deep, 'usableCapacityLfp')).toBeCloseTo(80, 0);
    expect(deep.headline).toMatch(/^Lithium for you/);
    expect(deep.cautions).toContain('lithium-cold');
    expect(better({ batteries: [agm], dailyUseAh: 10 }, 'agm-lithium')).toBe('AGM');
    expect(reply({ batteries: [agm], dailyUseAh: 10, ambientC: -5 }, 'agm-lithium').headline).toMatch(
      /frost/,
    );
    const asked = batteryType.reply(batteryType.needs.parse({ dailyUseAh: 36 }), settingWith());
    expect(asked.headline).toMatch(/^Lithium for you/);
  });

  test('a panel where there is sun, a generator where there is none; carbon monoxide is warned of', () => {
    const sunny = reply({ dailyUseAh: 40, peakSunHours: 5 }, 'panel-generator');
    // 40 Ah × 13 V ÷ (5 h × 0.7 × 0.87) ≈ 170 W; 40 Ah ÷ 0.87 ÷ 20 A = 2.3 h
    expect(value(sunny, 'panelPower')).toBeGreaterThan(130);
    expect(value(sunny, 'panelPower')).toBeLessThan(210);
    expect(value(sunny, 'chargeTime')).toBeGreaterThan(2);
    expect(value(sunny, 'chargeTime')).toBeLessThan(2.8);
    expect(sunny.headline).toMatch(/^Panel for you/);
    expect(sunny.cautions).toContain('carbon-monoxide');
    expect(better({ dailyUseAh: 40, sky: 'overcast' }, 'panel-generator')).toBe('generator');
    const polar = reply({ dailyUseAh: 40, place: 'tromso', month: 12 }, 'panel-generator');
    expect(polar.figures).not.toHaveProperty('panelPower');
    expect(print(polar)).not.toMatch(/Infinity|NaN/);
  });

  test('DC-DC or isolator: Ah of a drive, and the reason', () => {
    const told = reply({ drivingHoursPerDay: 2, alternator: 'smart' }, 'dcdc-isolator');
    // 25 A × 2 h; the isolator at half of 20 A × 2 h
    expect(value(told, 'dailyGain1')).toBeCloseTo(50, 0);
    expect(value(told, 'dailyGain2')).toBeLessThan(30);
    expect(told.figures?.recommendation).toEqual({ value: 'dcdc' });
    expect(better({ batteries: [agm], alternator: 'fixed' }, 'dcdc-isolator')).toBe('isolator');
  });

  test('12 or 24 V by the amps of the largest load', () => {
    // 3000 W ÷ 0.9 ÷ 12 V = 278 A, and half at 24 V
    const large = reply({ inverter: { powerW: 3000 } }, 'twelve-24');
    expect(value(large, 'current12')).toBeCloseTo(278, -0.5);
    expect(value(large, 'current24')).toBeCloseTo(139, -0.5);
    expect(large.headline).toMatch(/^24 V for you/);
    expect(large.cautions).toContain('big-current');
    expect(better({ inverter: { powerW: 600 } }, 'twelve-24')).toBe('12 V');
  });

  test('one or two: by what a person lifts', () => {
    const heavy: Stated = {
      batteries: [
        { count: 1, capacityAh: 200 },
        { count: 2, capacityAh: 100 },
      ],
    };
    // 200 Ah × 0.3 kg/Ah = 60 kg (makers' sheets, common practice)
    expect(reply(heavy, 'one-two').headline).toMatch(/^Two for you: .* 60 kg/);
    expect(better({ batteries: [{ capacityAh: 100, chemistry: 'lfp' }] }, 'one-two')).toBe('one');
  });

  test('MPPT where it is worth it', () => {
    const large = reply({ solar: [{ powerW: 200 }], peakSunHours: 5 }, 'pwm-mppt');
    expect(value(large, 'dailyYield1')).toBeGreaterThan(1.15 * value(large, 'dailyYield2'));
    expect(large.headline).toMatch(/^MPPT for you/);
    expect(better({ solar: [{ powerW: 40 }], peakSunHours: 5 }, 'pwm-mppt')).toBe('PWM');
  });

  test('gas or 12 V: a three-way heater takes many times as much', () => {
    const told = reply({ solar: [{ powerW: 160 }] }, 'gas-12v');
    expect(value(told, 'dailyUse2')).toBeGreaterThan(4 * value(told, 'dailyUse1'));
    expect(told.headline).toMatch(/^12 V compressor fridge for you/);
    expect(told.cautions).toContain('gas-fridge');
    expect(better({ without: ['solar', 'driving', 'charging'], durationH: 240 }, 'gas-12v')).toBe('gas');
  });

  test('battery or panel first: by how long they are away, and neither where it does as it is', () => {
    const rig: Stated = { batteries: [agm], dailyUseAh: 36, peakSunHours: 5 };
    const long = reply(rig, 'battery-panel');
    // 100 W × 5 h × 0.75 ÷ 12 V = 31 Ah, of which lead keeps some 80 %: 25 Ah each day; 50 Ah once
    expect(value(long, 'dailyGain1')).toBeGreaterThan(20);
    expect(value(long, 'dailyGain1')).toBeLessThan(30);
    expect(value(long, 'dailyGain2')).toBeCloseTo(50, 0);
    expect(long.headline).toMatch(/^Panel first/);
    expect(better({ ...rig, durationH: 40 }, 'battery-panel')).toBe('battery');
    expect(better({ ...rig, durationH: 24 }, 'battery-panel')).toBe('neither');
    expect(better({ ...rig, solar: [{ powerW: 300 }] }, 'grow')).toBe('neither');
  });

  test('two told with their sizes are held against each other, whatever the words', () => {
    const stated: Stated = { batteries: [agm, { capacityAh: 100, chemistry: 'lfp' }], dailyUseAh: 24 };
    const told = reply(stated, 'agm-lithium');
    expect(told.headline).toMatch(/lasts longer/);
    expect(print(told)).toMatch(/Weight: 100 Ah lithium about 12 kg, 100 Ah AGM about 30 kg/);
    expect(told.cautions).toContain('lithium-cold');
  });

  test('first lines of 100 characters, and a caution in each', () => {
    const rigs: Stated[] = [
      { dailyUseAh: 40 },
      { dailyUseAh: 40, place: 'hobart', month: 6, batteries: [{ ...agm, capacityAh: 400 }] },
      { loads: [{ name: 'fridge' }], drivingHoursPerDay: 3, alternator: 'fixed', inverter: { powerW: 5000 } },
    ];
    const subjects = [
      ...['agm-lithium', 'panel-generator', 'dcdc-isolator', 'twelve-24'],
      ...['one-two', 'pwm-mppt', 'gas-12v', 'battery-panel'],
    ];
    const lengths: number[] = [];
    for (const rig of rigs)
      for (const subject of subjects) {
        const told = reply(rig, subject);
        expect(told.headline.length, told.headline).toBeLessThanOrEqual(100);
        expect(told.cautions?.length, subject).toBeGreaterThan(0);
        expect(print(told)).not.toMatch(/undefined|NaN|Infinity|for ever/);
        lengths.push(print(told).length);
      }
    expect(lengths.sort((a, b) => a - b)[12]).toBeLessThanOrEqual(640);
  });
});
