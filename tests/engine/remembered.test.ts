import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { remembered } from '#engine/remembered.ts';
import { Trace } from '#rule/trace.ts';

/** Twice one plus the other, and how often it was made. */
function counted() {
  let made = 0;
  const part = remembered(['age', 'fullAt'], values => {
    made += 1;
    return 2 * present(values.age) + (values.fullAt ?? 0);
  });
  return { part, times: () => made };
}

test('what it hangs on is the same: it is not made again, whatever else is moved', () => {
  const { part, times } = counted();
  expect([part({ age: 1, fullAt: 2 }), part({ age: 1, fullAt: 2, idleShare: 9 })]).toEqual([4, 4]);
  expect(times()).toBe(1);
});

test('the first and the last other are kept; anything else is made', () => {
  const { part, times } = counted();
  expect([{ age: 1 }, { age: 2 }, { age: 1 }, { age: 2 }].map(values => part(values))).toEqual([2, 4, 2, 4]);
  expect(times()).toBe(2);
  expect([part({ age: 3 }), part({ age: 2 }), part({ age: 1 }), part({ age: 1, fullAt: 1 })]).toEqual([
    6, 4, 2, 3,
  ]);
  expect(times()).toBe(5);
});

test('a run with a trace is made, so that it is recorded', () => {
  const { part, times } = counted();
  part({ age: 1 });
  expect(part({ age: 1 }, new Trace())).toBe(2);
  expect(times()).toBe(2);
  expect(part({ age: 1 })).toBe(2);
  expect(times()).toBe(2);
});
