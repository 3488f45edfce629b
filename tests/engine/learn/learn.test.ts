import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { findings } from '#engine/learn/findings.ts';
import { learn } from '#engine/learn/learn.ts';
import { hourAt, predict } from '#engine/learn/predict.ts';
import type { RigReading } from '#engine/learn/reading.ts';
import { type Expected, type Learned, parts, place, size, unlearned, without } from '#engine/learn/state.ts';

const hourMs = 3600_000;
/** Midnight. */
const start = Date.UTC(2026, 0, 10);
const at = (hours: number): number => start + hours * hourMs;

/** 100 Ah, 1 A day and night, no panel. */
const plain: Expected = {
  labelAh: 100,
  capacityAh: 100,
  useAh: Array<number>(24).fill(1),
  sunAh: Array<number>(24).fill(0),
};
/** The same with 40 Ah of sun from 8 to 16. */
const sunny: Expected = { ...plain, sunAh: plain.useAh.map((_, hour) => (hour >= 8 && hour < 16 ? 5 : 0)) };

const learntFrom = (readings: readonly RigReading[], expected: Expected): Learned =>
  present(
    readings.reduce<Learned | undefined>((known, one) => learn(known, one, expected).learned, undefined),
  );

const level = (learned: Learned): number => 100 * (1 - present(learned.mean[0]));

describe('carried forward', () => {
  const known: Learned = { ...unlearned(at(20)), mean: [0.2, 0, 0, 0, 0] };

  test.each([
    // hours, what is missing: 1 A out of 100 Ah is a point an hour.
    [1, 0.21],
    [10, 0.3],
    [12.5, 0.325],
  ])('%s hours of 1 A from 80 %% of 100 Ah', (hours, missing) => {
    expect(predict(known, plain, at(20 + hours)).mean[0]).toBeCloseTo(missing, 6);
  });

  test('twice the draw goes twice as fast, and so does half the battery', () => {
    const drawn: Learned = { ...known, mean: [0.2, Math.log(2), 0, 0, 0] };
    const small: Learned = { ...known, mean: [0.2, 0, 0, Math.log(0.5), 0] };
    for (const one of [drawn, small]) expect(predict(one, plain, at(30)).mean[0]).toBeCloseTo(0.4, 6);
  });

  test('a day of sun puts 40 Ah in against 24 Ah of use, where it is sure', () => {
    const sure: Learned = { ...known, mean: [0.8, 0, 0, 0, 0], cov: known.cov.map(() => 0), at: at(0) };
    expect(predict(sure, sunny, at(24)).mean[0]).toBeCloseTo(0.64, 3);
  });

  test('a full battery takes no more', () => {
    const full: Learned = { ...known, mean: [0.02, 0, 0, 0, 0], at: at(8) };
    const ahead = predict(full, sunny, at(16));
    expect(ahead.mean[0]).toBeGreaterThanOrEqual(0);
    expect(ahead.mean[0]).toBeLessThan(0.15);
  });

  test('a flat battery gives no more: a fridge that cut out in the night tells of no smaller draw', () => {
    const flat: Learned = { ...known, mean: [0.9, 0, 0, 0, 0] };
    const ahead = predict(flat, plain, at(34));
    expect(ahead.mean[0]).toBeLessThan(0.96);
    expect(ahead.mean[0]).toBeGreaterThan(0.8);
    const { learned } = learn(ahead, { at: at(34), percent: 6 }, plain);
    expect(Math.abs(present(learned.mean[1]))).toBeLessThan(0.1);
  });

  test('less is known of the level the longer nobody looked', () => {
    const sd = (hours: number): number =>
      present(predict(learntFrom([{ at: at(0), percent: 80 }], plain), plain, at(hours)).cov[0]);
    expect(sd(6)).toBeLessThan(sd(12));
    expect(sd(12)).toBeLessThan(sd(36));
  });
});

test('what is not looked at wanders: the variance of each part grows evenly with the days, and by its own step', () => {
  const sure: Learned = { ...unlearned(at(0)), cov: unlearned(at(0)).cov.map(() => 0) };
  const own = (days: number): number[] => {
    const { cov } = predict(sure, plain, at(24 * days));
    return [1, 2, 3, 4].map(i => present(cov[place(i, i)]));
  };
  const [one, two] = [own(1), own(2)];
  for (const [i, variance] of one.entries()) {
    expect(variance).toBeGreaterThan(0);
    expect(present(two[i]) / variance).toBeCloseTo(2, 6);
  }
});

describe('learnt from readings worked out by hand', () => {
  // Down 20 points in 12 hours is 20 Ah of 100: 1.67 A, not 1.
  const night = [
    { at: at(18), percent: 90 },
    { at: at(30), percent: 70 },
    { at: at(42), percent: 50 },
    { at: at(54), percent: 30 },
  ];

  test('20 points in 12 hours of 1 A told: it takes 1.67 A', () => {
    const { draw, lasts, capacity } = findings(learntFrom(night, plain), plain);
    expect(capacity).toEqual({ value: 1, low: 1, high: 1 });
    expect(draw.value).toBeGreaterThan(1.5);
    expect(draw.value).toBeLessThan(1.75);
    expect(draw.low).toBeLessThan(1.67);
    expect(draw.high).toBeGreaterThan(1.67);
    expect(lasts.value).toBeCloseTo(1 / draw.value, 6);
  });

  test('what is missing has its span about it: nine in ten, no less than none and no more than all', () => {
    const { missing } = findings(learntFrom(night, plain), plain);
    expect(Math.abs(missing.value - 0.7)).toBeLessThan(0.02);
    expect(missing.low).toBeGreaterThan(missing.value - 0.05);
    expect(missing.low).toBeLessThan(missing.value);
    expect(missing.high - missing.value).toBeCloseTo(missing.value - missing.low, 9);
    const near = (percent: number) => findings(learntFrom([{ at: at(0), percent }], plain), plain).missing;
    expect(near(100).low).toBe(0);
    expect(near(0).high).toBe(1);
  });

  test('an amp hour counted for each 1/70 of the charge: the draw is right and the battery holds 70 Ah', () => {
    // 1 A, amp hours at 18 and 6 o'clock, per cent an hour later: 7 Ah of 70 are 10 points.
    const both = [18, 30, 42, 54].flatMap(hour => [
      { at: at(hour), usedAh: hour - 11 },
      { at: at(hour + 1), percent: 100 - (hour - 10) / 0.7 },
    ]);
    const { draw, capacity } = findings(learntFrom(both, plain), plain);
    expect(capacity.value).toBeGreaterThan(0.65);
    expect(capacity.value).toBeLessThan(0.78);
    expect(draw.value).toBeGreaterThan(0.93);
    expect(draw.value).toBeLessThan(1.1);
  });

  test('amps read off a steady load tell the draw', () => {
    const steady = { ...plain, isSteady: true };
    const glances = [20, 21, 22, 23].map(hour => ({ at: at(hour), percent: 90 - (hour - 20), netA: -1.5 }));
    const { drawByNight } = findings(learntFrom(glances, steady), steady);
    expect(drawByNight.value).toBeGreaterThan(1.2);
    expect(drawByNight.value).toBeLessThan(1.6);
  });

  test('less sun than reckoned: the panel makes half', () => {
    // 24 Ah out and 20 Ah in: 4 points down a day, at dusk and dawn as that goes.
    const days = [0, 1, 2, 3, 4].flatMap(day => [
      { at: at(24 * day + 6), percent: 60 - 4 * day },
      { at: at(24 * day + 18), percent: 68 - 4 * day },
    ]);
    const { sun, draw } = findings(learntFrom(days, sunny), sunny);
    expect(sun.value).toBeGreaterThan(0.4);
    expect(sun.value).toBeLessThan(0.7);
    expect(draw.value).toBeGreaterThan(0.85);
    expect(draw.value).toBeLessThan(1.15);
  });
});

describe('a reading that fits nothing', () => {
  const steady = [18, 30, 42].map(hour => ({ at: at(hour), percent: 90 - (hour - 18) }));
  const known = learntFrom(steady, plain);

  test('is odd, and nothing is learnt from it', () => {
    const { learned, taken, expected } = learn(known, { at: at(46), percent: 12 }, plain);
    expect(taken).toBe('odd');
    expect(100 * (1 - expected.missing)).toBeCloseTo(62, 0);
    expect(learned.mean.slice(1)).toEqual(known.mean.slice(1));
    expect(learned.readings).toBe(3);
  });

  test('the next right one is taken as if it had not been', () => {
    const odd = learn(known, { at: at(46), percent: 12 }, plain).learned;
    const { learned, taken } = learn(odd, { at: at(54), percent: 54 }, plain);
    expect(taken).toBe('taken');
    expect(level(learned)).toBeCloseTo(54, 0);
    const { draw } = findings(learned, plain);
    expect(Math.abs(draw.value - findings(known, plain).draw.value)).toBeLessThan(0.05);
  });

  test('is believed where the next one agrees', () => {
    const odd = learn(known, { at: at(46), percent: 12 }, plain).learned;
    const { learned, taken } = learn(odd, { at: at(48), percent: 10 }, plain);
    expect(taken).toBe('moved');
    expect(level(learned)).toBeCloseTo(10, 6);
    expect(learned.odd).toBeUndefined();
  });

  test('fuller without any sun was charged: the level moves, the draw stays', () => {
    const { learned, taken } = learn(known, { at: at(44), percent: 95 }, plain);
    expect(taken).toBe('moved');
    expect(level(learned)).toBeCloseTo(95, 6);
    expect(learned.mean.slice(1)).toEqual(known.mean.slice(1));
  });

  test('earlier than the last one tells nothing', () => {
    const { learned, taken } = learn(known, { at: at(20), percent: 88 }, plain);
    expect(taken).toBe('nothing');
    expect(learned).toBe(known);
  });
});

test('other gear: what was learnt of it goes, and the rest stays', () => {
  const known = learntFrom(
    [
      { at: at(18), percent: 90 },
      { at: at(30), percent: 70 },
    ],
    plain,
  );
  const other = without(known, ['draw', 'byDay']);
  const fresh = unlearned(at(0));
  expect(other.mean[1]).toBe(fresh.mean[1]);
  expect(other.cov[place(1, 1)]).toBe(fresh.cov[place(1, 1)]);
  expect(other.cov[place(0, 1)]).toBe(0);
  expect(other.mean[0]).toBe(known.mean[0]);
});

test('whatever gear is another, what was learnt of the rest stays to the last digit', () => {
  const known = learntFrom(
    [18, 30, 42, 54].map((hour, i) => ({ at: at(hour), percent: 90 - 17 * i, netA: -1.5 })),
    sunny,
  );
  fc.assert(
    fc.property(fc.subarray([...parts], { minLength: 0 }), gone => {
      const other = without(known, gone);
      const isGone = (i: number) => gone.includes(present(parts[i]));
      const fresh = unlearned(0);
      expect(other.cov).toHaveLength(known.cov.length);
      for (let i = 0; i < size; i++) {
        expect(other.mean[i]).toBe(isGone(i) ? fresh.mean[i] : known.mean[i]);
        for (let j = i; j < size; j++) {
          const from = !(isGone(i) || isGone(j)) ? known.cov : i === j ? fresh.cov : undefined;
          expect(other.cov[place(i, j)]).toBe(from ? from[place(i, j)] : 0);
        }
      }
    }),
  );
});

describe('whatever is read', () => {
  const reading = fc.record(
    {
      gapH: fc.double({ min: 0.01, max: 400, noNaN: true }),
      percent: fc.double({ min: 0, max: 100, noNaN: true }),
      usedAh: fc.double({ min: 0, max: 1e6, noNaN: true }),
      restVolts: fc.double({ min: 0, max: 60, noNaN: true }),
      netA: fc.double({ min: -500, max: 500, noNaN: true }),
    },
    { requiredKeys: ['gapH'] },
  );

  test('the estimate stays a Gaussian: finite, no negative variance, correlations within one', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 20 }), fc.boolean(), (list, isSunny) => {
        const expected = isSunny ? sunny : plain;
        let now = start;
        let known: Learned | undefined;
        for (const { gapH, ...told } of list) {
          now += gapH * hourMs;
          known = learn(known, { at: now, ...told }, expected).learned;
          expect(known.mean.every(Number.isFinite)).toBe(true);
          for (let i = 0; i < size; i++)
            for (let j = 0; j < size; j++) {
              const [ij, ii, jj] = [
                present(known.cov[place(i, j)]),
                present(known.cov[place(i, i)]),
                present(known.cov[place(j, j)]),
              ];
              expect(ii).toBeGreaterThanOrEqual(0);
              expect(ij * ij).toBeLessThanOrEqual(ii * jj * 1.001 + 1e-9);
            }
          const found = findings(known, expected);
          for (const part of [found.draw, found.capacity, found.sun, found.lasts, found.missing]) {
            expect(part.low).toBeLessThanOrEqual(part.value + 1e-9);
            expect(part.value).toBeLessThanOrEqual(part.high + 1e-9);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  test('no one reading makes any part less known, but for what time takes', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), percent => {
        const known = learntFrom([{ at: at(18), percent: 80 }], plain);
        const ahead = predict(known, plain, at(30));
        const { learned, taken } = learn(known, { at: at(30), percent }, plain);
        if (taken === 'taken')
          for (const [i] of parts.entries())
            expect(present(learned.cov[place(i, i)])).toBeLessThanOrEqual(
              present(ahead.cov[place(i, i)]) + 1e-12,
            );
      }),
      { numRuns: 100 },
    );
  });
});

test.for<[says: string, at: string, longitudeDeg: number | undefined, hour: number]>([
  ['by the clock of Greenwich', '2026-01-15T09:30:00Z', undefined, 9.5],
  ['15° east is an hour later', '2026-01-15T09:30:00Z', 15, 10.5],
  ['far east it is the next day', '2026-01-15T20:00:00Z', 150, 6],
  ['far west it is the day before', '2026-01-15T04:00:00Z', -120, 20],
  // Before 1970 hours count backwards, and are hours of a day all the same.
  ['long ago', '1969-12-31T18:00:00Z', 0, 18],
])('the hour of the sun: %s', ([, moment, longitudeDeg, hour]) => {
  expect(hourAt(Date.parse(moment), longitudeDeg)).toBeCloseTo(hour, 9);
});
