import { describe, expect, test } from 'vitest';
import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import type { Memory } from '#conversation/memory.ts';
import { memorySchema } from '#conversation/memory.ts';
import { readMemory, writeMemory } from '#memory/document.ts';
import { merge } from '#memory/merge.ts';
import { type Turn, talk, value } from './talk.ts';

/** Lines with their times, in one private chat. */
function told(lines: readonly (readonly [at: string, text: string])[], memory?: Memory) {
  let kept = memory;
  const texts: string[] = [];
  let last: Answer | undefined;
  for (const [at, text] of lines) {
    const done = talk([`kim: ${text}` as Turn], { kind: 'private', memory: kept, at: `2026-01-${at}:00Z` });
    kept = done.memory;
    last = done.last;
    texts.push(done.last.text);
  }
  return { memory: present(kept), texts, last: present(last) };
}

const rig = ['15T17:00', 'my rig: 100Ah AGM, fridge 1.2A average'] as const;
/** Down 2 points an hour: 2 A out of 100 Ah, where 1.2 A were told. */
const readings = [
  ['15T18:00', 'battery is at 99%, how long have we got'],
  ['16T06:00', 'battery is at 75%, how long have we got'],
  ['16T18:00', 'battery is at 51%, how long have we got'],
] as const;

describe('a rig learnt from its readings', () => {
  const { memory, texts, last } = told([rig, ...readings]);

  test('is said once, with the draw told and the hours before and now', () => {
    const said = texts.filter(text => text.includes('By your readings'));
    expect(said.length).toBe(1);
    expect(said[0]).toMatch(/your fridge takes (1\.8|1\.9|2|2\.1) A on average, not 1\.2/);
  });

  test('is gone by, as an assumption that is told', () => {
    const use = value(last, 'dailyUse');
    expect(use).toBeGreaterThan(43);
    expect(use).toBeLessThan(52);
    expect(last.assumed.map(a => a.name)).toContain('learnedDraw');
    expect(last.figures.dailyUse).toMatchObject({ low: expect.any(Number), high: expect.any(Number) });
    const { low, high } = last.figures.dailyUse as { low: number; high: number };
    expect(low).toBeLessThan(use);
    expect(high).toBeGreaterThan(48);
  });

  test('counts in other questions of that rig', () => {
    const budget = told([['16T18:05', "what's our daily use?"]], memory).last;
    expect(value(budget, 'dailyUse')).toBeCloseTo(value(last, 'dailyUse'), 6);
  });

  test('does not count for gear that was told now', () => {
    const other = told([['16T18:05', 'fridge 1.2A average, 100Ah AGM, how long will it last?']], {
      ...memory,
      frames: [],
      rigs: { '': { ...present(memory.rigs['']), loads: [{ name: 'fridge', currentA: 3 }] } },
    }).last;
    expect(value(other, 'dailyUse')).toBeCloseTo(28.8, 6);
  });

  test('is shown with the rig', () => {
    expect(told([['16T18:05', 'show my rig']], memory).last.text).toContain('By your readings');
  });

  test('is not changed by "what if", by a question without a reading, or within minutes', () => {
    for (const text of ['what if 200Ah', 'how long will it last?', 'battery is at 20%, how long have we got'])
      expect(told([['16T18:09', text]], memory).memory.learned).toEqual(memory.learned);
  });

  test('a reading that fits nothing is asked about, and the draw stays', () => {
    const odd = told([['16T20:00', 'battery is at 5%, how long have we got']], memory);
    expect(odd.last.text).toContain('fits nothing');
    expect(present(present(odd.memory.learned)['']).mean.slice(1)).toEqual(
      present(present(memory.learned)['']).mean.slice(1),
    );
    expect(present(present(odd.memory.learned)['']).odd).toBeDefined();
  });

  test('goes with the rig, and with all', () => {
    for (const wish of ['forget my rig', 'forget everything']) {
      const gone = told(
        [
          ['16T18:05', wish],
          ['16T18:06', 'yes, forget'],
        ],
        memory,
      );
      expect(gone.memory.learned).toBeUndefined();
    }
  });

  test('another fridge is not known by it', () => {
    const other = told(
      [
        ['16T18:05', 'change my rig: fridge 2A average'],
        ['16T18:06', 'how long will it last?'],
      ],
      memory,
    );
    expect(value(other.last, 'dailyUse')).toBeCloseTo(48, 6);
    expect(other.last.assumed.map(a => a.name)).not.toContain('learnedDraw');
  });

  test('is stored as numbers alone, of a fixed size, and read back', () => {
    expect(memorySchema.safeParse(memory).success).toBe(true);
    expect(readMemory(writeMemory(memory)).learned).toEqual(memory.learned);
    expect(JSON.stringify(memory.learned).length).toBeLessThan(900);
    expect(JSON.stringify(memory.learned)).not.toMatch(/fridge|kim/);
  });

  test('a memory without it opens, and two are joined by owner', () => {
    const { learned, ...without } = memory;
    expect(memorySchema.safeParse(without).success).toBe(true);
    expect(merge(without, memory).learned).toEqual(learned);
  });
});

test('somebody else’s reading of their own rig leaves the chat’s alone', () => {
  const first = talk([
    'kim: our rig: 100Ah AGM, fridge 1.2A average',
    'bo: my rig: 80Ah AGM, fridge 2A average',
  ]);
  const done = talk(['bo: my battery is at 60%, how long have we got'], { memory: first.memory });
  expect(Object.keys(done.memory.learned ?? {})).toEqual(['bo']);
});
