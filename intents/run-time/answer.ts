import type { Reply } from '#answer/reply.ts';
import { exactly, isSaidAlike, lasting, rounded } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Range } from '#quantity/range.ts';
import { isAllNight, nightLongH } from '../by-night.ts';
import { loadCautions } from '../cautions.ts';
import { enough, figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { areTimed, readingNote } from '../use.ts';
import { describeBank, wantedTime } from '../words.ts';
import { runTimeChart } from './chart.ts';
import type { RunTime, RunTimeFacts } from './compute.ts';
import { asksFlat, flatHeadline, flatNightH } from './flat.ts';
import { asksNights, medicalNight, nights } from './nights.ts';

/** What lasts less than this share of the time wanted, as far as one can tell, will hardly do, though at best it would. */
const hopefulShare = 0.8;

/** What lasts this many times the time wanted will do unless all goes against it. */
const surplusTimes = 1.25;

/** "Can it run …?", and no time is named: from so many hours on the answer is yes, for that long. */
const leastPlainYesH = 12;

/** Whether it is asked if it does, not how long, and no more hangs on it than comfort. */
export const asksWhether = (
  { loads = [] }: RunTimeFacts,
  { parsed: { cues, recognised } }: RequestContext,
): boolean =>
  // "Sounder and nav lights on a 7 Ah, all night?"
  (cues.has('ask-can-it') || (isAllNight(recognised.words) && recognised.words.includes('?'))) &&
  !['ask-how-long', 'ask-how-much'].some(cue => cues.has(cue as never)) &&
  !loads.some(({ name }) => applianceOf(name)?.isMedical);

/** The sentence for a time range against a wanted one. */
function headline(
  runTime: Range,
  wantedH: number | undefined,
  verdict: 'yes' | 'tight' | 'no' | null,
  w: Speech,
  {
    isInNights,
    until,
    isAskedWhether,
  }: {
    readonly isInNights: boolean;
    readonly until?: string | undefined;
    readonly isAskedWhether: boolean;
  },
): string {
  const { say } = w;
  if (runTime.value <= 0)
    return say('used-up', 'Nothing is left to use: it is as low as it should go, or lower. Charge it first.');
  const lasts = isInNights ? nights(runTime, w) : lasting(runTime, w);
  const isLikely = runTime.value >= hopefulShare * (wantedH ?? 0);
  const isSurplus = runTime.value >= surplusTimes * (wantedH ?? Infinity);
  if (verdict === null) {
    if (!isAskedWhether) return say('lasts', 'It lasts {lasts}.', { lasts });
    return runTime.value < leastPlainYesH
      ? say('only-lasts', 'Only for {lasts}.', { lasts })
      : say('yes-for', 'Yes, for {lasts}.', { lasts });
  }
  if (until !== undefined) {
    const gaps = { lasts, until };
    if (verdict === 'yes') return say('yes-until', 'Yes, past {until}: it lasts {lasts} from now.', gaps);
    if (verdict === 'tight' && isSurplus)
      return say('surplus-until', 'Probably past {until}: it lasts {lasts} from now.', gaps);
    if (verdict === 'tight')
      return isLikely
        ? say('tight-until', 'Tight for {until}: it lasts {lasts} from now.', gaps)
        : say('hardly-until', 'Probably not to {until}: it lasts {lasts} from now.', gaps);
    return say('no-until', 'No, not to {until}: it lasts {lasts} from now.', gaps);
  }
  // One unit in a line: the time wanted stands in the next line where it is told in another.
  if (isInNights || !isSaidAlike(runTime.value, present(wantedH), w)) {
    if (verdict === 'yes') return say('yes-plainly', 'Yes: it lasts {lasts}.', { lasts });
    if (verdict === 'tight' && isSurplus)
      return say('surplus-plainly', 'Probably: it lasts {lasts}.', { lasts });
    if (verdict === 'tight')
      return isLikely
        ? say('tight-plainly', 'Tight: it lasts {lasts}.', { lasts })
        : say('hardly-plainly', 'Probably not: it lasts {lasts}.', { lasts });
    return say('no-plainly', 'No: it lasts only {lasts}.', { lasts });
  }
  const wanted = exactly(present(wantedH), w);
  if (verdict === 'yes')
    return say('yes-lasts', 'Yes, {wanted} is fine: it lasts {lasts}.', { lasts, wanted });
  if (verdict === 'tight' && isSurplus)
    return say('surplus-lasts', 'Probably: it lasts {lasts}, and you want {wanted}.', { lasts, wanted });
  if (verdict === 'tight')
    return isLikely
      ? say('tight-lasts', 'Tight: it lasts {lasts}, and you want {wanted}.', { lasts, wanted })
      : say('hardly-lasts', 'Probably not: it lasts {lasts}, and you want {wanted}.', { lasts, wanted });
  return say('no-lasts', 'No, not {wanted}: it lasts {lasts}.', { lasts, wanted });
}

/** A battery of more than this many times the one there is no mend, it is another rig; nor is one that no camp carries (Ah). */
const most = { times: 3, capacityAh: 1000, backAhPerDay: 150 } as const;

/** What would make the wanted time: how much more battery, or how much less a day. */
function remedy(facts: RunTimeFacts, { figures, bank }: RunTime, w: Speech): string {
  const wantedH = present(facts.durationH);
  const isMedical = facts.loads?.some(({ name }) => applianceOf(name)?.isMedical);
  if (figures.runTime.value >= wantedH)
    return w.say(
      'hangs-on-health',
      isMedical
        ? 'It depends on how healthy the battery is: carry more, or put about {ah} Ah back on the way.'
        : 'It depends on how healthy the battery is. Put about {ah} Ah back on the way and you’re safe.',
      { ah: w.significant(Math.max(1, (figures.dailyUse.value * (wantedH - figures.runTime.low)) / 24), 1) },
    );
  const moreAh = Math.ceil((bank.capacityAh * wantedH) / figures.runTime.value / 5) * 5;
  const backAh = (figures.dailyUse.value * (wantedH - figures.runTime.value)) / 24;
  const perDayAh = backAh / Math.max(1, wantedH / 24);
  const gaps = {
    wanted: wantedTime(wantedH, w),
    more: w.decimals(moreAh, 0),
    back: w.significant(perDayAh, 2),
    aDay: wantedH > 24 ? w.say('each-day', ' a day') : '',
  };
  const isBigger = moreAh <= most.times * bank.capacityAh && moreAh <= most.capacityAh;
  const isBack = perDayAh <= most.backAhPerDay;
  if (isBigger && isBack)
    return w.say(
      'to-make-it',
      'For {wanted} you need about {more} Ah of battery, or put about {back} Ah{aDay} back by sun or driving.',
      gaps,
    );
  if (isBack)
    return w.say('to-put-back', 'For {wanted} put about {back} Ah{aDay} back, by sun or driving.', gaps);
  return w.say('use-less', 'For {wanted} no battery that you would carry is enough: draw less.', gaps);
}

/** A word where one thing draws more than the bank or an inverter's cut-out likes. */
function bigDraw({ peakA, fit }: RunTime, w: Speech): string | undefined {
  const amps = rounded(peakA, w);
  const limit = w.decimals(fit.limitA, 0);
  if (peakA > fit.limitA)
    return w.say(
      'over-limit',
      'One load draws about {amps} A, more than that battery should give for long ({limit} A): expect it to cut out early.',
      { amps, limit },
    );
  if (fit.fit === 'yes') return undefined;
  const [sag, cutOut] = [w.decimals(fit.sagToV, 1), w.decimals(fit.cutOutV, 1)];
  return w.say(
    'sags',
    'Under {amps} A it sags to about {sag} V when half full, and inverters cut out at about {cutOut} V.',
    { amps, sag, cutOut },
  );
}

/** From this many times its low end on a range is explained. */
const wideFrom = 2.2;

/** What makes a range wide, as people say it, by the assumption that moves it most. */
const movers: readonly (readonly [name: RegExp, says: string])[] = [
  [/ambientC|temperature/i, 'how warm it gets'],
  [/volume|insulation|setPoint/i, 'the fridge’s size and how often it’s opened'],
  [/depthOfDischarge/, 'how far down you run it'],
  [/hours|minutes/i, 'how many hours things are on'],
];

/** Why a range is wide. */
function widest({ ranked }: RunTime, w: Speech): string | undefined {
  const says = movers.find(([name]) => name.test(ranked[0]?.name ?? ''))?.[1];
  return says && w.say('wide-range', 'What changes that most is {what}.', { what: says });
}

/** The Wh of what is told by its Wh alone, as power stations are. */
export function stationOf({ batteries }: RunTimeFacts): number | undefined {
  const [first, other] = batteries;
  return other || first?.capacityAh !== undefined || first?.energyWh === undefined
    ? undefined
    : first.energyWh * first.count;
}

/** Words for a run time. */
export function answerRunTime(told: RunTimeFacts, result: RunTime, setting: RequestContext): Reply {
  const { runTime, usableCapacity, dailyUse } = result.figures;
  // "6 hours of it, enough?": one such day is what is asked for.
  const isOfOneDay =
    told.durationH === undefined &&
    setting.parsed.cues.has('ask-can-it') &&
    areTimed(told) &&
    // A medical device’s night is told as nights that it lasts: no yes without as much in hand as it asks for.
    !told.loads?.some(({ name }) => applianceOf(name)?.isMedical);
  const isOfNight =
    told.durationH === undefined && asksWhether(told, setting) && isAllNight(setting.parsed.recognised.words);
  const nightH = medicalNight(told);
  const flatH = told.durationH ?? (nightH === undefined ? flatNightH(setting.parsed) : undefined);
  const facts = isOfOneDay
    ? { ...told, durationH: 24 }
    : isOfNight
      ? { ...told, durationH: nightLongH }
      : { ...told, durationH: flatH };
  const wantedH = facts.durationH;
  const verdict = wantedH === undefined ? null : enough(runTime, wantedH);
  const w = english;
  const isFlatAsked = asksFlat(setting.parsed) && runTime.value > 0 && nightH === undefined;
  const said =
    isFlatAsked && wantedH !== undefined && verdict
      ? flatHeadline(runTime, wantedH, verdict, w)
      : headline(runTime, wantedH, verdict, w, {
          isInNights: nightH !== undefined || asksNights(runTime, setting),
          until: setting.parsed.facts.until,
          isAskedWhether: !isFlatAsked && asksWhether(facts, setting) && result.peakA <= result.fit.limitA,
        });
  const amps = w.significant(dailyUse.value / 24, 2);
  const ah = rounded(dailyUse.value, w);
  const stationWh = stationOf(facts);
  const drawn =
    facts.netCurrentA !== undefined
      ? w.say('amps', '{amps} A', { amps: w.significant(-facts.netCurrentA) })
      : runTime.value < 10
        ? w.say('amps-on-average', '{amps} A on average', { amps })
        : stationWh
          ? w.say('wh-a-day', '{wh} Wh a day', { wh: rounded(dailyUse.value * result.bank.voltageV, w) })
          : w.say('ah-a-day', '{ah} Ah a day', { ah });
  const [bank, usable] = [describeBank(result.bank, setting, w), rounded(usableCapacity.value, w)];
  const byVoltsPercent = result.ranked.find(a => a.name === 'stateOfCharge')?.value;
  const percent = result.bank.stateOfChargePercent ?? byVoltsPercent ?? 100;
  const gaps = {
    bank,
    usable,
    drawn,
    ah,
    percent: w.decimals(percent, 0),
    label: w.decimals(stationWh ?? 0, 0),
    usableWh: rounded(usableCapacity.value * result.bank.voltageV, w),
  };
  const has =
    stationWh !== undefined
      ? percent < 100
        ? w.say('station-left', '{label} Wh at {percent} % has about {usableWh} Wh left to use', gaps)
        : w.say('station-gives', '{label} Wh gives you about {usableWh} Wh to use', gaps)
      : percent < 100
        ? w.say('has-left', '{bank} at {percent} % has about {usable} Ah left to use', gaps)
        : w.say('gives', '{bank} gives you about {usable} Ah to use', gaps);
  const takes =
    nightH === undefined
      ? facts.netCurrentA === undefined
        ? w.say('you-draw', runTime.value < 10 ? 'you draw about {drawn}' : 'you use about {drawn}', gaps)
        : w.say('you-draw-told', 'you draw {drawn}', gaps)
      : w.say('a-night-takes', 'A night of {night} takes about {ah} Ah', {
          ah: w.significant(dailyUse.value, 2),
          night: exactly(nightH, w),
        });
  const lines = [nightH === undefined ? `${has}; ${takes}.` : `${takes}. ${has}.`];
  if (nightH !== undefined && facts.loads?.some(({ name }) => /cpap/i.test(name)))
    lines.push(w.say('humidifier', 'A heated humidifier can double that: leave it off, or count it in.'));
  const isShort = runTime.value > 0 && (verdict === 'no' || verdict === 'tight');
  const mend = isShort ? remedy(facts, result, w) : undefined;
  const isByVolts = facts.volts !== undefined && byVoltsPercent !== undefined;
  const byVolts = isByVolts
    ? w.say('by-volts', 'Volts are only a rough gauge: tell me its % or the Ah used for a better answer.')
    : undefined;
  for (const note of [mend, byVolts, bigDraw(result, w), readingNote(facts, w, usableCapacity.value)])
    if (note) lines.push(note);
  const wide = runTime.high > wideFrom * runTime.low ? widest(result, w) : undefined;
  if (wide) lines.push(wide);
  const isLithium = result.bank.chemistry === 'lfp';
  return {
    headline: said,
    lines,
    instead: mend,
    verdict,
    figures: {
      runTime: figure(runTime, 'h'),
      usableCapacity: figure(usableCapacity, 'Ah'),
      dailyUse: figure(dailyUse, 'Ah'),
    },
    ...reasons(result),
    chart: runTimeChart(facts, result, setting, said),
    cautions: [
      ...loadCautions(facts, result.bank),
      ...(result.peakA >= 40 ? (['big-current'] as const) : []),
    ],
    next: [
      isLithium ? w.say('next-agm', 'what if agm?') : w.say('next-lithium', 'what if lithium?'),
      w.say('next-solar', 'what solar do I need?'),
      w.say('next-working', 'show the working'),
    ],
  };
}
