import { present } from '#basics/present.ts';
import type { Token } from './lex.ts';
import {
  afterVolts,
  counts,
  digitWord,
  fractions,
  ones,
  opensNumber,
  partsOfWhole,
  spokenVolts,
  tens,
} from './number-words-table.ts';

/** A number told in digits or in words, with how else it may be meant. */
export interface Numeral {
  readonly value: number;
  /** Other values it may stand for: "10.000" → 10000, "half a dozen". */
  readonly others: readonly number[];
  /** "Two hundred amp hour batteries": as many of that. */
  readonly product?: { readonly count: number; readonly value: number };
  readonly isWord: boolean;
  readonly end: number;
}

const articles: ReadonlySet<string> = new Set(['a', 'an']);

const textAt = (tokens: readonly Token[], at: number): string =>
  tokens[at]?.kind === 'number' ? '' : (tokens[at]?.text ?? '');
const isNumber = (tokens: readonly Token[], at: number): boolean => tokens[at]?.kind === 'number';

/** A hyphen between the parts of one number word ("twenty-four") is passed over. */
const pastHyphen = (tokens: readonly Token[], at: number): number =>
  textAt(tokens, at) === '-' && present(tokens[at]).isGlued && tokens[at + 1]?.isGlued ? at + 1 : at;

interface Part {
  readonly value: number;
  readonly end: number;
}

/** 0–99 in words: "seven", "seventeen", "forty two". */
function below100(tokens: readonly Token[], at: number): Part | undefined {
  const word = textAt(tokens, at);
  const ten = Object.hasOwn(tens, word) ? tens[word] : undefined;
  if (ten !== undefined) {
    const next = pastHyphen(tokens, at + 1);
    const one = Object.hasOwn(ones, textAt(tokens, next)) ? ones[textAt(tokens, next)]! : 0;
    return one >= 1 && one <= 9 ? { value: ten + one, end: next + 1 } : { value: ten, end: at + 1 };
  }
  return Object.hasOwn(ones, word) ? { value: ones[word]!, end: at + 1 } : undefined;
}

/** "Point eight", "point one four": the digits after the point. */
function decimalsAt(tokens: readonly Token[], at: number): Part | undefined {
  if (textAt(tokens, at) !== 'point' && textAt(tokens, at) !== 'dot') return undefined;
  let digits = '';
  let end = at + 1;
  for (;;) {
    if (isNumber(tokens, end) && digits === '' && Number.isInteger(present(tokens[end]).value)) {
      digits += present(tokens[end]).text;
      end++;
      break;
    }
    const word = textAt(tokens, end);
    if (Object.hasOwn(digitWord, word)) digits += digitWord[word];
    else if (digits === '' && below100(tokens, end)) {
      const part = below100(tokens, end)!;
      digits += part.value;
      end = part.end;
      break;
    } else break;
    end++;
  }
  return digits === '' ? undefined : { value: Number(`0.${digits}`), end };
}

/** "And a half", "and three quarters", "1/2" after a whole number. */
function fractionAfter(tokens: readonly Token[], at: number): Part | undefined {
  if (isNumber(tokens, at) && tokens[at + 1]?.text === '/' && isNumber(tokens, at + 2)) {
    const [top, bottom] = [present(tokens[at]).value, present(tokens[at + 2]).value];
    return bottom >= 2 && bottom <= 8 && top < bottom ? { value: top / bottom, end: at + 3 } : undefined;
  }
  if (
    isNumber(tokens, at) &&
    present(tokens[at]).value < 1 &&
    present(tokens[at]).value > 0 &&
    !present(tokens[at]).text.includes('.')
  )
    return { value: present(tokens[at]).value, end: at + 1 };
  if (textAt(tokens, at) !== 'and' && textAt(tokens, at) !== 'n' && textAt(tokens, at) !== '&')
    return undefined;
  const next = textAt(tokens, at + 1);
  if (next === 'a' || next === 'one') {
    const part = textAt(tokens, at + 2);
    if (part === 'half' || part === 'quarter' || part === 'third')
      return { value: fractions[part]!, end: at + 3 };
  }
  if (next === 'half' || next === 'arf') return { value: 0.5, end: at + 2 };
  if (next === 'three' && textAt(tokens, at + 2) === 'quarters') return { value: 0.75, end: at + 3 };
  return undefined;
}

/** "Twelve six", "twenty-six nine": volts read aloud, 12.6 and 26.9. */
function voltsAt(tokens: readonly Token[], whole: number, at: number): Part | undefined {
  const word = textAt(tokens, at);
  const digit = word === 'oh' ? 0 : Object.hasOwn(digitWord, word) ? Number(digitWord[word]) : undefined;
  if (digit === undefined || !spokenVolts.some(([low, high]) => whole >= low && whole <= high))
    return undefined;
  const next = tokens[at + 1];
  const isEnd = next === undefined || next.kind === 'sign' || next.isNewLine || afterVolts.has(next.text);
  return isEnd && !present(tokens[at]).isNewLine ? { value: whole + digit / 10, end: at + 1 } : undefined;
}

/** "Nine tenths of an amp", "a fifth of the time"; "a fifth battery" is one more. */
function shareAt(tokens: readonly Token[], at: number): Part | undefined {
  const part = textAt(tokens, at + 1);
  const next = textAt(tokens, at + 2);
  const isWhole = Object.hasOwn(ones, textAt(tokens, at));
  const top = isWhole ? ones[textAt(tokens, at)]! : articles.has(textAt(tokens, at)) ? 1 : 0;
  if (top === 0 || !Object.hasOwn(partsOfWhole, part) || top >= partsOfWhole[part]!) return undefined;
  if (top > 1 !== part.endsWith('s')) return undefined;
  if (!isWhole && next !== 'of' && next !== 'left' && next !== 'full') return undefined;
  return { value: top / partsOfWhole[part]!, end: pastOfA(tokens, at + 2) };
}

/** A number that starts at a word. */
function wordsAt(tokens: readonly Token[], at: number): Numeral | undefined {
  const word = textAt(tokens, at);
  if (!opensNumber.has(word)) return undefined;
  const found = (value: number, end: number, more: Partial<Numeral> = {}): Numeral => ({
    value,
    others: [],
    isWord: true,
    end,
    ...more,
  });
  if (word === 'point' || word === 'dot') {
    const part = decimalsAt(tokens, at);
    return part && found(part.value, part.end);
  }
  if ((word === 'oh' || word === 'nought' || word === 'zero') && textAt(tokens, at + 1) === 'point') {
    const part = decimalsAt(tokens, at + 1);
    if (part) return found(part.value, part.end);
  }
  if (word === 'half' || word === 'arf') {
    const next = textAt(tokens, at + 1);
    const end = next === 'a' || next === 'an' ? at + 2 : at + 1;
    return textAt(tokens, end) === 'dozen' ? found(6, end + 1) : found(0.5, end);
  }
  if (word === 'quarter')
    return found(0.25, textAt(tokens, at + 1) === 'an' ? at + 2 : pastOfA(tokens, at + 1));
  if (word === 'three' && /^quarters?$/.test(textAt(tokens, pastHyphen(tokens, at + 1)))) {
    const end = pastHyphen(tokens, at + 1) + 1;
    return found(0.75, pastOfA(tokens, end));
  }
  const part = textAt(tokens, at + 1);
  const share = shareAt(tokens, at);
  if (share) return found(share.value, share.end);
  // "Third of the time"; "the third of June" is a day.
  if (word === 'third' && part === 'of' && textAt(tokens, at + 2) === 'the') return found(1 / 3, at + 1);
  const article = word === 'a' || word === 'an';
  const first = article ? at + 1 : at;
  const named = textAt(tokens, first);
  if (Object.hasOwn(counts, named)) {
    const end = first + 1;
    return found(counts[named]!, textAt(tokens, end) === 'of' ? end + 1 : end);
  }
  if (article && named === 'half') return found(0.5, first + 1);
  if (article && named === 'quarter') return found(0.25, pastOfA(tokens, first + 1));
  if (article && named === 'third') return found(1 / 3, first + 1);
  if (article && named !== 'hundred' && named !== 'thousand') return undefined;
  let total = 0;
  let end = first;
  let product: Numeral['product'];
  const others: number[] = [];
  if (named === 'hundred' || named === 'thousand') {
    total = named === 'hundred' ? 100 : 1000;
    end = first + 1;
  } else {
    const part = below100(tokens, first);
    if (!part) return undefined;
    total = part.value;
    end = part.end;
    let scale = textAt(tokens, end);
    // "One fifty", "two twenty five", "three oh five": hundreds left out.
    if (
      part.value >= 1 &&
      part.value <= 12 &&
      part.end === first + 1 &&
      scale !== 'hundred' &&
      scale !== 'thousand'
    ) {
      const rest =
        scale === 'oh' && Object.hasOwn(digitWord, textAt(tokens, end + 1))
          ? { value: Number(digitWord[textAt(tokens, end + 1)]), end: end + 2 }
          : below100(tokens, end);
      if (rest && (rest.value >= 10 || scale === 'oh')) {
        others.push(part.value);
        total = part.value * 100 + rest.value;
        if (part.value <= 4) product = { count: part.value, value: rest.value };
        end = rest.end;
      }
    }
    scale = textAt(tokens, end);
    if (scale === 'hundred' || scale === 'hundered') {
      if (total <= 12) product = { count: total, value: 100 };
      total *= 100;
      end++;
      scale = textAt(tokens, end);
    }
    if (scale === 'thousand') {
      total *= 1000;
      end++;
    }
  }
  const volts = voltsAt(tokens, total, end);
  if (volts) return found(volts.value, volts.end, { others: [total] });
  // "A hundred and five", "two thousand four hundred and fifty".
  for (;;) {
    const hasAnd = textAt(tokens, end) === 'and' || textAt(tokens, end) === 'n';
    const from = hasAnd ? end + 1 : end;
    const rest = total >= 100 && total % 100 === 0 ? below100(tokens, from) : undefined;
    if (!rest || rest.value === 0) break;
    if (textAt(tokens, rest.end) === 'hundred' && total >= 1000) {
      total += rest.value * 100;
      end = rest.end + 1;
      continue;
    }
    total += rest.value;
    if (product && product.value === 100) product = { count: product.count, value: 100 + rest.value };
    end = rest.end;
    break;
  }
  const decimals = decimalsAt(tokens, end);
  if (decimals) return found(total + decimals.value, decimals.end);
  const fraction = fractionAfter(tokens, end);
  if (fraction) return found(total + fraction.value, fraction.end);
  return found(total, end, { product, others });
}

/** Past the "of a" of "a quarter of a kilowatt hour". */
const pastOfA = (tokens: readonly Token[], at: number): number =>
  textAt(tokens, at) === 'of' && articles.has(textAt(tokens, at + 1)) ? at + 2 : at;

/** "2 thirds", "3 quarters": parts of a whole, counted in digits. */
const isParted = (count: number, part: string): boolean =>
  Object.hasOwn(partsOfWhole, part) && part.endsWith('s') && count > 1 && count < partsOfWhole[part]!;

/** A number that starts at a token in digits. */
function digitsAt(tokens: readonly Token[], at: number): Numeral {
  const token = present(tokens[at]);
  let { value } = token;
  let end = at + 1;
  const others = token.other === undefined ? [] : [token.other];
  const simple =
    tokens[end]?.text === '/' &&
    isNumber(tokens, end + 1) &&
    present(tokens[end]).isGlued &&
    present(tokens[end + 1]).isGlued
      ? fractionAfter(tokens, at)
      : undefined;
  if (simple) return { value: simple.value, others, isWord: false, end: simple.end };
  const next = textAt(tokens, end);
  if (next === 'k' && present(tokens[end]).isGlued) {
    value *= 1000;
    end++;
    const hundreds = tokens[end];
    if (hundreds?.kind === 'number' && hundreds.isGlued && /^\d{1,3}$/.test(hundreds.text) && value < 1e5) {
      value += hundreds.value * 10 ** (3 - hundreds.text.length);
      end++;
    }
  } else if (next === 'hundred' || next === 'thousand' || next === 'million') {
    value *= next === 'hundred' ? 100 : next === 'thousand' ? 1000 : 1e6;
    end++;
  } else if (next === 'point' && decimalsAt(tokens, end)) {
    const part = decimalsAt(tokens, end)!;
    return { value: value + part.value, others, isWord: false, end: part.end };
  } else if (isParted(value, next)) {
    return { value: value / partsOfWhole[next]!, others, isWord: false, end: pastOfA(tokens, end + 1) };
  } else {
    const fraction = Number.isInteger(value) ? fractionAfter(tokens, end) : undefined;
    if (fraction) return { value: value + fraction.value, others, isWord: false, end: fraction.end };
    if (next === 'dozen') {
      value *= 12;
      end++;
    }
  }
  return { value, others, isWord: false, end };
}

/** The number that starts at a token, if one does. */
export function numeralAt(tokens: readonly Token[], at: number): Numeral | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  return token.kind === 'number'
    ? digitsAt(tokens, at)
    : token.kind === 'word'
      ? wordsAt(tokens, at)
      : undefined;
}
