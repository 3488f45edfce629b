import type { Verdict } from '#answer/answer.ts';
import { hourOfDay } from '#answer/clock.ts';
import type { Reply } from '#answer/reply.ts';
import { exactly, lasting, span } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { clockHour } from '../clock.ts';
import { cools } from '../facts.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import type { Later } from '../level-later.ts';
import type { ChargeLevel } from './compute.ts';

/** Whether it stays above the level that it should not go below: yes where it does at worst, no where not even at best. */
function stays({ figures, floorPercent }: Later): Exclude<Verdict, null> {
  const { low, high } = figures.stateOfCharge;
  if (low >= floorPercent) return 'yes';
  return high < floorPercent ? 'no' : 'tight';
}

/** When that is: "at 7am" as it was told, or "in 3 hours". */
function when({ durationH }: Later, { parsed }: RequestContext, w: Speech): string {
  const { until } = parsed.facts;
  return until === undefined
    ? w.say('in-time', 'in {time}', { time: exactly(durationH, w) })
    : w.say('at-clock', 'at {until}', { until });
}

/** What would change it: how much to put back, where it goes too low. */
function change(later: Later, w: Speech): string | undefined {
  const { figures, floorPercent, capacityAh } = later;
  const shortAh = ((floorPercent - figures.stateOfCharge.low) * capacityAh) / 100;
  if (shortAh < 1) return undefined;
  return w.say(
    'put-back',
    'To be sure of it put about {ah} Ah back before then, by sun, driving or a charger, or use that much less.',
    { ah: w.significant(shortAh, 2) },
  );
}

/** Hours that a night has at the most, and when it begins and ends. Common practice. */
const night = { mostH: 14, fromH: 18, toH: 6 } as const;

/** Whether the time until then is a night, and something that cools runs through it. */
function isCoolNight(facts: Facts, { durationH, isNet }: Later, setting: RequestContext): boolean {
  const fromH = clockHour(facts, setting);
  const isNight = durationH <= night.mostH && (fromH >= night.fromH || fromH < night.toH);
  return isNight && !isNet && !!facts.loads?.some(({ name }) => cools(name));
}

/** A level is told no closer than this, points either way. Common practice. */
const leastPoints = 2;

/** Words for a level at a time to come. */
export function answerLater(facts: Facts, now: ChargeLevel, later: Later, setting: RequestContext): Reply {
  const w = english;
  const { stateOfCharge, used, sunIn } = later.figures;
  const verdict = stays(later);
  const points = (x: number): string => w.decimals(x, 0);
  const floor = points(later.floorPercent);
  const gaps = {
    when: when(later, setting, w),
    percent: points(stateOfCharge.value),
    // No narrower than what a battery's level can be known by.
    range: span(
      Math.min(stateOfCharge.low, stateOfCharge.value - leastPoints),
      Math.max(stateOfCharge.high, stateOfCharge.value + leastPoints),
      '%',
      w,
    ),
    floor,
    now: points(present(now.stateOfCharge).value),
  };
  const heads = {
    yes: w.say('later-yes', 'About {percent} % {when} ({range}): fine, just don’t go under {floor} %.', gaps),
    tight: w.say(
      'later-tight',
      'About {percent} % {when} ({range}): close, as you shouldn’t go under {floor} %.',
      gaps,
    ),
    no: w.say('later-no', 'About {percent} % {when} ({range}): too low, don’t go under {floor} %.', gaps),
  };
  const flows = { now: gaps.now, used: w.significant(used.value, 2), into: w.significant(sunIn.value, 2) };
  const lines = [
    later.hasSun
      ? w.say(
          'from-sun',
          'From {now} % now: about {used} Ah go out until then, about {into} Ah of sun come in.',
          flows,
        )
      : later.isNet && sunIn.value > 0
        ? w.say(
            'from-net-in',
            'From {now} % now, if the current stays as it is: about {into} Ah go in.',
            flows,
          )
        : w.say(
            'from',
            'From {now} % {since}: about {used} Ah go out in the {hours}, and nothing comes in.',
            {
              ...flows,
              since: setting.parsed.facts.until
                ? w.say('at-hour', 'at {hour}', { hour: hourOfDay(clockHour(facts, setting)) })
                : w.say('now', 'now'),
              hours: exactly(later.durationH, w),
            },
          ),
    isCoolNight(facts, later, setting)
      ? w.say('cool-night', 'I counted that a fridge takes less in the cool of the night.')
      : undefined,
    later.lastsH && later.lastsH.value > 0 && verdict !== 'yes'
      ? w.say('to-floor', 'With nothing coming in it is down to {floor} % in {lasts}.', {
          floor,
          lasts: lasting(later.lastsH, w),
        })
      : undefined,
    verdict === 'yes' ? undefined : change(later, w),
  ].filter(line => line !== undefined);
  return {
    headline: heads[verdict],
    lines,
    verdict,
    figures: {
      stateOfCharge: figure(stateOfCharge, '%'),
      ...(later.lastsH && { runTime: figure(later.lastsH, 'h') }),
    },
    ...reasons(later),
    cautions: loadCautions(facts),
    next: [
      w.say('next-how-long', 'how long will it last?'),
      w.say('next-solar', 'what solar do I need?'),
      w.say('next-working', 'show the working'),
    ],
  };
}
