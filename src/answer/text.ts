import { significant, toCheck } from '#quantity/round.ts';
import type { WorkingStep } from './answer.ts';
import { printAssumed, shortAssumed } from './assumed.ts';
import { inGrammar } from './grammar.ts';
import type { Reply } from './reply.ts';
import { english, type Speech } from './speech.ts';
import { cautions, phrases } from './words/en.ts';

export { amount } from './assumed.ts';

/** Telegram's limit of a message, in UTF-16 units. */
export const textLimit = 4096;

/** One line of working with its result: "Watts divided by volts are amps: 60 W (power) ÷ 12 V (nominal voltage) = 5 A". */
export const printWorking = (step: WorkingStep): string =>
  `${step.words ?? step.formula} = ${amountPlain(step.value, step.unit)}`;

const amountPlain = (value: number, unit: string): string => {
  const number = significant(toCheck(value), 4);
  return unit ? `${number} ${unit}` : number;
};

/**
 * The reply as the chat shows it: the answer first, then what helps, what was assumed (the two that matter
 * most, in one line), what to be careful of (two lines at most), and the working where it was asked for. Plain text; cut
 * at a line below Telegram's limit.
 */
export function print(
  reply: Reply,
  options: { readonly isWorkingShown?: boolean; readonly words?: Speech } = {},
): string {
  const { isWorkingShown, words = english } = options;
  const blocks: string[] = [[reply.headline, ...(reply.lines ?? [])].join('\n')];
  const assumed = reply.assumed ?? [];
  const short = isWorkingShown ? '' : shortAssumed(assumed, words, reply.assumedInLines);
  if (assumed.length > 0 && (isWorkingShown || short !== '')) {
    const told = isWorkingShown
      ? assumed
          .slice(0, 8)
          .map(a => printAssumed(a, words))
          .join('; ')
      : short;
    blocks.push(`${words.say('assumed', phrases.assumed)}: ${told}.`);
  }
  const working = isWorkingShown ? (reply.working?.() ?? []) : [];
  if (working.length > 0)
    blocks.push([`${words.say('working', phrases.working)}:`, ...working.map(printWorking)].join('\n'));
  const warned = [...new Set(reply.cautions ?? [])].slice(0, 2);
  const careful = words.say('careful', phrases.caution);
  if (warned.length > 0)
    blocks.push(warned.map(code => `${careful}: ${words.say(`caution-${code}`, cautions[code])}`).join('\n'));
  return cut(inGrammar(blocks.join('\n\n')));
}

/** Cuts at the last whole line below the limit, never inside a surrogate pair. */
export function cut(text: string, limit = textLimit): string {
  if (text.length <= limit) return text;
  const head = text.slice(0, limit - 2);
  const line = head.lastIndexOf('\n');
  return `${(line > limit / 2 ? head.slice(0, line) : head.replace(/[\uD800-\uDBFF]$/, '')).trimEnd()}\n…`;
}
