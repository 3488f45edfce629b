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
  const { points, startHour } = chart;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const lowest = lowestOf(points);
  const days = Map.groupBy(points, point => Math.floor((startHour + point.atH) / 24));
  const lows = [...days].map(
    ([day, of]) => `${chart.dayNames[day] ?? `day ${day + 1}`} ${percent(lowestOf(of).percent)}`,
  );
  return [
    `Starts at ${percent(first.percent)}, ${moment(chart, first.atH)}.`,
    `Lowest ${withRange(lowest)}, ${moment(chart, lowest.atH)}; stay above ${percent(chart.limitPercent)}.`,
    ...(lows.length > 1 ? [`Lowest each day: ${lows.join(', ')}.`] : []),
    `Ends at ${withRange(last)}, ${moment(chart, last.atH)}.`,
  ];
}

const ofBars = ({ bars, unit }: BarsChart): string[] => [
  `${[...bars]
    .sort((a, b) => b.value - a.value)
    .map(({ name, value }) => `${name} ${significant(value)} ${unit}`)
    .join(', ')}.`,
];

function ofClaims({ value, low, high, unit, claims }: ClaimsChart): string[] {
  const range = plain(low) === plain(high) ? '' : ` (${plain(low)}–${plain(high)} ${unit})`;
  return [
    `Worked out: ${significant(value)} ${unit}${range}.`,
    `${claims.map(claim => `${claim.who}: ${significant(claim.value, 4)} ${unit}`).join(', ')}.`,
  ];
}

const linesOf = (chart: Chart): string[] => {
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
