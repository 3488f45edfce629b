import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { exactly, rounded } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Range } from '#quantity/range.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { figure } from '../figures.ts';
import { amountsOf } from '../figures-told.ts';
import type { RequestContext } from '../intent.ts';
import { exact, kindRead, kindSaid, percentAtRest, pointsBetween, times, within } from '../points-between.ts';
import { type ReadTwice, readTwice } from '../read-twice.ts';
import { isSpotted } from '../spotting.ts';
import type { WorkedBeside } from '../worked-beside.ts';
import { answerFault } from './answer.ts';
import { computeFault } from './compute.ts';

/** What charged it, by what stands in the message; its symptoms where it hardly did, and where it did nothing. */
interface Source {
  readonly little: string;
  readonly nothing: string;
  /** Without its amps: less than this is hardly anything, % of a battery an hour. Common practice. */
  readonly leastAnHour: number;
}

const sources = {
  dcdc: { little: 'dcdc-little', nothing: 'dcdc-wont-charge', leastAnHour: 4 },
  isolator: { little: 'isolator-wont-engage', nothing: 'isolator-wont-engage', leastAnHour: 4 },
  drive: { little: 'dcdc-wont-charge', nothing: 'dcdc-wont-charge', leastAnHour: 4 },
  solar: { little: 'panel-little', nothing: 'panel-nothing', leastAnHour: 1 },
  mains: { little: 'never-full', nothing: 'never-full', leastAnHour: 2 },
} as const satisfies Record<string, Source>;

function sourceOf({ recognised: { mentions, words } }: ParsedMessage): Source {
  const has = (kind: string, key?: string): boolean =>
    mentions.some(one => one.kind === kind && (key === undefined || one.key === key));
  if (has('charger', 'dcdc')) return sources.dcdc;
  if (has('charger', 'isolator')) return sources.isolator;
  if (isSpotted(words, ['drove|drive|driving|driven|highway|road|engine|alternator|isolator']))
    return sources.drive;
  return has('solar') ? sources.solar : sources.mains;
}

/** The share of its rating that a warm charger gives, through its cables: as in the engine. */
const givenShare = 0.97;
/** Under this share of what the charger gives it is hardly anything, over that more than it can be. Common practice. */
const shares = { little: 0.5, much: 1.35 } as const;
/** From here on a battery takes less and less, %. */
const nearlyFull = 85;

interface PutIn {
  readonly read: ReadTwice;
  /** Points of charge put in, %. */
  readonly points: Range;
  /** What the charger would give in that time, in points; absent where its amps, the time or the size are not told. */
  readonly givenAh?: number;
  readonly startPercent: number;
  readonly source: Source;
}

function putInOf(facts: Facts, parsed: ParsedMessage): PutIn | undefined {
  const { words, mentions } = parsed.recognised;
  const read = readTwice(facts, words, mentions);
  if (!read || read.of === 'used' || read.later <= read.first) return undefined;
  const { first, later, capacityAh, hours } = read;
  if (read.of === 'left' && capacityAh === undefined) return undefined;
  const kind = kindRead(read);
  const points =
    read.of === 'volts'
      ? pointsBetween(later, first, kind)
      : exact(read.of === 'percent' ? later - first : (100 * (later - first)) / present(capacityAh));
  const amps = amountsOf(mentions, 'current')[0]?.value;
  const isGiven = amps !== undefined && hours !== undefined && !read.isRough;
  const startPercent =
    read.of === 'volts'
      ? percentAtRest(first, kind)
      : read.of === 'percent'
        ? first
        : (100 * first) / present(capacityAh);
  return {
    read,
    points,
    startPercent,
    source: sourceOf(parsed),
    ...(isGiven && { givenAh: givenShare * amps * hours }),
  };
}

/** Whether as good as nothing went in for what charged it. */
function isLittle({ points, givenAh, read: { capacityAh, hours }, source, startPercent }: PutIn): boolean {
  if (startPercent >= nearlyFull) return false;
  if (givenAh !== undefined && capacityAh !== undefined) {
    const roomAh = ((100 - startPercent) * capacityAh) / 100;
    return (points.value * capacityAh) / 100 < shares.little * Math.min(givenAh, roomAh);
  }
  return hours === undefined ? points.value < 10 : points.value < source.leastAnHour * hours;
}

/** "12.1 to 12.6 V on AGM is about 47 %". */
function readSaid({ read, points }: PutIn): string {
  const { of, first, later, capacityAh } = read;
  const ah =
    capacityAh === undefined
      ? ''
      : `${rounded((points.value * capacityAh) / 100)} Ah of ${significant(capacityAh)} Ah`;
  if (of === 'volts')
    return `${significant(first, 4)} to ${significant(later, 4)} V on ${kindSaid(read)} is about ${ah || `${decimals(points.value, 0)} % of it`}`;
  const levels =
    of === 'percent'
      ? `${decimals(first, 0)} to ${decimals(later, 0)} %`
      : `${plain(first)} to ${plain(later)} Ah`;
  return `${levels} is ${ah || `${decimals(points.value, 0)} % of it`}`;
}

/** "25 A over the 3 hours gives about 73 Ah". */
function givenSaid({ givenAh, read: { hours } }: PutIn): string | undefined {
  if (givenAh === undefined || hours === undefined) return undefined;
  return `${plain(givenAh / givenShare / hours)} A over ${exactly(hours)} gives about ${rounded(givenAh)} Ah`;
}

const again = 'Volts read high straight after a charge: read again an hour after it stops, with nothing on.';

const asksBroken = [
  'busted|bust|broken|dead|stuffed|cactus|rooted|buggered|crook|kaput|fault|faulty|wrong|problem|died',
];
const asksFine = ['working|right|ok|okay|normal|doing|fine|good|enough|works'];

function opening(words: readonly string[]): readonly [says: string, verdict: Verdict] {
  if (isSpotted(words, asksBroken)) return ['No, it did charge', 'no'];
  return isSpotted(words, asksFine) ? ['Yes, it did charge', 'yes'] : ['It did charge', null];
}

function figuresOf({ points, read: { capacityAh } }: PutIn): Reply['figures'] {
  return {
    share: figure(points, '%'),
    ...(capacityAh !== undefined && { putIn: figure(times(points, capacityAh / 100), 'Ah') }),
  };
}

function charged(put: PutIn, words: readonly string[]): Reply {
  const { read, points, givenAh, startPercent } = put;
  const { of, hours, capacityAh } = read;
  const [says, verdict] = opening(words);
  const gotAh = capacityAh === undefined ? undefined : (points.value * capacityAh) / 100;
  const isMuch = givenAh !== undefined && gotAh !== undefined && gotAh > shares.much * givenAh;
  const doubt = of === 'volts' ? within(points, '%') : '';
  const lines = [
    isMuch
      ? `That is more than it can give: ${givenSaid(put)}. ${of === 'volts' ? 'The volts will settle lower.' : 'The percent has drifted, or the size is set wrong.'}`
      : ((givenSaid(put) && `${givenSaid(put)}, less what ran meanwhile.`) ??
        (hours !== undefined && gotAh !== undefined
          ? `That is about ${plain(gotAh / hours)} A over the ${exactly(hours)}.`
          : gotAh === undefined
            ? `On 100 Ah that is about ${rounded(points.value)} Ah.`
            : undefined)),
    of === 'volts' ? again : undefined,
    startPercent >= nearlyFull ? 'Near full a battery takes less and less: that is normal.' : undefined,
  ];
  return {
    headline: `${says}: ${readSaid(put)}${doubt}.`,
    lines: lines.filter(line => line !== undefined),
    verdict,
    figures: figuresOf(put),
    next: ['how long to charge it?', 'what is a shunt?'],
  };
}

/** Faster than this nothing charges a house battery, % an hour: a counter has jumped. Common practice. */
const tooFast = 60;

/** A counter that rose too fast to be true; undefined where it did not. */
function jumped(put: PutIn): Reply | undefined {
  const { of, hours } = put.read;
  if (of === 'volts' || !hours || put.points.value / hours <= tooFast) return undefined;
  return {
    headline: `Too fast to be true: ${readSaid(put)} in ${exactly(hours)}. The monitor has jumped or was set.`,
    lines: [
      'It calls it full once the volts are up and the amps low: a bright hour with little on can do that.',
      'Set its Ah and its mark for full (14.2 V, amps under 2 %), then charge right up and set it to 100 %.',
    ],
    verdict: 'no',
    figures: figuresOf(put),
    next: ['what is a shunt?'],
  };
}

/** Volts of lithium that leave it open. */
function untellable({ read: { first, later }, points }: PutIn): Reply {
  return {
    headline: `Volts can’t tell on lithium: ${significant(first, 4)} to ${significant(later, 4)} V could be ${decimals(points.low, 0)}–${decimals(points.high, 0)} % more.`,
    lines: [
      'Look at the amps into it while it charges: near the charger’s rating it works, near 0 it doesn’t.',
      'Or charge it until the amps fall off by themselves: then it is full, and a shunt is set to 100 %.',
    ],
    verdict: null,
    next: ['what is a shunt?', 'dcdc not charging'],
  };
}

/** Hardly anything went in: that first, then what may be wrong. */
function little(put: PutIn, facts: Facts, setting: RequestContext): Reply {
  const { source, points } = put;
  const subject = points.value < 2 ? source.nothing : source.little;
  const steps = answerFault(facts, computeFault(facts, { ...setting, subject }));
  const given = givenSaid(put);
  const { hours } = put.read;
  const time = hours === undefined ? '' : ` in ${exactly(hours)}`;
  const isOver = given === undefined ? time : `, where ${given}`;
  return {
    ...steps,
    headline: `Too little: ${readSaid(put)}${isOver}.`,
    lines: [`What ran meanwhile comes off that. ${steps.headline}`, ...(steps.lines ?? []).slice(0, 3)],
    figures: figuresOf(put),
  };
}

/** What went in between two readings, while something charged: it did charge, or hardly, and then what may be wrong. */
export const putIn: WorkedBeside = {
  name: 'put-in-between',
  spots: [
    'drove|drive|driving|driven|highway|road|engine|dcdc|dc_dc|dc_to_dc|b2b|alternator|isolator|charger|charged|charging|solar|panel|panels|sun|generator|genny|genset|plugged|hookup|hook_up|powered_site went|gone|came|come|rose|risen|climbed|crept|moved|brought|put_it|jumped|improved|lifted|only_got|got_it|got_to -how_long|how_many|will|would|need|needs|needed|to_get|want|should|target|quicker|till|until|reach|doable|can|could|may|must|if|hours_to|bring|without|nothing_has|any_charging|idle|more_days|health|rest|predicts|when_is|when_will|when_are',
    'drove|drive|driving|driven|highway|road|engine|dcdc|dc_dc|dc_to_dc|b2b|alternator|isolator|charger|charged|charging|solar|panel|panels|sun|generator|genny|genset|plugged|hookup|hook_up|powered_site before|we_left|i_left|set_off|left_home|started|start|was|were after|now|later|pulled_up|arrived|stopped|got_there -how_long|how_many|will|would|need|needs|needed|to_get|want|should|target|quicker|till|until|reach|doable|can|could|may|must|if|hours_to|bring|without|nothing_has|any_charging|idle|more_days|health|rest|predicts',
  ],
  when: parsed => putInOf({}, parsed) !== undefined,
  takes: ['chargers', 'solar', 'alternator', 'inverter', 'cable', 'ambientC'],
  reply: (facts, setting) => {
    const put = present(putInOf(facts, setting.parsed));
    const isLithiumVolts = put.read.of === 'volts' && kindRead(put.read) === 'lfp';
    if (isLithiumVolts && put.points.low < 10) return untellable(put);
    const fast = jumped(put);
    if (fast) return fast;
    return isLittle(put) ? little(put, facts, setting) : charged(put, setting.parsed.recognised.words);
  },
};
