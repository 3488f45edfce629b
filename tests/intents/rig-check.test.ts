import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { rigCheck } from '#intents/rig-check/intent.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const rig: Stated = {
  batteries: [{ capacityAh: 100, chemistry: 'agm' }],
  dailyUseAh: 20,
  solar: [{ powerW: 200 }],
  chargers: [{ kind: 'dcdc', currentA: 25 }],
};
const reply = (changes: Stated) =>
  rigCheck.reply(rigCheck.needs.parse({ ...rig, ...changes }), settingWith());
const weakest = (changes: Stated) => reply(changes).figures?.weakest?.value;
const value = (changes: Stated, name: string) => Number(reply(changes).figures?.[name]?.value);

describe('a rig checked whole', () => {
  test.each<[string, Stated, string, string]>([
    [
      'a charger that the battery can’t take',
      { chargers: [{ kind: 'mains', currentA: 60 }] },
      'charge-limit',
      'battery-gas',
    ],
    [
      'a fuse larger than its cable carries',
      { cable: { lengthM: 3, areaMm2: 2.5, currentA: 5 }, fuseA: 60 },
      'fuse',
      'no-fuse',
    ],
    [
      'a DC-DC on a small alternator',
      { chargers: [{ kind: 'dcdc', currentA: 30 }], alternatorA: 55 },
      'alternator',
      'fuse-at-battery',
    ],
    [
      'an inverter flat out on a small battery, with no load told',
      { dailyUseAh: undefined, solar: undefined, inverter: { powerW: 2000 } },
      'battery-current',
      'big-current',
    ],
  ])('%s', (_name, changes, part, caution) => {
    const plain = JSON.parse(JSON.stringify({ ...rig, ...changes })) as Stated;
    const told = rigCheck.reply(rigCheck.needs.parse(plain), settingWith());
    expect(told.figures?.weakest?.value).toBe(part);
    expect(told.cautions).toContain(caution);
  });

  test('what the drive brings the sun needn’t', () => {
    const small: Stated = { solar: [{ powerW: 40 }], dailyUseAh: 40 };
    expect(weakest(small)).toBe('solar');
    // 25 A × 0.97 × 2 h = 48 Ah
    expect(weakest({ ...small, drivingHoursPerDay: 2 })).not.toBe('solar');
  });

  test('driving alone is held against the use', () => {
    const driven: Stated = {
      batteries: [{ capacityAh: 200, chemistry: 'agm' }],
      solar: [],
      dailyUseAh: 60,
      drivingHoursPerDay: 1,
    };
    expect(weakest(driven)).toBe('driving');
    expect(value(driven, 'dailyGain')).toBeCloseTo(24, 0);
    expect(print(reply(driven))).toMatch(/about 2\.5 hours of driving a day/);
  });

  test('what is sound, what nobody told, and the cold', () => {
    const told = print(reply({}));
    expect(told).toMatch(/^All sound\. Tightest is /);
    expect(told).toMatch(/Also sound: .*\./);
    expect(told).toMatch(
      /You didn’t tell me, so I didn’t check: hours driven a day, cables, fuses and where and when you camp\./,
    );
    const cold: Stated = { batteries: [{ capacityAh: 100, chemistry: 'lfp' }], ambientC: -3 };
    expect(reply(cold).cautions).toContain('lithium-cold');
    expect(print(reply(cold))).toMatch(/kept over 0 °C to charge/);
  });

  test('first lines of 100 characters, a caution in each', () => {
    const rigs: Stated[] = [
      {},
      { dailyUseAh: 200 },
      { solar: [{ powerW: 40 }], drivingHoursPerDay: 0.2, dailyUseAh: 70 },
      { inverter: { powerW: 2000 }, loads: [{ name: 'kettle', powerW: 1800, minutesPerDay: 5 }] },
      { inverter: { powerW: 800 }, cable: { lengthM: 2, areaMm2: 25 } },
      { cable: { lengthM: 12, areaMm2: 1.5, currentA: 12 }, fuseA: 10 },
      { chargers: [{ kind: 'isolator' }], alternator: 'smart' },
    ];
    for (const one of rigs) {
      expect(reply(one).headline.length, reply(one).headline).toBeLessThanOrEqual(100);
      expect(reply(one).cautions?.length).toBeGreaterThan(0);
      expect(print(reply(one))).not.toMatch(/undefined|NaN|Infinity/);
    }
  });
});
