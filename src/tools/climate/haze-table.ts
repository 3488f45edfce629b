/** A region, as a box of degrees, and what ground stations measured there over the satellite's table, by month. */
export interface Haze {
  readonly region: string;
  readonly south: number;
  readonly north: number;
  readonly west: number;
  readonly east: number;
  readonly ratios: readonly number[];
}

const read = (table: string): Haze[] =>
  table
    .trim()
    .split('\n')
    .map(line => {
      const [region, south, north, west, east, ...ratios] = line.split(',').map(cell => cell.trim());
      const [s, n, w, e] = [south, north, west, east].map(Number) as [number, number, number, number];
      return { region: region as string, south: s, north: n, west: w, east: e, ratios: ratios.map(Number) };
    });

/**
 * Winter haze over eastern and south-western China, which satellites see through: medians of daily data since 1984
 * at 30 to 109 stations a region, seen beside the reference.
 */
export const haze: readonly Haze[] = read(`
Sichuan basin, 28.5, 32, 103.5, 108, 0.58, 0.70, 0.84, 0.94, 0.93, 0.93, 0.99, 1.02, 0.91, 0.78, 0.68, 0.56
Guizhou, 25, 28.5, 104, 109.5, 0.72, 0.80, 0.84, 0.89, 0.95, 0.91, 0.98, 1.01, 0.95, 0.89, 0.81, 0.76
Hunan-Hubei, 26, 32, 109, 114, 0.77, 0.87, 0.95, 1.00, 1.00, 0.97, 1.02, 1.05, 0.97, 0.94, 0.84, 0.80
lower Yangtze, 28, 33, 115, 122, 0.79, 0.85, 0.97, 0.99, 0.96, 0.93, 0.97, 0.98, 0.95, 0.94, 0.85, 0.81
south coast, 20, 25, 106, 118, 0.87, 0.91, 0.86, 0.89, 0.96, 0.98, 1.03, 1.04, 1.02, 0.96, 0.87, 0.85
north plain, 34, 41, 112, 119, 0.76, 0.78, 0.85, 0.89, 0.94, 0.95, 0.94, 0.96, 0.94, 0.90, 0.83, 0.78
north-east, 41, 52, 119, 134, 0.87, 0.88, 0.90, 0.94, 0.97, 1.00, 1.06, 1.04, 1.00, 0.96, 0.90, 0.87
far west, 36, 48, 75, 95, 0.88, 0.88, 0.92, 0.97, 1.01, 1.04, 1.07, 1.07, 1.03, 0.96, 0.91, 0.89
high plateau, 28, 36, 80, 100, 0.94, 0.94, 0.96, 0.99, 1.00, 1.01, 0.99, 1.00, 1.00, 0.98, 0.95, 0.95
Yunnan, 22, 27, 98, 104, 0.88, 0.92, 0.94, 0.95, 0.98, 0.93, 0.91, 0.95, 0.95, 0.93, 0.92, 0.87
`);
