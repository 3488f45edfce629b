import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { recognise } from '#language/recognise/recognise.ts';

type Told = readonly [value: number, unit: string];

const amounts = (text: string): Told[] =>
  recognise(text)
    .mentions.filter(m => m.kind === 'amount')
    .map(m => [Math.round(m.value * 1e4) / 1e4, m.unit ?? '']);

describe('amounts, in the base unit of what they measure', () => {
  test.for<[text: string, amounts: Told[]]>([
    [
      '1.2A and 100Ah',
      [
        [1.2, 'A'],
        [100, 'Ah'],
      ],
    ],
    ['600 mA', [[0.6, 'mA']]],
    ['2.4 kW heater', [[2400, 'kW']]],
    ['half a kilowatt hour', [[500, 'kWh']]],
    ['a hundred amp hours', [[100, 'Ah']]],
    ['one point four amps', [[1.4, 'A']]],
    [
      '12v 30a 5m',
      [
        [12, 'V'],
        [30, 'A'],
        [5, 'm'],
      ],
    ],
    ['3 days', [[72, 'days']]],
    ['two nights', [[48, 'days']]],
    ['a week', [[168, 'weeks']]],
    ['a long weekend', [[72, 'days']]],
    ['an hour and a half', [[1.5, 'h']]],
    ['2 and a half hours', [[2.5, 'h']]],
    ['45 minutes', [[0.75, 'min']]],
    ['10 feet of cable', [[3.048, 'ft']]],
    ['minus 5 degrees', [[-5, '°C']]],
    ['-10°C', [[-10, '°C']]],
    ['95 F outside', [[35, '°F']]],
    ['six square mm', [[6, 'mm²']]],
    ['AWG 8', [[8, 'AWG']]],
    ['2/0 cable', [[-1, 'AWG']]],
    ['80 percent', [[80, '%']]],
    ['$400', [[400, 'money']]],
    ['3 years old', [[3, 'years']]],
    ['5 full days', [[120, 'days']]],
  ])('%s', ([text, want]) => {
    expect(amounts(text)).toEqual(want);
  });
});

test('“m” may be minutes, “a” in “35 a day” is no amps', () => {
  const [cable] = recognise('10 m').mentions;
  expect(cable).toMatchObject({ dimension: 'length', otherDimension: 'time' });
  expect(amounts('35 a day')).toEqual([]);
  expect(amounts('fridge 2 a, lights 1 a')).toEqual([
    [2, 'A'],
    [1, 'A'],
  ]);
});

describe('what an amount may mean beside its plain value', () => {
  const variants = (text: string, at = -1) =>
    present(
      recognise(text)
        .mentions.filter(m => m.kind === 'amount')
        .at(at),
    ).variants.map(({ why, value, count }) => (count === undefined ? [why, value] : [why, value, count]));
  test.for<[text: string, variant: (string | number)[]]>([
    ['2-3 amps', ['range', 2.5]],
    ['2 to 4 hours', ['range', 3]],
    ['40W or 60W', ['range', 50]],
    ['10.000 mAh', ['thousands', 10]],
    ['1 h 30 min', ['joined', 1.5]],
    ['2 days 6 hours', ['joined', 54]],
    ['4 cups of 5 minutes', ['times', (4 * 5) / 60, 4]],
    ['two hundred amp hour', ['product', 100, 2]],
    ['2.1 kWh a week', ['joined', 300]],
  ])('%s', ([text, variant]) => {
    const found = variants(text).map(row =>
      row.map(x => (typeof x === 'number' ? Math.round(x * 1e4) / 1e4 : x)),
    );
    expect(found).toContainEqual(variant.map(x => (typeof x === 'number' ? Math.round(x * 1e4) / 1e4 : x)));
  });

  test('a plain amount has none', () => {
    expect(variants('fridge 60W')).toEqual([]);
  });
});
