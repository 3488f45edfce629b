import type { Reply } from '#answer/reply.ts';
import { exactly, rounded, span } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';
import { figure, workingOf } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { loadsOver } from '../loads-over.ts';
import { exact, kindRead, kindSaid, pointsBetween, times, within } from '../points-between.ts';
import { type ReadTwice, readTwice } from '../read-twice.ts';
import { isSpotted } from '../spotting.ts';
import type { WorkedBeside } from '../worked-beside.ts';
import { isOnCharge, traceUsed } from './compute.ts';

/** Whether it went down, from a level that no charger held up. */
function isOf(read: ReadTwice): boolean {
  const { of, first, later } = read;
  if (of === 'used') return later > first;
  return first > later && !(of === 'volts' && isOnCharge(first, kindRead(read)));
}

/** Points of charge (%) that went, by the two readings. */
function pointsOf(read: ReadTwice, trace: Trace): Range | undefined {
  const { of, first, later, capacityAh } = read;
  if (of === 'volts') return pointsBetween(first, later, kindRead(read), trace);
  if (of === 'percent') return exact(first - later);
  return capacityAh === undefined ? undefined : exact((100 * Math.abs(first - later)) / capacityAh);
}

/** Amp hours that went, where they can be told. */
function usedOf(read: ReadTwice, points: Range | undefined): Range | undefined {
  if (read.of === 'left' || read.of === 'used') return exact(Math.abs(read.first - read.later));
  return points && read.capacityAh !== undefined ? times(points, read.capacityAh / 100) : undefined;
}

function readSaid(read: ReadTwice, points: Range | undefined): string {
  const { of, first, later, capacityAh } = read;
  if (of === 'left' || of === 'used') return `from ${plain(first)} to ${plain(later)} Ah ${of}`;
  const isSized = capacityAh !== undefined;
  const share = isSized
    ? ` is about ${decimals(points?.value ?? 0, 0)} % of ${significant(capacityAh)} Ah`
    : '';
  return of === 'percent'
    ? `${decimals(first, 0)} to ${decimals(later, 0)} %${share}`
    : `${significant(first, 4)} to ${significant(later, 4)} V at rest on ${kindSaid(read)}${share}`;
}

const daily = ['a_day|per_day|daily|every_day|each_day'];
const hourly = ['an_hour|per_hour|hourly|each_hour|amps|average|averaging|current'];

/** "About 2.8 Ah an hour over the 10 hours or so: 2.8 A all the time." */
function anHour(used: Range, { hours, isRough }: ReadTwice): string | undefined {
  if (hours === undefined || hours <= 0) return undefined;
  const over = isRough ? `${exactly(Math.round(hours))} or so` : exactly(hours);
  return `About ${plain(used.value / hours)} Ah an hour over the ${over}: ${plain(used.value / hours)} A all the time.`;
}

/** What the loads told would have used, beside it. */
function beside(used: Range, read: ReadTwice, facts: Facts, setting: RequestContext): string | undefined {
  const { hours, fromH } = read;
  const loads = hours === undefined ? undefined : loadsOver(facts, { hours, fromH }, setting);
  if (!loads) return undefined;
  const { value, low, high } = loads.figures.used;
  const judged =
    used.value > high ? 'that is more' : used.value < low ? 'that is less' : 'that is about right';
  return `${loads.usually} ${plain(value)} Ah${within(loads.figures.used, 'Ah')} in that time, so ${judged}.`;
}

function untellable(read: ReadTwice, points: Range): Reply {
  const { first, later, capacityAh } = read;
  const volts = `${significant(first, 4)} to ${significant(later, 4)} V`;
  const could =
    capacityAh === undefined
      ? span(points.low, points.high, '%')
      : `${span((points.low * capacityAh) / 100, (points.high * capacityAh) / 100, 'Ah')} of ${significant(capacityAh)} Ah`;
  return {
    headline: `Volts can’t tell on lithium: ${volts} could be ${could}.`,
    lines: [
      'Lithium’s volts hardly move between 20 and 90 %, and any load pulls them down.',
      'A shunt that counts amp hours tells: read its percent or its Ah at night and in the morning.',
    ],
    verdict: null,
    next: ['what is a shunt?', 'lithium 95 % last night, 80 % this morning, 100Ah, how much did we use'],
  };
}

/** Words for what went out between two readings. */
function answerUsed(read: ReadTwice, facts: Facts, setting: RequestContext): Reply {
  const trace = new Trace();
  const points = pointsOf(read, trace);
  if (read.of === 'volts' && kindRead(read) === 'lfp' && points) return untellable(read, points);
  const used = usedOf(read, points);
  const { capacityAh, hours } = read;
  const isShare = read.of === 'volts' || read.of === 'percent';
  if (used) traceUsed(used.value, isShare ? { points: points?.value, capacityAh } : {}, hours, trace);
  const { words } = setting.parsed.recognised;
  const asksDaily = used !== undefined && hours !== undefined && hours > 0 && isSpotted(words, daily);
  const perDay = asksDaily ? `About ${rounded((24 * used.value) / hours)} Ah a day at that rate.` : undefined;
  const asksHourly = !asksDaily && isSpotted(words, hourly);
  const said = readSaid(read, points);
  const perHour = used && anHour(used, read);
  const whole = used
    ? `About ${rounded(used.value)} Ah${within(used, 'Ah')}: ${said}.`
    : `About ${decimals(points?.value ?? 0, 0)} %${points ? within(points, '%') : ''} went, by ${said}.`;
  const lines = [
    ...(perDay ? [whole, perHour] : [asksHourly && perHour ? whole : perHour]),
    used
      ? beside(used, read, facts, setting)
      : `On 100 Ah that is ${rounded(points?.value ?? 0)} Ah. How big is it?`,
    read.of === 'volts'
      ? 'Read both after an hour with nothing on or charging: a running fridge alone pulls a reading down by about 10 %.'
      : undefined,
  ];
  return {
    headline: perDay ?? (asksHourly && perHour ? perHour : whole),
    lines: lines.filter(line => line !== undefined),
    verdict: null,
    figures: {
      ...(used && { used: figure(used, 'Ah') }),
      ...(points && { share: figure(points, '%') }),
    },
    working: workingOf(trace),
    next: ['what do I use a day?', 'show the working'],
  };
}

/** What went out between two readings: by volts, per cent, or amp hours that were counted. */
export const usedBetween: WorkedBeside = {
  name: 'used-between',
  spots: [
    'how_much|how_many|used|use|using|lose|lost|losing|gone|burn|burnt|burned|drop|dropped|drew|drawn|take|took|taken|chew|chewed|eat|ate|eaten|consume|consumed|consumption|chewing|an_hour|per_hour|average|whats_that|cost|gone_through|normal|a_lot|too_much|sound_right|about_right|what_did_we|whatd_we|daily_use|a_day -how_long|will_it_last|would_it_last|how_many_days|how_many_nights|how_many_hours|how_many_more|how_much_longer|how_much_is_left|number_of|nights_left|days_left|time_left|hours_left|what_size|how_big|what_percent|percentage|be_left|still_have|have_i_left|dead|stuffed|dying|cactus|rooted|buggered|fault|faulty|broken|bad|tired|had_it|worry|wont|crank|cranks|alternator|drove|drive|driven|driving|charging|charger|charged|pump|drill|sag|duty|cell|nothing_on|nothing_running|everything_off|switched_off|all_off|cycle|cycles|solar|panel|panels|sunny|overcast|cloudy|why|when_do|when_will|pace|quits|error|boom|suddenly|just_dropped|have_i_got|have_we_got|what_will|whatll|what_would',
  ],
  when: ({ recognised: { words, mentions } }) => {
    const read = readTwice({}, words, mentions);
    return read !== undefined && isOf(read);
  },
  takes: ['loads', 'ambientC'],
  reply: (facts, setting) => {
    const { words, mentions } = setting.parsed.recognised;
    return answerUsed(present(readTwice(facts, words, mentions)), facts, setting);
  },
};
