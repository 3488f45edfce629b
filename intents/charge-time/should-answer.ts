import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { alike, duration, isSaidAlike, lasting as lastingFor } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import type { Range } from '#quantity/range.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import type { Should } from '../should-charge.ts';
import { readingNote } from '../use.ts';
import { wantedTime } from '../words.ts';

/** By this many points above its floor there is no haste, where nothing is known of the use. */
const easyPoints = 25;

/** Yes: charge now. No where it lasts even at worst. */
function verdictOf({ lasting, wantedH, levelPercent, floorPercent }: Should): Exclude<Verdict, null> {
  if (!lasting) {
    if (levelPercent <= floorPercent) return 'yes';
    return levelPercent >= floorPercent + easyPoints ? 'no' : 'tight';
  }
  const { runTime } = lasting.figures;
  if (runTime.low >= wantedH) return 'no';
  return runTime.value < wantedH ? 'yes' : 'tight';
}

/** How long it shall last: to the time told, or to the morning. */
const goal = ({ wantedH, isTimeTold }: Should, w: Speech): string =>
  isTimeTold
    ? w.say('you-want', 'you want {time}', { time: wantedTime(wantedH, w) })
    : w.say('to-morning', 'it is {time} to the morning', { time: wantedTime(Math.round(wantedH), w) });

/** What has to be put back to last so long, Ah. */
function shortOf({ lasting, wantedH, underAh }: Should): Range {
  if (!lasting) return { value: underAh, low: underAh, high: underAh };
  const { runTime, dailyUse } = lasting.figures;
  const at = (hours: number): number => underAh + (Math.max(0, wantedH - hours) * dailyUse.value) / 24;
  return { value: at(runTime.value), low: at(runTime.high), high: at(runTime.low) };
}

/** How much to put back, what it is for, and how long that takes. */
function putBack(should: Should, short: Range, isDrive: boolean, w: Speech): string[] {
  const { lasting, underAh, chargerA, floorPercent, wantedH } = should;
  const drawA = (lasting?.figures.dailyUse.value ?? 0) / 24;
  const forUse = short.value - underAh;
  const netA = chargerA - drawA;
  const gaps = {
    ah: w.significant(short.value, 2),
    under: w.significant(underAh, 2),
    floor: w.decimals(floorPercent, 0),
    use: w.significant(forUse, 2),
    time: wantedTime(Math.round(wantedH), w),
    charger: w.significant(chargerA),
  };
  const parts =
    underAh >= 0.5 && forUse >= 0.5
      ? w.say('put-both', '{ah} Ah: {under} Ah to be at {floor} % again, {use} Ah for the next {time}', gaps)
      : underAh >= 0.5
        ? w.say('put-under', '{ah} Ah to be at {floor} % again', gaps)
        : w.say('put-use', '{ah} Ah for the next {time}', gaps);
  const hours = netA > 1 ? duration(short.value / netA, w) : '';
  const takes = !hours
    ? ''
    : isDrive
      ? w.say('takes-driving', 'On a {charger} A DC-DC that is {hours} of driving.', { ...gaps, hours })
      : w.say('takes-charging', 'On a {charger} A charger that takes {hours}.', { ...gaps, hours });
  return [w.say('put-back', 'Put back about {parts}.', { parts }), takes].filter(Boolean);
}

/** How long it lasts, in the unit of the time that it is held against. */
function lastsFor({ wantedH }: Should, runTime: Range, w: Speech): string {
  return isSaidAlike(runTime.value, wantedH, w)
    ? lastingFor(runTime, w)
    : alike(runTime.value, wantedH, w)[0];
}

type Gaps = Readonly<Record<string, string>>;

/** It is at its floor or under it; a reading of volts under a load is doubted first. */
function lowHead({ levelPercent, floorPercent, isByVolts, lasting }: Should, gaps: Gaps, w: Speech): string {
  if (isByVolts && lasting)
    return w.say(
      'should-low-loaded',
      'Yes, {do} to be safe: its volts say {percent} %, under the {floor} % floor, but a load makes them read low.',
      gaps,
    );
  return Math.round(levelPercent) < Math.round(floorPercent)
    ? w.say(
        'should-low',
        'Yes, {do} now: it is at {percent} %, already below the {floor} % to stop at.',
        gaps,
      )
    : w.say('should-at-floor', 'Yes, {do} now: it is at {percent} %, right where to stop.', gaps);
}

/** How far a level by volts can be trusted. */
const byVolts = ({ lasting }: Should, isLow: boolean, gaps: Gaps, w: Speech): string =>
  isLow && lasting
    ? w.say(
        'should-read-again',
        'To be sure, switch everything off for half an hour and read again: it may be fuller.',
      )
    : w.say(
        'should-by-volts',
        'Its volts say about {percent} % if it has rested; with something running they read low, and it may be fuller.',
        gaps,
      );

/** Words for whether to drive or charge now. */
export function answerShould(facts: Facts, should: Should, { parsed }: RequestContext): Reply {
  const w = english;
  const verdict = verdictOf(should);
  const { lasting } = should;
  const gaps = {
    do: parsed.cues.has('drive') ? w.say('drive', 'drive') : w.say('charge', 'charge'),
    percent: w.decimals(should.levelPercent, 0),
    floor: w.decimals(should.floorPercent, 0),
    goal: goal(should, w),
    lasts: lasting ? lastsFor(should, lasting.figures.runTime, w) : '',
  };
  const isLow = should.levelPercent <= should.floorPercent;
  const heads = isLow
    ? lowHead(should, gaps, w)
    : !lasting
      ? {
          yes: '',
          tight: w.say(
            'should-soon',
            'Soon: it is at {percent} %, still above the {floor} % to stop at.',
            gaps,
          ),
          no: w.say(
            'should-not-yet',
            'No need yet: it is at {percent} %, well above the {floor} % to stop at.',
            gaps,
          ),
        }[verdict]
      : {
          yes: w.say('should-yes', 'Yes, {do}: it lasts {lasts}, and {goal}.', gaps),
          tight: w.say('should-tight', 'Better {do} a little: it lasts {lasts}, and {goal}.', gaps),
          no: w.say('should-no', 'No need yet: it lasts {lasts}, and {goal}.', gaps),
        }[verdict];
  const short = shortOf(should);
  const lines = [
    should.isByVolts ? byVolts(should, isLow, gaps, w) : undefined,
    ...(verdict !== 'no' && short.value >= 0.5 ? putBack(should, short, parsed.cues.has('drive'), w) : []),
    verdict !== 'no' && should.hasSun
      ? w.say('no-sun-counted', 'No sun is counted until then; by day the panel may do it.')
      : undefined,
    lasting && verdict !== 'no' ? readingNote(facts, w) : undefined,
  ].filter(line => line !== undefined);
  return {
    headline: heads,
    lines,
    verdict: isLow ? 'yes' : verdict,
    figures: {
      ...(lasting && { runTime: figure(lasting.figures.runTime, 'h') }),
      ...(short.value > 0 && verdict !== 'no' && { chargeNeeded: figure(short, 'Ah') }),
    },
    ...(lasting ? reasons(lasting) : {}),
    cautions: [
      ...loadCautions(facts),
      ...(facts.batteries?.some(one => one.chemistry === 'flooded') ? (['battery-gas'] as const) : []),
    ],
    next: [w.say('next-how-long', 'how long will it last?'), w.say('next-working', 'show the working')],
  };
}
