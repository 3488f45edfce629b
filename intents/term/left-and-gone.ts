import type { Reply } from '#answer/reply.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { decimals, plain } from '#quantity/round.ts';
import { amountsOf } from '../figures-told.ts';
import { isSpotted } from '../spotting.ts';

/** The trade's two words for a level, each by what people write, and plain ones that stand for either. */
const gone = ['dod|depth_of_discharge|discharged'] as const;
const left = ['soc|state_of_charge'] as const;
const asked = ['what|whats|which|how_much|how_many|is_it|so|then'] as const;
const eitherWay = ['full|left|charged|remaining|used|gone|empty|same|is|means|equals'] as const;

/** Rounding that people do, points. */
const nearPoints = 0.5;

const percent = (value: number): string => `${decimals(value, 0)} %`;

const goneWord = /^(?:dod|depth|discharged|used|gone|empty|drained)$/;
const leftWord = /^(?:soc|state|full|left|charged|remaining)$/;
/** Amounts of other kinds make it a sum of its own. */
const others = ['current', 'power', 'time', 'voltage', 'energy', 'temperature'] as const;

/** "If it's 70 % DoD, what's the SoC": the other of the two; undefined where not one of them is told and the other asked. */
function theOther(words: readonly string[], mentions: readonly Mention[]): Reply | undefined {
  const [told, second] = amountsOf(mentions, 'percent');
  if (!told || second || told.value > 100 || words.length > 18) return undefined;
  if (others.some(dimension => amountsOf(mentions, dimension).length > 0)) return undefined;
  const distance = (names: RegExp): number =>
    // The sign of per cent stands between it and what follows.
    Math.min(
      ...words.flatMap((word, at) =>
        names.test(word) ? [at > told.from ? at - told.from - 1 : told.from - at] : [],
      ),
      Infinity,
    );
  const [toGone, toLeft] = [distance(goneWord), distance(leftWord)];
  if (!Number.isFinite(toGone) || !Number.isFinite(toLeft)) return undefined;
  if (!isSpotted(words, asked)) return undefined;
  // "SoC is 35 %, so DoD is?": of two as near it is of what stands before it.
  const isGoneFirst = words.findIndex(word => goneWord.test(word)) < told.from;
  const isGoneTold = toGone === toLeft ? isGoneFirst : toGone < toLeft;
  const rest = 100 - told.value;
  const size = amountsOf(mentions, 'charge')[0]?.value;
  const leftAh =
    size === undefined ? '' : `, ${plain(((isGoneTold ? rest : told.value) * size) / 100)} Ah left`;
  return {
    headline: isGoneTold
      ? `${percent(rest)} SoC: ${percent(told.value)} is gone, ${percent(rest)} is left${leftAh}.`
      : `${percent(rest)} DoD: ${percent(told.value)} is left${leftAh}, ${percent(rest)} is gone.`,
    lines: [
      'SoC, state of charge, is what is left; DoD, depth of discharge, is what is gone: they add up to 100 %.',
    ],
    verdict: null,
    next: ['what is depth of discharge?'],
  };
}

/** "80 % DoD is 20 % SoC, yeah?": yes or no, as the two add up to 100 %; undefined where no such two are told. */
export function leftAndGone({
  recognised: { mentions, words },
}: Pick<ParsedMessage, 'recognised'>): Reply | undefined {
  const told = amountsOf(mentions, 'percent').map(({ value }) => value);
  const [first = 0, second = 0, ...more] = told;
  const [isGone, isLeft] = [isSpotted(words, gone), isSpotted(words, left)];
  if (told.length === 1 && (isGone || isLeft)) return theOther(words, mentions);
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
