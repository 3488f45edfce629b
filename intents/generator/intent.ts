import { defineIntent } from '../define-intent.ts';
import { hasCapacity, type Need } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerGenerator } from './answer.ts';
import { computeGenerator } from './compute.ts';

const needWork: Need = {
  anyOf: ['chargers', 'batteries', 'loads', 'dailyUseAh', 'dailyUseWh', 'chargeNeededAh'],
  ask: 'what it will run or charge (say “40A charger”, “200Ah lithium at 30%” or “1200W air conditioner”)',
  holds: facts =>
    !!facts.chargers?.some(c => c.kind !== 'generator') ||
    hasCapacity(facts) ||
    hasUse(facts) ||
    facts.chargeNeededAh !== undefined,
};

/** Words by which people ask how loud it is. */
const noise: ReadonlySet<string> = new Set(['noise', 'noisy', 'loud', 'quiet', 'db', 'decibels', 'silent']);

/** What generator, how long a day. */
export const generator = defineIntent({
  name: 'generator',
  title: 'What generator do I need?',
  takes: [
    'chargers',
    'batteries',
    'arrangement',
    'systemVoltageV',
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'inverter',
    'targetChargePercent',
    'chargeNeededAh',
    ...whereFacts,
    'ambientC',
  ],
  hangsOn: new Set(['chargers']),
  needs: [needWork],
  reply: (facts, setting) =>
    answerGenerator(
      facts,
      computeGenerator(facts, setting),
      setting.parsed.recognised.words.some(word => noise.has(word)),
    ),
});
