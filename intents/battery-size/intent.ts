import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerBatterySize } from './answer.ts';
import { sizeAsides } from './asides-table.ts';
import { computeBatterySize } from './compute.ts';

const size = defineIntent({
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

/** What battery do I need, and what people ask beside that. */
export const batterySize = withAsides(size, sizeAsides, () => false);
