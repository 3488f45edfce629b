import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needLoads, needs } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerBatterySize } from './answer.ts';
import { computeBatterySize } from './compute.ts';

const takes = [
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'batteries',
  'inverter',
  'systemVoltageV',
  'durationH',
  'ambientC',
  ...whereFacts,
  'depthOfDischargePercent',
  'solar',
  'solarAhPerDay',
  'solarWhPerDay',
  'drivingHoursPerDay',
] as const satisfies readonly (keyof Facts)[];

/** What battery do I need. */
export const batterySize: Intent = {
  name: 'battery-size',
  title: 'What battery do I need?',
  takes,
  hangsOn: new Set([...drawFacts]),
  needs: needs(takes, [needLoads]),
  reply: (facts, setting) => answerBatterySize(facts, computeBatterySize(facts, setting), setting),
};
