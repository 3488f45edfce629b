import type { Reply } from '#answer/reply.ts';
import { lasting, listIn, rounded, withinSentence } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { hasDraw } from '#rig/merge.ts';
import type { Stated, StatedBattery } from '#rig/rig.ts';
import { enough, figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { chemistryName, wantedTime } from '../words.ts';
import type { RunTime, RunTimeFacts } from './compute.ts';
import { asksFlat, flatNightH } from './flat.ts';

/** What most campers start with, common practice. */
const usual = { capacityAh: 100, chemistry: 'agm' } as const;

/** What nearly every camp runs, common practice. */
const usualLoads: Stated['loads'] = [{ name: 'fridge' }];

/** Shorter than this there is nothing left to use, h. */
const spentH = 0.2;

/** A battery told without its size: its kind, or how full it is. */
const unsized = ({ batteries = [] }: Stated): StatedBattery | undefined => {
  const [first, ...others] = batteries;
  const isSized = (first?.capacityAh ?? first?.energyWh) !== undefined;
  return others.length > 0 || isSized || first?.role === 'starter' ? undefined : (first ?? {});
};

/**
 * Things with or without figures on no battery that has a size, or a battery with nothing on it: usual ones in their place,
 * so that a beginner gets a number before the question. Undefined where all that is used is told as one figure, and where
 * somebody's health hangs on it.
 */
export function typicalRunTime(facts: Stated): Stated | undefined {
  const { loads = [], netCurrentA, dailyUseAh, dailyUseWh, inverter } = facts;
  const isUseTold = [netCurrentA, dailyUseAh, dailyUseWh, inverter].some(told => told !== undefined);
  // What is left in Ah is of the battery there is, not of a usual one.
  if (isUseTold || (facts.chargeLeftAh ?? facts.chargeUsedAh) !== undefined) return undefined;
  if (loads.length === 0) return facts.batteries ? { ...facts, loads: usualLoads } : undefined;
  const isTypical = loads.every(load => {
    const row = applianceOf(load.name);
    return !row?.isMedical && (hasDraw(load) || row?.supply === 'dc');
  });
  const battery = unsized(facts);
  if (!isTypical || !battery) return undefined;
  return { ...facts, batteries: [{ ...usual, ...battery }] };
}

/** Words that ask what a battery is good for. */
const asksWhat: readonly string[] = [
  'what|whats can|could|will|would|should run|running|power|use off|from|on|with|for|over -how_long -cable -what_size -solar',
];

/** Lights, two phones and a telly of 40 W for three hours take about so much, Ah. Common practice. */
const eveningAh = 15;
/** A usual small fridge in mild weather takes about so much a day, Ah. Common practice. */
const fridgeAh = 30;

/** Words for how long a battery lasts with what nearly every camp runs on it, and what to tell. */
export function answerUsualUse(
  reply: Reply,
  { figures: { runTime, usableCapacity } }: RunTime,
  { parsed }: Pick<RequestContext, 'parsed'>,
): Reply {
  const w = english;
  const lines = (reply.lines ?? []).slice(0, 2);
  const { durationH } = parsed.facts;
  if (
    durationH !== undefined &&
    durationH >= 24 &&
    isSpotted(parsed.recognised.words, asksWhat) &&
    runTime.value > spentH
  ) {
    const dayAh = (usableCapacity.value * 24) / durationH;
    return {
      headline: w.say('runs-so-much-a-day', 'About {ah} Ah a day for {wanted}: {what}.', {
        ah: w.plain(dayAh),
        wanted: wantedTime(durationH, w),
        what:
          dayAh >= fridgeAh + eveningAh
            ? w.say('runs-all', 'a small fridge, lights, phones and a telly of an evening')
            : dayAh >= fridgeAh
              ? w.say('runs-fridge', 'a small fridge in mild weather, or lights, phones and a telly')
              : dayAh >= eveningAh
                ? w.say('runs-evening', 'lights, phones, a pump and a telly of an evening')
                : w.say('runs-lights', 'lights, phones and a pump'),
      }),
      lines: [
        ...(dayAh < fridgeAh + eveningAh
          ? [w.say('fridge-alone', 'A usual small fridge by itself {lasts}.', { lasts: lasting(runTime, w) })]
          : []),
        w.say(
          'runs-heaters',
          'Not heaters, kettles or air conditioning for long. What would you like to run?',
        ),
      ],
      verdict: null,
      next: [w.say('next-fridge', 'fridge 1.2A'), w.say('next-lights', 'fridge and lights'), '40Ah a day'],
    };
  }
  if (isSpotted(parsed.recognised.words, asksWhat) && runTime.value > spentH)
    return {
      ...reply,
      headline: w.say('runs-for-example', 'A usual fridge {lasts}, for example.', {
        lasts: lasting(runTime, w),
      }),
      lines: [
        ...lines.slice(0, 1),
        w.say('runs-small-things', 'Or lights, phones and a telly of an evening for about {days} days.', {
          days: w.significant(
            usableCapacity.value / eveningAh,
            usableCapacity.value < 10 * eveningAh ? 1 : 2,
          ),
          count: usableCapacity.value / eveningAh,
        }),
        w.say(
          'runs-heaters',
          'Not heaters, kettles or air conditioning for long. What would you like to run?',
        ),
      ],
      verdict: null,
      next: [w.say('next-fridge', 'fridge 1.2A'), w.say('next-lights', 'fridge and lights'), '40Ah a day'],
    };
  return {
    ...reply,
    lines: [
      ...lines,
      w.say('usual-use', 'That is with a typical fridge on it, and nothing else. What runs on yours?'),
    ],
    verdict: null,
    next: [w.say('next-fridge', 'fridge 1.2A'), w.say('next-lights', 'fridge and lights'), '40Ah a day'],
  };
}

/** " at 45 %", as it was told. */
function levelTold({ batteries, volts }: RunTimeFacts, w: Speech): string {
  const percent = batteries[0]?.stateOfChargePercent;
  if (percent !== undefined)
    return w.say('at-percent', ' at {percent} %', { percent: w.significant(percent) });
  return volts === undefined ? '' : w.say('at-volts', ' at {volts} V', { volts: w.significant(volts) });
}

/** An answer for a usual battery, which its first line names. */
export const ofTypical = (reply: Reply, { bank }: RunTime): Reply => ({
  ...reply,
  headline: `From a typical ${usual.capacityAh} Ah ${chemistryName(bank.chemistry)}: ${withinSentence(reply.headline)}`,
  next: ['100Ah AGM', '100Ah lithium'],
});

const opposite = { yes: 'no', tight: 'tight', no: 'yes' } as const;

/** Words for how long typical things run on a usual battery, and the one question that helps most. */
export function answerTypical(
  facts: RunTimeFacts,
  result: RunTime,
  isKindTold: boolean,
  parsed: RequestContext['parsed'],
): Reply {
  const w = english;
  const { runTime, usableCapacity, dailyUse } = result.figures;
  const things = listIn(
    (facts.loads ?? []).map(({ name }) => name),
    w,
  );
  const { assumed } = reasons(result);
  const wantedH = facts.durationH ?? flatNightH(parsed);
  const lastsSo = wantedH === undefined ? undefined : enough(runTime, wantedH);
  // "Will it flatten it" is answered the other way round.
  const verdict = lastsSo && asksFlat(parsed) ? opposite[lastsSo] : lastsSo;
  const areTold = facts.loads?.every(hasDraw) === true;
  const isOne = facts.loads?.length === 1 && present(facts.loads[0]).count === 1 && !things.endsWith('s');
  const gaps = {
    lasts: lasting(runTime, w),
    things: areTold
      ? w.say('those-told', 'what you told me')
      : isOne
        ? w.say('a-typical', 'a typical {things}', { things })
        : w.say('typical-all', 'typical {things}', { things }),
    it: isOne ? w.say('it', 'it') : w.say('them', 'them'),
    ah: w.decimals(usual.capacityAh, 0),
    kind: chemistryName(result.bank.chemistry, w),
    at: levelTold(facts, w),
  };
  const heads = {
    yes: w.say('typical-yes', 'Most likely: a typical {ah} Ah {kind}{at} runs {it} {lasts}.', gaps),
    tight: w.say('typical-tight', 'Perhaps: a typical {ah} Ah {kind}{at} runs {it} {lasts}.', gaps),
    no: w.say('typical-no', 'Hardly: a typical {ah} Ah {kind}{at} runs {it} {lasts}.', gaps),
  };
  const battery = {
    name: 'batteryCapacity',
    value: usual.capacityAh,
    unit: 'Ah',
    why: isKindTold ? 'as you told no size' : 'AGM, as you named none',
  };
  const isTooMuch = result.peakA > result.fit.limitA;
  // Drawn far too fast it is spent in minutes, however full it is.
  const isSpent = runTime.value < spentH && !isTooMuch;
  return {
    headline: isSpent
      ? w.say('typical-spent', 'No: a typical {ah} Ah {kind}{at} is as low already as it should go.', gaps)
      : isTooMuch
        ? w.say(
            'typical-too-much',
            'Not for long: about {amps} A is more than a typical {ah} Ah {kind} should give ({limit} A).',
            { ...gaps, amps: rounded(result.peakA, w), limit: w.decimals(result.fit.limitA, 0) },
          )
        : verdict
          ? heads[verdict]
          : w.say('typical-lasts', 'A typical {ah} Ah {kind}{at} runs {it} {lasts}.', gaps),
    lines: [
      areTold && runTime.value < 10
        ? w.say('told-draw', 'That is for {things}, about {amps} A.', {
            things: gaps.things,
            amps: w.significant(dailyUse.value / 24, 2),
          })
        : w.say('typical-use', 'That is for {things}, about {use} Ah a day.', {
            things: gaps.things,
            use: w.significant(dailyUse.value, 2),
          }),
      w.say('typical-ask', 'What battery have you got? Its size and kind change this most.'),
    ],
    verdict: null,
    figures: {
      runTime: figure(runTime, 'h'),
      usableCapacity: figure(usableCapacity, 'Ah'),
      dailyUse: figure(dailyUse, 'Ah'),
    },
    assumed: [battery, ...assumed],
    cautions: result.peakA >= 40 ? ['big-current'] : [],
    next: ['100Ah AGM', '200Ah AGM', '100Ah lithium'],
  };
}
