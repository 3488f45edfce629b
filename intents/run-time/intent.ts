import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { hasCapacity, needBattery, needLoads, needs } from '../needs.ts';
import { hasUse } from '../use.ts';
import { answerRunTime } from './answer.ts';
import { compareRigs } from './compare.ts';
import { computeRunTime, type RunTimeFacts } from './compute.ts';

const takes = [
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'netCurrentA',
  'batteries',
  'arrangement',
  'inverter',
  'systemVoltageV',
  'durationH',
  'chargeUsedAh',
  'chargeLeftAh',
  'ambientC',
  'depthOfDischargePercent',
] as const satisfies readonly (keyof Facts)[];

/** How long will it last; will it last N days. */
export const runTime: Intent<RunTimeFacts> = {
  name: 'run-time',
  title: 'How long will it last?',
  takes,
  needs: needs(takes, [needBattery, needLoads]) as Intent<RunTimeFacts>['needs'],
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const hasLoad = hasUse(facts);
    const hasBattery = hasCapacity(facts);
    if (cues.has('ask-how-long')) add('asks how long', 3);
    if (cues.has('ask-whose')) add('asks whose lasts', 3);
    if (cues.has('last')) add('says it should last', 2);
    if (hasLoad && hasBattery) add('a load and a battery', 2);
    if (hasLoad && hasBattery && facts.durationH !== undefined) add('a load, a battery and a time', 1);
    const tells = (['rig', 'own-statement', 'save', 'mine', 'add'] as const).some(cue => cues.has(cue));
    const isMains = facts.loads?.some(load => load.supply === 'ac');
    const isAlone = !facts.chargers && !facts.solar && !facts.inverter && !isMains && !tells;
    if (hasLoad && hasBattery && isAlone) add('nothing else is told', 1.5);
    if (cues.has('ask-can-it') && facts.durationH !== undefined) add('asks whether it does for a time', 1);
    if (hasLoad && hasBattery && isMains && cues.has('no-charge'))
      add('mains loads, a battery and no charging', 2);
    if (facts.chargers?.length && !hasLoad) add('a charger and no load', -3);
    const isFed = !!facts.chargers?.length || !(hasLoad && hasBattery);
    if (cues.has('charge') && !cues.has('no-charge') && isFed) add('speaks of charging', -2);
    if (cues.has('starter')) add('from the starter battery', -2);
    if (cues.has('ask-what-size')) add('asks what size', -3);
    return found;
  },
  reply: (facts, setting) =>
    compareRigs(facts, setting) ?? answerRunTime(facts, computeRunTime(facts, setting.mainsV), setting),
};
