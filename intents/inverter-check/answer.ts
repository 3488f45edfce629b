import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { rounded, sentence, span } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { usualWatts } from '../usual-watts.ts';
import { wiringChart } from '../wiring-chart.ts';
import type { InverterCheck } from './compute.ts';
import { currents, inverterHeadline } from './headline.ts';
import { whatRuns } from './what-runs.ts';

/** Words that ask what an inverter runs. */
const asksWhat: readonly string[] = ['what', 'whats', 'biggest|most_powerful'];

/** Words that ask what one use takes out of the battery. */
const asksUse: readonly string[] = [
  'how_much|how_many battery|batt|ah|amp_hours|out|use|take|takes',
  'what_ah|chew|chews|how_many_ah',
  'what|whats|in|and amp_hours|ah|out_of_the_battery|from_the_battery cost|costs|take|takes|use|uses|for|is|thats -fuse -how_long',
];

/** "about 7 Ah (6–8 Ah) for 5 minutes". */
const useOfOne = ({ figures: { batteryUse }, hours }: InverterCheck, w: Speech): string =>
  w.say('use-for', 'about {ah} Ah ({range}) for {time}', {
    ah: w.plain(batteryUse.value),
    range: span(batteryUse.low, batteryUse.high, 'Ah', w),
    time: time(present(hours), w),
  });

/** What the battery feels. */
function drain(result: InverterCheck, isInHeadline: boolean, w: Speech): string | undefined {
  const { batteryCurrent, batteryUse } = result.figures;
  const current = currents(batteryCurrent, w);
  const isUsed = batteryUse.value > 0;
  const use = isUsed ? useOfOne(result, w) : '';
  if (isInHeadline) return isUsed ? w.say('that-is', 'That is {use}.', { use }) : undefined;
  return isUsed
    ? w.say('takes-use', 'It draws about {amps} A ({range}) from the battery, {use}.', { ...current, use })
    : w.say('takes-current', 'It draws about {amps} A ({range}) from the battery.', current);
}

const time = (hours: number, w: Speech): string =>
  hours < 1.5
    ? w.say('minutes', '{n} minutes', { n: w.plain(hours * 60), count: hours * 60 })
    : w.say('hours', '{n} hours', { n: w.plain(hours), count: hours });

/** From here on it is worth asking what the battery gives, A. Common practice. */
const askedA = 60;
/** Near the 100 A at which many lithium batteries cut off, A. Common practice. */
const lithiumStopsA = 90;

/** Whether more is drawn than the battery's own limit, told or usual, allows. */
const isForbidden = ({ bankFit, figures }: InverterCheck): boolean =>
  bankFit?.fit === 'no' && figures.batteryCurrent.value > bankFit.limitA;

/** The limit told of a battery whose size wasn't, held against what is drawn. */
function limitNote(facts: Facts, { bank, figures }: InverterCheck, w: Speech): string | undefined {
  const limitA = bank ? undefined : facts.batteries?.[0]?.maxCurrentA;
  if (limitA === undefined) return undefined;
  return figures.batteryCurrent.value > limitA
    ? w.say('over-its-limit', 'Your battery’s limit of {limit} A is less than that: take a smaller load.', {
        limit: w.plain(limitA),
      })
    : w.say('in-its-limit', 'Your battery’s limit of {limit} A allows that.', { limit: w.plain(limitA) });
}

/** Whether the inverter told is too small. */
const isShort = ({ loads, ratingW, rating, surge }: InverterCheck, verdict: Verdict): boolean =>
  loads.length > 0 && verdict !== 'yes' && ratingW !== undefined && (rating !== 'yes' || surge === 'no');

const biggerInverter = ({ neededW }: InverterCheck, w: Speech): string =>
  w.say('bigger-inverter', 'A {watts} W inverter handles it easily.', { watts: w.decimals(neededW, 0) });

const moreBattery = ({ figures }: InverterCheck, w: Speech): string =>
  w.say('needs-more-battery', 'You need a battery that can give {amps} A or more, or a smaller load.', {
    amps: w.plain(figures.batteryCurrent.value),
  });

/** What does where what was told won't: a bigger inverter, else a battery that gives more. */
const insteadOf = (result: InverterCheck, verdict: Verdict, w: Speech): string | undefined =>
  isShort(result, verdict)
    ? biggerInverter(result, w)
    : result.bankFit && isForbidden(result)
      ? moreBattery(result, w)
      : undefined;

function hints(result: InverterCheck, verdict: Verdict, limit: string | undefined, w: Speech): string[] {
  const { figures, bankFit } = result;
  const factor = result.ranked.find(a => a.name.endsWith('input factor'));
  return [
    factor
      ? w.say(
          'plate-is-output',
          "A microwave's watts are what it cooks with: it draws about {times} times that, {watts} W here. If yours are its input, say so.",
          { times: w.significant(factor.value), watts: w.decimals(figures.acLoad.value, 0) },
        )
      : '',
    result.oneAtATime ? w.say('one-at-a-time', 'One at a time works.') : '',
    isShort(result, verdict) ? biggerInverter(result, w) : '',
    bankFit && isForbidden(result) ? moreBattery(result, w) : '',
    bankFit && bankFit.fit !== 'yes' && result.rating !== 'no' && !isForbidden(result)
      ? w.say(
          'engine-or-second',
          'Run the engine while it’s on, or add a second battery of the same kind to share the load.',
        )
      : '',
    limit ?? '',
    limit === undefined && result.bank === undefined && figures.batteryCurrent.value >= askedA
      ? w.say(
          'must-give',
          figures.batteryCurrent.value < lithiumStopsA
            ? 'Check that your battery can give {amps} A: a single 100 Ah AGM sags at that.'
            : 'Check that your battery can give {amps} A: many lithium ones stop at 100 A, and a single 100 Ah AGM sags.',
          { amps: rounded(figures.batteryCurrent.value, w) },
        )
      : '',
  ].filter(Boolean);
}

function cautionsOf(facts: Facts, result: InverterCheck): CautionCode[] {
  const found: CautionCode[] = loadCautions(facts, result.bank);
  if (result.surge !== undefined && result.surge !== 'yes') found.push('surge');
  if (result.figures.batteryCurrent.value >= 80) found.push('big-current');
  return found;
}

/** Words for an inverter and what hangs on it. */
export function answerInverterCheck(
  facts: Facts,
  result: InverterCheck,
  setting: RequestContext,
  isPeakAlone = false,
): Reply {
  const { cues } = setting.parsed;
  const w = english;
  const sizeW = w.decimals(result.ratingW ?? result.neededW, 0);
  const isJudged = result.loads.length > 0 && (result.ratingW !== undefined || result.fit === 'no');
  const isBankTold = setting.parsed.facts.batteries !== undefined && result.loads.length > 0;
  const isAsked = isJudged || (result.bank !== undefined && (cues.has('ask-can-it') || isBankTold));
  const verdict: Verdict = isAsked ? (result.fit ?? null) : null;
  const isInHeadline = verdict === null || (verdict === 'yes' && result.ratingW === undefined);
  const { acLoad, batteryCurrent, batteryUse } = result.figures;
  const { words } = setting.parsed.recognised;
  const isWhatAsked = result.loads.length === 0 && isSpotted(words, asksWhat);
  const [only, other] = result.loads;
  const watts = only && !other ? usualWatts(only, words) : undefined;
  const usual = isWhatAsked ? whatRuns(result, w) : [];
  const isUseAsked = batteryUse.value > 0 && (verdict ?? 'yes') === 'yes' && isSpotted(words, asksUse);
  const useFirst = isUseAsked ? sentence(`${useOfOne(result, w)}.`) : '';
  const lines = [
    isPeakAlone
      ? w.say('peak-is-half', '{peak} W peak is about {rating} W for long, as a rule: its label tells.', {
          peak: w.decimals(facts.inverter?.surgeW ?? 0, 0),
          rating: sizeW,
        })
      : undefined,
    useFirst ? undefined : drain(result, isInHeadline, w),
    ...hints(result, verdict, limitNote(facts, result, w), w),
  ].filter(line => line !== undefined);
  const [first = useFirst, ...rest] = usual;
  const flatOut = inverterHeadline(result, verdict, setting, w);
  return {
    headline: watts ?? (first || flatOut),
    lines: (watts || first ? [...rest, flatOut, ...lines] : lines).slice(0, 4),
    instead: insteadOf(result, verdict, w),
    verdict,
    figures: {
      acLoad: figure(acLoad, 'W'),
      batteryCurrent: figure(batteryCurrent, 'A'),
      ...(batteryUse.value > 0 && { batteryUse: figure(batteryUse, 'Ah') }),
    },
    ...reasons(result),
    // What it may not carry is not drawn.
    chart: result.fit === 'no' || isForbidden(result) ? undefined : wiringChart(facts, setting.mainsV),
    cautions: cautionsOf(facts, result),
    next: [
      w.say('next-cable', 'what cable for a {watts}W inverter, 1.5 m?', { watts: sizeW }),
      w.say('next-fuse', 'what fuse for a {watts}W inverter?', { watts: sizeW }),
      w.say('next-working', 'show the working'),
    ],
  };
}
