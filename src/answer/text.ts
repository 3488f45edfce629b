import { significant } from '#quantity/round.ts';
import type { WorkingStep } from './answer.ts';
import { printAssumed } from './assumed.ts';
import { inGrammar } from './grammar.ts';
import type { Reply } from './reply.ts';
import { english, type Speech } from './speech.ts';
import { cautions, phrases } from './words/en.ts';

export { amount, printAssumed } from './assumed.ts';

/** Telegram's limit of a message, in UTF-16 units. */
export const textLimit = 4096;

/** One line of working with its result: "I = P ÷ V = 60 W ÷ 12 V = 5 A". */
export const printWorking = (step: WorkingStep): string =>
  `${step.formula} = ${amountPlain(step.value, step.unit)}`;

const amountPlain = (value: number, unit: string): string => {
  const number = significant(value, 4);
  return unit ? `${number} ${unit}` : number;
};

/**
 * The reply as the chat shows it: the answer first, then what helps, what was assumed (the two that matter
 * most), what to be careful of, and the working where it was asked for. Plain text; cut at a line below Telegram's limit.
 */
export function print(
  reply: Reply,
  options: { readonly isWorkingShown?: boolean; readonly words?: Speech } = {},
): string {
  const { isWorkingShown, words = english } = options;
  const blocks: string[] = [[reply.headline, ...(reply.lines ?? [])].join('\n')];
  const assumed = (reply.assumed ?? []).slice(0, isWorkingShown ? 8 : 2);
  if (assumed.length > 0)
    blocks.push(
      `${words.say('assumed', phrases.assumed)}: ${assumed.map(a => printAssumed(a, words)).join('; ')}.`,
    );
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
