import { expect, test } from 'vitest';
import { leftNumbers, outletVoltsIn } from '#conversation/told/left-numbers.ts';
import { read } from '#language/reading.ts';

test.for<[text: string, volts: number | undefined]>([
  ['120 VAC coffee maker, 7.5 A nameplate, on a 1000 W inverter. Is the inverter overloaded?', 120],
  // A controller's limit is no outlet's, and of two outlets nobody knows which.
  ['two 200W panels 24 voc in series into a 150V mppt, 30A, ok?', undefined],
  ['120 VAC coffee maker, 7.5 A, or the 230 VAC one, 4 A, on a 1000 W inverter?', undefined],
  ['fridge 1.2A, 100Ah agm, 3 days?', undefined],
])('the volts of an outlet, told in no fact: %s', ([text, volts]) => {
  expect(outletVoltsIn(read(text))).toBe(volts);
});

test.for<[text: string, named: readonly string[]]>([
  ['160W panel at 3000 m in Cusco in July, how many Ah?', ['3000 m']],
  ['fridge 50W, 40L, 120Ah AGM, how long will it last at 30 degrees', []],
  // Prices, weights, ways, people and the day nobody takes for counted.
  ['fridge 1.2A, 100Ah agm for $340, 412 km away, 26 kg, 4 of us, how long in a day?', []],
])('what a person might take for counted is named: %s', ([text, named]) => {
  expect(leftNumbers({}, read(text)).named).toEqual(named);
});

test('what a question takes from the words is neither named nor in no fact', () => {
  const heard = read('160W panel at 3000 m in Cusco in July, how many Ah?');
  expect(leftNumbers({ numbersBeside: () => [3000] }, heard)).toEqual({ unread: [], named: [] });
});
