import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerBatteryType } from './answer.ts';
import { computeBatteryType } from './compute.ts';

const takes = [
  'batteries',
  'ambientC',
  'depthOfDischargePercent',
] as const satisfies readonly (keyof Facts)[];

/** AGM or lithium. */
export const batteryType: Intent = {
  name: 'battery-type',
  title: 'AGM or lithium?',
  takes,
  hangsOn: new Set(['batteries.chemistry']),
  needs: needs(takes, []),
  reply: (facts, setting) => answerBatteryType(computeBatteryType(facts), setting),
};
