import { type Weight, widthOf } from './letters.ts';
import type { Ink } from './theme.ts';

/** Width of every picture, px, as a phone shows it: a size of a letter here is its size there. */
export const width = 400;
/** Smallest letters, px. */
const small = 11;
/** Edge of a picture, px. */
export const edge = 14;

export interface TextMark {
  readonly kind: 'text';
  readonly x: number;
  /** Of the base line. */
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
  readonly ink: Ink;
  readonly anchor: 'start' | 'middle' | 'end';
}

interface Shape {
  readonly fill?: Ink;
  readonly stroke?: Ink;
  readonly thick?: number;
  readonly dash?: string;
  readonly opacity?: number;
}

export interface RectMark extends Shape {
  readonly kind: 'rect';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly round?: number;
}

export interface PathMark extends Shape {
  readonly kind: 'path';
  readonly d: string;
}

interface CircleMark extends Shape {
  readonly kind: 'circle';
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

export type Mark = TextMark | RectMark | PathMark | CircleMark;

/** A picture as marks, the first ones at the back. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A line of text. */
export const text = (
  x: number,
  y: number,
  words: string,
  { size = small, weight = 400, ink = 'text', anchor = 'start' }: Partial<Omit<TextMark, 'kind'>> = {},
): TextMark => ({ kind: 'text', x, y, text: words, size, weight, ink, anchor });

export const rect = (x: number, y: number, w: number, h: number, shape: Partial<RectMark>): RectMark => ({
  kind: 'rect',
  x,
  y,
  width: Math.max(0, w),
  height: Math.max(0, h),
  ...shape,
});

/** A straight line. */
export const stroke = (
  from: readonly [x: number, y: number],
  to: readonly [x: number, y: number],
  ink: Ink,
  shape: Omit<Shape, 'stroke'> = {},
): PathMark => ({
  kind: 'path',
  d: `M${from.map(tenth).join(',')}L${to.map(tenth).join(',')}`,
  stroke: ink,
  thick: 1,
  ...shape,
});

const tenth = (value: number): number => Math.round(value * 10) / 10;

/** Where a line of text stands: from its capitals to what hangs below the line. */
export function boxOf({ x, y, text: words, size, weight, anchor }: TextMark): Box {
  const wide = widthOf(words, size, weight);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
  return { left, right: left + wide, top: y - size * 0.78, bottom: y + size * 0.22 };
}

export const doMeet = (a: Box, b: Box, apart = 0): boolean =>
  a.left < b.right + apart &&
  b.left < a.right + apart &&
  a.top < b.bottom + apart &&
  b.top < a.bottom + apart;

/** The first of several places for a label that is free and inside the picture; undefined where none is. */
export function placed(
  places: readonly TextMark[],
  taken: readonly Box[],
  within: Box,
): TextMark | undefined {
  return places.find(mark => {
    const box = boxOf(mark);
    const isInside =
      box.left >= within.left &&
      box.right <= within.right &&
      box.top >= within.top &&
      box.bottom <= within.bottom;
    return isInside && !taken.some(other => doMeet(box, other, 2));
  });
}

/** A label on a pane of the ground, so that it reads over lines. */
export function backed(mark: TextMark): Mark[] {
  const { left, top, right, bottom } = boxOf(mark);
  const pane = { fill: 'ground', opacity: 0.75, round: 2 } as const;
  return [rect(left - 2, top - 1, right - left + 4, bottom - top + 2, pane), mark];
}
