import type { Reply } from '#answer/reply.ts';
import { isSpoken } from '#basics/spoken.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { isSpotted } from '../spotting.ts';

type Spoken = Pick<ParsedMessage, 'recognised'>;

/** How it is asked whether a person answers, or who is behind it. */
const asksIt: readonly string[] = [
  'a_bot|a_robot|a_chatbot|a_human|a_real_human|a_real_person|real_person|an_ai|a_program|a_computer|a_person|are_you_human|are_you_real|you_human|you_real|you_ai|a_human_being you|youre|u|billywatt|this|it|talking|speaking|chatting -vacuum -mower -phone',
  'who|whos made_you|built_you|wrote_you|created_you|programmed_you|coded_you|invented_you|behind_you|made_billywatt|built_billywatt|wrote_billywatt|created_billywatt|behind_billywatt|made_this_bot|built_this_bot|wrote_this_bot|runs_this_bot|behind_this_bot|made_the_bot',
];
/** The same where nothing else is said. */
const bare: ReadonlySet<string> = new Set([
  'who are you',
  'what are you',
  'who is billywatt',
  'whos billywatt',
]);
const idle: ReadonlySet<string> = new Set(
  'hi hey hello ok so then mate anyway bot and but btw lol'.split(' '),
);
/** In a longer line such words ask something else. */
const mostWords = 12;

/** Whether it is asked who answers here: a bot or a person, and whose. */
export function asksWhoAnswers({ recognised: { words, mentions } }: Spoken): boolean {
  const spoken = words.filter(isSpoken);
  if (spoken.length > mostWords || mentions.some(({ kind }) => kind === 'amount')) return false;
  return isSpotted(words, asksIt) || bare.has(spoken.filter(word => !idle.has(word)).join(' '));
}

/** One friendly line. */
export const whoAnswers: Reply = {
  headline:
    'I’m Billywatt, a bot: an open-source program that does the sums of 12 V camping power. Ask away.',
  verdict: null,
  next: ['help'],
};
