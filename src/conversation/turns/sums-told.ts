import { isSpotted } from '#intents/spotting.ts';
import type { Heard } from '../hear.ts';
import { isAskingPlainly } from './asking.ts';

// "200 W so 190 Ah a day!": what somebody works out of gear is a claim of what it makes, and no use of theirs.

const workingOut = [
  'so|thats|means|equals|works_out|makes|gives|must_be|adds_up|comes_to|gets|itll_do|itll_make -so_far -for_charging',
];

/** A sum that somebody tells and asks nothing by: Ah a day beside a panel are what that is said to make. */
export function sumTold(heard: Heard): Heard {
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
