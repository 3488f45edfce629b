import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { compare } from '#intents/compare/intent.ts';
import { emergency } from '#intents/emergency/intent.ts';
import type { Intent, RequestContext } from '#intents/intent.ts';
import { none } from '#intents/none/intent.ts';
import { rigCheck } from '#intents/rig-check/intent.ts';
import { solarWiring } from '#intents/solar-wiring/intent.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const reply = <N>(intent: Intent<N>, stated: Stated, setting: Partial<RequestContext> = {}) =>
  intent.reply(intent.needs.parse(stated), settingWith(setting));
const isAnswered = <N>(intent: Intent<N>, stated: Stated) => intent.needs.safeParse(stated).success;
const value = (of: ReturnType<typeof reply>, name: string) => Number(of.figures?.[name]?.value);

test('an emergency is answered at once: no figures, nothing to tap, nothing asked', () => {
  const told = reply(emergency, {});
  expect(told.headline).toMatch(/fresh air.*emergency number/);
  expect([told.figures, told.next]).toEqual([undefined, undefined]);
  expect(print(told)).not.toMatch(/\?|Ah|\d V/);
});

test('talk gets one line, and no question back', () => {
  const told = print(reply(none, {}));
  expect(told.split('\n')).toHaveLength(1);
  expect(told).not.toMatch(/\?/);
});

describe('panels in series or parallel', () => {
  test('asks for the panels, and takes one without any figure', () => {
    expect(isAnswered(solarWiring, {})).toBe(false);
    expect(isAnswered(solarWiring, { solar: [{ count: 2 }] })).toBe(true);
    expect(reply(solarWiring, { solar: [{ count: 2 }] }).figures).not.toHaveProperty('chargeCurrent');
  });

  test('no plain yes where the limit of the controller is not known', () => {
    const solar = [{ count: 3, powerW: 200, openCircuitV: 24.5, controller: 'mppt' as const }];
    const told = reply(solarWiring, { solar, arrangement: 'series' });
    expect(told.verdict).toBe('tight');
    expect(told.headline).toMatch(/only on a controller for \d+ V or more/);
    expect(told.cautions?.[0]).toBe('high-dc');
  });
});

describe('this or that', () => {
  const agm = { capacityAh: 100, chemistry: 'agm' } as const;
  const lfp = { capacityAh: 100, chemistry: 'lfp' } as const;

  test('asks for both sides where one is told', () => {
    expect(isAnswered(compare, { batteries: [agm] })).toBe(false);
    expect(isAnswered(compare, { solar: [{ powerW: 100 }] })).toBe(false);
  });

  test.each<[string, Stated, string, number, number]>([
    ['batteries by what they hold', { batteries: [agm, lfp] }, 'usableCapacity', 50, 80],
    ['batteries by how long they last', { batteries: [agm, lfp], dailyUseAh: 24 }, 'runTime', 50, 80],
    [
      'loads by what they use',
      {
        loads: [
          { name: 'a', currentA: 1 },
          { name: 'b', currentA: 2 },
        ],
      },
      'dailyUse',
      24,
      48,
    ],
    [
      'a panel and a battery, each for what it brings',
      { solar: [{ powerW: 100 }], batteries: [agm], peakSunHours: 5 },
      'dailyGain',
      31,
      50,
    ],
  ])('%s', (_name, stated, key, first, second) => {
    const told = reply(compare, stated);
    expect(value(told, `${key}1`)).toBeCloseTo(first, -0.5);
    expect(value(told, `${key}2`)).toBeCloseTo(second, -0.5);
    expect(value(told, 'difference')).toBeCloseTo(
      Math.abs(value(told, `${key}1`) - value(told, `${key}2`)),
      9,
    );
  });

  test('two chargers: the larger is quicker', () => {
    const chargers = [10, 20].map(currentA => ({ kind: 'mains' as const, currentA }));
    const told = reply(compare, { batteries: [{ ...agm, stateOfChargePercent: 50 }], chargers });
    expect(value(told, 'chargeTime2')).toBeLessThan(value(told, 'chargeTime1'));
    expect(told.headline).toMatch(/^20 A mains charger is quicker/);
  });

  test('lithium in the frost is charged by neither', () => {
    const chargers = [10, 20].map(currentA => ({ kind: 'mains' as const, currentA }));
    const told = reply(compare, { batteries: [lfp], chargers, ambientC: -4 });
    expect(told.headline).toMatch(/^Neither: lithium must not be charged/);
    expect(told.cautions).toEqual(['lithium-cold']);
    expect(told.figures).not.toHaveProperty('difference');
  });

  test('what is remembered fills in, and is not held against anything', () => {
    const stated: Stated = {
      batteries: [agm, lfp],
      loads: [{ name: 'fridge', currentA: 1, isAverage: true }],
      solar: [{ powerW: 100 }],
    };
    const told = reply(compare, stated, { recalled: new Set(['loads', 'solar'] as const) });
    expect(value(told, 'runTime1')).toBeCloseTo(50, 0);
  });
});

describe('what is weak in a rig', () => {
  const rig: Stated = {
    batteries: [{ capacityAh: 100, chemistry: 'agm' }],
    dailyUseAh: 20,
    solar: [{ powerW: 200 }],
    chargers: [{ kind: 'dcdc', currentA: 25 }],
  };
  const weakest = (changes: Stated) => reply(rigCheck, { ...rig, ...changes }).figures?.weakest?.value;

  test('asks for a battery and what runs on it', () => {
    expect(isAnswered(rigCheck, { batteries: rig.batteries })).toBe(false);
    expect(isAnswered(rigCheck, rig)).toBe(true);
  });

  test.each<[string, Stated, string]>([
    ['a small battery', { dailyUseAh: 80, solar: [{ powerW: 900 }] }, 'battery'],
    ['a small panel', { solar: [{ powerW: 40 }] }, 'solar'],
    ['a small charger', { chargers: [{ kind: 'mains', currentA: 2 }] }, 'charger'],
    [
      'an isolator with lithium',
      { batteries: [{ capacityAh: 100, chemistry: 'lfp' }], chargers: [{ kind: 'isolator' }] },
      'isolator',
    ],
    ['a thin cable', { cable: { lengthM: 10, areaMm2: 1.5, currentA: 10 } }, 'cable'],
    [
      'a big inverter on a small battery',
      {
        loads: [{ name: 'kettle', powerW: 2000, minutesPerDay: 3 }],
        dailyUseAh: undefined,
        inverter: { powerW: 3000 },
      },
      'battery-current',
    ],
  ])('%s', (_name, changes, part) => expect(weakest(JSON.parse(JSON.stringify(changes)))).toBe(part));

  test('a sound rig is called sound', () => {
    expect(reply(rigCheck, rig).headline).toMatch(/^All sound/);
  });
});
