import type { Reply } from '#answer/reply.ts';
import { duration, exactly, quarters } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Range } from '#quantity/range.ts';
import { loadCautions } from '../cautions.ts';
import { enough, figure, reasons } from '../figures.ts';
import type { Setting } from '../intent.ts';
import { placeNote } from '../sun.ts';
import { areTimed, readingNote } from '../use.ts';
import { describeBank, timeSpan, wantedTime } from '../words.ts';
import { runTimeChart } from './chart.ts';
import type { RunTime, RunTimeFacts } from './compute.ts';

/** "About 1¾ nights of 8 hours (1½–2)": what runs by night alone is counted in nights, never in hours on end. */
function nights({ value, low, high }: Range, nightH: number, w: Speech): string {
  const n = (hours: number): string => quarters(Math.floor(hours / 6) / 4);
  const gaps = { n: n(value), span: `${n(low)}–${n(high)}`, night: exactly(nightH, w), count: value / 24 };
  return w.say('nights', 'about {n} nights of {night} ({span})', gaps);
}

/** How long a night is for a medical device, where it is told (h). */
const medicalNight = ({ loads = [] }: RunTimeFacts): number | undefined => {
  const device = loads.find(load => applianceOf(load.name)?.isMedical);
  return loads.length === 1 ? device?.hoursPerDay : undefined;
};

/** The sentence for a time range against a wanted one. */
function headline(
  runTime: Range,
  wantedH: number | undefined,
  verdict: 'yes' | 'tight' | 'no' | null,
  w: Speech,
  nightH?: number,
): string {
  const { say } = w;
  if (runTime.value <= 0)
    return say('used-up', 'Nothing is left to use: it is as low as it should go, or lower. Charge it first.');
  const lasts =
    nightH === undefined
      ? `${duration(runTime.value, w)} (${timeSpan(runTime, w)})`
      : nights(runTime, nightH, w);
  if (verdict === null) return say('lasts', 'It lasts {lasts}.', { lasts });
  const wanted = wantedTime(wantedH!, w);
  if (verdict === 'yes')
    return say('yes-lasts', 'Yes: it lasts {lasts}, and you want {wanted}.', { lasts, wanted });
  if (verdict === 'tight')
    return say('tight-lasts', 'Tight: it lasts {lasts}, and you want {wanted}.', { lasts, wanted });
  return say('no-lasts', 'No, not {wanted}: it lasts {lasts}.', { lasts, wanted });
}

/** What would make the wanted time: how much more battery, or how much less a day. */
function remedy(facts: RunTimeFacts, { figures, bank }: RunTime, w: Speech): string {
  const wantedH = facts.durationH!;
  if (figures.runTime.value >= wantedH)
    return w.say(
      'hangs-on-health',
      'It hangs on how healthy the battery is: use a little less, or put a little back, and it holds.',
    );
  const more = `${Math.ceil((bank.capacityAh * wantedH) / figures.runTime.value / 5) * 5}`;
  const backAh = (figures.dailyUse.value * (wantedH - figures.runTime.value)) / 24;
  const perDay = w.significant(backAh / Math.max(1, wantedH / 24), 2);
  const wanted = wantedTime(wantedH, w);
  return w.say(
    'to-make-it',
    'To make {wanted} you need about {more} Ah of the same battery, or about {perDay} Ah a day put back by sun or driving.',
    { wanted, more, perDay },
  );
}

/** A word where one thing draws more than the bank or an inverter's cut-out likes. */
function bigDraw({ peakA, fit }: RunTime, w: Speech): string | undefined {
  const amps = w.decimals(peakA, 0);
  const limit = w.decimals(fit.limitA, 0);
  if (peakA > fit.limitA)
    return w.say(
      'over-limit',
      'One load draws about {amps} A, more than that battery should give without a break ({limit} A): expect it to cut out early.',
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

/** Words for a run time. */
export function answerRunTime(told: RunTimeFacts, result: RunTime, setting: Setting): Reply {
  const { runTime, usableCapacity, dailyUse } = result.figures;
  // "6 hours of it, enough?": one such day is what is asked for.
  const isOfOneDay = told.durationH === undefined && setting.parsed.cues.has('ask-can-it') && areTimed(told);
  const facts = isOfOneDay ? { ...told, durationH: 24 } : told;
  const wantedH = facts.durationH;
  const verdict = wantedH === undefined ? null : enough(runTime, wantedH);
  const w = english;
  const said = headline(runTime, wantedH, verdict, w, medicalNight(facts));
  const amps = w.significant(dailyUse.value / 24);
  const ah = w.significant(dailyUse.value);
  const drawn =
    runTime.value < 10
      ? w.say('amps-on-average', '{amps} A on average', { amps })
      : w.say('ah-a-day', '{ah} Ah a day', { ah });
  const [bank, usable] = [describeBank(result.bank, setting, w), w.significant(usableCapacity.value)];
  const lines = [
    w.say('gives', '{bank} gives about {usable} Ah to use; you draw about {drawn}.', {
      bank,
      usable,
      drawn,
    }),
  ];
  if (runTime.value > 0 && (verdict === 'no' || verdict === 'tight')) lines.push(remedy(facts, result, w));
  const isOfAir = result.ranked.some(a => a.name === 'ambientC');
  const where = isOfAir ? placeNote(facts, setting, w) : undefined;
  const isByVolts = facts.volts !== undefined && result.ranked.some(a => a.name === 'stateOfCharge');
  const byVolts = isByVolts
    ? w.say(
        'by-volts',
        'That goes by its volts, which are a rough gauge: a % or the Ah used or left tell more.',
      )
    : undefined;
  for (const note of [byVolts, bigDraw(result, w), readingNote(facts, w), where]) if (note) lines.push(note);
  const isLithium = result.bank.chemistry === 'lfp';
  return {
    headline: said,
    lines,
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
