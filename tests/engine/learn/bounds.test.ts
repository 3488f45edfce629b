import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOfOne } from '#engine/battery/bank.ts';
import { expectedOf } from '#engine/learn/expect.ts';
import { learn } from '#engine/learn/learn.ts';
import { predict } from '#engine/learn/predict.ts';
import { type Expected, type Learned, place, size, unlearned } from '#engine/learn/state.ts';

const at = (hours: number): number => Date.UTC(2026, 0, 10) + hours * 3600_000;
const each = (ah: number): number[] => Array<number>(24).fill(ah);
/** 100 Ah, 1 A day and night, no panel. */
const plain: Expected = { labelAh: 100, capacityAh: 100, useAh: each(1), sunAh: each(0) };
/** A level (missing) at a time, known to so much; all else as expected, and known. */
function level(missing: number, sd: number, hours: number): Learned {
  const known = unlearned(at(hours));
  const cov = known.cov.map(() => 0);
  cov[place(0, 0)] = sd ** 2;
  for (let i = 1; i < size; i++) cov[place(i, i)] = 1e-8;
  return { ...known, mean: [missing, 0, 0, 0, 0], cov };
}

describe('a level that may be past full', () => {
  /** The mean of a normal variable cut at nought: μ Φ(μ/σ) + σ φ(μ/σ); textbook (Tobin, 1958), by tables of Φ and φ. */
  const cut: readonly (readonly [mean: number, expected: number])[] = [
    [0, 0.39894],
    [0.5, 0.5 * 0.69146 + 0.35207],
    [1, 0.84134 + 0.24197],
    [2, 2 * 0.97725 + 0.05399],
    [-1, -0.15866 + 0.24197],
  ];
  test.for(cut)('%d standard deviations short of it: %d short on average', ([mean, expected]) => {
    const sd = 0.1;
    // In a second of sun that gives what is used, nothing moves but what is cut.
    const balanced: Expected = { ...plain, useAh: each(1e-6), sunAh: each(1e-6) };
    const ahead = predict(level(mean * sd, sd, 12), balanced, at(12) + 1000);
    expect(ahead.mean[0] / sd).toBeCloseTo(expected, 3);
  });

  test('one that is surely short of it stays', () => {
    const balanced: Expected = { ...plain, useAh: each(1e-6), sunAh: each(1e-6) };
    expect(predict(level(0.5, 0.05, 12), balanced, at(12) + 1000).mean[0]).toBeCloseTo(0.5, 6);
  });
});

describe('an odd reading', () => {
  const known = level(0.2, 0.01, 12);
  const odd = learn({ ...known, readings: 5 }, { at: at(13), percent: 30 }, plain);

  test('is believed only where the next agrees with it', () => {
    expect(odd.taken).toBe('odd');
    // An hour of 1 A on from 30 %: 29 %; 10 points lower is no such level, nor is it where it was.
    expect(learn(odd.learned, { at: at(14), percent: 29 }, plain).taken).toBe('moved');
    expect(learn(odd.learned, { at: at(14), percent: 8 }, plain).taken).toBe('odd');
    expect(learn(odd.learned, { at: at(14), percent: 52 }, plain).taken).toBe('odd');
  });
});

describe('two levels that agree', () => {
  const known = level(0.2, 0.01, 12);
  const twice = (first: object, second: object) => {
    const odd = learn({ ...known, readings: 5 }, { at: at(13), ...first }, plain);
    return learn(odd.learned, { at: at(14), ...second }, plain);
  };

  test('agree as far as both may be off: a monitor by a few points', () => {
    expect(twice({ percent: 30 }, { percent: 25 }).taken).toBe('moved');
    expect(twice({ percent: 30 }, { percent: 33 }).taken).toBe('moved');
  });

  test('may be told in ampere-hours gone: 70 of 100 are 30 % left', () => {
    const { learned, taken } = twice({ usedAh: 70 }, { usedAh: 71 });
    expect(taken).toBe('moved');
    expect(learned.mean[0]).toBeCloseTo(0.71, 3);
  });

  test('or in what a lithium battery says is left: 29 of 100 are 71 % gone', () => {
    const left = (leftAh: number) => ({ leftAh, chemistry: 'lfp' as const });
    const { learned, taken } = twice(left(30), left(29));
    expect(taken).toBe('moved');
    expect(learned.mean[0]).toBeCloseTo(0.71, 3);
  });

  test('more left than expected was charged, less is odd, whichever way it is told', () => {
    const now = { ...known, mean: [0.5, 0, 0, 0, 0] as const, readings: 5 };
    for (const told of [{ percent: 90 }, { usedAh: 10 }, { leftAh: 90, chemistry: 'lfp' as const }])
      expect(learn(now, { at: at(13), ...told }, plain).taken).toBe('moved');
    for (const told of [{ percent: 10 }, { usedAh: 90 }, { leftAh: 10, chemistry: 'lfp' as const }])
      expect(learn(now, { at: at(13), ...told }, plain).taken).toBe('odd');
  });

  test('each reading that counts is one more', () => {
    expect(learn({ ...known, readings: 5 }, { at: at(13), percent: 79 }, plain).learned.readings).toBe(6);
    expect(learn({ ...known, readings: 5 }, { at: at(13), percent: 30 }, plain).learned.readings).toBe(5);
    expect(twice({ percent: 30 }, { percent: 29 }).learned.readings).toBe(6);
    // Charged by what nobody told of.
    expect(learn({ ...known, readings: 5 }, { at: at(13), percent: 95 }, plain).learned.readings).toBe(6);
  });
});

test('a few points fuller with no sun to fill it was charged, and teaches nothing of the draw', () => {
  const known = level(0.5, 0.06, 12);
  const unsure = { ...known, cov: known.cov.with(place(1, 1), 0.04) };
  const { learned, taken } = learn({ ...unsure, readings: 5 }, { at: at(13), percent: 57 }, plain);
  expect(taken).toBe('moved');
  expect(learned.mean[0]).toBeCloseTo(0.43, 6);
  expect(learned.mean[1]).toBe(0);
  // By day with a panel on it the sun may have done that.
  const sunny = { ...plain, sunAh: each(0.5) };
  expect(learn({ ...unsure, readings: 5 }, { at: at(13), percent: 57 }, sunny).taken).toBe('taken');
});

test('a rig in which anything cools by a compressor draws by fits and starts', () => {
  const bank = bankOfOne({ capacityAh: 100, chemistry: 'agm' });
  const thing = (name: string) => ({ name, count: 1, supply: 'dc' as const, currentA: 1 });
  const isSteady = (...names: string[]) =>
    expectedOf({ bank, use: { loads: names.map(thing), voltageV: 12 } }).isSteady;
  expect(isSteady('light')).toBe(true);
  expect(isSteady('fridge')).toBe(false);
  expect(isSteady('light', 'fridge')).toBe(false);
});

describe('amps at a glance', () => {
  const sunny: Expected = { ...plain, sunAh: plain.useAh.map((_, hour) => (hour >= 8 && hour < 16 ? 5 : 0)) };
  const drawn = (missing: number, hour: number, netA: number): number => {
    const known = unlearned(at(hour));
    const full: Learned = { ...known, mean: [missing, 0, 0, 0, 0] };
    return present(learn(full, { at: at(hour), netA }, sunny).learned.mean[1]);
  };

  test('by night they tell the draw, however full it is; a full battery in the sun takes what it likes', () => {
    // 3 A out where 1 A was expected.
    expect(drawn(0.02, 2, -3)).toBeGreaterThan(0.05);
    expect(drawn(0.6, 2, -3)).toBeGreaterThan(0.05);
    expect(drawn(0.02, 12, 0)).toBe(0);
  });
});
