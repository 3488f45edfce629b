import { hourOfDay } from '#answer/clock.ts';
import type { Reply } from '#answer/reply.ts';
import { duration, exactly, list, sentence } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { decimals, significant } from '#quantity/round.ts';
import { loadCautions } from '../cautions.ts';
import { describeRig } from '../describe.ts';
import { enough, figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { bankWithin, wantedTime } from '../words.ts';
import { tripChart } from './chart.ts';
import { longestH, type TripAnswer, type TripFacts } from './compute.ts';
import { asksByDay, byDay, dayLines } from './days.ts';
import { moment } from './when.ts';

type Verdict = 'yes' | 'tight' | 'no';

const isFlat = ({ likely }: TripAnswer): boolean => likely.balance.flatAtH !== undefined;

/** Yes, no, or tight: against the limit, and never yes or tight where it is flat anyway. */
function judge(result: TripAnswer): Verdict {
  const { lowestCharge, margin } = result.figures;
  const limit = lowestCharge.value - margin.value;
  if (isFlat(result) && lowestCharge.high < limit) return 'no';
  return enough(margin, 0);
}

/** A moment of this trip for people. */
const momentOf = (facts: TripFacts, { startHour, trip }: TripAnswer, atH: number): string =>
  moment(atH, { startHour, durationH: trip.durationH, startWeekday: facts.startWeekday });

/** What stays so many points above its limit will do unless all goes against it, %. */
const surplusPoints = 15;

/** Does it last, and how low does it get: the headline without the limit, and the title of the picture. */
function outcome(facts: TripFacts, result: TripAnswer, verdict: Verdict): string {
  const { lowestCharge } = result.figures;
  const { balance } = result.likely;
  const when = (atH: number): string => momentOf(facts, result, atH);
  if (balance.flatAtH !== undefined)
    return `${verdict === 'tight' ? 'Tight: likely' : 'No: it runs'} flat after ${duration(balance.flatAtH)} (${when(balance.flatAtH)})`;
  const spread = `${decimals(lowestCharge.low, 0)}–${decimals(lowestCharge.high, 0)} %`;
  const lowest = `it gets down to about ${decimals(lowestCharge.value, 0)} % (${spread}) on ${when(balance.lowest.atH)}`;
  const isSurplus = result.figures.margin.value >= surplusPoints;
  const lead = { yes: 'Yes, it lasts', tight: isSurplus ? 'Probably' : 'Tight', no: 'No' } as const;
  return `${lead[verdict]}: ${lowest}`;
}

function headline(facts: TripFacts, result: TripAnswer, verdict: Verdict): string {
  const { lowestCharge, margin } = result.figures;
  const told = outcome(facts, result, verdict);
  if (isFlat(result)) return `${told}.`;
  return `${told}; keep it above ${decimals(lowestCharge.value - margin.value, 0)} %.`;
}

/** Chargers told that nothing says the hours of. */
function uncounted(facts: TripFacts, plugs: readonly Plug[]): string {
  const others =
    plugs.length > 0 ? [] : (facts.chargers?.filter(c => c.kind === 'mains' || c.kind === 'generator') ?? []);
  return others.length > 0 ? `A ${list(others.map(c => c.kind))} charger is not counted.` : '';
}

type Plug = 'generator' | 'mains';
const pluggedIn: Readonly<Record<Plug, string>> = { generator: 'a generator', mains: 'the hook-up' };

/** What it is plugged into on some days. */
const plugsOf = ({ days = [] }: TripAnswer['trip']): Plug[] => [
  ...(days.some(day => (day.generatorH ?? 0) > 0) ? (['generator'] as const) : []),
  ...(days.some(day => (day.mainsH ?? 0) > 0) ? (['mains'] as const) : []),
];

/** When one source by itself fills it. */
function fillsAlone(isByDays: boolean, [plug]: readonly Plug[]): string {
  if (isByDays) return 'fills it on the days you drive';
  return plug === 'mains' ? 'fills it on its nights' : 'fills it on its days';
}

/** What goes out and what comes in a day. */
function account(facts: TripFacts, result: TripAnswer, setting: RequestContext): string {
  const { figures, trip, bank, likely } = result;
  const ah = (x: number): string => `about ${significant(x, 2)} Ah`;
  const sources: string[] = [];
  if (trip.sun) sources.push(`the sun can put ${ah(figures.dailySun.value)} back`);
  const plugs = plugsOf(trip);
  const isByDays = !!trip.days?.some(day => (day.drivingH ?? 0) > 0);
  const { drivingAh } = likely.balance.sums;
  if (!isByDays && drivingAh > 0) sources.push(`driving puts ${ah((24 * drivingAh) / trip.durationH)} back`);
  const filling = [...(isByDays ? ['driving'] : []), ...plugs.map(plug => pluggedIn[plug])];
  if (filling.length > 0)
    sources.push(
      `${list(filling)} ${filling.length > 1 ? 'fill it on their days' : fillsAlone(isByDays, plugs)}`,
    );
  const left = decimals(figures.endCharge.value, 0);
  const end = left === '0' ? 'it ends flat' : left === '100' ? 'it ends full' : `it ends at about ${left} %`;
  const others = uncounted(facts, plugs);
  // A battery out of memory is named: it may not be the one that was meant.
  const whose = setting.recalled.has('batteries') ? `With ${bankWithin(bank, setting)} you` : 'You';
  const flow = list([
    `${whose} use ${ah(figures.dailyUse.value)} a day`,
    ...(sources.length > 0 ? sources : ['nothing is put back']),
  ]);
  return `${flow}; ${end}. ${others}`.trim();
}

/** "30 minutes", "1.5 h". */
const driveTime = (hours: number): string =>
  hours < 1 ? `${decimals(60 * hours, 0)} minutes` : `${decimals(hours, 2)} h`;

/** More than this is told as several panels, W. */
const mostPanelW = 200;

/** What passes the limit sooner was at it from the start, h. */
const soonH = 1 / 60;

/** When it passes the limit, and the smallest changes that make it last. */
function remedy(facts: TripFacts, result: TripAnswer, verdict: Verdict): string[] {
  const { limitAtH, flatAtH } = result.likely.balance;
  const { batteryAh, panelW, drivingH } = result.remedies(verdict === 'tight');
  const up = (x: number, step: number): number => Math.ceil(x / step - 1e-9) * step;
  const ways: string[] = [];
  // The easiest first: what costs nothing, then what is bought.
  const hadH = result.trip.driving?.hoursPerDay ?? 0;
  if (drivingH !== undefined && drivingH > hadH) ways.push(`drive ${driveTime(up(drivingH, 0.25))} a day`);
  const hadW = result.trip.sun?.powerW ?? 0;
  if (panelW !== undefined && panelW > hadW)
    ways.push(
      hadW > 0
        ? `have ${up(panelW, 10)} W of solar in all`
        : panelW > mostPanelW
          ? `add ${up(panelW, 10)} W of solar`
          : `add a ${up(panelW, 10)} W panel`,
    );
  if (batteryAh !== undefined && batteryAh > result.bank.capacityAh)
    ways.push(`carry about ${up(batteryAh, 5)} Ah of the same battery`);
  const passes =
    limitAtH !== undefined && limitAtH > 0 && flatAtH === undefined
      ? limitAtH < soonH
        ? 'It starts at the limit.'
        : `It passes the limit after ${duration(limitAtH)} (${momentOf(facts, result, limitAtH)}).`
      : '';
  const aim = verdict === 'tight' ? 'To be safe' : 'To make it last';
  const mend =
    ways.length === 0
      ? 'Use less a day, or charge it on the way.'
      : `${aim}${ways.length > 1 ? ' do one of these: ' : ', '}${list(ways, 'or')}.`;
  return [passes, mend];
}

/** What was taken of the trip itself. */
function taken(facts: TripFacts, result: TripAnswer): string {
  const start = `at ${hourOfDay(result.startHour)} on day 1`;
  const level = decimals(result.bank.stateOfChargePercent ?? 100, 0);
  const from = `starting ${level === '100' ? 'full' : `at ${level} %`} ${start}`;
  if (result.isDurationAssumed)
    return `You named no time, so I took ${exactly(result.trip.durationH)}, ${from}.`;
  if ((facts.durationH ?? 0) > longestH) return `I worked out the first ${longestH / 24} days, ${from}.`;
  return facts.startHour === undefined ? `That is for ${wantedTime(result.trip.durationH)}, ${from}.` : '';
}

function cautionsFor(facts: TripFacts, result: TripAnswer): CautionCode[] {
  const found = loadCautions(facts, result.bank);
  const isIsolator = result.trip.driving?.charger?.kind === 'isolator';
  if (isIsolator && result.bank.chemistry === 'lfp') found.push('mixed-batteries');
  const plugs = plugsOf(result.trip);
  if (plugs.includes('generator')) found.push('carbon-monoxide');
  if (plugs.includes('mains')) found.push('hook-up');
  if (plugs.length > 0 && result.bank.chemistry === 'flooded') found.push('battery-gas');
  return found;
}

/** Another sky than the one told, or a panel where there is none. */
function nextSky({ sky }: TripFacts, { trip }: TripAnswer): string {
  if (!trip.sun) return 'what if I add 100W of solar?';
  return sky === 'overcast' ? "what if it's sunny?" : "what if it's overcast?";
}

/** Words for a trip. */
export function answerTrip(facts: TripFacts, result: TripAnswer, setting: RequestContext): Reply {
  const verdict = judge(result);
  const isByDay = setting.subject === byDay || asksByDay(setting.parsed.recognised.words);
  const tell = (): readonly string[] => {
    const told = isByDay
      ? [...dayLines(result, facts.startWeekday), uncounted(facts, plugsOf(result.trip))]
      : [account(facts, result, setting)];
    if (verdict !== 'yes') told.push(...remedy(facts, result, verdict));
    told.push(taken(facts, result));
    return told.filter(Boolean).map(sentence);
  };
  let lines: readonly string[] | undefined;
  const { lowestCharge, endCharge, dailyUse } = result.figures;
  return {
    headline: headline(facts, result, verdict),
    // What would make it last is searched for only where the answer is told, not where it is one of two to be compared.
    get lines() {
      lines ??= tell();
      return lines;
    },
    verdict,
    figures: {
      lowestCharge: figure(lowestCharge, '%'),
      endCharge: figure(endCharge, '%'),
      dailyUse: figure(dailyUse, 'Ah'),
    },
    ...reasons(result),
    chart: () =>
      // The limit is drawn: the title leaves it out, so that it fits.
      tripChart(facts, result, setting, {
        title: outcome(facts, result, verdict),
        note: describeRig(facts).join(', '),
        isByDay,
      }),
    cautions: cautionsFor(facts, result),
    next: [
      nextSky(facts, result),
      isByDay
        ? `what if ${facts.drivingHoursPerDay === 2 ? 4 : 2} hours of driving a day?`
        : 'day by day please',
      'show the working',
    ],
  };
}
