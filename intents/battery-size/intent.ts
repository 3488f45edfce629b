import { answerAside, asideIn, asideOf, needsBeside } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts, hasUse } from '../use.ts';
import { answerBatterySize } from './answer.ts';
import { sizeAsides } from './asides-table.ts';
import { computeBatterySize } from './compute.ts';

/** What battery do I need. */
export const batterySize = defineIntent({
  name: 'battery-size',
  title: 'What battery do I need?',
  thing: 'battery',
  takes: [
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
  ],
  hangsOn: new Set([...drawFacts]),
  needs: [needLoads],
  subjectIn: words => asideIn(words, sizeAsides)?.name,
  needsOn: needsBeside(sizeAsides, [needLoads]),
  reply: (facts, setting) => {
    const aside = asideOf(sizeAsides, setting, { hasOwnFigures: false, canSum: hasUse(facts) });
    return aside
      ? answerAside(aside, facts)
      : answerBatterySize(facts, computeBatterySize(facts, setting), setting);
  },
});
