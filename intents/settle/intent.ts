import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerSettle } from './answer.ts';
import { settleDispute } from './compute.ts';

const takes = [
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'batteries',
  'arrangement',
  'systemVoltageV',
  'inverter',
  'cable',
  'chargers',
  'alternator',
  'drivingHoursPerDay',
  'durationH',
  'ambientC',
  'depthOfDischargePercent',
  'chargeNeededAh',
  'targetChargePercent',
  'solar',
  'mount',
  'peakSunHours',
  'place',
  'latitudeDeg',
  'longitudeDeg',
  'month',
  'sky',
  'shade',
  'volts',
  'voltsTaken',
] as const satisfies readonly (keyof Facts)[];

/** A says 2 days, B says 4: who is right. What is missing is asked for by the answer, as it hangs on the claims. */
export const settle: Intent = {
  name: 'settle',
  title: 'Who is right?',
  takes,
  needs: needs(takes, []),
  asks: said => {
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const people = new Set(said.claims.map(c => c.who.toLowerCase()));
    if (said.cues.has('ask-who-is-right')) add('asks who is right', 5);
    if (people.size > 1) add('two people claim', 6);
    else if (people.size === 1) add('somebody claims', 3);
    if (said.cues.has('ask-whose')) add('asks whose', 3);
    if (said.term !== undefined && people.size === 0) add('asks what something is', -2);
    return found;
  },
  reply: (facts, setting) => answerSettle(settleDispute(facts, setting), setting),
};
