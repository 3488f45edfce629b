import { applianceOf } from '#catalog/appliances.ts';
import type { Load } from '#rig/rig.ts';
import { defineIntent } from '../define-intent.ts';
import type { Need } from '../needs.ts';
import { answerInverterCheck } from './answer.ts';
import { computeInverterCheck } from './compute.ts';

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
export const inverterCheck = defineIntent({
  name: 'inverter-check',
  title: 'Will the inverter run it?',
  thing: 'inverter',
  takes: [
    'loads',
    'inverter',
    'chargers',
    'batteries',
    'arrangement',
    'systemVoltageV',
    'durationH',
    'ambientC',
  ],
  hangsOn: new Set(['inverter.powerW']),
  // Of a battery whose size isn't told its limit is named.
  alsoHangsOn: ({ batteries }) =>
    batteries?.[0]?.maxCurrentA !== undefined && batteries[0].capacityAh === undefined
      ? ['batteries.maxCurrentA']
      : [],
  needs: [needWatts],
  reply: (facts, setting) => answerInverterCheck(facts, computeInverterCheck(facts, setting), setting),
});
