import { describe, expect, test } from 'vitest';
import type { Answer } from '#answer/answer.ts';
import type { Chart } from '#answer/chart/chart.ts';
import { draw } from '#answer/chart/draw.ts';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { disagreements } from './agrees.ts';
import { illegible } from './legible.ts';

const at = new Date('2026-01-15T09:00:00Z');

/** The last answer of a talk with one person. */
function said(...texts: string[]): Answer {
  let memory = emptyMemory();
  let answer: Answer | undefined;
  for (const text of texts)
    ({ memory, answer } = converse(memory, { chat: 'test', text, from: 'Sam', at, kind: 'private' }));
  return present(answer);
}

const trip = '5 days in Dubbo in June, 120Ah lithium, fridge 2A average, lights 10W 4h a day, 160W solar';
const rig =
  'my rig: 2 x 100Ah lithium, 2 x 200W panels mppt, 25A dcdc charger, 20A mains charger, 2000W inverter, fridge 4A, lights 20W, pump 5A, fan 15W';

/** A talk, and the kind of picture that its last answer has. */
const talks: readonly (readonly [kind: Chart['kind'], ...texts: string[]])[] = [
  ['charge', trip],
  ['charge', trip, 'what if 300Ah?'],
  ['charge', trip, "what if it's overcast?"],
  ['charge', `${trip}, leaving friday 6pm`],
  ['charge', '3 weeks in Darwin in August, 200Ah lithium, fridge 3A average, 300W solar'],
  ['charge', '4 days, 200Ah AGM, fridge 1.5A average, 2 hours driving a day with a 25A dcdc'],
  ['charge', 'how long will 100Ah AGM run a fridge averaging 1.5A?'],
  ['charge', 'how long will 100Ah AGM run a fridge averaging 1.5A?', 'what if lithium?'],
  ['charge', 'fridge 1.5A average, 100Ah AGM, 3 days?'],
  ['charge', 'how long will a 7Ah AGM run a 20W light?'],
  ['charge', 'how long will 400Ah lithium run a 0.2A load?'],
  ['plan', trip, 'day by day please'],
  ['plan', `${trip}, 2 hours driving a day`, 'day by day please'],
  [
    'bars',
    'fridge 1.5A average, lights 10W 4h a day, laptop 60W 3h a day, pump 5A 10 min a day: how much a day?',
  ],
  ['claims', 'Col says 6 days, Ness says 2. 100Ah lithium, fridge 1.5A average. Who is right?'],
  ['months', 'what will a 200W panel make in Mildura in July?'],
  ['months', 'what will a 200W panel make in Oslo in June if I use 40Ah a day?'],
  ['wiring', rig],
  ['wiring', rig, 'what is the weakest part of my rig?'],
  ['wiring', 'my rig: 100Ah agm, fridge 45W, 100W panel pwm'],
  ['wiring', 'what cable for a 2000W inverter, 1.5 m?'],
  ['wiring', 'what cable for a 25A dcdc charger over 7m?'],
  ['wiring', 'two 100W panels 22V open circuit on an mppt and a 100Ah lithium, series or parallel?'],
];

describe.each(talks)('a %s picture: %s', (kind, ...texts) => {
  const answer = said(...texts);
  const chart = answer.chart?.();

  test('says what its answer says, in title, marks and the words below it', () => {
    expect(chart?.kind).toBe(kind);
    expect(disagreements(present(chart), answer)).toEqual([]);
  });
  test('can be read on a phone', () => {
    expect(illegible(draw(present(chart)))).toEqual([]);
  });
});

describe('a picture that disagrees is seen', () => {
  const found = (talk: readonly string[], change: (chart: never) => object): string[] => {
    const answer = said(...talk);
    const chart = present(answer.chart)();
    return disagreements({ ...chart, ...change(chart as never) } as Chart, answer);
  };
  type Of<K extends Chart['kind']> = Extract<Chart, { kind: K }>;
  test.each([
    ['a title of its own', () => found([trip], () => ({ title: 'Yes' }))],
    [
      'a mark off the line',
      () => found([trip], (c: Of<'charge'>) => ({ mark: { ...c.mark, percent: c.mark.percent + 3 } })),
    ],
    [
      'a line that goes elsewhere',
      () =>
        found([trip], (c: Of<'charge'>) => ({
          points: c.points.map(p => ({ ...p, percent: p.percent + 5 })),
        })),
    ],
    ['a limit that is hidden', () => found([trip], () => ({ limitPercent: Number.NaN }))],
    [
      'a bar too long',
      () =>
        found(['fridge 1.5A average, lights 10W 4h a day: how much a day?'], (c: Of<'bars'>) => ({
          bars: c.bars.map(bar => ({ ...bar, value: bar.value * 1.1 })),
        })),
    ],
    ['another month', () => found(['what will a 200W panel make in Mildura in July?'], () => ({ month: 1 }))],
    [
      'another fuse',
      () =>
        found(['what cable for a 2000W inverter, 1.5 m?'], (c: Of<'wiring'>) => ({
          branches: c.branches.map(branch => ({
            ...branch,
            boxes: branch.boxes.map(box => ({ ...box, lead: { ...box.lead, fuseA: 400 } })),
          })),
        })),
    ],
    ['no caution', () => found([rig], () => ({ cautions: [] }))],
  ])('%s', (_what, look) => {
    expect(look()).not.toEqual([]);
  });
});

describe('where there is no picture', () => {
  test.each([
    ['an inverter asked too much of a battery', 'can my 1000W inverter run a 3000W heater on 20Ah agm?'],
    ['a rig without a size', 'my rig: fridge'],
    ['a cable that is too thin', 'is 2.5mm2 ok for 80A over 10m?'],
    ['sun at a place nobody told', 'what will a 200W panel make?'],
  ])('%s', (_what, text) => {
    expect(said(text).chart).toBeUndefined();
  });
});
