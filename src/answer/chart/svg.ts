import { unhandled } from '#basics/unhandled.ts';
import type { Drawing, Mark } from './drawing.ts';
import { type Ink, inks, type Theme } from './theme.ts';

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
const tenth = (value: number): string => `${Math.round(value * 10) / 10}`;

/** A drawing as SVG text, on light or dark ground. Pure. */
export function svgOf({ width, height, marks }: Drawing, theme: Theme): string {
  const ink = inks[theme];
  const colour = (of: Ink | undefined): string => (of === undefined ? 'none' : ink[of]);
  const shape = (mark: Exclude<Mark, { kind: 'text' }>): string =>
    ` fill="${colour(mark.fill)}" stroke="${colour(mark.stroke)}"` +
    (mark.thick === undefined ? '' : ` stroke-width="${mark.thick}" stroke-linejoin="round"`) +
    (mark.dash === undefined ? '' : ` stroke-dasharray="${mark.dash}"`) +
    (mark.opacity === undefined ? '' : ` opacity="${mark.opacity}"`);
  const printed = marks.map(mark => {
    switch (mark.kind) {
      case 'text':
        return `<text x="${tenth(mark.x)}" y="${tenth(mark.y)}" font-size="${mark.size}" font-weight="${mark.weight}" fill="${ink[mark.ink]}" text-anchor="${mark.anchor}">${escaped(mark.text)}</text>`;
      case 'rect':
        return `<rect x="${tenth(mark.x)}" y="${tenth(mark.y)}" width="${tenth(mark.width)}" height="${tenth(mark.height)}" rx="${mark.round ?? 0}"${shape(mark)}/>`;
      case 'circle':
        return `<circle cx="${tenth(mark.x)}" cy="${tenth(mark.y)}" r="${mark.r}"${shape(mark)}/>`;
      case 'path':
        return `<path d="${mark.d}"${shape(mark)}/>`;
      default:
        return unhandled(mark);
    }
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="Inter">`,
    `<rect width="${width}" height="${height}" fill="${ink.ground}"/>`,
    ...printed,
    '</svg>',
  ].join('\n');
}
