import type { Facts } from '#rig/rig.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent } from '../intent.ts';
import { needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerBatterySize } from './answer.ts';
import { sizeAsides } from './asides-table.ts';
import { computeBatterySize } from './compute.ts';
import { answerForFridge, answerForInverter } from './nothing-told.ts';
import { answerReadyMade } from './ready-made.ts';

const size: Intent<Facts> = defineIntent({
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
  // Nothing that runs is told: what nearly every camp runs, so that a beginner gets a number before the question.
  guess: (facts, setting) => {
    if (facts.loads ?? facts.dailyUseAh ?? facts.dailyUseWh) return undefined;
    const { inverter } = facts;
    if (inverter?.powerW !== undefined) return answerForInverter(inverter.powerW);
    const usual = size.needs.safeParse({ ...facts, loads: [{ name: 'fridge' }] }).data;
    return usual && answerForFridge(size.reply(usual, setting), computeBatterySize(usual, setting));
  },
  reply: (facts, setting) => {
    const result = computeBatterySize(facts, setting);
    const answered = answerBatterySize(facts, result, setting);
    return answerReadyMade(result, setting.parsed.recognised.words, answered) ?? answered;
  },
});

/** What battery do I need, and what people ask beside that. */
export const batterySize = withAsides(size, sizeAsides, () => false);
