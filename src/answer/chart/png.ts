import { renderAsync } from '@resvg/resvg-js';
import type { Chart } from './chart.ts';
import { draw } from './draw.ts';
import { pngOf } from './encode.ts';
import { fontFilesFor } from './letters.ts';
import { svgOf } from './svg.ts';
import type { Theme } from './theme.ts';

/** Pixels of the picture for one of the drawing: sharp on a phone, and still small (about 60 kB). */
const zoom = 2.5;

let queue: Promise<unknown> = Promise.resolve();

/** The picture as a PNG, 1000 px wide. One is drawn at a time, so that a burst of them never stalls the replies. */
export function png(chart: Chart, theme: Theme = 'light'): Promise<Buffer> {
  const job = queue.then(async () => {
    const drawing = draw(chart);
    const words = drawing.marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []));
    const image = await renderAsync(svgOf(drawing, theme), {
      fitTo: { mode: 'zoom', value: zoom },
      // Without a font file resvg draws no text and reports no error; tests hold that the text is there.
      font: { fontFiles: fontFilesFor(words), loadSystemFonts: false, defaultFontFamily: 'Inter' },
    });
    return pngOf(image.pixels, image.width, image.height);
  });
  queue = job.catch(() => undefined);
  return job;
}
