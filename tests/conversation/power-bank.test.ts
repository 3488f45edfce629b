import { describe, expect, test } from 'vitest';
import { asRead, withGearTold } from '#conversation/told/gear-told.ts';
import { read } from '#language/reading.ts';
import type { StatedBattery } from '#rig/rig.ts';
import { talk, value } from './talk.ts';

const told = (text: string, battery: StatedBattery) =>
  withGearTold({ batteries: [battery] }, read(text).recognised).batteries?.[0];

describe('mAh without volts are those of a cell', () => {
  test.for<[text: string, battery: StatedBattery, isOfCell: boolean]>([
    ['a 10000mAh power bank', { capacityAh: 10 }, true],
    ['26,800 mAh bank for my phone', { capacityAh: 26.8 }, true],
    ['5000 milliamp hours', { capacityAh: 5 }, true],
    ['10Ah battery', { capacityAh: 10 }, false],
    ['a 12V 7000mAh battery', { capacityAh: 7, voltageV: 12 }, false],
    ['10000mAh power bank and a 100Ah agm', { capacityAh: 100, chemistry: 'agm' }, false],
  ])('%s', ([text, battery, isOfCell]) => {
    expect(told(text, battery)).toEqual({ ...battery, ...(isOfCell && { isOfCell }) });
  });
});

test('it is counted, said, and no part of what is called understood', () => {
  const { last } = talk(['ann: how long will a 10000mAh power bank run a 5W light']);
  // 10 Ah × 3.7 V × 85 % ÷, less a little for a battery's rate 5 W.
  expect(value(last, 'runTime')).toBeCloseTo(6.1, 0);
  expect(last.text).toContain('10,000 mAh');
  expect(last.understood.batteries).toEqual([{ capacityAh: 10 }]);
});

test('as it was read', () => {
  expect(asRead({ batteries: [{ capacityAh: 10, isOfCell: true }] })).toEqual({
    batteries: [{ capacityAh: 10 }],
  });
});

test.for<[line: `${string}: ${string}`, energyWh: number, says: RegExp]>([
  // 5 W × 2 h × 3 days ÷ 0.85.
  [
    'ann: what power bank for a 5W phone 2h a day for 3 days?',
    35,
    /^About 35 Wh for 3 days: a 37 Wh power bank\.\n.*85 %/,
  ],
  // 40 W × 8 h × 3 nights ÷ 0.85.
  [
    'ann: which power station for a 40W fan 8h a day, 3 days',
    1129,
    /^About 1100 Wh for 3 days: a 1500 Wh power station\./,
  ],
])('a power bank or station is sized by its Wh: %s', ([line, energyWh, says]) => {
  const { last } = talk([line]);
  expect(value(last, 'energyNeeded')).toBeCloseTo(energyWh, 0);
  expect(last.text).toMatch(says);
  expect(last.assumed.map(({ name }) => name)).not.toContain('depthOfDischarge');
});
