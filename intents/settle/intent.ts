import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
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
  asksNothing: true,
  isArgument: true,
  takes,
  needs: needs(takes, []),
  reply: (facts, setting) => answerSettle(settleDispute(facts, setting), setting),
};
