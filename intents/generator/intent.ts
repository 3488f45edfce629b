import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { hasCapacity, type Need, needs } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerGenerator } from './answer.ts';
import { computeGenerator } from './compute.ts';

const takes = [
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
] as const satisfies readonly (keyof Facts)[];

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
export const generator: Intent = {
  name: 'generator',
  title: 'What generator do I need?',
  takes,
  hangsOn: new Set(['chargers']),
  needs: needs(takes, [needWork]),
  reply: (facts, setting) =>
    answerGenerator(
      facts,
      computeGenerator(facts, setting),
      setting.parsed.recognised.words.some(word => noise.has(word)),
    ),
};
