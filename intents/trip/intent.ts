import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
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

/** A trip day by day: driving, camping, sun. */
export const trip: Intent<TripFacts> = {
  name: 'trip',
  title: 'Will it last the trip?',
  takes,
  needs: needs(takes, [needBattery, needLoads]) as Intent<TripFacts>['needs'],
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const hasSun = !!facts.solar?.length || facts.solarAhPerDay !== undefined;
    const hasDriving = facts.drivingHoursPerDay !== undefined || facts.drivingPlanH !== undefined;
    const hasUse = !!facts.loads?.length || facts.dailyUseAh !== undefined || facts.dailyUseWh !== undefined;
    const hasBattery = !!facts.batteries?.some(b => b.capacityAh || b.energyWh);
    const hasTime = facts.durationH !== undefined || facts.drivingPlanH !== undefined;
    const isEnough = hasBattery && hasUse && hasTime;
    if (cues.has('ask-lowest')) add('asks how low it gets', 4);
    if (cues.has('trip')) add('speaks of a trip', 2);
    if (cues.has('day-plan') || facts.drivingPlanH) add('a plan by day', 3);
    if (cues.has('camp') && hasTime) add('camping for a time', 1);
    if (isEnough) add('a battery, its loads and a time', 2);
    if (isEnough && hasSun) add('sun against loads over a time', 4);
    if (isEnough && hasDriving) add('driving against loads over a time', 4);
    if (isEnough && (facts.place || facts.month)) add('a place or month for the time', 1);
    if (facts.startHour !== undefined && hasTime) add('says when it starts', 2);
    if (hasTime && cues.has('rig') && cues.has('ask-can-it')) add('asks whether a setup copes for a time', 2);
    if (facts.solarAhPerDay !== undefined) add('tells what the sun makes', 3);
    if (facts.skyLastDays) add('a sky for some of the days', 2);
    if (cues.has('ask-what-size')) add('asks what size', -3);
    if (cues.has('ask-yield') && !hasUse && facts.solarAhPerDay === undefined)
      add('asks what the sun makes', -3);
    if (cues.has('starter')) add('from the starter battery', -2);
    if (cues.has('ask-who-is-right')) add('an argument', -3);
    return found;
  },
  reply: (facts, setting) => answerTrip(facts, computeTrip(facts, setting.at, setting.mainsV), setting),
};
