/** First digit (zero) of the decimal digits of other scripts, Unicode category Nd, basic plane. */
const zeros = [
  0x660, 0x6f0, 0x7c0, 0x966, 0x9e6, 0xa66, 0xae6, 0xb66, 0xbe6, 0xc66, 0xce6, 0xd66, 0xde6, 0xe50, 0xed0,
  0xf20, 0x1040, 0x1090, 0x17e0, 0x1810, 0x1946, 0x19d0, 0x1a80, 0x1b50, 0x1bb0, 0x1c40, 0xa620, 0xa8d0,
  0xa900, 0xa9d0, 0xaa50, 0xabf0, 0xff10,
];

const fractions: ReadonlyMap<number, number> = new Map([
  [0xbd, 1 / 2],
  [0xbc, 1 / 4],
  [0xbe, 3 / 4],
  [0x2153, 1 / 3],
  [0x2154, 2 / 3],
  [0x2155, 1 / 5],
  [0x2156, 2 / 5],
  [0x2157, 3 / 5],
  [0x2158, 4 / 5],
  [0x2159, 1 / 6],
  [0x215a, 5 / 6],
  [0x215b, 1 / 8],
  [0x215c, 3 / 8],
  [0x215d, 5 / 8],
  [0x215e, 7 / 8],
]);

/** The decimal digit that starts at `at`, of any script, or −1. */
export function digitOf(text: string, at: number): number {
  const code = text.charCodeAt(at);
  if (code < 0x660) return code >= 48 && code <= 57 ? code - 48 : -1;
  if (code >= 0xd800) {
    if (code === 0xd835) {
      // mathematical digits: five styles in a row
      const point = text.codePointAt(at)!;
      return point >= 0x1d7ce && point <= 0x1d7ff ? (point - 0x1d7ce) % 10 : -1;
    }
    if (code < 0xff10) return -1;
  }
  for (const zero of zeros) {
    if (code < zero) return -1;
    if (code < zero + 10) return code - zero;
  }
  return -1;
}

/** The value of a vulgar fraction "½", or 0. */
export const fractionOf = (code: number): number => (code < 0xbc ? 0 : (fractions.get(code) ?? 0));

/** ² and ³ as a digit, else −1. */
export const superscriptOf = (code: number): number => (code === 0xb2 ? 2 : code === 0xb3 ? 3 : -1);

const letter = /[\p{L}\p{M}%°‰]/u;

/** Whether a word may start or go on here. % and ° count: they are units. */
export function isLetter(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code < 128) return (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code === 37;
  if (code >= 0xd800 && code < 0xdc00) return letter.test(text.slice(at, at + 2));
  return letter.test(text[at] ?? '');
}

export const isSpace = (code: number): boolean =>
  code === 32 ||
  (code >= 9 && code <= 13 && code !== 10) ||
  code === 0xa0 ||
  code === 0x202f ||
  (code >= 0x2000 && code <= 0x200a) ||
  code === 0x3000;

/** Marks of formatting that say nothing, joiners, and selectors: as if not there. */
export const isNothing = (code: number): boolean =>
  (code >= 0x200b && code <= 0x200f) ||
  code === 0xfeff ||
  (code >= 0xfe00 && code <= 0xfe0f) ||
  code === 0x2060 ||
  code === 0xad;
