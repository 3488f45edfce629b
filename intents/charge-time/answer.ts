import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { duration, isSaidAlike, quarters, rounded, sentence, timeSpan } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import { unhandled } from '#basics/unhandled.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { describeBank, wantedTime } from '../words.ts';
import { type ChargeTime, endlessH } from './compute.ts';

/** "about 5 hours of driving": the time by what charges. */
function timeOn(result: ChargeTime, w: Speech): string {
  const time = duration(result.figures.chargeTime.value, w);
  if (result.source.kind !== 'solar' && result.source.isNet)
    return w.say('at-that-current', '{time} at that current', { time });
  switch (result.source.kind) {
    case 'mains':
      return w.say('on-charger', '{time} on the charger', { time });
    case 'generator':
      return w.say('of-generator', '{time} of running the generator', { time });
    case 'solar':
      return w.say('of-sun', '{time} of full sun', { time });
    case 'dcdc':
    case 'isolator':
      return w.say('of-driving', '{time} of driving', { time });
    default:
      return unhandled(result.source);
  }
}

/** Yes where it is done in time even in the worst case, no where not even in the best. */
function inTime({ figures, availableH }: ChargeTime): Verdict {
  if (availableH === undefined) return null;
  if (figures.chargeTime.high <= availableH) return 'yes';
  return figures.chargeTime.low > availableH ? 'no' : 'tight';
}

function goal(facts: Facts, result: ChargeTime, w: Speech): string {
  if (facts.chargeNeededAh !== undefined)
    return w.say('to-put-back', 'to put {ah} Ah back', { ah: w.plain(facts.chargeNeededAh) });
  if (result.isDailyUse) return w.say('to-put-use-back', "to put a day's use back");
  const target = facts.targetChargePercent;
  return target === undefined || target >= 100
    ? w.say('to-full', 'to fill it')
    : w.say('to-percent', 'to {percent} %', { percent: w.decimals(target, 0) });
}

/** Slower than this a charger hardly keeps up, per hour of capacity (C). Common practice: a tenth of the capacity. */
const slowC = 0.05;

const suiting = {
  well: 'That suits the battery',
  slowly: 'It works, but slowly',
  badly: 'Too big for that battery',
} as const;

const asksOfSuiting = ({ cues, recognised: { words } }: RequestContext['parsed']): boolean =>
  cues.has('ask-can-it') || words.includes('fast');

/** "Is a 10 A charger ok for 120 Ah?": how it suits the battery, where that is asked and both are told. */
function suitsBattery(
  { source, figures, bank, isSizeAssumed, mostA }: ChargeTime,
  { chargers = [] }: Facts,
  { parsed }: RequestContext,
): keyof typeof suiting | undefined {
  const isOf = source.kind === 'mains' || source.kind === 'dcdc';
  const told = chargers.find(({ currentA }) => currentA !== undefined)?.currentA;
  if (!isOf || told === undefined || isSizeAssumed || !asksOfSuiting(parsed)) return undefined;
  if (told > mostA) return 'badly';
  return figures.current.value < slowC * bank.capacityAh ? 'slowly' : 'well';
}

function headline(
  facts: Facts,
  result: ChargeTime,
  verdict: Verdict,
  w: Speech,
  suits: keyof typeof suiting | undefined,
): string {
  const { chargeTime, startCharge } = result.figures;
  if (!Number.isFinite(chargeTime.value))
    return result.bank.chemistry === 'lfp' && (facts.ambientC ?? 20) < 0
      ? w.say('too-cold', "It won't: lithium must not be charged below freezing, and a good BMS refuses.")
      : result.figures.drawA.value > 0
        ? w.say('all-is-taken', "It won't charge: what runs takes all that comes in.")
        : w.say('nothing-comes', "It won't charge: nothing comes in.");
  if (chargeTime.value < 0.01)
    return w.say('there-already', 'It is there already: {percent} % is what you ask for or more.', {
      percent: w.decimals(startCharge.value, 0),
    });
  const range =
    chargeTime.high < endlessH
      ? timeSpan(chargeTime, w)
      : w.say('or-never', '{time} at best, perhaps never', { time: duration(chargeTime.low, w) });
  const gaps = {
    time: `${timeOn(result, w)} ${goal(facts, result, w)}${range && ` (${range})`}`,
    has: verdict === null ? '' : timeTold(facts, result, w),
  };
  if (verdict === null && suits) return w.say(`charger-${suits}`, `${suiting[suits]}: {time}.`, gaps);
  if (verdict === null) return sentence(w.say('takes', '{time}.', gaps));
  // One unit in a line: days of sun are not held against hours of it.
  if (!isSaidAlike(timeToldH(facts, result), chargeTime.value, w)) {
    if (verdict === 'yes') return w.say('yes-plainly', 'Yes: it takes {time}.', gaps);
    if (verdict === 'tight') return w.say('tight-plainly', 'Tight: it takes {time}.', gaps);
    return w.say('no-plainly', 'No: it takes {time}.', gaps);
  }
  if (verdict === 'yes') return w.say('yes-takes', 'Yes, {has} is enough: it takes {time}.', gaps);
  if (verdict === 'tight') return w.say('tight-takes', 'Tight: it takes {time}, and you have {has}.', gaps);
  return w.say('no-takes', "No, {has} isn't enough: it takes {time}.", gaps);
}

/** The time the person has, in their own measure: days of sun, hours of driving. */
const timeToldH = (facts: Facts, result: ChargeTime): number =>
  result.source.kind === 'solar' ? present(facts.durationH) : present(result.availableH);

const timeTold = (facts: Facts, result: ChargeTime, w: Speech): string =>
  wantedTime(timeToldH(facts, result), w);

/** What goes in, at what current. */
function flow(result: ChargeTime, setting: RequestContext, w: Speech): string {
  const { chargeNeeded, current, startCharge, drawA } = result.figures;
  const runs =
    drawA.value > 0
      ? ` ${w.say('runs-meanwhile', 'What runs meanwhile takes about {amps} A, counted.', { amps: w.significant(drawA.value, 2) })}`
      : '';
  const gaps = {
    needed: rounded(chargeNeeded.value, w),
    amps: w.plain(current.value),
    percent: w.decimals(startCharge.value, 0),
  };
  if (result.isSizeAssumed)
    return (
      w.say(
        'some-needs',
        'About {needed} Ah has to go in, as some is lost, at about {amps} A to start with.',
        gaps,
      ) + runs
    );
  return (
    w.say(
      'bank-needs',
      '{bank} at {percent} % needs about {needed} Ah put in, at about {amps} A to start with.',
      { ...gaps, bank: describeBank(result.bank, setting, w) },
    ) + runs
  );
}

/** What the time the person has gets to. */
function gets(facts: Facts, result: ChargeTime, w: Speech): string | undefined {
  if (result.availableH === undefined || result.isSizeAssumed) return undefined;
  const percent = w.decimals(Math.min(100, result.figures.endCharge.value), 0);
  if (percent === '100')
    return w.say('gets-full', 'In {time} it gets about full.', { time: timeTold(facts, result, w) });
  return w.say('gets-to', 'In {time} it gets to about {percent} %.', {
    time: timeTold(facts, result, w),
    percent,
  });
}

/** How many days of average sun it takes. */
function daysOfSun({ figures }: ChargeTime, w: Speech): string {
  const days = figures.chargeTime.value / figures.sunHoursPerDay.value;
  const time =
    days < 0.8
      ? w.say('day-or-less', 'a day or less')
      : days < 1.13
        ? w.say('one-day', 'about a day')
        : w.say('days', 'about {n} days', { n: quarters(days), count: Math.round(days * 4) / 4 });
  return w.say('days-of-sun', 'In usual weather that takes {time}{else}.', {
    time,
    else: figures.drawA.value > 0 ? '' : w.say('nothing-else', ', with nothing else running'),
  });
}

/** How the last part goes, by what charges. */
function tail(facts: Facts, result: ChargeTime, w: Speech): string | undefined {
  const { timeTo80, startCharge } = result.figures;
  if (result.source.kind === 'solar') return daysOfSun(result, w);
  const isToFull = (facts.targetChargePercent ?? 100) > 80;
  const time = duration(timeTo80.value, w);
  if (result.source.kind === 'isolator')
    return sentence(
      w.say(
        'isolator-tail',
        '{time} to 80 %, but an isolator rarely fills a battery, and a smart alternator may drop it out on the way.',
        { time },
      ),
    );
  if (!isToFull || startCharge.value >= 80 || result.isSizeAssumed || timeTo80.value <= 0) return undefined;
  if (result.bank.chemistry === 'lfp') return undefined;
  return w.say(
    'slow-tail',
    'You’ll be at 80 % in {time}. The rest is slow, but do fill it right up now and then, or it wears out early.',
    { time },
  );
}

function cautionsOf(facts: Facts, result: ChargeTime): CautionCode[] {
  const { source, bank } = result;
  const found: CautionCode[] = [...loadCautions({ ...facts, loads: undefined }, bank)];
  if (source.kind === 'isolator' && bank.chemistry === 'lfp') found.push('mixed-batteries');
  if (source.kind === 'generator') found.push('carbon-monoxide', 'park-rules');
  if (result.isBigForAlternator) found.push('alternator-share');
  if (bank.chemistry === 'flooded') found.push('battery-gas');
  return found;
}

/** Words for a charge time. */
export function answerChargeTime(facts: Facts, result: ChargeTime, setting: RequestContext): Reply {
  const { chargeTime, chargeNeeded, timeTo80 } = result.figures;
  const verdict = Number.isFinite(chargeTime.value) ? inTime(result) : 'no';
  const isDone = chargeTime.value < 0.01;
  const w = english;
  const lines = isDone
    ? []
    : [
        flow(result, setting, w),
        verdict === 'yes' ? undefined : gets(facts, result, w),
        tail(facts, result, w),
        result.absorptionV !== undefined && present(facts.ambientC) < 15
          ? w.say('cold-volts', 'In that cold its charger should go to about {volts} V.', {
              volts: w.plain(result.absorptionV),
            })
          : undefined,
      ].filter(line => line !== undefined);
  const isEnding = Number.isFinite(chargeTime.value);
  return {
    headline: headline(facts, result, verdict, w, suitsBattery(result, facts, setting)),
    lines: isEnding ? lines.slice(0, 3) : [],
    verdict,
    figures: {
      ...(isEnding && { chargeTime: figure(chargeTime, 'h') }),
      chargeNeeded: figure(chargeNeeded, 'Ah'),
      ...(isEnding &&
        !result.isSizeAssumed &&
        (facts.targetChargePercent ?? 100) > 80 && {
          timeTo80: figure({ ...timeTo80, low: Math.max(0, timeTo80.low) }, 'h'),
        }),
    },
    ...reasons(result),
    // What only bears on the very end says nothing of a part.
    ...(result.isSizeAssumed && { assumedInLines: ['topEfficiency', 'slowPart'] }),
    cautions: cautionsOf(facts, result),
    next: [
      ...(result.source.kind === 'dcdc' ? [w.say('next-fuse', 'what fuse for the dcdc?')] : []),
      ...(result.source.kind === 'isolator' ? [w.say('next-path', 'isolator or dcdc?')] : []),
      result.bank.chemistry === 'lfp'
        ? w.say('next-agm', 'what if agm?')
        : w.say('next-lithium', 'what if lithium?'),
      w.say('next-working', 'show the working'),
    ],
  };
}
