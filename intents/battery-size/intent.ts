import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { hasCapacity, needLoads, needs } from '../needs.ts';
import { hasUse } from '../use.ts';
import { answerBatterySize } from './answer.ts';
import { computeBatterySize } from './compute.ts';

const takes = [
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'batteries',
  'inverter',
  'systemVoltageV',
  'durationH',
  'ambientC',
  'depthOfDischargePercent',
  'solar',
  'solarAhPerDay',
  'solarWhPerDay',
  'drivingHoursPerDay',
] as const satisfies readonly (keyof Facts)[];

/** What battery do I need. */
export const batterySize: Intent = {
  name: 'battery-size',
  title: 'What battery do I need?',
  takes,
  needs: needs(takes, [needLoads]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const isBattery = (['battery', 'agm', 'gel', 'flooded', 'lfp', 'power-station'] as const).some(cue =>
      cues.has(cue),
    );
    if (cues.has('ask-what-size')) add('asks what size', 2);
    if (cues.has('ask-what-size') && isBattery) add('asks the size of a battery', 3);
    if (isBattery && hasUse(facts) && !hasCapacity(facts)) add('a load, and a battery without a size', 2);
    if (facts.durationH !== undefined && (cues.has('ask-what-size') || isBattery))
      add('a battery for a time', 1);
    if (hasCapacity(facts)) add('the battery has a size', -2);
    if (cues.has('ask-how-long')) add('asks how long', -2);
    if (cues.has('solar') || facts.solar?.length) add('speaks of solar', -2);
    for (const cue of ['cable', 'fuse', 'generator', 'charger', 'dcdc', 'isolator'] as const)
      if (cues.has(cue)) add(`speaks of a ${cue}`, -3);
    if (cues.has('starter')) add('from the starter battery', -2);
    return found;
  },
  reply: (facts, setting) => answerBatterySize(facts, computeBatterySize(facts, setting), setting),
};
