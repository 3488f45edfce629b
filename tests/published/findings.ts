import { present } from '#basics/present.ts';
import { findings } from '#engine/learn/findings.ts';
import { predict } from '#engine/learn/predict.ts';
import { type RigReading, seenIn } from '#engine/learn/reading.ts';
import { covAt, type Expected, type Learned, place, size } from '#engine/learn/state.ts';
import { cells, type Row } from './row.ts';

// What is learnt of a rig is five numbers, all but the first logarithms of factors: what follows of them, on paper.

const hourMs = 3600_000;
/** By day twice what it draws by night: 36 Ah a day, a third more of it by day. */
const rig: Expected = {
  labelAh: 100,
  capacityAh: 100,
  useAh: Array.from({ length: 24 }, (_, hour) => (hour >= 6 && hour < 18 ? 2 : 1)),
  sunAh: Array.from({ length: 24 }, (_, hour) => (hour === 12 ? 6 : 0)),
};
/** Sure of the draw by itself (`own`), or of neither draw nor capacity. */
const learned = (isOwn: boolean): Learned => {
  const cov = Array<number>((size * (size + 1)) / 2).fill(0);
  const sds = isOwn ? [0.04, 0.1, 0.05, 0.2, 0.3] : [0.04, 0.3, 0.05, 0.3, 0.3];
  for (const [i, sd] of sds.entries()) cov[place(i, i)] = sd ** 2;
  return { at: 12 * hourMs, mean: [0.3, 0.2, 0.1, -0.05, 0.15], cov, readings: 3 };
};
const own = () => findings(learned(true), rig);
const shared = () => findings(learned(false), rig);
const after = (fromHour: number) =>
  predict({ ...learned(true), at: fromHour * hourMs }, rig, (fromHour + 1) * hourMs);
/** How what is expected of a reading changes with one of the numbers. */
const slope = (reading: Omit<RigReading, 'at'>, part: number, atHour = 12): number =>
  present(present(seenIn({ at: atHour * hourMs, ...reading }, learned(true).mean, rig)[0]).slope[part]);

const [e, third] = [Math.exp, 1 / 3];
const derivative = 'definition, on paper: the derivative by that number';

export const rows: readonly Row[] = [
  ...cells('definition, on paper: factors are powers of e, and a third more is drawn by day', 'recomputed', [
    ['L-20.draw', e(0.2 + 0.1 * third), 1e-9, () => own().draw.value],
    ['L-20.day', e(0.3), 1e-9, () => own().drawByDay.value],
    ['L-20.night', e(0.1), 1e-9, () => own().drawByNight.value],
    ['L-20.capacity', e(-0.05), 1e-9, () => own().capacity.value],
    ['L-20.sun', e(0.15), 1e-9, () => own().sun.value],
    ['L-20.lasts', e(-0.05 - 0.2 - 0.1 * third), 1e-9, () => own().lasts.value],
    ['L-20.missing', 0.3, 1e-9, () => own().missing.value],
  ]),
  ...cells('definition, on paper: what only per cent tell is draw over capacity', 'recomputed', [
    ['L-21.draw', e(0.25 + 0.1 * third), 1e-9, () => shared().draw.value],
    ['L-21.day', e(0.35), 1e-9, () => shared().drawByDay.value],
    ['L-21.night', e(0.15), 1e-9, () => shared().drawByNight.value],
    ['L-21.sun', e(0.2), 1e-9, () => shared().sun.value],
    ['L-21.capacity', 1, 1e-9, () => shared().capacity.value],
    ['L-21.capacity.low', 1, 1e-9, () => shared().capacity.low],
    ['L-21.capacity.high', 1, 1e-9, () => shared().capacity.high],
  ]),
  ...cells('the ampere-hour law, on paper: an hour at one in the afternoon and at night', 'recomputed', [
    ['L-22.day', 0.3 + (2 * e(0.3)) / (100 * e(-0.05)), 1e-6, () => after(13).mean[0]],
    ['L-22.night', 0.3 + e(0.1) / (100 * e(-0.05)), 1e-6, () => after(20).mean[0]],
  ]),
  ...cells(
    'the law of propagation of errors, on paper: draw with level, but for 1 % of wander',
    'recomputed',
    [
      ['L-23.day', 0.01 * ((2 * e(0.3)) / (100 * e(-0.05))), 6e-6, () => covAt(after(13).cov, 0, 1)],
      ['L-23.byDay', 0.0025 * ((2 * e(0.3)) / (100 * e(-0.05))), 1.5e-6, () => covAt(after(13).cov, 0, 2)],
      ['L-23.byNight', -0.0025 * (e(0.1) / (100 * e(-0.05))), 6e-7, () => covAt(after(20).cov, 0, 2)],
      ['L-23.capacity', -0.04 * ((2 * e(0.3)) / (100 * e(-0.05))), 1e-6, () => covAt(after(13).cov, 0, 3)],
    ],
  ),
  ...cells(derivative, 'recomputed', [
    ['L-24.percent', 1, 1e-9, () => slope({ percent: 70 }, 0)],
    ['L-24.used', 100 * e(-0.05), 1e-9, () => slope({ usedAh: 30 }, 0)],
    ['L-24.used.capacity', 30 * e(-0.05), 1e-9, () => slope({ usedAh: 30 }, 3)],
    ['L-24.left', -100 * e(-0.05), 1e-9, () => slope({ leftAh: 70, chemistry: 'lfp' }, 0)],
    ['L-24.left.capacity', 70 * e(-0.05), 1e-9, () => slope({ leftAh: 70, chemistry: 'lfp' }, 3)],
    ['L-24.amps', -2 * e(0.3), 1e-9, () => slope({ netA: 1 }, 1, 13)],
    ['L-24.amps.byDay', -2 * e(0.3), 1e-9, () => slope({ netA: 1 }, 2, 13)],
    ['L-24.amps.byNight', e(0.1), 1e-9, () => slope({ netA: 1 }, 2, 20)],
    ['L-24.amps.sun', 6 * e(0.15), 1e-9, () => slope({ netA: 1 }, 4, 12)],
  ]),
];
