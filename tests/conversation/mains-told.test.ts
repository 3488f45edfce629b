import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import type { Interpreted } from '#conversation/interpret.ts';
import { gearIn } from '#rig/gear.ts';
import { mainsVoltsIn, withoutMainsVolts } from '#rig/mains.ts';
import { interpretedAs } from './as-heard.ts';
import { talk } from './talk.ts';

test.for<[volts: number, isMains: boolean]>([
  [12, false],
  [24, false],
  [48, false],
  [72, false],
  [110, true],
  [120, true],
  [230, true],
  [240, true],
])('%i V: mains %s', ([systemVoltageV, isMains]) => {
  const facts = { systemVoltageV, durationH: 2 };
  expect(mainsVoltsIn(facts)).toBe(isMains ? systemVoltageV : undefined);
  expect(withoutMainsVolts(facts)).toEqual(isMains ? { durationH: 2 } : facts);
  expect(gearIn(facts)).toEqual(isMains ? {} : { systemVoltageV });
});

describe('mains volts told are those of what runs on mains', () => {
  const asked = (systemVoltageV?: number) =>
    interpretedAs('generator', {
      chargers: [{ kind: 'mains', currentA: 50 }],
      loads: [{ name: 'toaster', currentA: 8 }],
      ...(systemVoltageV !== undefined && { systemVoltageV }),
    });
  const needW = ({ intent, ready, setting }: Interpreted) =>
    Number(intent.reply(present(ready), setting).figures?.generatorPower?.value);

  test.for([110, 120, 240])('%i V', volts => {
    const { facts, setting } = asked(volts);
    expect(facts.systemVoltageV).toBeUndefined();
    expect(setting.mainsV).toBe(volts);
  });

  test('a charger for the battery needs what it needs without them', () => {
    expect(needW(asked(230))).toBe(needW(asked()));
    expect(needW(asked()) - needW(asked(120))).toBeCloseTo(8 * 110, -2);
  });

  test('the volts of a battery stay', () => {
    expect(asked(24).facts.systemVoltageV).toBe(24);
    expect(asked(24).setting.mainsV).toBe(230);
  });
});

test('they stay with the question', () => {
  const { memory } = talk([`ann: what generator for a 50A charger and a toaster that pulls 8 amps at 120V`]);
  expect(memory.frames.at(-1)).toMatchObject({ mainsV: 120 });
});
