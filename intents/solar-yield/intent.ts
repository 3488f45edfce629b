import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { type Need, needs } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerSolarYield } from './answer.ts';
import { computeSolarYield, type SolarYieldFacts } from './compute.ts';

const takes = [
  ...sunFacts,
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'inverter',
] as const satisfies readonly (keyof Facts)[];

const needPanel: Need = {
  anyOf: ['solar'],
  ask: "the panel's watts (say “200W panel”)",
  holds: facts => facts.solar!.some(panel => panel.powerW !== undefined),
};

/** What will my panel make. */
export const solarYield: Intent<SolarYieldFacts> = {
  name: 'solar-yield',
  title: 'What will my panel make?',
  takes,
  needs: needs(takes, [needPanel]) as Intent<SolarYieldFacts>['needs'],
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const hasWatts = !!facts.solar?.some(panel => panel.powerW !== undefined);
    const isUsed = hasUse(facts);
    const isSun = hasWatts || cues.has('solar');
    if (cues.has('ask-yield') && isSun) add('asks what a panel makes', 4);
    if (cues.has('ask-yield') && cues.has('sun')) add('asks what the sun brings', 2);
    if (hasWatts && !isUsed) add('a panel in watts and no loads', 2);
    if (hasWatts && (cues.has('ask-how-much') || cues.has('ask-total')))
      add('asks how much of a panel in watts', 2);
    if (isSun && facts.peakSunHours !== undefined) add('a panel and sun hours', 2);
    if (hasWatts && (facts.place ?? facts.latitudeDeg ?? facts.month) !== undefined)
      add('a panel and a place or month', 1);
    if (hasWatts && (facts.mount ?? facts.sky ?? facts.shade) !== undefined)
      add('a panel and how it lies in the sun', 1);
    if (hasWatts && isUsed && cues.has('ask-can-it')) add('asks whether a panel is enough', 1);
    if (facts.durationH !== undefined && isUsed) add('loads over a time', -3);
    if (facts.solarAhPerDay !== undefined || facts.solarWhPerDay !== undefined)
      add('tells what it makes', -5);
    if (cues.has('ask-how-long') || cues.has('last')) add('asks how long', -3);
    if (cues.has('ask-what-size')) add('asks what size', -3);
    if (cues.has('own-statement') || cues.has('rig') || cues.has('save')) add('tells the rig', -3);
    if (cues.has('ask-who-is-right') || said.claims.length > 1) add('an argument', -4);
    if (cues.has('carry-over')) add('straight off the panel', -2);
    return found;
  },
  reply: (facts, setting) => answerSolarYield(facts, computeSolarYield(facts, setting), setting),
};
