import { defineIntent } from '../define-intent.ts';
import { usualWatts } from '../usual-watts.ts';
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
    const { conversion, facts, recognised } = setting.parsed;
    const result = computeConversion(conversion);
    const [load, other] = facts.loads ?? [];
    const watts = !conversion && load && !other ? usualWatts(load, recognised.words) : undefined;
    if (watts) return { headline: watts, verdict: null, next: ['60W in amps', 'what does it use a day?'] };
    return answerConvert(result, conversion, result && throughInverter(result, setting));
  },
});
