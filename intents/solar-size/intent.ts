import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { hasCapacity, needLoads, needs } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerSolarSize } from './answer.ts';
import { computeSolarSize, type SolarSizeFacts } from './compute.ts';

const takes = [
  ...sunFacts,
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'inverter',
  'without',
] as const satisfies readonly (keyof Facts)[];

/** What panel do I need. */
export const solarSize: Intent<SolarSizeFacts> = {
  name: 'solar-size',
  title: 'What panel do I need?',
  takes,
  needs: needs(takes, [
    { ...needLoads, ask: 'what it has to run (say “fridge 1.2A” or “40Ah a day”)', key: 'need-run' },
  ]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const hasWatts = !!facts.solar?.some(panel => panel.powerW !== undefined);
    const isUsed = hasUse(facts);
    const isSolar = cues.has('solar') || !!facts.solar?.length || facts.peakSunHours !== undefined;
    if (isSolar && cues.has('ask-what-size')) add('asks what size of panel', 4);
    if (isSolar && isUsed && !hasWatts) add('solar without watts, and a use', 2);
    if (isSolar && !hasWatts && cues.has('ask-how-much')) add('asks how much solar', 2);
    if (isUsed && !hasWatts && facts.peakSunHours !== undefined) add('a use and sun hours', 2);
    if (isSolar && (facts.place ?? facts.latitudeDeg ?? facts.month ?? facts.mount) !== undefined)
      add('solar and a place, month or mount', 1);
    if (isSolar && (cues.has('carry-over') || facts.without?.includes('battery')))
      add('straight off the panel', 4);
    if (hasWatts && isUsed && cues.has('ask-can-it')) add('asks whether a panel is enough', 2);
    if (facts.durationH !== undefined && isUsed) add('loads over a time', -2);
    const isEnough = hasWatts && isUsed && !hasCapacity(facts) && facts.durationH === undefined;
    if (isEnough && cues.has('ask-can-it')) add('a panel against loads, and no battery', 2);
    if (cues.has('ask-how-long') || (cues.has('last') && !isEnough)) add('asks how long', -3);
    if (cues.has('ask-yield')) add('asks what it makes', -2);
    if (cues.has('rig') || cues.has('own-statement') || cues.has('save')) add('tells the rig', -2);
    if (cues.has('ask-who-is-right') || said.claims.length > 1) add('an argument', -4);
    return found;
  },
  reply: (facts, setting) => answerSolarSize(facts, computeSolarSize(facts, setting), setting),
};
