import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { type Need, needs } from '../needs.ts';
import { answerFuseSize } from './answer.ts';
import { computeFuseSize } from './compute.ts';

const takes = [
  'cable',
  'inverter',
  'loads',
  'chargers',
  'solar',
  'systemVoltageV',
  'batteries',
  'fuseA',
] as const satisfies readonly (keyof Facts)[];

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
export const fuseSize: Intent = {
  name: 'fuse-size',
  title: 'What fuse do I need?',
  takes,
  needs: needs(takes, [needCircuit]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    if (!cues.has('fuse')) return found;
    add('speaks of a fuse', 4);
    if (cues.has('ask-what-size') || cues.has('ask-how-much')) add('asks what size', 1);
    if (facts.cable || facts.loads?.length || facts.inverter || facts.chargers?.length)
      add('what it protects', 1);
    if (said.claims.length > 1 || cues.has('ask-who-is-right')) add('an argument', -4);
    if (cues.has('learn')) add('wants a lesson', -4);
    if (cues.has('ask-what-is') && said.term !== undefined) add('asks what it is', -4);
    if (cues.has('ask-drop')) add('asks for a drop', -3);
    return found;
  },
  reply: (facts, setting) => answerFuseSize(computeFuseSize(facts, setting)),
};
