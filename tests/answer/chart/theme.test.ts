import { describe, expect, test } from 'vitest';
import { draw } from '#answer/chart/draw.ts';
import { png } from '#answer/chart/png.ts';
import { svgOf } from '#answer/chart/svg.ts';
import { type Ink, inks, type Theme } from '#answer/chart/theme.ts';
import { present } from '#basics/present.ts';

const linear = (c: number): number => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map(i => linear(Number.parseInt(hex.slice(i, i + 2), 16) / 255)) as [
    number,
    number,
    number,
  ];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
/** Contrast of two colours, 1 to 21. WCAG 2.2, "contrast ratio". */
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

test('contrast is what WCAG says: 21 of black on white, 4.54 of #767676 on white (W3C, technique G18)', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

const themes: readonly Theme[] = ['light', 'dark'];
const words: readonly Ink[] = ['text', 'quiet', 'limit', 'good'];
const shapes: readonly Ink[] = ['line', 'before', 'limit', 'good'];

describe.each(themes)('on %s ground', theme => {
  const ink = inks[theme];
  test.each(words)('words in the ink of "%s" have the contrast that WCAG 1.4.3 (AA) asks for', of => {
    for (const ground of ['ground', 'box', 'night'] as const)
      if (!(ground !== 'ground' && of === 'good'))
        expect(contrast(ink[of], ink[ground])).toBeGreaterThan(4.5);
  });
  test.each(shapes)('lines in the ink of "%s" have what WCAG 1.4.11 asks for', of => {
    expect(contrast(ink[of], ink.ground)).toBeGreaterThan(3);
  });
});

test('the same drawing, on another ground', async () => {
  const chart = {
    kind: 'bars',
    title: 'A day',
    note: '',
    unit: 'Ah',
    bars: [{ name: 'fan', value: 3 }],
  } as const;
  const [light, dark] = themes.map(theme => svgOf(draw(chart), theme)) as [string, string];
  const bare = (svg: string): string => svg.replace(/#[0-9a-f]{6}/g, '#');
  expect(bare(light)).toBe(bare(dark));
  expect(light).not.toBe(dark);
  const [lit, unlit] = await Promise.all(themes.map(theme => png(chart, theme)));
  expect(present(lit).equals(present(unlit))).toBe(false);
  // Width stands at byte 16 of every PNG.
  expect(present(lit).readUInt32BE(16)).toBe(1000);
});
