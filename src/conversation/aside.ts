import { termsIn } from '#intents/term/match.ts';
import { read } from '#language/read.ts';
import type { Context, Said } from '#language/said.ts';
import type { Memory } from './memory.ts';

const opening = /^\s*(?:and|n|&|what about|how about|and what about)\s+(?:an?\s+|the\s+)?/i;
const mostWords = 5;

/**
 * "And PWM?" after "what is MPPT": the next word asked after. A question about a word stands aside of the talk: what
 * turns the question before still does, unless it names a word and nothing else.
 */
export function aside(text: string, said: Said, { aside: before }: Memory, context: Context): Said {
  const isShort = said.words <= mostWords && opening.test(text);
  const figures =
    said.loose.length + said.numbers.length + (said.facts.batteries?.some(b => b.capacityAh) ? 1 : 0);
  if (before !== 'term' || !isShort || figures > 0) return said;
  const asked = read(`what is ${text.replace(opening, '')}`, context);
  return asked.term !== undefined && termsIn(asked.term).length > 0 ? asked : said;
}
