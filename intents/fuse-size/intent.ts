import { defineIntent } from '../define-intent.ts';
import type { Need } from '../needs.ts';
import { answerFuseSize } from './answer.ts';
import { computeFuseSize } from './compute.ts';

const needCircuit: Need = {
  anyOf: ['cable', 'inverter', 'loads', 'chargers', 'solar'],
  ask: 'what it protects (say “15A pump”, “2000W inverter” or “6mm² cable”)',
  holds: facts =>
    (facts.cable?.currentA ?? facts.cable?.areaMm2 ?? facts.cable?.awg ?? facts.cable?.autoCableMm) !==
      undefined ||
    facts.inverter?.powerW !== undefined ||
    !!facts.loads?.length ||
    !!facts.chargers?.some(c => c.kind !== 'generator') ||
    !!facts.solar?.some(s => s.powerW !== undefined),
};

/** What fuse. */
export const fuseSize = defineIntent({
  name: 'fuse-size',
  title: 'What fuse do I need?',
  thing: 'fuse',
  takes: [
    'cable',
    'inverter',
    'loads',
    'chargers',
    'solar',
    'systemVoltageV',
    'batteries',
    'fuseA',
    'ambientC',
  ],
  needs: [needCircuit],
  reply: (facts, setting) => answerFuseSize(computeFuseSize(facts, setting)),
});
