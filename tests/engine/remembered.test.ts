import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { remembered } from '#engine/remembered.ts';
import { Trace } from '#rule/trace.ts';

/** Twice "a" plus "b", and how often it was made. */
function counted() {
  let made = 0;
  const part = remembered(['a', 'b'], values => {
    made += 1;
    return 2 * present(values.a) + (values.b ?? 0);
  });
  return { part, times: () => made };
}

test('what it hangs on is the same: it is not made again, whatever else is moved', () => {
  const { part, times } = counted();
  expect([part({ a: 1, b: 2 }), part({ a: 1, b: 2, c: 9 })]).toEqual([4, 4]);
  expect(times()).toBe(1);
});

test('the first and the last other are kept; anything else is made', () => {
  const { part, times } = counted();
  expect([{ a: 1 }, { a: 2 }, { a: 1 }, { a: 2 }].map(values => part(values))).toEqual([2, 4, 2, 4]);
  expect(times()).toBe(2);
  expect([part({ a: 3 }), part({ a: 2 }), part({ a: 1 }), part({ a: 1, b: 1 })]).toEqual([6, 4, 2, 3]);
  expect(times()).toBe(5);
});

test('a run with a trace is made, so that it is recorded', () => {
  const { part, times } = counted();
  part({ a: 1 });
  expect(part({ a: 1 }, new Trace())).toBe(2);
  expect(times()).toBe(2);
  expect(part({ a: 1 })).toBe(2);
  expect(times()).toBe(2);
});
