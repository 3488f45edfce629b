import { defineIntent } from '../define-intent.ts';
import { computeLater } from '../level-later.ts';
import { whereFacts } from '../sun.ts';
import { answerChargeLevel } from './answer.ts';
import { computeChargeLevel } from './compute.ts';
import { answerLater } from './later-answer.ts';

/** It reads 12.2 V: how full is it. */
export const chargeLevel = defineIntent({
  name: 'charge-level',
  title: 'How full is my battery?',
  thing: 'battery',
  isOfNow: true,
  takes: [
    'volts',
    'voltsTaken',
    'batteries',
    'chargeUsedAh',
    'chargeLeftAh',
    'arrangement',
    'systemVoltageV',
    'depthOfDischargePercent',
    // At a later time: what runs until then, and what the battery's air does.
    'durationH',
    'until',
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'inverter',
    'netCurrentA',
    'solar',
    'mount',
    'ambientC',
    'sky',
    'without',
    ...whereFacts,
  ],
  needs: [
    {
      anyOf: ['volts', 'batteries'],
      ask: 'the volts it reads at rest, and its type (say “AGM reads 12.4V”)',
      holds: facts =>
        facts.volts !== undefined || !!facts.batteries?.some(b => b.stateOfChargePercent !== undefined),
    },
  ],
  reply: (facts, setting) => {
    const level = computeChargeLevel(facts, setting);
    const later = computeLater(facts, level, setting);
    return later ? answerLater(facts, level, later, setting) : answerChargeLevel(facts, level, setting);
  },
});
