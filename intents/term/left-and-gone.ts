import type { Reply } from '#answer/reply.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { decimals } from '#quantity/round.ts';
import { amountsOf } from '../figures-told.ts';
import { isSpotted } from '../spotting.ts';

/** The trade's two words for a level, each by what people write, and plain ones that stand for either. */
const gone = ['dod|depth_of_discharge|discharged'] as const;
const left = ['soc|state_of_charge'] as const;
const eitherWay = ['full|left|charged|remaining|used|gone|empty|same|is|means|equals'] as const;

/** Rounding that people do, points. */
const nearPoints = 0.5;

const percent = (value: number): string => `${decimals(value, 0)} %`;

/** "80 % DoD is 20 % SoC, yeah?": yes or no, as the two add up to 100 %; undefined where no such two are told. */
export function leftAndGone({
  recognised: { mentions, words },
}: Pick<ParsedMessage, 'recognised'>): Reply | undefined {
  const told = amountsOf(mentions, 'percent').map(({ value }) => value);
  const [first = 0, second = 0, ...more] = told;
  const [isGone, isLeft] = [isSpotted(words, gone), isSpotted(words, left)];
  if (told.length < 2 || more.length > 0 || (!isGone && !isLeft) || !isSpotted(words, eitherWay))
    return undefined;
  if (Math.max(first, second) > 100 || words.length > 16) return undefined;
  const place = (names: RegExp): number => words.findIndex(word => names.test(word));
  const [goneAt, leftAt] = [
    place(/^(?:dod|depth|used|gone|empty)$/),
    place(/^(?:soc|state|full|left|charged|remaining)$/),
  ];
  const isGoneFirst = goneAt >= 0 && (leftAt < 0 || goneAt < leftAt);
  const share = isGoneFirst ? first : 100 - first;
  const says = isGoneFirst
    ? `${percent(first)} DoD leaves ${percent(100 - first)} SoC`
    : `${percent(first)} SoC is ${percent(share)} DoD`;
  const isRight = Math.abs(first + second - 100) <= nearPoints;
  return {
    headline: `${isRight ? 'Yes' : 'No'}: ${says}. The two add up to 100 %.`,
    lines: ['SoC, state of charge, is what is left; DoD, depth of discharge, is what is gone.'],
    verdict: isRight ? 'yes' : 'no',
    next: ['what is depth of discharge?'],
  };
}
