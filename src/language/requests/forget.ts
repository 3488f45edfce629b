import { present } from '#basics/present.ts';
import { type ForgetRequest, whatIsKept } from './kept.ts';

export type { ForgetRequest } from './kept.ts';

/** Verbs that mean to lose what is kept. "Reset", "clear" and their like are used of machines and tables too. */
const losing =
  /^(?:forget|delete|erase|wipe|purge|scrub|bin|unlearn|remove|drop|clear|reset|destroy|expunge|ditch|scrap|nuke|lose|dump|chuck|trash|rub)$/;

/** What may stand before a plain request without changing it. */
const opening = new Set(
  'please pls plz kindly listen but and yall all fellas folks time hey hi hello ok okay right so well now just then can could would will you u bot billywatt mate i want wanna request would like you to need id im to do go and lets must should may we us the yes yeah actually sorry completely simply quickly for me thanks cheers ya ye ill ask asking is it possible time'.split(
    ' ',
  ),
);

/** Words that turn a request into its opposite, a tale or a condition. */
const turning =
  /^(?:dont|not|never|didnt|wont|cant|couldnt|forgot|forgets|if|when|unless|before|how|why|what|did|does|who|almost|nearly|said|says|told|he|she|they)$/;

/** Ways to say "delete" in more words than one. */
const longWays = /\b(?:gets? rid of|throw (?:away|out)|(?:the )?(?:deletion|erasure|removal) of)\b/g;

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(longWays, 'delete')
    .match(/\p{L}+|[.!?,;:\n]/gu) ?? [];

/** What ends a sentence, and what ends a part of one: a comma, or the reason given before a request or after it. */
const stop = /^[.!?;:\n]$/;
const joint = /^(?:,|so|because|since|cos|coz|cause)$/;

function split(words: readonly string[], at: RegExp): string[][] {
  const found: string[][] = [[]];
  for (const word of words)
    if (at.test(word)) found.push([]);
    else present(found.at(-1)).push(word);
  return found.filter(part => part.length > 0);
}

/** How far into a part the losing verb may stand, after nothing but courtesy. */
function verbAt(part: readonly string[]): number {
  for (let i = 0; i < part.length; i += 1) {
    if (losing.test(part[i]!)) return i;
    if (turning.test(part[i]!) || !opening.has(part[i]!)) return -1;
  }
  return -1;
}

/** "I'd like my rig deleted", "my data gone please": what stands before the participle. */
function passive(part: readonly string[]): readonly string[] | undefined {
  const end = part.findIndex(word => /^(?:deleted|forgotten|erased|wiped|removed|purged)$/.test(word));
  const start = part.findIndex(word => /^(?:want|like|need|have|get)$/.test(word));
  return start >= 0 && start < end && part.slice(0, start).every(word => opening.has(word))
    ? part.slice(start + 1, end)
    : undefined;
}

const condition = /^(?:if|when|unless|until|whenever)$/;

function inPart(part: readonly string[]): ForgetRequest | undefined {
  const asked = passive(part);
  if (asked) return whatIsKept('delete', asked);
  const at = verbAt(part);
  return at < 0 ? undefined : whatIsKept(part[at]!, part.slice(at + 1));
}

/**
 * What a message plainly asks the bot to forget of what it keeps, or undefined. A machine, a fault, a load, a
 * number or a tale is never such a request; nothing is wiped by this alone, the bot asks back first.
 */
export function forgetRequest(text: string): ForgetRequest | undefined {
  const sentences = split(wordsOf(text), stop);
  // "If it rains, forget my rig" is no request; in a long tale only its end may be one.
  if (sentences.some(words => split(words, joint).some(part => condition.test(part[0]!)))) return undefined;
  for (const words of sentences.slice(-2)) {
    const parts = split(words, joint);
    const whole = inPart(parts.flat());
    if (whole) return whole;
    for (const part of parts.slice(-3)) {
      const request = inPart(part);
      if (request) return request;
    }
  }
  return undefined;
}

/** Whether a message plainly asks to forget what the bot keeps. */
export const isForgetRequest = (text: string): boolean => forgetRequest(text) !== undefined;
