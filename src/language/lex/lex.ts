import { digitOf, fractionOf, isLetter, isNothing, isSpace, superscriptOf } from './characters.ts';

export type TokenKind = 'word' | 'number' | 'sign';

/** A word, a number in digits or a sign, as it stands in the message. */
export interface Token {
  readonly kind: TokenKind;
  /** Small letters, no accents or apostrophes ("What's" → "whats"); a sign is itself. */
  readonly text: string;
  /** Of a number. */
  readonly value: number;
  /** Of a number: how its digits may also be meant ("10.000" → 10000). */
  readonly other?: number;
  readonly start: number;
  readonly end: number;
  /** No gap between it and the token before. */
  readonly isGlued: boolean;
  /** It starts with a capital letter. */
  readonly isCapital: boolean;
  /** A line break stands before it. */
  readonly isNewLine: boolean;
}

const marks = /\p{M}/gu;
const plainLetters = /^[a-z]*$/;
const specials: Readonly<Record<string, string>> = {
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ı: 'i',
  µ: 'u',
  μ: 'u',
  '℃': '°c',
  '℉': '°f',
  ª: 'a',
  '×': 'x',
};

/** Small letters without accents. */
export function foldWord(raw: string): string {
  const lower = raw.toLowerCase();
  if (plainLetters.test(lower)) return lower;
  let out = '';
  for (const letter of lower.normalize('NFKD').replace(marks, '')) out += specials[letter] ?? letter;
  return out;
}

const isPlainLetter = (code: number): boolean => (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
/** Letters, digits and "_" of a name that somebody is called by in a chat. */
const isOfHandle = (code: number): boolean =>
  isPlainLetter(code) || code === 95 || (code >= 48 && code <= 57);
const isDigit = (text: string, at: number): boolean => digitOf(text, at) >= 0;
const isApostrophe = (code: number): boolean =>
  code === 39 || code === 0x2019 || code === 0x2018 || code === 0x60 || code === 0x2bc;
const isUpper = (letter: string): boolean => letter !== letter.toLowerCase();

interface Numeral {
  readonly value: number;
  readonly other?: number;
  readonly end: number;
}

/** Whether amp hours stand at a place, with a space before them or without. */
const isAmpHours = (text: string, at: number): boolean =>
  text
    .slice(at, at + 3)
    .trim()
    .toLowerCase()
    .startsWith('ah');

/** Digits from `at` on: "1,200", "1,2", "10 000", "2½", "1/2" is left to the parser of numbers. */
function numeralAt(text: string, at: number): Numeral {
  const step = (i: number): number => (text.charCodeAt(i) >= 0xd800 && text.charCodeAt(i) < 0xdc00 ? 2 : 1);
  let whole = '';
  let i = at;
  const digits = (from: number): number => {
    let j = from;
    while (j < text.length && isDigit(text, j)) j += step(j);
    return j;
  };
  const take = (from: number, to: number): string => {
    let out = '';
    for (let j = from; j < to; j += step(j)) out += digitOf(text, j);
    return out;
  };
  let end = digits(i);
  whole = take(i, end);
  i = end;
  let hasGroups = false;
  let decimals = '';
  let other: number | undefined;
  for (;;) {
    const sign = text[i];
    const isGap = sign === ' ' || sign === '\u00a0' || sign === '\u202f' || sign === "'";
    if (sign !== ',' && sign !== '.' && !isGap) break;
    const after = i + 1;
    if (!isDigit(text, after)) break;
    end = digits(after);
    const group = take(after, end);
    const isThousands = group.length === 3 && whole.length <= (hasGroups ? 99 : 3) && !/^0\d/.test(whole);
    if (isGap) {
      // "10 000 mAh", "1 200 W"; "2 100" is two numbers, so a small count before needs zeros behind it. "1 100 ah" is one
      // battery, "1 100w" one panel: who parts thousands parts the unit too.
      const isCount =
        /^[2-9]$/.test(whole) || (whole === '1' && (isLetter(text, end) || isAmpHours(text, end)));
      if (!isThousands || (group !== '000' && (!group.endsWith('00') || whole.length > 2 || isCount))) break;
      whole += group;
      hasGroups = true;
      i = end;
      continue;
    }
    if (sign === ',' && isThousands && whole !== '0') {
      whole += group;
      hasGroups = true;
      i = end;
      continue;
    }
    if (sign === '.' && group === '000' && whole.length <= 3 && whole !== '0') other = Number(whole + group);
    // "1.2.2026" is no number; the first two parts are taken.
    decimals = group;
    i = end;
    break;
  }
  let value = Number(decimals ? `${whole}.${decimals}` : whole);
  const fraction = fractionOf(text.charCodeAt(i));
  if (fraction > 0) {
    value += fraction;
    i++;
  }
  return { value, other, end: i };
}

/** Whether a decimal point may stand right behind: "(.35 A". */
const isOpening = (token: Token | undefined): boolean =>
  token === undefined || (token.kind === 'sign' && token.text !== '.');

/** "Sayin'", "runnin'": the apostrophe stands for a letter; after a shorter word it closes a quotation. */
const isCutShort = (word: string): boolean => word.length > 4 && /in$/i.test(word);

/** A message as tokens, in one pass over its characters. */
export function lex(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = 0;
  let isNewLine = true;
  let lastEnd = -1;
  const push = (
    kind: TokenKind,
    folded: string,
    start: number,
    end: number,
    more: Partial<Token> = {},
  ): void => {
    tokens.push({
      kind,
      text: folded,
      value: more.value ?? Number.NaN,
      other: more.other,
      start,
      end,
      isGlued: start === lastEnd,
      isCapital: isUpper(text[start] ?? ''),
      isNewLine,
    });
    isNewLine = false;
    lastEnd = end;
  };
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 10) {
      isNewLine = true;
      at++;
    } else if (isSpace(code) || isNothing(code)) at++;
    else if (isDigit(text, at)) {
      const { value, other, end } = numeralAt(text, at);
      push('number', text.slice(at, end), at, end, { value, other });
      at = end;
    } else if (fractionOf(code) > 0) {
      push('number', text[at]!, at, at + 1, { value: fractionOf(code) });
      at++;
    } else if (code === 46 && isDigit(text, at + 1) && (lastEnd !== at || isOpening(tokens.at(-1)))) {
      const { value, end } = numeralAt(text, at + 1);
      const digits = end - at - 1;
      push('number', text.slice(at, end), at, end, { value: value / 10 ** digits });
      at = end;
    } else if (isLetter(text, at)) {
      const start = at;
      // Plain letters, most of what is written, in one piece.
      while (isPlainLetter(text.charCodeAt(at))) at++;
      // "@kaz_04": who is called so.
      if (text[start - 1] === '@') while (isOfHandle(text.charCodeAt(at))) at++;
      let word = text.slice(start, at);
      const isPercent = code === 37 || code === 0xb0;
      while (at < text.length) {
        const c = text.charCodeAt(at);
        if (isLetter(text, at)) {
          if ((c === 37 || c === 0xb0) !== isPercent && !isPercent) break;
          const size = c >= 0xd800 && c < 0xdc00 ? 2 : 1;
          word += text.slice(at, at + size);
          at += size;
          if (c === 37) break;
        } else if (isApostrophe(c) && (isLetter(text, at + 1) || isCutShort(word))) at++;
        else if (superscriptOf(c) >= 0) {
          word += superscriptOf(c);
          at++;
        } else if (isNothing(c)) at++;
        else break;
      }
      // A digit that belongs to the word: "mm2", "co2", "b2b", "lifepo4".
      const folded = foldWord(word);
      const tail = withDigit(text, at, folded);
      if (tail) {
        push('word', tail.word, start, tail.end);
        at = tail.end;
      } else push('word', folded, start, at);
    } else {
      const size = code >= 0xd800 && code < 0xdc00 ? 2 : 1;
      const raw = text.slice(at, at + size);
      // "dc-dc", "12-volt": the hyphen joins words and says nothing.
      if ((code === 45 || code === 0x2011) && lastEnd === at && isLetter(text, at + 1)) {
        at++;
        continue;
      }
      const sign =
        code === 0x2212 || code === 0x2013 || code === 0x2014 || code === 0x2011
          ? '-'
          : code === 0xd7 || code === 0x2715 || code === 0x2a
            ? 'x'
            : code === 0xff1f || code === 0x61f
              ? '?'
              : code === 0xff0c
                ? ','
                : code === 0x2248
                  ? '~'
                  : raw;
      push('sign', sign, at, at + size);
      at += size;
    }
  }
  return tokens;
}

const digitWords: ReadonlySet<string> = new Set([
  'mm2',
  'co2',
  'b2b',
  'dc2dc',
  'lifepo4',
  'lifepo2',
  'life4po',
  'lipo4',
  'cm2',
  'm2',
  'usb2',
  'usb3',
  'li4',
  'euro6',
  'euro5',
  'euro4',
  'd2',
]);

function withDigit(
  text: string,
  at: number,
  folded: string,
): { readonly word: string; readonly end: number } | undefined {
  const digit = digitOf(text, at);
  if (digit < 0 || isDigit(text, at + 1)) return undefined;
  let word = `${folded}${digit}`;
  if (digitWords.has(word)) return { word, end: at + 1 };
  let end = at + 1;
  while (end < text.length && isLetter(text, end) && end - at < 4) end++;
  word += foldWord(text.slice(at + 1, end));
  return digitWords.has(word) ? { word, end } : undefined;
}
