import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import { talk, value } from './talk.ts';

/** A line with the minutes since the talk began. */
type Line = readonly [minutes: number, text: string];

function told(lines: readonly Line[]) {
  let memory: Memory = emptyMemory();
  const answers = lines.map(([minutes, text]) => {
    const at = new Date(Date.UTC(2026, 0, 15, 17) + minutes * 60_000);
    const done = converse(memory, { chat: 'camp', from: 'Kim', text, at, kind: 'private' });
    memory = done.memory;
    return done.answer;
  });
  return { memory, last: present(answers.at(-1)), answers };
}

const fridge: Line = [0, 'my rig: 100Ah AGM, fridge 1.2A average'];
const withSun: Line = [0, 'my rig: 100Ah AGM, fridge 1.2A average, 100W solar, in Perth'];
const ask = 'how long will it last?';

/** A day's use in Ah by what the question must go by; none: it asks what runs. */
const sources = { rig: 28.8, glance4A: 96, glance20A: 480, with1A: 120, none: undefined } as const;
type Source = keyof typeof sources;

describe('what a question takes for the draw', () => {
  const talks: readonly (readonly [string, readonly Line[], Source])[] = [
    ['a fridge that happens to rest', [fridge, [60, `it shows -0.1A, ${ask}`]], 'rig'],
    ['a fridge that happens to run', [fridge, [60, `it shows -3.6A, ${ask}`]], 'rig'],
    ['more than the fridge can draw', [fridge, [60, `it shows -20A, ${ask}`]], 'glance20A'],
    ['the same soon after', [fridge, [60, `it shows -20A, ${ask}`], [80, ask]], 'glance20A'],
    ['the same too late', [fridge, [60, `it shows -20A, ${ask}`], [95, ask]], 'rig'],
    ['the same asked again and again', [fridge, [60, `it shows -20A, ${ask}`], [80, ask], [100, ask]], 'rig'],
    [
      'a level of its own',
      [fridge, [60, `it shows -20A, ${ask}`], [65, 'how long will it last from 80% with no charging?']],
      'rig',
    ],
    [
      'loads of its own',
      [fridge, [60, `it shows -20A, ${ask}`], [65, 'how long will a 1.2A light last?']],
      'rig',
    ],
    [
      'what goes in is no draw',
      [fridge, [60, 'monitor shows 78% and +0.6A going in, how long will it last?']],
      'rig',
    ],
    [
      'nor later',
      [fridge, [60, 'monitor shows 78% and +0.6A going in, how long will it last?'], [70, ask]],
      'rig',
    ],
    ['nor with a panel', [withSun, [60, 'monitor shows 78% and +0.6A, how long will it last?']], 'rig'],
    ['nothing else is known', [[0, `100Ah lithium at 90%, -4A, ${ask}`]], 'glance4A'],
    [
      'a plain turn of it',
      [
        [0, `100Ah lithium at 90%, -4A, ${ask}`],
        [5, 'what if 200Ah?'],
      ],
      'glance4A',
    ],
    [
      'one thing more on top of it',
      [
        [0, `100Ah lithium at 90%, -4A, ${ask}`],
        [5, 'and with a 1A light on too?'],
      ],
      'with1A',
    ],
    [
      'nothing else is known, too late',
      [
        [0, `100Ah lithium at 90%, -4A, ${ask}`],
        [40, ask],
      ],
      'none',
    ],
  ];
  test.each(talks)('%s', (_, lines, source) => {
    const { last } = told(lines);
    const use = sources[source];
    if (use === undefined) expect(last.figures.runTime).toBeUndefined();
    else expect(value(last, 'dailyUse')).toBeCloseTo(use, 0);
  });

  test('the rig is never asked for where it is known, whatever the amps', () => {
    for (let amps = -6; amps <= 12; amps += 1.5) {
      const shown = amps < 0 ? `${amps}` : `+${amps}`;
      for (const rig of [fridge, withSun])
        expect(told([rig, [60, `78% and ${shown}A, how long have we got?`]]).last.text).not.toContain(
          'what runs on it',
        );
    }
  });
});

describe('which levels are readings', () => {
  test.each([
    ['battery is at 80%, how long have we got?', true],
    ['battery at 80% now, how long will it last?', true],
    ['monitor at 80%, how long will it last?', true],
    ['how full is my battery? it shows 80%', true],
    ['how long will it last from 80% with no charging?', false],
    ['how long will it last from 80%?', false],
    ['how long will it last from about 80%?', false],
    ['how long will it last from full?', false],
    ['how long does a full battery last?', false],
    ['starting at 80%, how long will it last?', false],
    ['if the battery is at 80%, how long will it last?', false],
    ['how long will it last once it is at 80%?', false],
    ['what if it is at 80%, how long will it last?', false],
  ] as const)('%s', (text, isReading) => {
    const { memory, last } = told([fridge, [60, text]]);
    expect(memory.learned?.['']?.readings).toBe(isReading ? 1 : undefined);
    expect(last.text).not.toContain('I expected');
  });
});

describe('how full it is, for a question soon after', () => {
  test.each([
    ['volts at rest', [fridge, [60, '12.4 V at rest'], [75, ask]], 3, 18],
    ['volts at rest, with a panel', [withSun, [60, '12.4 V at rest'], [75, ask]], 3, 18],
    ['Ah used', [fridge, [60, 'used 35Ah, how full is it?'], [75, ask]], 10, 16],
  ] as const)('%s', (_, lines, least, most) => {
    const runTime = value(told(lines as readonly Line[]).last, 'runTime');
    expect(runTime).toBeGreaterThan(least);
    expect(runTime).toBeLessThan(most);
  });

  test('volts of the morning are no level of the evening', () => {
    const fresh = value(told([fridge, [60, '12.4 V at rest'], [75, ask]]).last, 'runTime');
    const late = value(told([fridge, [60, '12.4 V at rest'], [600, ask]]).last, 'runTime');
    expect(late).toBeGreaterThan(2 * fresh);
  });

  test('a level of its own goes before the volts', () => {
    const { last } = told([
      fridge,
      [60, '12.4 V at rest'],
      [75, 'starting at 90%, how long will the fridge last?'],
    ]);
    expect(value(last, 'runTime')).toBeGreaterThan(24);
  });
});

describe('a net current read off, with panels in the rig', () => {
  const rig = 'sam: my rig: 120Ah AGM, 160W solar, fridge 1.8A average' as const;
  test('is what goes out: no trip with its own sun and loads', () => {
    const { last } = talk([rig, 'sam: monitor says -3.4A and 62%, how long will it last?']);
    expect(last.intent).toBe('run-time');
    expect(last.text).toContain('you draw 3.4 A');
    expect(last.text).not.toContain('Counted: fridge');
    // 120 Ah from 62 % to half, at 3.4 A.
    expect(value(last, 'runTime')).toBeGreaterThan(0.5 * ((0.12 * 120) / 3.4));
    expect(value(last, 'runTime')).toBeLessThan(2 * ((0.12 * 120) / 3.4));
  });
});
