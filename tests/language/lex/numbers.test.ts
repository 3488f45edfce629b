import { describe, expect, test } from 'vitest';
import { lex } from '#language/lex/lex.ts';
import { numeralAt } from '#language/lex/numbers.ts';

const numeral = (text: string) => numeralAt(lex(text), 0);

describe('one number', () => {
  test.for<[text: string, value: number]>([
    ['seven', 7],
    ['seventeen', 17],
    ['forty two', 42],
    ['twenty-four', 24],
    ['a hundred', 100],
    ['a hundred and five', 105],
    ['two hundred', 200],
    ['two hundred and forty', 240],
    ['two thousand four hundred and fifty', 2450],
    ['one fifty', 150],
    ['two twenty five', 225],
    ['three oh five', 305],
    ['point eight', 0.8],
    ['twelve six', 12.6],
    ['twenty-six nine at rest', 26.9],
    ['fifty two eight', 52.8],
    ['twelve five amp lights', 12],
    ['one point four', 1.4],
    ['two point one five', 2.15],
    ['nought point six', 0.6],
    ['half', 0.5],
    ['half a dozen', 6],
    ['a quarter', 0.25],
    ['three quarters', 0.75],
    ['three-quarters', 0.75],
    ['one and a half', 1.5],
    ['two and three quarters', 2.75],
    ['a couple', 2],
    ['a dozen', 12],
    ['one fifth', 0.2],
    ['a fifth of the time', 0.2],
    ['nine tenths of an amp', 0.9],
    ['two thirds', 0.6666667],
    ['1/2', 0.5],
    ['2 1/2', 2.5],
    ['3k', 3000],
    ['2 thousand', 2000],
    ['1 and a half', 1.5],
    ['2 point 5', 2.5],
  ])('%s is %f', ([text, value]) => {
    expect(numeral(text)?.value).toBeCloseTo(value, 6);
  });
});

test.for(['a fifth battery', 'a fridge', 'an amp', 'and', 'hundred amps short', 'wonderful'])(
  '“%s” starts with none',
  text => {
    const found = numeral(text);
    if (text.startsWith('hundred')) expect(found?.value).toBe(100);
    else expect(found).toBeUndefined();
  },
);

test('“two hundred” may be two of a hundred, “one fifty” a one', () => {
  expect(numeral('two hundred')?.product).toEqual({ count: 2, value: 100 });
  expect(numeral('two twenty')?.product).toEqual({ count: 2, value: 20 });
  expect(numeral('one fifty')?.others).toEqual([1]);
  expect(numeral('fifty')?.product).toBeUndefined();
});

test('it ends where the number ends', () => {
  expect(numeral('a hundred and five amp hours')?.end).toBe(4);
  expect(numeral('1/2 a day')?.end).toBe(3);
  expect(numeral('twenty amps')?.end).toBe(1);
});
