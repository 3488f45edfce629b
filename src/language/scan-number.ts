import { digitOf, fractionOf } from './characters.ts';
import { type Token, token } from './token.ts';

/** Reads digits from `at`; returns [text of ASCII digits, end]. */
function digits(text: string, at: number): [string, number] {
  let to = at;
  let isPlain = true;
  for (;;) {
    const d = digitOf(text, to);
    if (d < 0) break;
    if (text.charCodeAt(to) > 57) isPlain = false;
    to += text.charCodeAt(to) >= 0xd800 ? 2 : 1;
  }
  if (isPlain) return [text.slice(at, to), to];
  let out = '';
  for (let k = at; k < to; k += text.charCodeAt(k) >= 0xd800 && text.charCodeAt(k) < 0xdc00 ? 2 : 1)
    out += digitOf(text, k);
  return [out, to];
}

/**
 * Reads the number that starts at `from`: digits of any script, decimal point or comma, groups of thousands,
 * vulgar fractions, times of the clock. In a list ("1,2,3") commas are no decimal marks.
 */
export function number(text: string, from: number, isGlued: boolean, isInList: boolean): Token {
  let [whole, at] = digits(text, from);
  let isClock = false;
  let value: number;
  let fraction = '';
  const mark = (): number => text.charCodeAt(at);
  // 1,000 and 12,500.5: groups of exactly three digits
  while (mark() === 44 && whole.length > 0 && whole !== '0' && (whole.length <= 3 || fraction === 'g')) {
    const [group, to] = digits(text, at + 1);
    if (group.length !== 3) break;
    whole += group;
    at = to;
    fraction = 'g';
  }
  const hadGroups = fraction === 'g';
  fraction = '';
  const point = mark();
  if (point === 46 || point === 0x66b || (point === 44 && !hadGroups)) {
    const [after, to] = digits(text, at + 1);
    const isList = point === 44 && (isInList || (text.charCodeAt(to) === 44 && digitOf(text, to + 1) >= 0));
    if (after && !isList) {
      fraction = after;
      at = to;
    }
  } else if (point === 58 && whole.length <= 2) {
    const [minutes, to] = digits(text, at + 1);
    if (minutes.length === 2 && Number(minutes) < 60) {
      isClock = true;
      at = to;
      fraction = minutes;
    }
  }
  value = isClock ? Number(whole) + Number(fraction) / 60 : Number(`${whole || '0'}.${fraction || '0'}`);
  const vulgar = fractionOf(mark());
  if (vulgar > 0 && !fraction) {
    value += vulgar;
    at++;
    fraction = 'v';
  }
  if (!(value <= 1e9)) value = 1e9;
  const made = token(
    'number',
    isClock || fraction === 'v' ? String(value) : fraction ? `${whole || '0'}.${fraction}` : whole,
    text.slice(from, at),
    value,
    from,
    at,
    isGlued,
  );
  made.isClock = isClock;
  return made;
}
