import { present } from '#basics/present.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Mention } from '#language/recognise/mention.ts';
import type { Facts } from '#rig/rig.ts';
import { clockHour } from '../clock.ts';
import type { RequestContext } from '../intent.ts';
import { computeLater } from '../level-later.ts';
import { hourNamed } from '../moments.ts';
import type { WorkedBeside } from '../worked-beside.ts';
import { computeChargeLevel } from './compute.ts';
import { answerLater } from './later-answer.ts';

/** From when, at a level that is told, to when. */
interface FromTo {
  readonly fromH: number;
  readonly hours: number;
  /** As told: "noon sunday". */
  readonly until: string;
}

/** From here on a reading is sure. */
const sure = 0.8;
/** So near to a clock time a level is of that time, mentions. */
const near = 3;
const isLevel = ({ kind, dimension }: Mention): boolean => kind === 'level' || dimension === 'percent';
const untilWords: ReadonlySet<string> = new Set(['till', 'til', 'until', 'by', 'come', 'to']);

/** The two times of a message, the one that the level is of and the one that is asked about. */
function fromTo({ recognised: { mentions } }: Pick<ParsedMessage, 'recognised'>): FromTo | undefined {
  const clocks = mentions.flatMap((mention, at) => (mention.kind === 'clock' ? [{ mention, at }] : []));
  const [one, other, ...more] = clocks;
  if (!one || !other || more.length > 0) return undefined;
  const levelAt = mentions.findIndex(isLevel);
  if (levelAt < 0 || mentions.filter(isLevel).length > 1) return undefined;
  const distance = ({ at }: { at: number }): number => Math.abs(at - levelAt);
  const isUntil = ({ at }: { at: number }): boolean =>
    [at - 1, at - 2].some(before => untilWords.has(mentions[before]?.text ?? ''));
  const isFirstUntil = isUntil(one) === isUntil(other) ? distance(one) > distance(other) : isUntil(one);
  const [from, to] = isFirstUntil ? [other, one] : [one, other];
  const hours = to.mention.variants.find(({ why }) => why === 'span')?.value;
  const fromH = hourNamed(from.mention.key);
  return distance(from) <= near && hours !== undefined && hours > 0 && fromH !== undefined
    ? { fromH, hours, until: to.mention.text }
    : undefined;
}

/** The setting of a question that is asked at the hour that the level is of. */
function settingAt({ fromH, until }: FromTo, facts: Facts, setting: RequestContext): RequestContext {
  const { at, parsed } = setting;
  const shiftH = fromH - clockHour(facts, setting);
  return {
    ...setting,
    at: new Date(at.getTime() + shiftH * 3600_000),
    parsed: { ...parsed, facts: { ...parsed.facts, until } },
  };
}

/** How full it is at a time to come, from a time that its level is told of. */
export const leftAt: WorkedBeside = {
  name: 'left-at',
  spots: [
    'whats_left|what_is_left|be_left|is_left|left_by|left_at|how_much_left|how_full|what_level|what_will|what_would|will_it_be|will_we_be|be_at|where_will|how_low|what_percent|how_many_percent -how_long|how_much_did|we_used|did_we|have_we_used|how_much_have|solar|panel|panels|charge|charging|went|dropped',
  ],
  when: parsed => fromTo(parsed) !== undefined,
  isRead: ({ intent, certainty }) => intent === 'charge-level' && certainty >= sure,
  takes: [
    'batteries',
    'arrangement',
    'systemVoltageV',
    'depthOfDischargePercent',
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'inverter',
    'netCurrentA',
    'ambientC',
  ],
  reply: (told, setting) => {
    const span = present(fromTo(setting.parsed));
    const facts: Facts = { ...told, durationH: span.hours };
    const from = settingAt(span, facts, setting);
    const now = computeChargeLevel(facts, from);
    const later = now.stateOfCharge && computeLater(facts, now, from);
    return later
      ? answerLater(facts, now, later, from)
      : {
          headline: 'For that I need the battery’s size in Ah, how full it is, and what runs on it.',
          lines: ['Say it like “100Ah lithium full at 6pm, fridge 2A, what’s left at 7am”.'],
          verdict: null,
        };
  },
};
