import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needBattery, needLoads, needs } from '../needs.ts';
import { answerTrip } from './answer.ts';
import { computeTrip, type TripFacts } from './compute.ts';

const takes = [
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
] as const satisfies readonly (keyof Facts)[];

/** What every trip hangs on: the amounts that go in and out. */
const hangsOn: ReadonlySet<string> = new Set([
  'loads',
  'loads.currentA',
  'loads.powerW',
  'loads.hoursPerDay',
  'dailyUseAh',
  'dailyUseWh',
  'batteries.capacityAh',
  'batteries.chemistry',
  'durationH',
]);

/** A trip day by day: driving, camping, sun. */
export const trip: Intent<TripFacts> = {
  name: 'trip',
  title: 'Will it last the trip?',
  takes,
  hangsOn,
  needs: needs(takes, [needBattery, needLoads]) as Intent<TripFacts>['needs'],
  reply: (facts, setting) =>
    answerTrip(
      facts,
      computeTrip(facts, setting.at, setting.mainsV, setting.parsed.recognised.words),
      setting,
    ),
};
