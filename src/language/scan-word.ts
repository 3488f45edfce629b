import { digitOf, isLetter, superscriptOf } from './characters.ts';
import { type Token, token } from './token.ts';
import { table } from './words/table.ts';

/** Letters that take one digit along: "mm2", "b2b", "lifepo4", "dc2dc". */
const takesDigit = table({
  mm: '2',
  eli: '5',
  m: '2',
  b: '2',
  dc: '2',
  lifepo: '4',
  lifepo4: '',
  lipo: '4',
  lifpo: '4',
  lfp: '4',
  qmm: '2',
  co: '2',
  ac: '2',
  a: '2',
  sqmm: '2',
});
const joinsOn = new Set(['b2', 'dc2', 'ac2']);

const isApostrophe = (code: number): boolean =>
  code === 39 || code === 0x2019 || code === 0x2018 || code === 0x2bc || code === 96 || code === 0xb4;

/** Reads the word that starts at `from`: apostrophes dropped, small letters, wide and other forms made plain. */
export function word(text: string, from: number, isGlued: boolean): Token {
  let at = from;
  let out = '';
  let hasApostrophe = false;
  let isPlain = true;
  let start = from;
  if (text.charCodeAt(from) === 37) at = from + 1; // % is a word by itself
  for (; at < text.length && text.charCodeAt(from) !== 37; ) {
    const code = text.charCodeAt(at);
    if ((code >= 97 && code <= 122) || (code >= 65 && code <= 90)) {
      at++;
      continue;
    }
    if (code === 32 || code === 46 || code === 44) break;
    if (isApostrophe(code) && isLetter(text, at + 1)) {
      out += text.slice(start, at);
      hasApostrophe = true;
      at++;
      start = at;
      continue;
    }
    if (code === 38 && at - from === 1 && (text.charCodeAt(at + 1) | 32) === 115) {
      at++;
      continue;
    } // b&s
    if (superscriptOf(code) >= 0 && at - from <= 2) {
      out += `${text.slice(start, at)}${superscriptOf(code)}`;
      at++;
      start = at;
      break;
    }
    if (digitOf(text, at) >= 0) {
      const soFar = (out + text.slice(start, at)).toLowerCase();
      if (takesDigit[soFar] === text[at] && digitOf(text, at + 1) < 0) {
        at++;
        if (joinsOn.has(soFar + text[at - 1])) continue;
      }
      break;
    }
    if (code > 126 && isLetter(text, at)) {
      isPlain = false;
      at += code >= 0xd800 && code < 0xdc00 ? 2 : 1;
      continue;
    }
    break;
  }
  out += text.slice(start, at);
  const raw = text.slice(from, at);
  let lower = out.toLowerCase();
  if (!isPlain) lower = lower.normalize('NFKC');
  const made = token('word', lower, raw, 0, from, at, isGlued);
  made.hasApostrophe = hasApostrophe;
  return made;
}
