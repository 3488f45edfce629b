import type {
  BarsChart,
  ChargeChart,
  ChargePoint,
  Chart,
  ClaimsChart,
  MonthsChart,
  PlanChart,
  WiringChart,
} from '#answer/chart/chart.ts';
import { drawnNames } from '#answer/chart/letters.ts';
import {
  amount,
  biggestFirst,
  cableOf,
  fuseOf,
  monthOf,
  percent,
  span,
  whole,
  withRange,
} from '#answer/chart/words.ts';
import { sentence } from '#answer/say.ts';
import { present } from '#basics/present.ts';

/** Telegram's limit of a caption, in UTF-16 units. */
export const captionLimit = 1024;

/** Names, each with the number that stands for it in the picture where the picture has no letters for it. */
const keyed = (names: readonly string[]): string[] =>
  drawnNames(names).map((drawn, i) => (/^\(\d+\)$/.test(drawn) ? `${drawn} ${names[i]}` : present(names[i])));

/** The day that an hour from the first midnight ends: midnight is the end of a day, as the engine has it. */
const dayOf = (hour: number): number => Math.ceil(hour / 24 - 1e-9) - 1;

/** The lowest point of each day that has a name, the first day first. */
function lowsByDay({ points, clock }: ChargeChart): (readonly [day: string, low: ChargePoint])[] {
  if (!clock) return [];
  const days = Map.groupBy(points.slice(1), point => dayOf(clock.startHour + point.atH));
  return [...days].flatMap(([day, of]) => {
    const name = clock.dayNames[day];
    return name === undefined ? [] : [[name, of.reduce((a, b) => (b.percent < a.percent ? b : a))] as const];
  });
}

function ofCharge(chart: ChargeChart): string[] {
  const { points, clock, mark, before, wanted, cut } = chart;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const limit = percent(chart.limitPercent);
  const lows = lowsByDay(chart).map(([day, low]) => `${day} ${percent(low.percent)}`);
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

function ofBars(chart: BarsChart): string[] {
  const { unit } = chart;
  const sorted = biggestFirst(chart);
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

/** What each lead of a sketch goes to, its cable and its fuse. */
function leadsOf({ battery, branches, main }: WiringChart): (readonly [name: string, lead: string])[] {
  const names = keyed([battery, ...branches.flatMap(({ boxes }) => boxes.map(({ name }) => name))]);
  const leads = [...branches.flatMap(({ boxes }) => boxes.map(({ lead }) => lead)), ...(main ? [main] : [])];
  return leads.map((lead, i) => {
    const kind = lead.fuseKind === undefined ? '' : ` (${lead.fuseKind})`;
    const rated = fuseOf(lead);
    return [
      names[i + 1] ?? 'Battery to bus bar',
      `${cableOf(lead)}${rated === undefined ? '' : `, ${rated}${kind}`}`,
    ];
  });
}

function ofWiring(chart: WiringChart): string[] {
  const leads = leadsOf(chart).map(([name, lead]) => `${name}: ${lead}.`);
  // What could hurt comes first: a caption is cut at its end.
  return [...chart.cautions, ...leads, chart.cut ?? ''];
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

/** The same numbers in rows, the first row their heads. */
export function rowsOf(chart: Chart): readonly (readonly string[])[] {
  switch (chart.kind) {
    case 'charge': {
      const lows = lowsByDay(chart).map(([day, low]) => [day, withRange(low)]);
      const [first, last] = [chart.points[0], chart.points.at(-1)];
      if (lows.length > 0) return [['Day', 'Lowest'], ...lows];
      return first && last
        ? [
            ['When', 'Charge'],
            ['Start', withRange(first)],
            ['End', withRange(last)],
          ]
        : [];
    }
    case 'bars':
      return [
        ['What', chart.unit],
        ...biggestFirst(chart).map(({ name, value }) => [name, amount(value, chart.unit)]),
      ];
    case 'claims':
      return [
        ['Who', chart.unit],
        ['Worked out', `${amount(chart.value, chart.unit)} (${span(chart.low, chart.high, chart.unit)})`],
        ...chart.claims.map(({ who, value }) => [who, amount(value, chart.unit)]),
      ];
    case 'months':
      return [
        ['Month', `${chart.unit} a day`],
        ...chart.months.map(({ value, low, high }, i) => [
          monthOf(i),
          `${whole(value)} (${span(low, high, '').trim()})`,
        ]),
      ];
    case 'plan':
      return [
        ['Day', 'Lowest', 'Ends'],
        ...chart.days.map(day => [day.name, percent(day.lowestPercent), percent(day.endPercent)]),
      ];
    case 'wiring':
      return [['To', 'Cable and fuse'], ...leadsOf(chart)];
  }
}
