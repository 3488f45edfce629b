import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { hasCapacity, type Need, needs } from '../needs.ts';
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

const needWatts: Need = {
  anyOf: ['loads', 'inverter'],
  ask: 'what shall run on it, in watts, and the inverter (say “2000W kettle on a 1500W inverter”)',
  key: 'need-watts',
  holds: facts =>
    facts.inverter?.powerW !== undefined ||
    !!facts.loads?.some(load => load.supply === 'ac' || load.powerW !== undefined),
};

/** Will my inverter run it, what does it take from the battery. */
export const inverterCheck: Intent = {
  name: 'inverter-check',
  title: 'Will the inverter run it?',
  takes,
  needs: needs(takes, [needWatts]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const isInverter = cues.has('inverter') || facts.inverter !== undefined;
    const all = [...(facts.loads ?? []), ...said.bareLoads];
    const isMains = all.some(load => load.supply === 'ac');
    const isAsking = cues.has('ask-can-it') || cues.has('ask-how-much') || cues.has('ask-what-size');
    const isTimed =
      all.length > 0 && all.every(load => (load.minutesPerDay ?? load.hoursPerDay) !== undefined);
    // "4 minutes, 5 times a day on the inverter, what does that cost": of the use, not of the inverter.
    const isOfUse = cues.has('ask-how-much') && isTimed && facts.inverter?.powerW === undefined;
    if (isInverter && !isOfUse) add('speaks of an inverter', 3);
    if (isInverter && all.length > 0 && !isOfUse) add('an inverter and a load', 2);
    if (isMains) add('a mains appliance', 1);
    if (isMains && cues.has('ask-can-it') && !isOfUse) add('can it run a mains appliance', 2);
    if (isMains && cues.has('ask-how-much')) add('what a mains appliance takes', 2);
    if (isMains && cues.has('ask-how-much') && all.length === 1 && !isTimed && !cues.has('ask-total'))
      add('what one mains appliance draws', 1.5);
    if (isMains && cues.has('ask-how-much') && cues.has('battery')) add('takes from the battery', 1);
    if (isInverter && isAsking && !isOfUse) add('asks of an inverter', 1);
    if (isMains && all.every(load => load.minutesPerDay !== undefined))
      add('a mains appliance for minutes', 1);
    if (facts.cable?.lengthM !== undefined || facts.cable?.areaMm2 !== undefined)
      add('a length or size of cable', -3);
    if (cues.has('danger-backfeed')) add('feeding an inverter backwards', 4);
    for (const cue of ['cable', 'fuse', 'generator', 'learn'] as const)
      if (cues.has(cue)) add(`speaks of ${cue}`, -4);
    if (cues.has('ask-how-long') || cues.has('last')) add('asks how long', -3);
    if (cues.has('ask-total') || all.length > 3) add('a whole day of loads', -2);
    if (cues.has('solar') || facts.solar?.length) add('speaks of solar', -2);
    if (said.claims.length > 1 || cues.has('ask-who-is-right')) add('an argument', -3);
    if (said.conversion) add('is a conversion', -2);
    const isOfBattery = hasCapacity(facts) && isTimed && facts.inverter?.powerW === undefined;
    if (isOfBattery && cues.has('no-charge')) add('asks whether a battery carries it', -3);
    if (cues.has('ask-what-size') && cues.has('battery') && facts.inverter?.powerW === undefined)
      add('asks the size of a battery', -2);
    if (cues.has('own-statement') && !cues.has('question-mark') && !isAsking) add('tells the rig', -3);
    return found;
  },
  reply: (facts, setting) => answerInverterCheck(facts, computeInverterCheck(facts, setting), setting),
};
