import { expect, test } from 'vitest';
import type { Assumption } from '#engine/assumption.ts';
import { explore } from '#engine/explore.ts';
import { firstFigures, withFirstFigures } from '#engine/try-out.ts';

const assumed: Assumption = { name: 'age', value: 2, low: 1, high: 3, unit: '', why: 'told' };
let runs = 0;
const explored = (factor: number) =>
  explore([assumed], 'figure', values => {
    runs++;
    return { figure: factor * (values.age ?? 0) };
  });

test('tried out, a calculation goes as far as its first figures, once, at the likely values', () => {
  runs = 0;
  let isPast = false;
  const figures = firstFigures(() => {
    explored(10);
    isPast = true;
  });
  expect(figures).toEqual({ figure: 20 });
  expect([runs, isPast]).toEqual([1, false]);
  // Afterwards all is as before.
  expect(explored(10).figures.figure).toMatchObject({ value: 20 });
  expect(runs).toBe(4);
});

test('one that explores nothing has none, and what goes wrong in it stays an error', () => {
  expect(firstFigures(() => 7)).toBeUndefined();
  expect(() =>
    firstFigures(() => {
      throw new Error('no battery');
    }),
  ).toThrow('no battery');
  expect(explored(1).figures.figure).toMatchObject({ value: 2 });
});

test('the first figures are noted beside the whole answer, the first of several, each answer its own', () => {
  const { result, figures } = withFirstFigures(() => {
    const first = explored(10).figures.figure.value;
    const inner = withFirstFigures(() => explored(3).figures.figure.value);
    return [first, inner.figures, explored(5).figures.figure.value];
  });
  expect(result).toEqual([20, { figure: 6 }, 10]);
  expect(figures).toEqual({ figure: 20 });
  expect(figures).toEqual(firstFigures(() => explored(10)));
  expect(withFirstFigures(() => 1)).toEqual({ result: 1, figures: undefined });
  // One that fails leaves the outer one its own.
  const outer = withFirstFigures(() => {
    expect(() =>
      withFirstFigures(() => {
        throw new Error('no sun');
      }),
    ).toThrow('no sun');
    return explored(2).figures.figure.value;
  });
  expect(outer).toEqual({ result: 4, figures: { figure: 4 } });
});
