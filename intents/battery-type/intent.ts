import { agmOrLithium } from '../agm-or-lithium.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { whereFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { replyOf } from '../weighed.ts';
import { answerBatteryType } from './answer.ts';
import { typeAsides } from './asides-table.ts';
import { buyingAsides } from './buying-table.ts';
import { computeBatteryType } from './compute.ts';
import { answerLeadKinds } from './lead-kinds.ts';
import { livingAsides } from './living-table.ts';
import { answerTrait } from './traits.ts';

const kind = defineIntent({
  name: 'battery-type',
  title: 'AGM or lithium?',
  thing: 'battery',
  takes: [
    'batteries',
    'ambientC',
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    ...whereFacts,
    'depthOfDischargePercent',
  ],
  contest: () => 'chemistry',
  // Of whatever kinds are named: they are what is asked about.
  alsoHangsOn: () => ['batteries.chemistry'],
  reply: (facts, setting) => {
    const result = computeBatteryType(facts, setting.at);
    const trait =
      answerTrait(facts, result, setting) ??
      (setting.recalled.has('batteries') ? undefined : answerLeadKinds(facts));
    if (trait) return trait;
    // With a use to hold them against, one size in both kinds has a verdict.
    const isWeighed = result.isOneSize && hasUse(facts) && !setting.parsed.cues.has('ask-why');
    return isWeighed
      ? replyOf(facts, agmOrLithium({ facts, at: setting.at, mainsV: setting.mainsV }))
      : answerBatteryType(result, setting);
  },
});

/** AGM or lithium, and what people ask beside that. */
export const batteryType = withAsides(
  kind,
  [...livingAsides, ...buyingAsides, ...typeAsides],
  (_, facts, { recalled }) => hasUse(facts) && !recalled.has('loads'),
);
