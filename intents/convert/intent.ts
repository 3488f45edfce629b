import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerConvert } from './answer.ts';
import { computeConversion } from './compute.ts';

/** What is 60 W in amps. */
export const convert: Intent = {
  name: 'convert',
  title: 'Watts, amps and other units',
  takes: [],
  needs: needs([], []),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    if (!said.conversion) return found;
    add('two units to convert between', 4);
    if (said.conversion.to !== undefined) add('names the unit wanted', 1);
    if (facts.loads?.length && facts.batteries?.length) add('a load and a battery', -3);
    if (cues.has('ask-how-long') || cues.has('last')) add('asks how long', -3);
    if (cues.has('ask-what-size')) add('asks what size', -2);
    if (said.claims.length > 0 || cues.has('ask-who-is-right')) add('claims', -2);
    return found;
  },
  reply: (_facts, setting) =>
    answerConvert(computeConversion(setting.said.conversion), setting.said.conversion),
};
