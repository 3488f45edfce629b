import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { needLoads, needs } from '../needs.ts';
import { hasUse } from '../use.ts';
import { answerStarterReserve } from './answer.ts';
import { computeStarterReserve } from './compute.ts';

const takes = [
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'batteries',
  'inverter',
  'durationH',
  'ambientC',
] as const satisfies readonly (keyof Facts)[];

/** Can I run it off the starter battery. */
export const starterReserve: Intent = {
  name: 'starter-reserve',
  title: 'Will it still start?',
  takes,
  needs: needs(takes, [needLoads]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const isStarter = cues.has('starter') || facts.batteries?.some(b => b.role === 'starter');
    if (isStarter) add('speaks of the starter battery', 3);
    if (cues.has('ask-crank')) add('asks whether it starts', 4);
    if (isStarter && hasUse(facts)) add('a load on the starter battery', 2);
    if (isStarter && said.bareLoads.length > 0) add('a thing to run on the starter battery', 1);
    if (isStarter && (cues.has('ask-can-it') || cues.has('ask-how-long'))) add('can it, how long', 1);
    if (cues.has('charge') || facts.chargers?.length || cues.has('isolator') || cues.has('dcdc'))
      add('speaks of charging', -4);
    if (facts.volts !== undefined) add('a voltage was read', -2);
    for (const cue of ['cable', 'fuse', 'ask-drop'] as const) if (cues.has(cue)) add(`speaks of ${cue}`, -4);
    if (cues.has('danger-jump')) add('jump starting', -2);
    return found;
  },
  reply: (told, setting) => {
    // "All night" without hours is a night of ten.
    const isNight = told.durationH === undefined && setting.said.cues.has('night');
    const facts = isNight ? { ...told, durationH: 10 } : told;
    return answerStarterReserve(facts, computeStarterReserve(facts, setting));
  },
};
