import { isSpotted } from '#intents/spotting.ts';
import type { Heard } from '../hear.ts';
import { isAskingPlainly } from './asking.ts';

// "200 W so 190 Ah a day!": what somebody works out of gear is a claim of what it makes or takes, and no use of theirs.

const workingOut = [
  'so|thats|means|equals|works_out|makes|gives|must_be|adds_up|comes_to|gets|itll_do|itll_make -so_far -for_charging',
];

/** What runs but part of the time: its amps times 24 are no day's use. */
const cycling: ReadonlySet<string> = new Set(['fridge', 'freezer']);
/** So near to amps times 24, it is that sum. */
const nearly = 0.05;

/** "The fridge pulls 5 A so that's 120 Ah a day": a claim, as if it never stopped; undefined: no such sum. */
function aroundTheClock(heard: Heard): Heard | undefined {
  const { facts, recognised } = heard;
  const { dailyUseAh, dailyUseWh: _wh, solarAhPerDay, loads, ...rest } = facts;
  const [load] = loads ?? [];
  if (!load || loads?.length !== 1 || !cycling.has(load.name) || load.currentA === undefined)
    return undefined;
  const { chargeAhPerDay, hoursPerDay: _hours, ...bare } = load;
  const claimed =
    heard.claims.length === 1 && heard.claims[0]?.unit === 'Ah' ? heard.claims[0].value : undefined;
  const saidAh = dailyUseAh ?? solarAhPerDay ?? chargeAhPerDay ?? claimed;
  const sumAh = 24 * load.currentA * (load.count ?? 1);
  if (saidAh === undefined || Math.abs(saidAh - sumAh) > nearly * sumAh) return undefined;
  if (load.isAverage || !isSpotted(recognised.words, workingOut)) return undefined;
  const claims = [{ who: 'i', value: saidAh, unit: 'Ah' }];
  return { ...heard, intent: 'settle', facts: { ...rest, loads: [bare] }, claims, options: [], certainty: 1 };
}

/** A sum that somebody tells and asks nothing by: Ah a day beside a panel are what that is said to make. */
export function sumTold(heard: Heard): Heard {
  const around = aroundTheClock(heard);
  if (around) return around;
  const { facts, recognised } = heard;
  const { dailyUseAh, dailyUseWh, solar, loads, ...rest } = facts;
  const isPanel = solar?.some(({ powerW }) => powerW !== undefined) === true;
  const isThing = loads?.some(({ name }) => name !== 'load') === true;
  if (!isPanel || isThing || rest.batteries !== undefined) return heard;
  if (heard.cues.has('question-mark') || isAskingPlainly(heard)) return heard;
  if (!isSpotted(recognised.words, workingOut)) return heard;
  const { solarAhPerDay = dailyUseAh, solarWhPerDay = dailyUseWh } = rest;
  if (solarAhPerDay !== undefined) return taken(heard, { ...rest, solar, solarAhPerDay });
  return solarWhPerDay === undefined ? heard : taken(heard, { ...rest, solar, solarWhPerDay });
}

const taken = (heard: Heard, facts: Heard['facts']): Heard => ({
  ...heard,
  intent: 'solar-yield',
  facts,
  claims: [],
  options: [],
  certainty: 1,
});
