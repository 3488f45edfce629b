import { isSpace } from './characters.ts';

/** Longest formatting tag that is taken for one. */
const tagLimit = 60;

/** End of a tag "<i>", of a link's address "](tg://…)" or of "://…" starting at `at`; `at` where there is none. */
export function markupEnd(text: string, at: number): number {
  const code = text.charCodeAt(at);
  if (code === 60) {
    const next = text.charCodeAt(at + 1);
    if (next !== 47 && next !== 33 && !(next >= 65 && next <= 122)) return at;
    const close = text.indexOf('>', at);
    return close > 0 && close - at < tagLimit ? close + 1 : at;
  }
  let from = at;
  if (code === 93) {
    if (text.charCodeAt(at + 1) !== 40) return at;
    from = at + 2;
  } else if (text.charCodeAt(at + 1) !== 47 || text.charCodeAt(at + 2) !== 47) return at;
  while (
    from < text.length &&
    !isSpace(text.charCodeAt(from)) &&
    text.charCodeAt(from) !== 41 &&
    text.charCodeAt(from) !== 10
  )
    from++;
  return code === 93 ? from + 1 : from;
}

/** A sign beyond ASCII as the plain one that it stands for; '' for what says nothing. */
export const plainSign = (code: number): string => {
  switch (code) {
    case 0xd7:
      return 'x';
    case 0xf7:
      return '/';
    case 0x2013:
    case 0x2014:
    case 0x2012:
    case 0x2010:
    case 0x2011:
    case 0x2212:
      return '-';
    case 0x201c:
    case 0x201d:
    case 0x2033:
      return '"';
    case 0x2032:
      return "'";
    case 0x2026:
      return '.';
    case 0x2022:
    case 0xb7:
      return '\n';
    case 0x3001:
    case 0xff0c:
    case 0x60c:
      return ',';
    case 0xbf:
    case 0xff1f:
    case 0x61f:
      return '?';
    case 0x2192:
      return '>';
    case 0x2248:
      return '~';
    case 0x20ac:
    case 0xa3:
      return '$';
    case 0xb2:
      return '²';
    default:
      return '';
  }
};
