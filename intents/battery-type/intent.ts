import type { Facts } from '#rig/rig.ts';
import { agmOrLithium } from '../agm-or-lithium.ts';
import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { replyOf } from '../weighed.ts';
import { answerBatteryType } from './answer.ts';
import { computeBatteryType } from './compute.ts';

const takes = [
  'batteries',
  'ambientC',
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  ...whereFacts,
  'depthOfDischargePercent',
] as const satisfies readonly (keyof Facts)[];

/** AGM or lithium. */
export const batteryType: Intent = {
  name: 'battery-type',
  title: 'AGM or lithium?',
  takes,
  hangsOn: new Set(['batteries.chemistry']),
  needs: needs(takes, []),
  reply: (facts, setting) => {
    const result = computeBatteryType(facts, setting.at);
    // With a use to hold them against, one size in both kinds has a verdict.
    const isWeighed = result.isOneSize && hasUse(facts) && !setting.parsed.cues.has('ask-why');
    return isWeighed
      ? replyOf(facts, agmOrLithium({ facts, at: setting.at, mainsV: setting.mainsV }))
      : answerBatteryType(result, setting);
  },
};
