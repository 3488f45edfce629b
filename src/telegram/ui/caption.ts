import type {
  BarsChart,
  ChargeChart,
  Chart,
  ClaimsChart,
  MonthsChart,
  PlanChart,
  WiringChart,
} from '#answer/chart/chart.ts';
import { drawnNames } from '#answer/chart/letters.ts';
import { amount, cableOf, fuseOf, monthOf, percent, span, whole, withRange } from '#answer/chart/words.ts';
import { sentence } from '#answer/say.ts';

/** Telegram's limit of a caption, in UTF-16 units. */
export const captionLimit = 1024;

/** Names, each with the number that stands for it in the picture where the picture has no letters for it. */
const keyed = (names: readonly string[]): string[] =>
  drawnNames(names).map((drawn, i) => (/^\(\d+\)$/.test(drawn) ? `${drawn} ${names[i]}` : names[i]!));

/** The day that an hour from the first midnight ends: midnight is the end of a day, as the engine has it. */
const dayOf = (hour: number): number => Math.ceil(hour / 24 - 1e-9) - 1;

function ofCharge(chart: ChargeChart): string[] {
  const { points, clock, mark, before, wanted, cut } = chart;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const limit = percent(chart.limitPercent);
  const days = clock ? Map.groupBy(points.slice(1), point => dayOf(clock.startHour + point.atH)) : new Map();
  const lows = [...days].flatMap(([day, of]) => {
    const name = clock?.dayNames[day];
    const low = Math.min(...of.map((point: { percent: number }) => point.percent));
    return name === undefined ? [] : [`${name} ${percent(low)}`];
  });
  return [
    clock
      ? `Starts at ${percent(first.percent)}. ${sentence(mark.says)}; stay above ${limit}.`
      : `From ${percent(first.percent)} to ${limit}, where it should stop: ${mark.says}.`,
    before ? `Before: ${before.says}.` : '',
    wanted ? `${sentence(wanted.says)}.` : '',
    lows.length > 1 ? `Lowest each day: ${lows.join(', ')}.` : '',
    clock ? `Ends at ${withRange(last)}.` : '',
    cut ? `${sentence(cut)}.` : '',
  ];
}

function ofBars({ bars, unit }: BarsChart): string[] {
  const sorted = [...bars].sort((a, b) => b.value - a.value);
  const names = keyed(sorted.map(bar => bar.name));
  return [`${sorted.map(({ value }, i) => `${names[i]} ${amount(value, unit)}`).join(', ')}.`];
}

function ofClaims({ value, low, high, unit, claims }: ClaimsChart): string[] {
  const between = span(low, high, unit);
  const range = between.includes('–') ? ` (${between})` : '';
  const names = keyed(claims.map(claim => claim.who));
  return [
    `Worked out: ${amount(value, unit)}${range}.`,
    `${claims.map((claim, i) => `${names[i]}: ${amount(claim.value, unit)}`).join(', ')}.`,
  ];
}

const ofMonths = ({ months, unit, use }: MonthsChart): string[] => [
  `${unit} a day: ${months.map((month, i) => `${monthOf(i)} ${whole(month.value)} (${span(month.low, month.high, '').trim()})`).join(', ')}.`,
  use === undefined ? '' : `You use ${amount(use, unit)}.`,
];

const ofPlan = ({ days, unit, limitPercent, cut }: PlanChart): string[] => [
  ...days.map(day => {
    const offered = `${whole(day.sunAh + day.drivingAh + day.pluggedAh)} ${unit}`;
    return `${day.name}: out ${whole(day.outAh)} ${unit}, on offer ${offered}, lowest ${percent(day.lowestPercent)}, ends ${percent(day.endPercent)}.`;
  }),
  `Stay above ${percent(limitPercent)}.${cut ? ` ${sentence(cut)}.` : ''}`,
];

function ofWiring({ battery, branches, main, cut, cautions }: WiringChart): string[] {
  const names = keyed([battery, ...branches.flatMap(({ boxes }) => boxes.map(({ name }) => name))]);
  const leads = [
    ...branches.flatMap(({ boxes }) => boxes.map(({ lead }) => lead)),
    ...(main ? [main] : []),
  ].map((lead, i) => {
    const name = names[i + 1] ?? 'Battery to bus bar';
    const kind = lead.fuseKind === undefined ? '' : ` (${lead.fuseKind})`;
    const rated = fuseOf(lead);
    return `${name}: ${cableOf(lead)}${rated === undefined ? '' : `, ${rated}${kind}`}.`;
  });
  // What could hurt comes first: a caption is cut at its end.
  return [...cautions, ...leads, cut ?? ''];
}

const linesOf = (chart: Chart): string[] => {
  switch (chart.kind) {
    case 'charge':
      return ofCharge(chart);
    case 'bars':
      return ofBars(chart);
    case 'claims':
      return ofClaims(chart);
    case 'months':
      return ofMonths(chart);
    case 'plan':
      return ofPlan(chart);
    case 'wiring':
      return ofWiring(chart);
  }
};

/** All numbers of a picture in words: Telegram has no field for those who can't see it. */
export const captionOf = (chart: Chart): string =>
  [chart.title, chart.note, ...linesOf(chart)].filter(line => line.trim() !== '').join('\n');
