import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { learn } from '#engine/learn/learn.ts';
import { chargeLevel } from '#intents/charge-level/intent.ts';
import { readingIn } from '#intents/learning.ts';
import { readBlocks } from '#intents/level.ts';
import type { Battery, Facts, Rig } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const of = (count: number, voltageV?: number): Battery[] => [
  { count, capacityAh: 100, chemistry: 'agm', ...(voltageV !== undefined && { voltageV }) },
];
type Wired = Pick<Facts, 'batteries' | 'arrangement' | 'systemVoltageV'>;

// Half full a 12 V AGM battery rests at 12.3 V, one of 6 V at 6.1 V, two of 12 V in series at 24.5 V.
const table: readonly (readonly [says: string, rig: Wired, volts: number, blocks: number])[] = [
  ['nothing told: by the volts', { batteries: of(1) }, 12.3, 1],
  ['nothing told, of 24 V', { batteries: of(1) }, 24.5, 2],
  ['no battery at all', {}, 24.5, 2],
  ['12 V', { batteries: of(1, 12) }, 12.3, 1],
  ['12 V that is dead is no 6 V one that is full', { batteries: of(1, 12) }, 6.3, 1],
  ['two of 12 V side by side', { batteries: of(2, 12) }, 12.3, 1],
  ['two of 12 V in series, both', { batteries: of(2, 12), arrangement: 'series' }, 24.5, 2],
  ['two of 12 V in series, one of them', { batteries: of(2, 12), arrangement: 'series' }, 12.3, 1],
  ['two of 12 V for 24 V, both', { batteries: of(2, 12), systemVoltageV: 24 }, 24.5, 2],
  ['two of 12 V for 24 V, one of them', { batteries: of(2, 12), systemVoltageV: 24 }, 12.3, 1],
  ['two of 6 V, both', { batteries: of(2, 6) }, 12.3, 1],
  ['two of 6 V, one of them', { batteries: of(2, 6) }, 6.1, 0.5],
  ['four of 12 V for 48 V', { batteries: of(4, 12), systemVoltageV: 48 }, 49, 4],
  ['24 V that is dead', { batteries: of(1, 24) }, 15, 2],
  ['a system whose batteries are not told', { systemVoltageV: 24 }, 15, 2],
];

describe('how many blocks of 12 V a reading is of', () => {
  test.for(table)('%s', ([, rig, volts, blocks]) => {
    expect(readBlocks(rig, volts)).toBe(blocks);
  });

  test('half full is half full however it is wired, and is what the answer says', () => {
    for (const [says, rig, volts] of table.filter(
      ([, { batteries }, v]) => batteries && v > 12.2 && v < 25 && v !== 15,
    )) {
      const facts: Facts = { ...rig, volts, voltsTaken: 'rest' };
      const { figures } = chargeLevel.reply(
        chargeLevel.needs.parse(facts),
        settingWith({}, { cues: new Set() }),
      );
      expect(Math.abs(Number(figures?.stateOfCharge?.value) - 50), says).toBeLessThan(8);
    }
  });
});

describe('what is learnt from volts at rest goes by the rig as it is wired', () => {
  const at = new Date('2026-01-15T09:00:00Z');
  const percent = (rig: Wired, volts: number): number | undefined => {
    const reading = readingIn({ volts, voltsTaken: 'rest' }, rig as Rig, at);
    if (!reading) return undefined;
    const expected = {
      labelAh: 100,
      capacityAh: 100,
      useAh: Array<number>(24).fill(1),
      sunAh: Array<number>(24).fill(0),
    };
    return 100 * (1 - present(learn(undefined, reading, expected).learned.mean[0]));
  };

  test('a dead 12 V battery is no full one of 6 V', () => {
    expect(percent({ batteries: of(1, 12) }, 6.3)).toBeLessThan(10);
    expect(percent({ batteries: of(2, 6) }, 6.37)).toBeGreaterThan(80);
  });

  test('two in series half full are half full', () => {
    expect(Math.abs((percent({ batteries: of(2, 12), arrangement: 'series' }, 24.5) ?? 0) - 50)).toBeLessThan(
      5,
    );
  });

  test('on charge nothing is learnt of the level', () => {
    expect(percent({ batteries: of(2, 12), arrangement: 'series' }, 28.2)).toBeUndefined();
    expect(percent({ batteries: of(1, 12) }, 14.1)).toBeUndefined();
  });
});
