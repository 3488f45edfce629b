import { describe, expect, test } from 'vitest';
import { talk } from './talk.ts';

const firstLines = (...turns: Parameters<typeof talk>[0]): string[] =>
  talk(turns, { kind: 'private' }).answers.map(({ text }) => text.split('\n')[0] ?? '');

describe('what follows an answer is not answered with the same words', () => {
  test('a turn that changes nothing says so, and why', () => {
    const { last } = talk(['ann: fridge 1.2A, 100Ah agm, how long?', 'ann: what if it rains?']);
    expect(last.text).toMatch(/^No change\. It lasts about/);
    expect(last.text).toContain('no solar');
  });
  test('a thing of which no draw is known is asked for, not passed over', () => {
    const { last } = talk([
      'ann: fridge 1.2A average, 100Ah agm, how long?',
      'ann: and if I run a telescope mount too?',
    ]);
    expect(last.text).toMatch(/^I can’t count the telescope mount yet: what does it draw\?/);
    expect(last.text).toMatch(/Without it: It lasts/);
  });
  test('what is not in it can’t be taken out', () => {
    const { last } = talk(['ann: fridge 1.2A average, 100Ah agm, how long?', 'ann: without the kettle?']);
    expect(last.text).toMatch(/^There’s no kettle in it to take out\.\nIt lasts/);
  });
  test('a bare why is told what the answer comes from', () => {
    const [, why] = firstLines('ann: fridge 1.2A, 100Ah agm, how long?', 'ann: why so little?');
    expect(why).toMatch(/^A 100 Ah AGM gives you about 50 Ah/);
  });
  test('the unit asked for comes first', () => {
    const [, amps] = firstLines(
      'ann: will a 1000W inverter run a 600W kettle?',
      'ann: how many amps is that?',
    );
    expect(amps).toMatch(/^It draws about 5\d A/);
  });
  test('a size up or down is tried', () => {
    const [, thinner, thicker] = firstLines(
      'ann: what cable for a 30A dcdc 6 m away?',
      'ann: can i go thinner?',
      'ann: and one size bigger?',
    );
    expect(thinner).toMatch(/^No: 16 mm² loses/);
    expect(thicker).toMatch(/35 mm²/);
  });
  test('the cable of a fuse, and the fuse of a cable', () => {
    const { answers } = talk(['ann: what fuse for a 1000W inverter?', 'ann: and the cable?']);
    expect(answers[1]?.intent).toBe('cable-size');
    expect(answers[1]?.text).toContain('how long the cable is');
  });
  test('a season is the month of the place', () => {
    const [, winter] = firstLines(
      'ann: 100W panel in hobart in january, what will it make?',
      'ann: and in winter?',
    );
    expect(winter).toContain('July');
    const [, north] = firstLines(
      'ann: 100W panel in oslo in july, what will it make?',
      'ann: and in winter?',
    );
    expect(north).toContain('January');
  });
  test('a panel that is to keep something going is held against it, though no battery is told', () => {
    const { answers } = talk([
      'ann: 200W panel in cairns in july, what does it make?',
      'ann: will that keep a fridge going 30ah a day',
      'ann: what if its cloudy?',
    ]);
    expect(answers.map(({ intent }) => intent)).toEqual(['solar-yield', 'solar-size', 'solar-size']);
    expect(answers[1]?.verdict).toBe('yes');
    expect(answers[2]?.verdict).toBe('no');
  });
});

describe('what was asked is answered first', () => {
  test.for([
    ['is 100Ah lithium enough for a 1.2A fridge?', /^Yes, for about/],
    ['can my 100Ah lithium run a 5A electric blanket all night?', /^Yes, 10 hours is fine/],
    ['can my 50Ah agm run a 5A electric blanket all night?', /^(?:No|Probably not)/],
    ['12.0 volts at rest agm is that bad?', /^Too low: about/],
    ['my agm reads 12.8V at rest, is that good?', /^Good: about/],
    ['is 14.4v too high for agm while charging?', /^All fine for AGM: 14\.4 V is absorption/],
    ['can i run a 1200w microwave?', /^Only with a \d+ W inverter/],
  ] as const)('“%s”', ([text, first]) => expect(firstLines(`ann: ${text}`)[0]).toMatch(first));
});

test('torn between two questions, it takes the likelier where the words ask something beside its sum', () => {
  const { last } = talk(['ann: controller shows E3 what does it mean']);
  expect(last.intent).toBe('fault');
  expect(last.text).toMatch(/^Codes differ by maker/);
});
