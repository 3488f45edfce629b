import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Chart } from '#answer/chart/chart.ts';
import type { Theme } from '#answer/chart/theme.ts';

/** What a person types to have the picture of the last answer. */
export const isPictureWish = (text: string): boolean =>
  /^\/?(picture|chart|graph)( (dark|light))?$/i.test(text.trim());

/** The ground that it shall be on. */
export const themeOf = (text: string): Theme => (/ dark$/i.test(text.trim()) ? 'dark' : 'light');

const mostOfOneSecond = 100;

/**
 * Draws a chart into a new file of the folder, which is made where it is missing; nothing is overwritten.
 * @returns the file's name: "data/pictures/charge-20260115-090000.png"
 * @throws Error when the file can't be written
 */
export async function savePicture(
  chart: Chart,
  folder: string,
  at: Date,
  theme: Theme = 'light',
): Promise<string> {
  // The drawing libraries are loaded only now: most talks want no picture.
  const { png } = await import('#answer/chart/png.ts');
  const picture = await png(chart, theme);
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
