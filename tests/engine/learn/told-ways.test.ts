import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { restVoltsAt } from '#engine/battery/rest.ts';
import { type Lesson, learn } from '#engine/learn/learn.ts';
import { predict } from '#engine/learn/predict.ts';
import type { RigReading } from '#engine/learn/reading.ts';
import { type Expected, type Learned, place, size, unlearned } from '#engine/learn/state.ts';
import { draws } from '../../house/share.ts';

// One state of a battery can be told as per cent, as Ah left, as Ah used and as volts at rest. Whichever it is, it must
// teach the same way, and the same within what each is rough by.

type Told = Omit<RigReading, 'at'>;
type Kind = 'agm' | 'lfp';
const kinds: readonly Kind[] = ['agm', 'lfp'];
const at = (hours: number): number => Date.UTC(2026, 0, 10) + hours * 3600_000;
const each = (ah: number): number[] => Array<number>(24).fill(ah);
/** A battery as its label says, at 1 A day and night. */
const rig = (labelAh: number, sunAh = 0): Expected => ({
  labelAh,
  capacityAh: labelAh,
  useAh: each(1),
  sunAh: each(sunAh),
});

/** A level in each of the ways, of a battery that holds what its label says. */
const ways = (percent: number, labelAh: number, chemistry: Kind): readonly (readonly [string, Told])[] => [
  ['per cent', { chemistry, percent }],
  ['Ah left', { chemistry, leftAh: (percent / 100) * labelAh }],
  ['Ah used', { chemistry, usedAh: (1 - percent / 100) * labelAh }],
  ['volts', { chemistry, restVolts: restVoltsAt(percent, chemistry) }],
];

/** A level that is known to some points, in a battery that holds what its label says; of the draw as little as at first. */
function known(percent: number, sd: number, hours: number, capacitySd = 1e-4): Learned {
  const fresh = unlearned(at(hours));
  const cov = fresh.cov.with(place(0, 0), sd ** 2).with(place(3, 3), capacitySd ** 2);
  return { ...fresh, mean: [1 - percent / 100, 0, 0, 0, 0], cov, readings: 4 };
}

const percentOf = ({ learned }: Lesson): number => 100 * (1 - learned.mean[0]);
const drawOf = ({ learned }: Lesson): number => learned.mean[1];

test.for(kinds)('a first reading puts %s that holds its label where it tells, whichever way', chemistry => {
  for (const percent of [20, 40, 60, 80, 95])
    for (const [way, told] of ways(percent, 100, chemistry)) {
      const lesson = learn(known(65, 0.35, 9), { at: at(9), ...told }, rig(100));
      // Volts of lithium hardly move between 30 and 80 %.
      const rough = way === 'volts' ? (chemistry === 'lfp' ? 6 : 2) : 1.2;
      expect(Math.abs(percentOf(lesson) - percent), `${way} at ${percent} %`).toBeLessThan(rough);
    }
});

describe('after twelve hours of 1 A from 80 % of 100 Ah, where 68 % is expected', () => {
  /** How the level lies against what is expected, and what that says of the draw. */
  const cases: readonly (readonly [now: number, says: string, sign: -1 | 0 | 1])[] = [
    [58, 'it draws more', 1],
    [62, 'it draws more', 1],
    [68, 'it draws as told', 0],
    [72, 'it draws less', -1],
  ];
  for (const chemistry of kinds)
    test.for(cases)(`${chemistry} at %d %%: %s`, ([now, , sign]) => {
      // By day with a panel that makes next to nothing, a level may be higher without a charger.
      const expected = rig(100, 1e-6);
      const taught = ways(now, 100, chemistry).map(
        ([way, told]) => [way, learn(known(80, 0.01, 8), { at: at(20), ...told }, expected)] as const,
      );
      const plain = drawOf(present(taught[0])[1]);
      for (const [way, lesson] of taught) {
        expect(lesson.taken, way).toBe('taken');
        if (sign === 0) expect(Math.abs(drawOf(lesson)), way).toBeLessThan(0.03);
        else expect(Math.sign(drawOf(lesson)), way).toBe(sign);
        // What is rougher teaches less, never more.
        expect(Math.abs(drawOf(lesson)), way).toBeLessThan(Math.abs(plain) + 0.02);
      }
      const counted = present(taught.find(([way]) => way === 'Ah used'))[1];
      expect(drawOf(counted)).toBeCloseTo(plain, 1);
      expect(Math.abs(percentOf(counted) - percentOf(present(taught[0])[1]))).toBeLessThan(1);
    });
});

describe('what is far off', () => {
  test.for(
    kinds.flatMap(chemistry =>
      (
        [
          [95, 'moved'],
          [12, 'odd'],
        ] as const
      ).map(([now, taken]) => [chemistry, now, taken] as const),
    ),
  )(
    '%s at %d %% where 49 %% is surely expected is %s, whichever way it is told',
    ([chemistry, now, taken]) => {
      for (const [way, told] of ways(now, 100, chemistry)) {
        const lesson = learn(known(50, 0.01, 12), { at: at(13), ...told }, rig(100));
        expect(lesson.taken, way).toBe(taken);
        expect(drawOf(lesson), way).toBe(0);
        if (taken === 'moved') expect(percentOf(lesson), way).toBeCloseTo(now, 3);
      }
    },
  );

  test.for(kinds)('%s: two that agree are believed, though told in two ways', chemistry => {
    for (const [one, first] of ways(12, 100, chemistry))
      for (const [two, second] of ways(11, 100, chemistry)) {
        const odd = learn(known(50, 0.01, 12), { at: at(13), ...first }, rig(100)).learned;
        const { learned, taken } = learn(odd, { at: at(14), ...second }, rig(100));
        expect(taken, `${one}, then ${two}`).toBe('moved');
        expect(learned.mean[0], `${one}, then ${two}`).toBeCloseTo(0.89, 3);
        expect(learned.odd).toBeUndefined();
      }
  });

  test.for(kinds)('%s: put anew, the level is no surer than what it was read off', chemistry => {
    for (const [way, told] of ways(95, 100, chemistry)) {
      const before = known(50, 0.01, 12, 0.25);
      const lithium = chemistry === 'lfp' ? 1 : -1;
      const moved = learn(before, { at: at(13), ...told }, rig(100)).learned;
      const read = learn(known(50, 0.35, 13, 1e-4), { at: at(13), ...told }, rig(100)).learned;
      expect(present(moved.cov[0]), way).toBeGreaterThan(0.9 * present(read.cov[0]));
      // Of Ah on what the battery holds: if more, more of it is left.
      for (let part = 1; part < size; part++)
        if (part !== 3 || way === 'per cent' || way === 'volts')
          expect(moved.cov[place(0, part)]).toBeCloseTo(0, 12);
        else
          expect(Math.sign(present(moved.cov[place(0, part)])), way).toBe(way === 'Ah used' ? -1 : lithium);
    }
  });
});

test('nearly flat, a cut-out may have stopped the draw: Ah tell less of it too', () => {
  const low = known(16, 0.01, 8);
  for (const chemistry of kinds) {
    // 4 % was expected, or less: it may have stopped on the way.
    const [percent, left, used] = ways(7, 100, chemistry).map(([, told]) =>
      drawOf(learn(low, { at: at(20), ...told }, rig(100, 1e-6))),
    );
    expect(present(used)).toBeCloseTo(present(percent), 1);
    expect(Math.abs(present(left))).toBeLessThan(Math.abs(present(percent)) + 0.05);
  }
});

test('whatever the level, size and chemistry, what is told in Ah used is as what is told in per cent', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 40, max: 90, noNaN: true }),
      fc.double({ min: -6, max: 6, noNaN: true }),
      fc.integer({ min: 60, max: 400 }),
      fc.constantFrom(...kinds),
      (from, off, labelAh, chemistry) => {
        const expected = rig(labelAh, 1e-6);
        const start = known(from, 0.01, 8);
        const ahead = predict(start, expected, at(20));
        const now = 100 * (1 - ahead.mean[0]) + off;
        const [percent, , used] = ways(now, labelAh, chemistry).map(([, told]) =>
          learn(start, { at: at(20), ...told }, expected),
        );
        expect(Math.abs(percentOf(present(used)) - percentOf(present(percent)))).toBeLessThan(1);
        expect(Math.abs(drawOf(present(used)) - drawOf(present(percent)))).toBeLessThan(0.12);
      },
    ),
    { seed: 20265, numRuns: draws(100, 2000) },
  );
});
