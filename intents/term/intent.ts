import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerTerm } from './answer.ts';
import { termsIn } from './match.ts';

const takes = ['batteries', 'arrangement', 'systemVoltageV'] as const satisfies readonly (keyof Facts)[];

/** What is an amp hour; the difference between two words; why not all of the label. */
export const term: Intent = {
  name: 'term',
  title: 'What does that word mean?',
  takes,
  needs: needs(takes, []),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    if (said.term !== undefined) add('asks what something is', 4);
    const named = said.term === undefined ? [] : termsIn(said.term);
    if (named.length > 0) add('and it is a word of the trade', 1);
    if (cues.has('ask-what-is') && named.length > 0) add('asks what is, and names a word', 2);
    if (named.length > 1 && (cues.has('ask-compare') || cues.has('ask-what-is')))
      add('compares two words', 1);
    const isBare = !facts.loads && facts.durationH === undefined && !facts.solar && !facts.inverter?.powerW;
    if (cues.has('ask-why') && facts.batteries && isBare) add('asks why of a battery', 3);
    if (facts.batteries?.some(b => b.capacityAh) && !cues.has('ask-why'))
      add('tells a battery with its size', -3);
    if (facts.arrangement ?? (cues.has('series') || cues.has('parallel') ? 'said' : undefined))
      add('of batteries joined', said.term === 'bank' ? -5 : 0);
    if (said.claims.length > 0) add('somebody claims a number', -3);
    if (said.conversion) add('a conversion', -3);
    if (facts.loads?.length && facts.batteries) add('a load and a battery to size', -3);
    if (cues.has('rig') && said.owner !== undefined) add("asks of somebody's rig", -4);
    if (facts.loads?.length && named.length === 0) add('tells loads, names no word of the trade', -4);
    if (cues.has('learn') || cues.has('quiz')) add('wants a lesson', -2);
    return found;
  },
  reply: (facts, setting) => answerTerm(facts, setting),
};
