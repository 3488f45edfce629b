import { english } from '#answer/speech.ts';
import type { Stated } from '#rig/rig.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent } from '../intent.ts';
import { needBattery, needLoads } from '../needs.ts';
import { withDcdcSpoken } from '../spoken-charger.ts';
import { whereSunHangsOn } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerTrip } from './answer.ts';
import { computeTrip, type TripFacts } from './compute.ts';
import { asksByDay, byDay } from './days.ts';

/** What every trip hangs on: the amounts that go in and out. */
const hangsOn: ReadonlySet<string> = new Set([
  ...drawFacts,
  'batteries.capacityAh',
  'batteries.chemistry',
  'durationH',
  // A generator or charger spoken of, without a figure of its own.
  'chargers',
]);

/**
 * With panels alone to go by, and not ruled out, the sun hangs on their watts, and on the place where its hours aren't
 * told; what is on offer hangs on the hours driven each day, where all of a plan is gone through.
 */
function alsoHangsOn(facts: Stated): readonly string[] {
  const { solar, solarAhPerDay, solarWhPerDay, without, durationH, startHour } = facts;
  if (without?.length) return [];
  const isSunTold = (solarAhPerDay ?? solarWhPerDay) !== undefined;
  const hasPanels = !isSunTold && solar?.some(panel => panel.powerW !== undefined);
  const isWholePlan = durationH === undefined && startHour === undefined;
  return [
    ...(hasPanels ? ['solar.powerW', ...whereSunHangsOn(facts)] : []),
    ...(isWholePlan ? ['days.drivingH'] : []),
  ];
}

/** A trip day by day: driving, camping, sun. */
export const trip: Intent<TripFacts> = defineIntent<TripFacts>({
  name: 'trip',
  title: 'Will it last the trip?',
  isPictured: true,
  hangsOnPlace: ({ solar }) => solar !== undefined,
  takes: [
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'batteries',
    'arrangement',
    'systemVoltageV',
    'inverter',
    'durationH',
    'days',
    'chargeUsedAh',
    'chargeLeftAh',
    'volts',
    'voltsTaken',
    'startHour',
    'startWeekday',
    'ambientC',
    'depthOfDischargePercent',
    'solar',
    'mount',
    'solarAhPerDay',
    'solarWhPerDay',
    'peakSunHours',
    'place',
    'latitudeDeg',
    'longitudeDeg',
    'altitudeM',
    'month',
    'sky',
    'skyLastDays',
    'shade',
    'chargers',
    'alternator',
    'drivingHoursPerDay',
    'drivingPlanH',
    'without',
  ],
  hangsOn,
  alsoHangsOn,
  needs: [needBattery, needLoads],
  // "Will that panel keep a fridge going?", and no battery is told: whether the sun makes what is used.
  becomes: ({ batteries, solar, loads, dailyUseAh, dailyUseWh, days }) =>
    !batteries &&
    !days?.length &&
    solar?.some(({ powerW }) => powerW !== undefined) &&
    (loads?.length || (dailyUseAh ?? dailyUseWh) !== undefined)
      ? 'solar-size'
      : undefined,
  subjectIn: words => (asksByDay(words) ? byDay : undefined),
  // A battery and panels, and nothing that runs is told: a usual fridge, so that a beginner gets a number first.
  guess: (facts, setting) => {
    const { batteries, solar } = setting.parsed.facts;
    const isNothingTold =
      !facts.loads && (facts.dailyUseAh ?? facts.dailyUseWh ?? facts.inverter) === undefined;
    if (!isNothingTold || !(batteries ?? solar)) return undefined;
    const ready = trip.needs.safeParse({ ...facts, loads: [{ name: 'fridge' }] }).data;
    if (!ready) return undefined;
    const reply = trip.reply(ready, setting);
    const line = english.say(
      'usual-use',
      'That is with a typical fridge on it, and nothing else. What runs on yours?',
    );
    return {
      ...reply,
      lines: [...(reply.lines ?? []).slice(0, 2), line],
      next: ['fridge and lights', '40Ah a day'],
    };
  },
  reply: (told, setting) => {
    const facts = withDcdcSpoken(told, setting.parsed.cues);
    const trip = computeTrip(facts, setting.at, setting.mainsV, setting.parsed.recognised.words);
    return answerTrip(facts, trip, setting);
  },
});
