import { applianceOf } from '#catalog/appliances.ts';
import type { Load } from '#rig/rig.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { factsOf } from '../facts.ts';
import type { Need } from '../needs.ts';
import { answerInverterCheck } from './answer.ts';
import { asAsked, isPeakAlone } from './as-asked.ts';
import { inverterAsides } from './asides-table.ts';
import { areEitherWay, computeInverterCheck } from './compute.ts';
import { laptopOnTwelve } from './laptop-on-twelve.ts';
import { biggestFor } from './sums/biggest.ts';
import { fromASocket } from './sums/from-a-socket.ts';
import { onTwelveVolts } from './sums/on-twelve-volts.ts';
import { onSitePower } from './sums/site.ts';

const hasWatts = ({ name, powerW, currentA }: Load): boolean =>
  (powerW ?? currentA ?? applianceOf(name)) !== undefined;

const needWatts: Need = {
  anyOf: ['loads', 'inverter'],
  ask: 'what will run on it, in watts, and the inverter (say “2000W kettle on a 1500W inverter”)',
  key: 'need-watts',
  // A thing of which nobody knows the watts runs on no inverter "for sure".
  holds: ({ inverter, loads }) => {
    const isUsualTaken = inverter?.powerW === undefined && areEitherWay(loads ?? []);
    const running =
      loads?.filter(load => load.supply === 'ac' || load.powerW !== undefined || isUsualTaken) ?? [];
    return running.length > 0 ? running.some(hasWatts) : (inverter?.powerW ?? inverter?.surgeW) !== undefined;
  },
};

const check = defineIntent({
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
  guess: (told, setting) =>
    onSitePower(factsOf(told), setting) ??
    onTwelveVolts(setting) ??
    fromASocket(factsOf(told), setting) ??
    biggestFor(factsOf(told), setting),
  reply: (told, setting) => {
    const special = onSitePower(told, setting) ?? onTwelveVolts(setting) ?? fromASocket(told, setting);
    if (special) return special;
    const facts = asAsked(told, setting.parsed);
    return answerInverterCheck(facts, computeInverterCheck(facts, setting), setting, isPeakAlone(told));
  },
});

/** Will my inverter run it, what does it take from the battery, and what people ask beside that. */
export const inverterCheck = withAsides(check, [...laptopOnTwelve, ...inverterAsides]);
