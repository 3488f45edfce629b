import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import { list } from '#intents/list/intent.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const reply = (stated: Stated) => list.reply(list.needs.parse(stated), settingWith());
const value = (stated: Stated, name: string) => Number(reply(stated).figures?.[name]?.value);
const text = (stated: Stated) => print(reply(stated));

describe('what to buy', () => {
  const beginner: Stated = { loads: [{ name: 'fridge' }, { name: 'lights' }, { name: 'phones' }] };

  test('asks what it has to run, and takes things without figures', () => {
    expect(list.needs.safeParse({}).success).toBe(false);
    expect(Object.keys(present(reply(beginner).figures))).toEqual([
      'batteryCapacity',
      'dailyUse',
      'panelPower',
      'chargerCurrent',
    ]);
    expect(text(beginner)).toMatch(/Those are typical figures: what does the fridge’s plate say\?/);
    expect(text(beginner)).not.toMatch(/inverter/);
  });

  test('both kinds of battery where nobody told which, sizes and no makes', () => {
    expect(reply({ dailyUseAh: 30 }).headline).toMatch(
      /^You need \d+ Ah of AGM \(or \d+ Ah of lithium\), \d+ W of solar and a \d+ A DC-DC charger\.$/,
    );
    expect(reply({ dailyUseAh: 30, batteries: [{ chemistry: 'lfp' }] }).headline).toMatch(
      /^You need \d+ Ah of lithium, /,
    );
  });

  // 60 Ah in 2 days: ÷ 0.5 = 120 Ah of AGM; ÷ 0.8 = 75 Ah of lithium
  test('the battery carries two days, or all of the time where nothing charges it', () => {
    expect(value({ dailyUseAh: 30 }, 'batteryCapacity')).toBeCloseTo(120, 0);
    const alone: Stated = { dailyUseAh: 30, durationH: 72, without: ['solar', 'driving'] };
    expect(Object.keys(present(reply(alone).figures))).toEqual(['batteryCapacity', 'dailyUse']);
    expect(value(alone, 'batteryCapacity')).toBeCloseTo(180, 6);
    expect(text(alone)).not.toMatch(/Where and when/);
  });

  test('an inverter for what runs on mains, cable and fuse for a run told', () => {
    const microwave: Stated = {
      loads: [{ name: 'microwave', powerW: 700, minutesPerDay: 10 }],
      cable: { lengthM: 5, currentA: 15 },
    };
    expect(value(microwave, 'inverterPower')).toBe(1500);
    // 15 A over 5 m at 3 % of 12 V asks for 2 × 5 m × 15 A ÷ (56 × 0.36 V) = 7.4 mm² or a size close to it
    expect(value(microwave, 'conductorArea')).toBeGreaterThanOrEqual(6);
    expect(value(microwave, 'fuseRating')).toBe(20);
    expect(reply(microwave).cautions).toContain('mains-wiring');
  });

  test('cables as usually laid, each with its fuse', () => {
    // 25 A out takes 25 × 14.4 ÷ (0.9 × 13.5) = 29.6 A in: fuse 1.25 × 29.6 = 37 → 40 A;
    // 3 % of 13.5 V over 2 × 5 m: 10 m × 29.6 A ÷ (56 × 0.405 V) = 13 → 16 mm²
    expect(text(beginner)).toMatch(/^Cable: 16 mm² to the DC-DC \(5 m, 40 A fuse\) and /m);
    // What is told of a fridge may be its average: its cable is for the running compressor.
    expect(text({ loads: [{ name: 'fridge', currentA: 1.2 }] })).toMatch(
      /2\.5 mm² to the fridge \(4 m, 10 A fuse\)/,
    );
    expect(text({ loads: [{ name: 'kettle', powerW: 1800, minutesPerDay: 6 }] })).toMatch(
      /\d+ mm² to the inverter \(1 m, \d+ A fuse/,
    );
  });

  test('a solar controller with the panel, none without', () => {
    // 140 W ÷ 12 V = 11.7 → 15 A
    expect(text({ dailyUseAh: 30 })).toMatch(/a 15 A MPPT controller/);
    expect(text({ dailyUseAh: 30, without: ['solar'] })).not.toMatch(/controller/);
  });

  test('what is there already is not bought again, and what is too small is named', () => {
    const own: Stated = {
      loads: [{ name: 'fridge', currentA: 1.2, isAverage: true }],
      batteries: [{ capacityAh: 100, chemistry: 'lfp' }],
      solar: [{ powerW: 60 }],
    };
    expect(text(own)).toMatch(/You have enough with your 100 Ah lithium\./);
    expect(text(own)).toMatch(/Too small for it: your 60 W of solar\./);
    expect(reply(own).headline).toMatch(/^You need \d+ W of solar in all/);
  });

  // 60 W ÷ 12 V = 5 A; a usual laptop is on for a few hours a day, not for 24 (120 Ah)
  test('a draw told without hours is taken for its usual hours, and asked about', () => {
    expect(value({ loads: [{ name: 'laptop', powerW: 60 }] }, 'dailyUse')).toBeLessThan(40);
    expect(text({ loads: [{ name: 'laptop', powerW: 60 }] })).toMatch(
      /how many hours a day is the laptop on\?/,
    );
  });

  test('a few phones need no charger on the drive', () => {
    expect(value({ loads: [{ name: 'phones' }] }, 'chargerCurrent')).toBeNaN();
    expect(value({ loads: [{ name: 'phones' }], drivingHoursPerDay: 2 }, 'chargerCurrent')).toBe(10);
  });

  test('first lines fit, and it cautions', () => {
    const cases: Stated[] = [
      beginner,
      { dailyUseAh: 300 },
      { dailyUseAh: 45, batteries: [{ chemistry: 'lfp' }], ambientC: 2 },
      { loads: [{ name: 'cpap', powerW: 35, hoursPerDay: 8 }] },
      { loads: [{ name: 'fridge' }, { name: 'induction plate', powerW: 2000, minutesPerDay: 30 }] },
    ];
    for (const one of cases) {
      expect(reply(one).headline.length).toBeLessThanOrEqual(100);
      expect(reply(one).cautions).toContain('fuse-at-battery');
      expect(text(one)).not.toMatch(/undefined|NaN|Infinity/);
    }
  });
});
