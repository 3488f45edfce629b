import { type Box, boxOf, type Drawing, doMeet, type TextMark } from '#answer/chart/drawing.ts';

/** Smallest letters that a phone shows legibly, px of a 400 px wide view. */
const leastPx = 11;

const says = ({ text, x, y }: TextMark): string => `“${text}” at ${Math.round(x)}, ${Math.round(y)}`;
const isIn = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left &&
  inner.right <= outer.right &&
  inner.top >= outer.top &&
  inner.bottom <= outer.bottom;

/** What can't be read of a drawing: too small, over another text, half over a box, or out of the picture. */
export function illegible(drawing: Drawing): string[] {
  const page: Box = { left: 0, top: 0, right: drawing.width, bottom: drawing.height };
  const texts = drawing.marks.flatMap(mark =>
    mark.kind === 'text' && mark.text !== '' ? [{ mark, box: boxOf(mark) }] : [],
  );
  const frames = drawing.marks.flatMap(mark =>
    mark.kind === 'rect' && mark.fill === 'box'
      ? [{ left: mark.x, top: mark.y, right: mark.x + mark.width, bottom: mark.y + mark.height }]
      : [],
  );
  const found: string[] = [];
  texts.forEach(({ mark, box }, i) => {
    if ((mark.size * 400) / drawing.width < leastPx) found.push(`${says(mark)} is too small`);
    if (!isIn(box, page)) found.push(`${says(mark)} is out of the picture`);
    for (const other of texts.slice(i + 1))
      if (doMeet(box, other.box)) found.push(`${says(mark)} is over ${says(other.mark)}`);
    for (const frame of frames)
      if (doMeet(box, frame) && !isIn(box, frame)) found.push(`${says(mark)} is over the edge of a box`);
  });
  return found;
}
