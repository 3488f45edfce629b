import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { hasCapacity, type Need, needs } from '../needs.ts';
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
  'altitudeM',
  'ambientC',
] as const satisfies readonly (keyof Facts)[];

const needWork: Need = {
  anyOf: ['chargers', 'batteries', 'loads', 'dailyUseAh', 'dailyUseWh', 'chargeNeededAh'],
  ask: 'what it shall run or charge (say “40A charger”, “200Ah lithium at 30%” or “1200W air conditioner”)',
  holds: facts =>
    !!facts.chargers?.some(c => c.kind !== 'generator') ||
    hasCapacity(facts) ||
    hasUse(facts) ||
    facts.chargeNeededAh !== undefined,
};

/** What generator, how long a day. */
export const generator: Intent = {
  name: 'generator',
  title: 'What generator do I need?',
  takes,
  needs: needs(takes, [needWork]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const isGenerator = cues.has('generator') || facts.chargers?.some(c => c.kind === 'generator');
    if (!isGenerator) return found;
    add('speaks of a generator', 3);
    if (cues.has('ask-what-size')) add('asks what size', 2);
    if (cues.has('ask-can-it')) add('asks whether it does', 2);
    if (facts.chargers?.some(c => c.kind !== 'generator')) add('a charger on it', 1);
    if (facts.loads?.some(load => load.supply === 'ac')) add('loads on it', 1);
    if (cues.has('ask-how-long')) add('asks how long to run it', 2);
    if (cues.has('danger-generator-inside')) add('where it stands', 1);
    if (cues.has('learn') || cues.has('ask-what-is')) add('asks what it is', -3);
    const isAsking = (['question-mark', 'ask-can-it', 'ask-how-long', 'ask-what-size'] as const).some(cue =>
      cues.has(cue),
    );
    if (cues.has('own-statement') && !isAsking) add('tells the rig', -2);
    return found;
  },
  reply: (facts, setting) => answerGenerator(facts, computeGenerator(facts, setting)),
};
