import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Chart } from '#answer/chart/chart.ts';
import { draw, png } from '#answer/chart/png.ts';

const points = Array.from({ length: 49 }, (_, atH) => ({
  atH,
  percent: 100 - atH,
  lowPercent: Math.max(0, 95 - atH * 1.2),
  highPercent: 100 - atH * 0.8,
}));

const charts: Chart[] = [
  {
    kind: 'charge',
    title: 'Two days',
    note: '100 Ah AGM',
    startHour: 16,
    dayNames: ['Fri', 'Sat', 'Sun'],
    points,
    limitPercent: 50,
  },
  {
    kind: 'bars',
    title: 'A day',
    note: 'at 12 V',
    unit: 'Ah',
    bars: [
      { name: 'fridge', value: 28.8 },
      { name: 'lights', value: 2.5 },
    ],
  },
  {
    kind: 'claims',
    title: 'Who is right',
    note: 'by the range',
    unit: 'days',
    value: 1.3,
    low: 1.1,
    high: 1.5,
    claims: [{ who: 'Ada', value: 3 }],
  },
];

describe.each(charts)('a $kind chart', chart => {
  test('says its title, its note and its unit in words', () => {
    const svg = draw(chart);
    expect(svg).toContain(chart.title);
    expect(svg).toContain(chart.note);
  });

  test('has letters in the picture: without a font it would be smaller', async () => {
    const bare: Chart = { ...chart, title: '', note: '' };
    const [full, empty] = await Promise.all([png(chart), png(bare)]);
    expect(full.subarray(1, 4).toString()).toBe('PNG');
    expect(full.length).toBeGreaterThan(empty.length + 500);
    expect(full.length).toBeLessThan(300_000);
    // Width and height stand at byte 16 of every PNG.
    expect([full.readUInt32BE(16), full.readUInt32BE(20)]).toEqual([1200, 675]);
  });
});

test('the lowest point is named with its day and hour', () => {
  expect(draw(charts[0]!)).toContain('lowest 52 % · Sun 16:00');
});

test('names never break out of the picture, whatever they hold', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.double({ min: 0, max: 1e6, noNaN: true }),
      (who, value) => {
        const svg = draw({
          kind: 'claims',
          title: who,
          note: who,
          unit: who,
          value,
          low: value,
          high: value,
          claims: [{ who, value }],
        });
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        expect((svg.match(/</g) ?? []).length).toBe((svg.match(/>/g) ?? []).length);
      },
    ),
  );
});

test('more loads than fit are summed as others', () => {
  const bars = Array.from({ length: 14 }, (_, i) => ({ name: `thing ${i}`, value: i + 1 }));
  const svg = draw({ kind: 'bars', title: 't', note: 'n', unit: 'Ah', bars });
  expect(svg).toContain('others');
  expect(svg.match(/<rect/g)).toHaveLength(10);
});
