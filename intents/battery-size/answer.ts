import type { Reply } from '#answer/reply.ts';
import { rounded, span } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { readingNote } from '../use.ts';
import { chemistryName, wantedTime } from '../words.ts';
import type { BatterySize, Sized } from './compute.ts';

const volts = (sized: Sized, w: Speech): string =>
  sized.voltageV > 17 ? `${w.decimals(sized.voltageV, 1)} V ` : '';
const size = ({ next }: Sized): string =>
  next.count === 1 ? `${next.sizeAh} Ah` : `${next.count} × ${next.sizeAh} Ah`;

/** A bare number as large as a battery: its Ah. */
const leastAh = 20;

/** Words that ask whether the battery there is does. */
const ofOwn: readonly string[] = [
  'enough|close_enough|too_small|too_big|silly|overkill|do_it|does_it|will_do|big_enough|much_too',
];

/** The size that somebody names, Ah: in so many words, or as the battery that they have got and ask to be judged. */
const claimedAh = (
  { claims, parsed }: Pick<RequestContext, 'claims' | 'parsed'>,
  { ownAh }: BatterySize,
): number | undefined =>
  claims.find(({ unit, value }) => unit === 'Ah' || (unit === '' && value >= leastAh))?.value ??
  (parsed.facts.batteries && isSpotted(parsed.recognised.words, ofOwn) ? ownAh : undefined);

/** Yes or no to a size that somebody names, against what it takes of that kind. */
function judged(result: BatterySize, setting: RequestContext, time: string, w: Speech): string | undefined {
  const ah = claimedAh(setting, result);
  const { low, value, high } = result.explored.figures.batteryCapacity;
  if (ah === undefined || value > mostAh) return undefined;
  const lithium = result.other?.explored.figures.batteryCapacity.value;
  const gaps = {
    ah: w.significant(ah),
    need: rounded(value, w),
    kind: chemistryName(result.chemistry, w),
    time,
    or:
      lithium === undefined
        ? ''
        : w.say('or-lithium', ', or {lithium} Ah of lithium', { lithium: rounded(lithium, w) }),
  };
  if (ah < low)
    return w.say('claim-short', 'No, {ah} Ah is short: about {need} Ah of {kind} for {time}{or}.', gaps);
  if (ah > high)
    return w.say('claim-long', 'No, {ah} Ah is too much: about {need} Ah of {kind} for {time}{or}.', gaps);
  return ah >= value
    ? w.say('claim-does', 'Yes, {ah} Ah does: about {need} Ah of {kind} for {time}{or}.', gaps)
    : w.say('claim-tight', 'Tight with {ah} Ah: about {need} Ah of {kind} for {time}{or}.', gaps);
}

function headline(result: BatterySize, time: string, isAskedWhether: boolean, w: Speech): string {
  const { batteryCapacity: c } = result.explored.figures;
  const gaps = {
    ah: rounded(c.value, w),
    kind: `${volts(result, w)}${chemistryName(result.chemistry, w)}`,
    time,
    range: span(c.low, c.high, 'Ah', w),
    size: size(result),
  };
  if (c.value > mostAh)
    return isAskedWhether
      ? w.say(
          'past-carrying',
          'Not for {time}: that would take about {ah} Ah of {kind}, more than a camp carries.',
          gaps,
        )
      : w.say(
          'past-belief',
          'That would take about {ah} Ah of {kind}, more than a camp carries. Are the numbers right?',
          gaps,
        );
  if (!result.other)
    return w.say(
      'size-of-kind',
      'About {ah} Ah of {kind} for {time} ({range}): buy the next usual size, {size}.',
      gaps,
    );
  const lithium = rounded(result.other.explored.figures.batteryCapacity.value, w);
  const text = 'About {ah} Ah of {kind} for {time} ({range}), or about {lithium} Ah of lithium.';
  return w.say('size-or-lithium', text, { ...gaps, lithium });
}

/** More than this is asked about, Ah: nobody carries it. */
const mostAh = 1000;

/** What the charge sources would change, where some are told. */
function charging(facts: Facts, result: BatterySize, w: Speech): string | undefined {
  const { explored, voltageV, durationH } = result;
  const sunAh = facts.solarAhPerDay ?? (facts.solarWhPerDay ?? 0) / voltageV;
  const { dailyUse, batteryCapacity } = explored.figures;
  if (sunAh > 0 && sunAh < dailyUse.value && durationH > 24) {
    const lessAh = (batteryCapacity.value * (dailyUse.value - sunAh)) / dailyUse.value;
    return w.say(
      'less-with-sun',
      'With the {sun} Ah a day from the sun you could do with about {less} Ah; the size above is for no sun at all.',
      { sun: w.significant(sunAh), less: rounded(lessAh, w) },
    );
  }
  if (sunAh > 0)
    return w.say('sun-covers', 'The sun you name covers the use: the size above is for days without it.');
  if (facts.solar?.length || facts.drivingHoursPerDay)
    return w.say('nothing-counted', 'Nothing coming in is counted; sun and driving stretch it.');
  return undefined;
}

/** A word where one thing draws more than the battery likes. */
function bigDraw({ peakA, limitA, next }: BatterySize, w: Speech): string | undefined {
  if (peakA < 40) return undefined;
  const gaps = { amps: rounded(peakA, w), limit: w.decimals(limitA, 0) };
  if (peakA <= limitA)
    return w.say(
      'big-draw',
      'The biggest load draws about {amps} A: check that the battery can give that.',
      gaps,
    );
  return next.count > 1
    ? w.say(
        'too-big-draw-many',
        "The biggest load draws about {amps} A, more than they should give for long ({limit} A): go bigger, or check the maker's sheet.",
        gaps,
      )
    : w.say(
        'too-big-draw',
        "The biggest load draws about {amps} A, more than it should give for long ({limit} A): go bigger, or check the maker's sheet.",
        gaps,
      );
}

/** For lead-acid that is cycled day after day. */
function longLife({ longLifeAh, explored }: BatterySize, w: Speech): string | undefined {
  const { value } = explored.figures.batteryCapacity;
  if (longLifeAh === undefined || longLifeAh < 1.15 * value) return undefined;
  return w.say('long-life', 'Used like that every day, about {ah} Ah would last for more years.', {
    ah: rounded(longLifeAh, w),
  });
}

function compareOwn({ ownAh, explored }: BatterySize, w: Speech): string | undefined {
  if (ownAh === undefined) return undefined;
  const gaps = { ah: w.decimals(ownAh, 0) };
  return ownAh >= explored.figures.batteryCapacity.value
    ? w.say('own-does', 'Your {ah} Ah does it.', gaps)
    : w.say('own-short', 'Your {ah} Ah falls short of that.', gaps);
}

/** Words for a battery's size. */
export function answerBatterySize(facts: Facts, result: BatterySize, setting: RequestContext): Reply {
  const { explored, durationH } = result;
  const { dailyUse, batteryCapacity } = explored.figures;
  const w = english;
  const time = wantedTime(durationH, w);
  const share = explored.ranked.find(a => a.name === 'depthOfDischarge')?.value;
  const used = { daily: rounded(dailyUse.value, w), need: rounded(result.needAh, w), time };
  const isShort = durationH < 24;
  const why =
    isShort && share !== undefined
      ? w.say('used-in-hours', 'You use about {need} Ah in {time}, and you can use {share} % of the label.', {
          ...used,
          share: w.decimals(share * 100, 0),
        })
      : share === undefined
        ? w.say('used', 'You use about {daily} Ah a day, {need} Ah in {time}.', used)
        : w.say(
            'used-of-label',
            'You use about {daily} Ah a day, {need} Ah in {time}, and you can use {share} % of the label.',
            { ...used, share: w.decimals(share * 100, 0) },
          );
  const isPastBelief = batteryCapacity.value > mostAh;
  const shops =
    result.other && !isPastBelief
      ? w.say(
          'usual-sizes',
          'Usual sizes: {agm} AGM or {lithium} lithium, which weighs half or less and lasts far longer.',
          { agm: size(result), lithium: size(result.other) },
        )
      : undefined;
  const more = [
    compareOwn(result, w),
    bigDraw(result, w),
    charging(facts, result, w),
    readingNote(facts, w),
    isPastBelief ? undefined : longLife(result, w),
  ];
  const cautions: CautionCode[] = loadCautions(facts);
  if (result.peakA >= 40) cautions.push('big-current');
  const { assumed, working } = reasons(explored);
  const days = { name: 'durationH', value: durationH / 24, unit: 'days', why: "you didn't say how long" };
  return {
    headline:
      judged(result, setting, time, w) ?? headline(result, time, setting.parsed.cues.has('ask-can-it'), w),
    lines: [isPastBelief ? undefined : why, shops, ...more].filter(line => line !== undefined).slice(0, 3),
    verdict: null,
    figures: { batteryCapacity: figure(batteryCapacity, 'Ah'), dailyUse: figure(dailyUse, 'Ah') },
    assumed: result.isDurationAssumed ? [days, ...assumed] : assumed,
    working,
    cautions,
    next: isPastBelief
      ? []
      : [
          result.chemistry === 'lfp'
            ? w.say('next-agm', 'what if agm?')
            : w.say('next-lithium', 'what if lithium?'),
          w.say('next-days', 'make it {n} days', { n: `${Math.round(durationH / 24) + 2}` }),
          ...(setting.recalled.has('solar') ? [] : [w.say('next-solar', 'what solar do I need?')]),
        ],
  };
}
