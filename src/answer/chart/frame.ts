import { type Box, boxOf, type Drawing, edge, type Mark, type TextMark, text, width } from './drawing.ts';
import { balanced, wrapped } from './letters.ts';

/** Title and note of a picture, and where its body begins. */
export interface Head {
  readonly marks: readonly TextMark[];
  /** px from the top. */
  readonly bottom: number;
}

const titleSize = 16;
const noteSize = 12;
const mostLines = { title: 3, note: 2 } as const;

/** The title in at most three lines, the note in at most two. */
export function headOf({ title, note }: { readonly title: string; readonly note: string }): Head {
  const room = width - 2 * edge;
  const titles = balanced(title, room, mostLines.title, titleSize, 600);
  const notes = wrapped(note, room, mostLines.note, noteSize);
  const top = 12;
  const below = top + titles.length * 20;
  return {
    marks: [
      ...titles.map((line, i) => text(edge, top + 15 + i * 20, line, { size: titleSize, weight: 600 })),
      ...notes.map((line, i) => text(edge, below + 14 + i * 16, line, { size: noteSize, ink: 'quiet' })),
    ],
    bottom: below + notes.length * 16 + 6,
  };
}

/** A picture of a head and a body. */
export const framed = (head: Head, marks: readonly Mark[], height: number): Drawing => ({
  width,
  height: Math.ceil(height),
  marks: [...marks, ...head.marks],
});

/** The boxes of the texts among marks. */
export const textBoxes = (marks: readonly Mark[]): Box[] =>
  marks.flatMap(mark => (mark.kind === 'text' ? [boxOf(mark)] : []));
