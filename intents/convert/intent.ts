import { defineIntent } from '../define-intent.ts';
import { answerConvert } from './answer.ts';
import { computeConversion, numbersOf, throughInverter } from './compute.ts';

/** What is 60 W in amps. */
export const convert = defineIntent({
  name: 'convert',
  title: 'Watts, amps and other units',
  asksNothing: true,
  hasNoSum: true,
  numbersBeside: ({ conversion }) => (conversion ? numbersOf(conversion) : []),
  reply: (_facts, setting) => {
    const { conversion } = setting.parsed;
    const result = computeConversion(conversion);
    return answerConvert(result, conversion, result && throughInverter(result, setting));
  },
});
