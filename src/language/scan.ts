import { digitOf, fractionOf, isLetter, isNothing, isSpace } from './characters.ts';
import { number } from './scan-number.ts';
import { markupEnd, plainSign } from './scan-signs.ts';
import { word } from './scan-word.ts';
import { type Token, token } from './token.ts';

/** Bounds the work of all that follows. */
const MOST_TOKENS = 3000;

const isAsciiLetter = (code: number): boolean => (code >= 97 && code <= 122) || (code >= 65 && code <= 90);

/** Cuts a message into tokens in one pass over its characters. Never throws; linear in the length. */
export function scan(text: string): Token[] {
  const tokens: Token[] = [];
  const end = text.length;
  let at = 0;
  let isGlued = false;
  while (at < end && tokens.length < MOST_TOKENS) {
    const code = text.charCodeAt(at);
    if (code === 32) {
      isGlued = false;
      at += 1;
      continue;
    }
    if (isAsciiLetter(code)) {
      const found = word(text, at, isGlued);
      tokens.push(found);
      at = found.to;
      isGlued = true;
      continue;
    }
    if (isSpace(code) || isNothing(code) || (code === 42 && text.charCodeAt(at + 1) === 42) || code === 95) {
      if (!isNothing(code)) isGlued = false;
      at += code === 42 ? 2 : 1;
      continue;
    }
    const noise = code === 60 || code === 93 || code === 58 ? markupEnd(text, at) : at;
    if (noise > at) {
      at = noise;
      isGlued = false;
      continue;
    }
    const width = code >= 0xd800 && code < 0xdc00 ? 2 : 1;
    if (digitOf(text, at) >= 0 || fractionOf(code) > 0 || startsDecimal(text, at, tokens, isGlued)) {
      const found = number(text, at, isGlued, isGlued && tokens.at(-1)?.text === ',');
      tokens.push(found);
      at = found.to;
    } else if (isLetter(text, at)) {
      const found = word(text, at, isGlued);
      tokens.push(found);
      at = found.to;
    } else if (width === 2 || (code > 0x2bff && code !== 0x3001)) {
      at += width; // emoji and other pictures
      isGlued = false;
      continue;
    } else if (code === 45 && isGlued && tokens.at(-1)?.kind !== 'sign' && isLetter(text, at + 1)) {
      at += 1; // "dc-dc", "12-volt": as if a space
      isGlued = false;
      continue;
    } else {
      const sign = code > 126 ? plainSign(code) : text[at]!;
      if (sign) tokens.push(token('sign', sign, text[at]!, 0, at, at + 1, isGlued));
      at += 1;
    }
    isGlued = true;
  }
  return tokens;
}

/** ".9a": a point that starts a number; after a letter it ends a sentence. */
function startsDecimal(text: string, at: number, tokens: readonly Token[], isGlued: boolean): boolean {
  if (text.charCodeAt(at) !== 46 || digitOf(text, at + 1) < 0) return false;
  return !isGlued || tokens.at(-1)?.kind === 'sign';
}
