import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerConvert } from './answer.ts';
import { computeConversion } from './compute.ts';

/** What is 60 W in amps. */
export const convert: Intent = {
  name: 'convert',
  title: 'Watts, amps and other units',
  asksNothing: true,
  hasNoSum: true,
  takes: [],
  needs: needs([], []),
  reply: (_facts, setting) =>
    answerConvert(computeConversion(setting.parsed.conversion), setting.parsed.conversion),
};
