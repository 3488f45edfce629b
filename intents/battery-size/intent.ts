import type { Reply } from '#answer/reply.ts';
import type { Facts } from '#rig/rig.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent, RequestContext } from '../intent.ts';
import { needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerBatterySize } from './answer.ts';
import { sizeAsides } from './asides-table.ts';
import { type BatterySize, computeBatterySize } from './compute.ts';
import { answerForFridge, answerForInverter } from './nothing-told.ts';
import { answerReadyMade } from './ready-made.ts';

/** Words for the size: in Wh where a power bank or station is asked for. */
function answerOf(facts: Facts, result: BatterySize, setting: RequestContext): Reply {
  const answered = answerBatterySize(facts, result, setting);
  return answerReadyMade(result, setting.parsed.recognised.words, answered) ?? answered;
}

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
    if (!usual) return undefined;
    const result = computeBatterySize(usual, setting);
    return answerForFridge(answerOf(usual, result, setting), result);
  },
  reply: (facts, setting) => answerOf(facts, computeBatterySize(facts, setting), setting),
});

/** What battery do I need, and what people ask beside that. */
export const batterySize = withAsides(size, sizeAsides, () => false);
