import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { drawnNames, fitted, fontFilesFor, printable, widthOf, wrapped } from '#answer/chart/letters.ts';
import { png } from '#answer/chart/png.ts';
import { present } from '#basics/present.ts';
import { captionOf } from '#telegram/ui/caption.ts';

/** How wide a line is drawn; undefined where nothing is. */
function drawnPx(line: string, weight: 400 | 600): number | undefined {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="60" font-family="Inter"><text x="20" y="40" font-size="20" font-weight="${weight}">${line}</text></svg>`;
  const font = { fontFiles: fontFilesFor([line]), loadSystemFonts: false, defaultFontFamily: 'Inter' };
  return new Resvg(svg, { font }).getBBox()?.width;
}

const lines = [
  ['Latin', 'It lasts about 2¼ days (47–67 h)'],
  ['Vietnamese', 'Nguyễn Thị Ánh Tuyết'],
  ['Greek', 'Αλέξανδρος'],
  ['Cyrillic', 'Олександр Петренко'],
  ['Hebrew', 'שרה כהן'],
  ['Arabic', 'محمد عبد الله'],
  ['Devanagari', 'दीपक कुमार'],
  ['Thai', 'สมชาย ใจดี'],
  ['Japanese', '田中さん タロウ'],
  ['Chinese, simplified', '王小明 骆驼'],
  ['Chinese, traditional', '陳美麗 臺灣'],
  ['Korean', '김민수 박서연'],
  ['two scripts', 'Sam and สมชาย'],
] as const;

describe.each(lines)('%s', (_script, line) => {
  test.each([400, 600] as const)('is drawn, as wide as it was reckoned, at weight %i', weight => {
    expect(printable(line)).toBe(line.normalize('NFC'));
    const reckoned = widthOf(line, 20, weight);
    const drawn = drawnPx(line, weight);
    expect(drawn).toBeGreaterThan(0.7 * reckoned);
    // A little more would run into what stands beside it.
    expect(drawn).toBeLessThan(1.08 * reckoned);
  });
});

test('semibold is wider than regular: both weights are there', () => {
  expect(drawnPx('fridge and lights', 600)).toBeGreaterThan(
    present(drawnPx('fridge and lights', 400)) * 1.02,
  );
});

test('a picture loads the large fonts only where it has their letters', () => {
  expect(fontFilesFor(['fridge', 'Олександр'])).toHaveLength(2);
  expect(fontFilesFor(['王小明'])).toHaveLength(3);
});

test('what no font has stands as its number, and the words below tell it', async () => {
  expect(drawnNames(['Sam', 'ஆதி', '🚐 Van', '🚐', 'ஆதி 2'])).toEqual(['Sam', '(2)', 'Van', '(4)', '(5)']);
  const chart = {
    kind: 'bars',
    title: 'A day',
    note: 'at 12 V',
    unit: 'Ah',
    bars: [
      { name: 'fridge', value: 9 },
      { name: 'குளிர்சாதனம்', value: 3 },
    ],
  } as const;
  expect(captionOf(chart)).toContain('(2) குளிர்சாதனம் 3 Ah');
  expect((await png(chart)).length).toBeGreaterThan(1000);
});

test('a long name is cut between whole characters, never wider than there is room', () => {
  for (const name of ['दीपक कुमार शर्मा वर्मा', 'Donaudampfschifffahrt', 'ส็สมชาย ใจดีมาก']) {
    const cut = fitted(name, 60, 13);
    expect(cut.endsWith('…')).toBe(true);
    expect(widthOf(cut, 13)).toBeLessThanOrEqual(60);
  }
  expect(wrapped('one two three four five six', 60, 2, 13)).toHaveLength(2);
});
