import type { Chart } from './chart.ts';

/** Size of a picture before it is scaled for a phone, px. */
export const width = 800;
export const height = 450;
/** Room for the axes, px. */
export const inner = { left: 60, right: 24, top: 88, bottom: 56 } as const;

/** Okabe and Ito's colour-blind safe palette, with slate for ink. */
export const ink = {
  text: '#1f2933',
  quiet: '#52606d',
  grid: '#e4e7eb',
  night: '#334e68',
  line: '#0072b2',
  limit: '#d55e00',
  good: '#009e73',
} as const;

/** A person's or thing's name made safe for SVG, and short enough to fit. */
export function safe(text: string, longest = 40): string {
  const characters = [...text.replace(/\p{C}/gu, '')];
  const short =
    characters.length > longest ? `${characters.slice(0, longest - 1).join('')}…` : characters.join('');
  return short
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

export interface TextStyle {
  readonly size?: number;
  readonly weight?: 400 | 600;
  readonly fill?: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** A white edge, so that it reads over lines. */
  readonly halo?: boolean;
}

/** A line of text; the text itself must be escaped already. */
export function label(x: number, y: number, text: string, style: TextStyle = {}): string {
  const { size = 14, weight = 400, fill = ink.text, anchor = 'start', halo = false } = style;
  const edge = halo ? ' stroke="#fff" stroke-width="4" stroke-linejoin="round" paint-order="stroke"' : '';
  return `<text x="${x.toFixed(1)}" y="${y.toFixed(1)}" font-size="${size}" font-weight="${weight}" fill="${fill}" text-anchor="${anchor}"${edge}>${text}</text>`;
}

/** White ground, title, the line of what is assumed, and the body. */
export function frame(chart: Chart, body: string): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="Inter">`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    label(24, 36, safe(chart.title, 66), { size: 21, weight: 600 }),
    label(24, 60, safe(chart.note, 104), { size: 14, fill: ink.quiet }),
    body,
    '</svg>',
  ].join('\n');
}
