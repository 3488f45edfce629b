import type { Chart } from '#answer/chart/chart.ts';
import type { Theme } from '#answer/chart/theme.ts';
import { dropOldest } from '#basics/oldest.ts';
import { hash } from './buttons.ts';

/** Draws a chart as a PNG. */
export type Draw = (chart: Chart, theme: Theme) => Promise<Buffer>;

/** The drawing itself: its libraries are loaded when the first picture is wanted, and draw beside the answers. */
const drawPng: Draw = async (chart, theme) => (await import('#answer/chart/png.ts')).png(chart, theme);

/** Pictures drawn of late, about 60 kB each, by what they show: a chart asked for again is not drawn again. */
export class Pictures {
  readonly #drawn = new Map<string, Promise<Buffer>>();
  readonly #draw: Draw;
  readonly #most: number;

  constructor(draw: Draw = drawPng, most = 20) {
    this.#draw = draw;
    this.#most = most;
  }

  /** @throws what drawing throws; it is tried again the next time */
  of(chart: Chart, theme: Theme = 'light'): Promise<Buffer> {
    const key = hash(`${theme} ${JSON.stringify(chart)}`);
    const picture = this.#drawn.get(key) ?? this.#draw(chart, theme);
    // Put last again, so that the oldest go first.
    this.#drawn.delete(key);
    this.#drawn.set(key, picture);
    picture.catch(() => this.#drawn.delete(key));
    if (this.#drawn.size > this.#most) dropOldest(this.#drawn);
    return picture;
  }
}
