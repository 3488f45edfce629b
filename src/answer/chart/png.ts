import { createRequire } from 'node:module';
import { renderAsync } from '@resvg/resvg-js';
import { drawBars } from './bars.ts';
import { drawCharge } from './charge.ts';
import type { Chart } from './chart.ts';
import { drawClaims } from './claims.ts';

/** Pixels of the picture for one of the drawing: sharp on a phone, and still small (about 60 kB). */
const zoom = 1.5;

const find = createRequire(import.meta.url).resolve;
// Without a font file resvg draws no text and reports no error; tests hold that the text is there.
const fontFiles = ['400Regular/Inter_400Regular.ttf', '600SemiBold/Inter_600SemiBold.ttf'].map(file =>
  find(`@expo-google-fonts/inter/${file}`),
);

/** The picture as SVG text. Pure. */
export function draw(chart: Chart): string {
  switch (chart.kind) {
    case 'charge':
      return drawCharge(chart);
    case 'bars':
      return drawBars(chart);
    case 'claims':
      return drawClaims(chart);
  }
}

let queue: Promise<unknown> = Promise.resolve();

/** The picture as a PNG, 1200 × 675. One is drawn at a time, so that a burst of them never stalls the replies. */
export function png(chart: Chart): Promise<Buffer> {
  const job = queue.then(async () => {
    const image = await renderAsync(draw(chart), {
      fitTo: { mode: 'zoom', value: zoom },
      font: { fontFiles, loadSystemFonts: false, defaultFontFamily: 'Inter' },
    });
    return image.asPng();
  });
  queue = job.catch(() => undefined);
  return job;
}
