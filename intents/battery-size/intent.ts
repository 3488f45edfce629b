import { defineIntent } from '../define-intent.ts';
import { needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerBatterySize } from './answer.ts';
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
  reply: (facts, setting) => answerBatterySize(facts, computeBatterySize(facts, setting), setting),
});
