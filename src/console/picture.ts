import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Chart } from '#answer/chart/chart.ts';

/** What a person types to have the picture of the last answer. */
export const isPictureWish = (text: string): boolean => /^\/?(picture|chart|graph)$/i.test(text.trim());

const mostOfOneSecond = 100;

/**
 * Draws a chart into a new file of the folder, which is made where it is missing; nothing is overwritten.
 * @returns the file's name: "data/pictures/charge-20260115-090000.png"
 * @throws Error when the file can't be written
 */
export async function savePicture(chart: Chart, folder: string, at: Date): Promise<string> {
  // The drawing libraries are loaded only now: most talks want no picture.
  const { png } = await import('#answer/chart/png.ts');
  const picture = await png(chart);
  await mkdir(folder, { recursive: true });
  const second = at.toISOString().slice(0, 19).replace(/[-:]/g, '').replace('T', '-');
  for (let n = 1; ; n++) {
    const file = join(folder, `${chart.kind}-${second}${n === 1 ? '' : `-${n}`}.png`);
    try {
      await writeFile(file, picture, { flag: 'wx' });
      return file;
    } catch (error) {
      const isTaken = (error as NodeJS.ErrnoException).code === 'EEXIST';
      if (!isTaken || n === mostOfOneSecond) throw error;
    }
  }
}
