import { isSpotted } from './spotting.ts';

/** Words that ask whether something won't do: a yes to them says no to the thing. */
const against: readonly string[] = [
  'too_big|too_small|too_thin|too_thick|too_much|too_little|too_weak|too_high|too_skinny|too_light|too_large',
  'is|are|that|it bad|wrong|dangerous|risky|a_problem|overkill -how_bad -not_bad -too',
];

/** Whether it is asked the other way round: "is 4 mm² too thin", "is that bad". */
export const isAskedAgainst = (words: readonly string[]): boolean => isSpotted(words, against);
