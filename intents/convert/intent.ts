import { withAsides } from '../asides.ts';
import { boilingBeside } from '../boiling.ts';
import { defineIntent } from '../define-intent.ts';
import { factsOf } from '../facts.ts';
import { usualWatts } from '../usual-watts.ts';
import { answerConvert } from './answer.ts';
import { convertAsides } from './asides-table.ts';
import { computeConversion, numbersOf, throughInverter, wholeOf } from './compute.ts';
import { convertedFacts, factNumbersOf } from './from-facts.ts';

const units = defineIntent({
  name: 'convert',
  title: 'Watts, amps and other units',
  asksNothing: true,
  hasNoSum: true,
  numbersBeside: ({ conversion, facts }) => (conversion ? numbersOf(conversion) : factNumbersOf(facts)),
  reply: (_facts, setting) => {
    const { conversion, facts, recognised } = setting.parsed;
    const result = computeConversion(wholeOf(conversion, facts));
    const [load, other] = facts.loads ?? [];
    const watts = !conversion && load && !other ? usualWatts(load, recognised.words) : undefined;
    if (watts) return { headline: watts, verdict: null, next: ['60W in amps', 'what does it use a day?'] };
    const ofFacts = result ? undefined : convertedFacts(factsOf(facts), setting);
    if (ofFacts) return ofFacts;
    return answerConvert(result, wholeOf(conversion, facts), result && throughInverter(result, setting));
  },
});

/** What is 60 W in amps, and what people ask beside that. */
export const convert = withAsides(units, [...boilingBeside, ...convertAsides]);
