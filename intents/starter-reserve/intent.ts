import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needLoads, needs } from '../needs.ts';
import { whereFacts } from '../sun.ts';
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
  ...whereFacts,
] as const satisfies readonly (keyof Facts)[];

/** Can I run it off the starter battery. */
export const starterReserve: Intent = {
  name: 'starter-reserve',
  title: 'Will it still start?',
  takes,
  needs: needs(takes, [needLoads]),
  reply: (told, setting) => {
    // "All night" without hours is a night of ten.
    const isNight = told.durationH === undefined && setting.parsed.cues.has('night');
    const facts = isNight ? { ...told, durationH: 10 } : told;
    return answerStarterReserve(facts, computeStarterReserve(facts, setting));
  },
};
