import { applianceOf } from '#catalog/appliances.ts';
import type { Facts, Load } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { type Need, needs } from '../needs.ts';
import { answerInverterCheck } from './answer.ts';
import { computeInverterCheck } from './compute.ts';

const takes = [
  'loads',
  'inverter',
  'chargers',
  'batteries',
  'arrangement',
  'systemVoltageV',
  'durationH',
  'ambientC',
] as const satisfies readonly (keyof Facts)[];

const hasWatts = ({ name, powerW, currentA }: Load): boolean =>
  (powerW ?? currentA ?? applianceOf(name)) !== undefined;

const needWatts: Need = {
  anyOf: ['loads', 'inverter'],
  ask: 'what will run on it, in watts, and the inverter (say “2000W kettle on a 1500W inverter”)',
  key: 'need-watts',
  // A thing of which nobody knows the watts runs on no inverter "for sure".
  holds: ({ inverter, loads }) => {
    const running = loads?.filter(load => load.supply === 'ac' || load.powerW !== undefined) ?? [];
    return running.length > 0 ? running.some(hasWatts) : inverter?.powerW !== undefined;
  },
};

/** Will my inverter run it, what does it take from the battery. */
export const inverterCheck: Intent = {
  name: 'inverter-check',
  title: 'Will the inverter run it?',
  takes,
  needs: needs(takes, [needWatts]),
  reply: (facts, setting) => answerInverterCheck(facts, computeInverterCheck(facts, setting), setting),
};
