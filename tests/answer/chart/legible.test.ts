import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draw } from '#answer/chart/draw.ts';
import { type Drawing, text } from '#answer/chart/drawing.ts';
import { svgOf } from '#answer/chart/svg.ts';
import { kinds } from './examples.ts';
import { illegible } from './legible.ts';

describe.each(Object.entries(kinds))('any %s picture', (_kind, charts) => {
  test('can be read at the width of a phone: large enough, nothing over another, nothing outside', () => {
    fc.assert(
      fc.property(charts, chart => {
        const drawing = draw(chart);
        expect(drawing.width).toBe(400);
        expect(illegible(drawing)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  test('is whole SVG, whatever names it holds', () => {
    fc.assert(
      fc.property(charts, fc.constantFrom('light' as const, 'dark' as const), (chart, theme) => {
        const svg = svgOf(draw(chart), theme);
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        expect((svg.match(/</g) ?? []).length).toBe((svg.match(/>/g) ?? []).length);
      }),
      { numRuns: 50 },
    );
  });
});

describe('what can be read', () => {
  const page = (...marks: Drawing['marks']): Drawing => ({ width: 400, height: 100, marks });
  test.each([
    ['small letters', page(text(10, 50, 'fridge', { size: 10 })), 'too small'],
    [
      'letters of a wider picture',
      { ...page(text(10, 50, 'fridge', { size: 14 })), width: 800 },
      'too small',
    ],
    ['one over another', page(text(10, 50, 'fridge'), text(20, 55, 'lights')), 'is over'],
    ['one out of the picture', page(text(380, 50, 'fridge')), 'out of'],
    [
      'one over an edge',
      page({ kind: 'rect', x: 20, y: 40, width: 50, height: 20, fill: 'box' }, text(10, 50, 'fridge')),
      'edge',
    ],
  ])('%s is seen', (_what, drawing, why) => {
    expect(illegible(drawing).join()).toContain(why);
  });
});
