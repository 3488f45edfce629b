import { describe, expect, test } from 'vitest';
import { ask } from './ask.ts';

const told = (say: string, before: string[] = []): string => ask({ say, before }).text;

describe('water to the boil: 4.19 kJ a litre and kelvin, from 15 °C, nine tenths of it used', () => {
  test.each([
    // 4.19 × 85 / 3.6 / 0.9 = 110 Wh a litre: 44 minutes at 150 W, 8.8 Ah at 12.5 V.
    ['12v kettle 150W how long to boil a litre', /^About 45 minutes and 9 Ah of 12 V, for 1 L at 150 W/],
    [
      '150w travel kettle, time to boil 500ml and how many ah',
      /^About 20 minutes and 4 Ah .* 0\.5 L at 150 W/,
    ],
    // 165 Wh: 8¼ minutes at 1200 W; through an inverter of 90 % 14.7 Ah.
    [
      'how long to boil 1.5L on a 1200W kettle off the inverter',
      /^About 8 minutes and 15 Ah of 12 V by inverter/,
    ],
    ['how long for my 12 volt kettle (100W) to boil two cups', /^About 35 minutes and 4 Ah/],
    ['how many amp hours to boil a litre of water', /^About 45 minutes and 9 Ah/],
  ])('%s', (say, says) => expect(told(say)).toMatch(says));

  test.each([
    'kettle 1500 W on the inverter 5 min a day, how many amp hours',
    'how long will 100Ah run a 1200W kettle',
  ])('minutes told, or a battery’s time: “%s”', say => expect(told(say)).not.toMatch(/for 1 L/));
});

describe('a warm plug', () => {
  test.each([
    'anderson plug getting warm when the fridge is going, normal?',
    'the 50A plug is warm when charging from the car, normal?',
    'is it normal that the fridge socket is warm to touch',
    'the lug on the inverter cable is hot',
  ])('%s', say => expect(told(say)).toMatch(/^No: heat means a loose, dirty or badly crimped joint/));

  test('barely warm is still told apart', () =>
    expect(told('cable is slightly warm after hours, ok?')).not.toMatch(/^No: heat means a loose/));
});

describe('a plug of 15 A', () => {
  test.each([
    'what’s this 15 amp plug business?',
    'what is a 15 A lead',
    'why do caravans here have 15A plugs',
    'whats the difference between a 10 amp and 15 amp plug',
  ])('%s', say => expect(told(say)).toMatch(/^In Australia and New Zealand it is the vans’ mains plug/));

  test('15 A of something else is none', () =>
    expect(told('what fuse for a 15A fridge plug')).not.toMatch(/Australia/));
});

describe('drop and fuse asked at once', () => {
  test.each([
    [
      '25mm² from a 3kVA inverter to a 12V 300Ah LFP, 1.2m each way. Volt drop and what fuse?',
      /loses 0\.5\d V \(4\.\d %\)/,
    ],
    ['what fuse for 6mm2 to a fridge 5A 6m and whats the volt drop', /loses 0\.21 V \(1\.7 %\)/],
    ['10mm2 4m to the dcdc 30A, fuse size and volt drop please', /wants a 50 A fuse/],
    ['voltage drop and fuse for 16mm² 3 m 60A', /wants an? 80 A fuse/],
  ])('%s', (say, says) => expect(told(say)).toMatch(says));
});
