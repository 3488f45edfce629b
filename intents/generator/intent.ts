import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { factsOf } from '../facts.ts';
import { hasCapacity, type Need } from '../needs.ts';
import { isSpotted } from '../spotting.ts';
import { whereFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerGenerator } from './answer.ts';
import { generatorAsides } from './asides-table.ts';
import { computeGenerator } from './compute.ts';
import { hoursAsked } from './sums/in-hours.ts';

const needWork: Need = {
  anyOf: ['chargers', 'batteries', 'loads', 'dailyUseAh', 'dailyUseWh', 'chargeNeededAh'],
  ask: 'what it will run or charge (say “40A charger”, “200Ah lithium at 30%” or “1200W air conditioner”)',
  key: 'need-work',
  holds: facts =>
    !!facts.chargers?.some(c => c.kind !== 'generator' || c.currentA !== undefined) ||
    hasCapacity(facts) ||
    hasUse(facts) ||
    facts.chargeNeededAh !== undefined,
};

/** Words by which people ask how loud it is. */
const noise: ReadonlySet<string> = new Set(['noise', 'noisy', 'loud', 'quiet', 'db', 'decibels', 'silent']);

/** What people have on one that is for charging alone, A. Common practice. */
const usualChargerA = 20;
const forCharging = ['charg*|top_up|topping_up|fill* -aircon -air_con -kettle -microwave'] as const;

const generatorSize = defineIntent({
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
    'chargeUsedAh',
    'durationH',
    ...whereFacts,
    'ambientC',
  ],
  hangsOn: new Set(['chargers']),
  needs: [needWork],
  guess: (told, setting) => {
    const isForCharging = isSpotted(setting.parsed.recognised.words, forCharging);
    if (!isForCharging) return undefined;
    const facts = factsOf({
      ...told,
      chargers: [...(told.chargers ?? []), { kind: 'mains', currentA: usualChargerA }],
    });
    const result = computeGenerator(facts, setting);
    return hoursAsked(facts, result, answerGenerator(facts, result), setting);
  },
  reply: (facts, setting) => {
    const result = computeGenerator(facts, setting);
    const isNoiseAsked = setting.parsed.recognised.words.some(word => noise.has(word));
    return hoursAsked(facts, result, answerGenerator(facts, result, isNoiseAsked), setting);
  },
});

/** What generator, how long a day, and what people ask beside that. */
export const generator = withAsides(generatorSize, generatorAsides);
