import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Turn, talk, value } from './talk.ts';

const amps: Turn = 'Ann: how many watts is 12v 8 amps';

describe('hours after amps or watts', () => {
  test.each([
    'ta. and over 5 hours?',
    'so for 5 hours thats?',
    'running it 5 hrs?',
    'if it runs for 5 hours',
  ])('“%s” are amp hours', text => {
    const { last } = talk([amps, `Ann: ${text}`]);
    expect(last.text).toMatch(
      /^8 A over 5 h is 40 Ah\.\nAmps times hours are amp hours; at 12 V that is 480 Wh\./,
    );
  });
  test('at the volts told', () => {
    const { last } = talk(['Hu: 10A at 24V in watts', 'Hu: over half an hour?']);
    expect(last.text).toMatch(/^10 A over 0.5 h is 5 Ah\..*\n?.*at 24 V that is 120 Wh/);
  });
  test('alone are minutes still', () => {
    expect(talk(['Ann: convert 5 hours to minutes']).last.text).toMatch(/300 min/);
  });
  test('after an inverter are what its battery gives', () => {
    const { last } = talk([
      'Al: can my 600w inverter do a 400w blender',
      'Al: and in amp hours for 5 minutes',
    ]);
    expect(last.text).toMatch(/^About 3\.1 Ah/);
  });
});

describe('a guess at that', () => {
  test.each([
    ['so 40ah yeah?', /^Your 40 Ah is right: in 5 hours it takes that\./],
    ['80ah right?', /^Your 80 Ah is far off: in 5 hours it takes about 40 Ah\./],
  ])('“%s”', (text, says) => {
    const { last } = talk([amps, 'Ann: and over 5 hours?', `Pete: ${text}`]);
    expect(last.text).toMatch(says);
  });
  test('of a use for some hours', () => {
    const { last } = talk(['Ni: how much does a 30w light use in 5 hours', 'Oz: 12.5ah yeah?']);
    expect(last.text).toMatch(/^Your 12.5 Ah is right/);
    expect(last.text).not.toMatch(/would be/);
  });
  test('hours of use are counted, and said to be', () => {
    expect(talk(['Ni: how much does a 30w light use in 5 hours']).last.text).not.toMatch(/Not counted/);
  });
});

describe('amps asked after an inverter', () => {
  const check: Turn = 'Liz: will a 500w kettle run on our 600w inverter?';
  test.each([
    'Tom: told ya. how many amps is that off the battery',
    "Liz: what's that in amps at the battery",
    'Liz: amps at 12v?',
    'Liz: and how many amps is that drawing on the 12v side',
  ] as const)('“%s” are the battery’s', text => {
    const { answers, last } = talk([check, text]);
    expect(last.text).toMatch(/^It draws about 46 A/);
    expect(value(last, 'batteryCurrent')).toBeCloseTo(value(present(answers[0]), 'batteryCurrent'), 3);
  });
});
