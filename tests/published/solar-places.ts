import { present } from '#basics/present.ts';
import { climateAt } from '#engine/solar/climate-at.ts';
import type { Row } from './row.ts';

/** How the figure was found: at measuring stations' files, in the work named, or from memory of it. */
const sources = {
  measured: ['daily station file, 1984 on, mean of the month', 'seen'],
  fao17: ['Allen et al. (1998), FAO-56, example 17', 'seen'],
  fao20: ['Allen et al. (1998), FAO-56, examples 15 and 20', 'seen'],
  met: ['Bureau of Meteorology, mean daily solar exposure', 'memory'],
  manual: ['Solar Radiation Data Manual for Flat-Plate and Concentrating Collectors, flat plate', 'memory'],
  handbook: ['handbooks of solar radiation, mean daily global irradiation', 'memory'],
} as const satisfies Record<string, readonly [string, Row['how']]>;

// Place, latitude, longitude, month, kWh/m² a day on flat ground, from.
const published = `
Chengdu (Wenjiang), 30.7, 103.8, 1, 1.43, measured
Chongqing, 29.6, 106.6, 1, 0.93, measured
Guangzhou, 23.1, 113.3, 3, 2.33, measured
Beijing, 39.9, 116.4, 12, 1.90, measured
Alice Springs, -23.8, 133.9, 12, 7.60, met
Alice Springs, -23.8, 133.9, 7, 4.50, met
Darwin, -12.4, 130.8, 1, 5.40, met
Darwin, -12.4, 130.8, 10, 6.70, met
Sydney, -33.9, 151.2, 1, 6.40, met
Melbourne, -37.8, 145.0, 6, 1.80, met
Perth, -31.9, 115.9, 1, 8.20, met
Perth, -31.9, 115.9, 6, 2.75, met
Seattle, 47.6, -122.3, 12, 0.80, manual
Seattle, 47.6, -122.3, 7, 6.10, manual
Phoenix, 33.4, -112.1, 12, 2.80, manual
Boulder, 40.0, -105.2, 1, 2.40, manual
Miami, 25.8, -80.2, 12, 3.20, manual
Boston, 42.4, -71.1, 12, 1.50, manual
Anchorage, 61.2, -149.9, 6, 5.10, manual
Honolulu, 21.3, -157.9, 6, 6.50, manual
Bangkok, 13.8, 100.5, 4, 6.29, fao17
Lyon, 45.8, 4.8, 7, 6.19, fao20
London, 51.5, -0.1, 6, 4.95, handbook
Berlin, 52.5, 13.4, 12, 0.50, handbook
Oslo, 59.9, 10.8, 12, 0.22, handbook
Oslo, 59.9, 10.8, 6, 5.50, handbook
Madrid, 40.4, -3.7, 7, 7.60, handbook
Madrid, 40.4, -3.7, 12, 1.90, handbook
Rome, 41.9, 12.5, 12, 1.65, handbook
Athens, 38.0, 23.7, 7, 7.40, handbook
Reykjavik, 64.1, -21.9, 6, 5.10, handbook
New Delhi, 28.6, 77.2, 5, 7.00, handbook
Mumbai, 19.1, 72.9, 7, 3.90, handbook
Tokyo, 35.7, 139.7, 12, 2.20, handbook
Hong Kong, 22.3, 114.2, 2, 2.60, handbook
Hanoi, 21.0, 105.8, 2, 2.40, handbook
Singapore, 1.4, 103.8, 3, 4.95, handbook
Singapore, 1.4, 103.8, 12, 4.05, handbook
Ulaanbaatar, 47.9, 106.9, 12, 1.50, handbook
Cairo, 30.0, 31.2, 6, 7.80, handbook
Nairobi, -1.3, 36.8, 7, 4.40, handbook
Nairobi, -1.3, 36.8, 2, 6.60, handbook
Cape Town, -33.9, 18.4, 12, 8.10, handbook
Tamanrasset, 22.8, 5.5, 6, 7.35, handbook
La Paz, -16.5, -68.1, 7, 5.10, handbook
Cusco, -13.5, -72.0, 6, 5.20, handbook
Lima, -12.0, -77.0, 1, 6.20, handbook
Quito, -0.2, -78.5, 6, 4.90, handbook
Santiago, -33.4, -70.7, 1, 7.70, handbook
Buenos Aires, -34.6, -58.4, 6, 2.05, handbook
Calama, -22.5, -68.9, 12, 8.80, handbook
Mexico City, 19.4, -99.1, 4, 6.30, handbook
Vancouver, 49.3, -123.1, 7, 6.30, handbook
Calgary, 51.0, -114.1, 12, 1.00, handbook
Christchurch, -43.5, 172.6, 6, 1.35, handbook
Auckland, -36.9, 174.8, 12, 6.50, handbook
`;

// Place, latitude, longitude, height (m; - where it is for us to know), month, mean of the days' highest, of the nights' lowest, °C.
const normals = `
Bangkok, 13.7, 100.5, 2, 4, 34.8, 25.6
Lyon, 45.7, 4.9, 200, 7, 26.6, 14.8
Sydney, -33.9, 151.2, 40, 7, 16.5, 8
Alice Springs, -23.8, 133.9, 546, 1, 36.4, 21.5
Alice Springs, -23.8, 133.9, 546, 7, 19.8, 4
Darwin, -12.4, 130.9, 30, 7, 30.6, 19.3
Thredbo, -36.5, 148.3, -, 7, 5.5, -4
Hobart, -42.9, 147.3, 50, 7, 12, 4.5
London, 51.5, -0.1, -, 7, 23.5, 14
Reykjavik, 64.1, -21.9, -, 1, 2.5, -2
Phoenix, 33.4, -112.0, 340, 7, 41, 28.5
Winnipeg, 49.9, -97.2, 240, 1, -11.5, -21
Singapore, 1.4, 104.0, 15, 4, 32, 25
Cairo, 30.0, 31.2, 30, 7, 35, 23
Nairobi, -1.3, 36.8, 1680, 7, 22, 12
Leh, 34.2, 77.6, -, 1, -2, -13.5
Ushuaia, -54.8, -68.3, -, 7, 4, -1.5
Yakutsk, 62.0, 129.7, 100, 1, -35, -41
Zermatt, 46.0, 7.7, -, 1, 0, -8
Malé, 4.2, 73.5, -, 4, 32, 27
Bermuda, 32.3, -64.8, -, 1, 20.5, 16
`;

const lines = (table: string): string[][] =>
  table
    .trim()
    .split('\n')
    .map(line => line.split(',').map(cell => cell.trim()));
const two = (n: number): string => String(n).padStart(2, '0');

/** Sun at places, most of them no point of the model. */
export const sunRows: readonly Row[] = lines(published).map(([place, lat, lon, month, gives, from], i) => {
  const [work, how] = sources[from as keyof typeof sources];
  return {
    id: `A7-${two(i + 1)}`,
    from: `${work}: ${place}, month ${month}`,
    how,
    gives: Number(gives),
    // Radiometers and satellites differ by a tenth in a month; ours is a long-term mean.
    within: 0.2 * Number(gives),
    run: () => present(climateAt(Number(lat), Number(lon))[Number(month) - 1]).sunKWhM2,
  };
});

const temperatureRows: readonly Row[] = lines(normals).flatMap(
  ([place, lat, lon, height, month, highest, lowest], i): Row[] => {
    const isFao = place === 'Bangkok' || place === 'Lyon';
    const from = `${isFao ? 'FAO-56, examples 17 and 20' : 'climate normals of the national service'}: ${place}, month ${month}`;
    const at = () =>
      present(
        climateAt(Number(lat), Number(lon), height === '-' ? undefined : Number(height))[Number(month) - 1],
      );
    // Kelvin, so that a tolerance is a share of something.
    const row = (end: string, what: string, gives: number, run: () => number): Row => ({
      id: `A8-${two(i + 1)}${end}`,
      from: `${from}, mean ${what}, K`,
      how: 'memory',
      gives: gives + 273.15,
      within: 4,
      run: () => run() + 273.15,
    });
    return [
      row('x', 'highest', Number(highest), () => at().dayMaxC),
      row('n', 'lowest', Number(lowest), () => at().nightMinC),
    ];
  },
);

export const rows: readonly Row[] = [...sunRows, ...temperatureRows];
