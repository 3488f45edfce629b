import type { BarsChart, ChargeChart, Chart, ClaimsChart } from '#answer/chart/chart.ts';
import { english } from '#answer/speech.ts';

/** Telegram's limit of a caption, in UTF-16 units. */
export const captionLimit = 1024;

const { plain, significant } = english;

type Point = ChargeChart['points'][number];

const percent = (value: number): string => `${Math.round(value)} %`;
/** "48 % (41–55 %)", without the brackets where nothing is open. */
const withRange = (point: Point): string => {
  const [low, high] = [Math.round(point.lowPercent), Math.round(point.highPercent)];
  return low === high ? percent(point.percent) : `${percent(point.percent)} (${low}–${high} %)`;
};
const lowestOf = (points: readonly Point[]): Point =>
  points.reduce((a, b) => (b.percent < a.percent ? b : a));

/** "Sat 07:00". */
function moment({ startHour, dayNames }: ChargeChart, atH: number): string {
  const hour = Math.round(startHour + atH);
  const day = Math.floor(hour / 24);
  return `${dayNames[day] ?? `day ${day + 1}`} ${String(hour % 24).padStart(2, '0')}:00`;
}

function ofCharge(chart: ChargeChart): string[] {
  const { points } = chart;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const lowest = lowestOf(points);
  const lows = lowsByDay(chart).map(([day, low]) => `${day} ${percent(low.percent)}`);
  return [
    `Starts at ${percent(first.percent)}, ${moment(chart, first.atH)}.`,
    `Lowest ${withRange(lowest)}, ${moment(chart, lowest.atH)}; stay above ${percent(chart.limitPercent)}.`,
    ...(lows.length > 1 ? [`Lowest each day: ${lows.join(', ')}.`] : []),
    `Ends at ${withRange(last)}, ${moment(chart, last.atH)}.`,
  ];
}

/** The lowest point of each day, the first day first. */
const lowsByDay = ({ points, startHour, dayNames }: ChargeChart): (readonly [day: string, low: Point])[] =>
  [...Map.groupBy(points, ({ atH }) => Math.floor((startHour + atH) / 24))].map(([day, of]) => [
    dayNames[day] ?? `day ${day + 1}`,
    lowestOf(of),
  ]);

const biggestFirst = ({ bars }: BarsChart): BarsChart['bars'] => [...bars].sort((a, b) => b.value - a.value);

const ofBars = (chart: BarsChart): string[] => [
  `${biggestFirst(chart)
    .map(({ name, value }) => `${name} ${significant(value)} ${chart.unit}`)
    .join(', ')}.`,
];

function ofClaims({ value, low, high, unit, claims }: ClaimsChart): string[] {
  const range = plain(low) === plain(high) ? '' : ` (${plain(low)}–${plain(high)} ${unit})`;
  return [
    `Worked out: ${significant(value)} ${unit}${range}.`,
    `${claims.map(claim => `${claim.who}: ${significant(claim.value, 4)} ${unit}`).join(', ')}.`,
  ];
}

/** The numbers of a picture in sentences, without its title and note. */
export const linesOf = (chart: Chart): string[] => {
  switch (chart.kind) {
    case 'charge':
      return ofCharge(chart);
    case 'bars':
      return ofBars(chart);
    case 'claims':
      return ofClaims(chart);
  }
};

/** All numbers of a picture in words: Telegram has no field for those who can't see it. */
export const captionOf = (chart: Chart): string =>
  [chart.title, chart.note, ...linesOf(chart)].filter(line => line.trim() !== '').join('\n');

/** The same numbers in rows, the first row their heads. */
export function rowsOf(chart: Chart): readonly (readonly string[])[] {
  switch (chart.kind) {
    case 'charge':
      return [['Day', 'Lowest'], ...lowsByDay(chart).map(([day, low]) => [day, withRange(low)])];
    case 'bars':
      return [
        ['What', chart.unit],
        ...biggestFirst(chart).map(({ name, value }) => [name, significant(value)]),
      ];
    case 'claims':
      return [
        ['Who', chart.unit],
        ['Worked out', `${significant(chart.value)} (${plain(chart.low)}–${plain(chart.high)})`],
        ...chart.claims.map(({ who, value }) => [who, significant(value, 4)]),
      ];
  }
}
