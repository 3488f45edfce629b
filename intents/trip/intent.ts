import type { Stated } from '#rig/rig.ts';
import { defineIntent } from '../define-intent.ts';
import { needBattery, needLoads } from '../needs.ts';
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

const noSun: readonly string[] = [];
const panels = ['solar.powerW'] as const;
const panelsThere = [...panels, 'place', 'month'] as const;

/** With panels alone to go by, and not ruled out, the sun hangs on their watts, and on the place where its hours aren't told. */
function alsoHangsOn({
  solar,
  solarAhPerDay,
  solarWhPerDay,
  peakSunHours,
  without,
}: Stated): readonly string[] {
  const isTold = (solarAhPerDay ?? solarWhPerDay) !== undefined;
  if (isTold || without?.length || !solar?.some(panel => panel.powerW !== undefined)) return noSun;
  return peakSunHours === undefined ? panelsThere : panels;
}

/** A trip day by day: driving, camping, sun. */
export const trip = defineIntent<TripFacts>({
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
  subjectIn: words => (asksByDay(words) ? byDay : undefined),
  reply: (facts, setting) =>
    answerTrip(
      facts,
      computeTrip(facts, setting.at, setting.mainsV, setting.parsed.recognised.words),
      setting,
    ),
});
