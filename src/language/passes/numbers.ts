import { Lexicon } from '../lexicon.ts';
import { type State, textAt, wordAt } from '../state.ts';
import { type Token, token } from '../token.ts';
import { numberPhrases, ones, scales, tens } from '../words/en/numbers.ts';
import { list } from '../words/list.ts';
import { unitLexicon } from './unit-words.ts';

interface Word {
  readonly kind: 'one' | 'ten' | 'scale' | 'phrase';
  readonly value: number;
}
const lexicon = new Lexicon<Word>();
for (const [word, value] of Object.entries(numberPhrases)) lexicon.add(word, { kind: 'phrase', value });
for (const [word, value] of Object.entries(ones)) lexicon.add(word, { kind: 'one', value });
for (const [word, value] of Object.entries(tens)) lexicon.add(word, { kind: 'ten', value });
for (const [word, value] of Object.entries(scales)) lexicon.add(word, { kind: 'scale', value });
export const numberLexicon = lexicon;

/** After these "half" tells of a state, not of a number. */
const stateWords = new Set([
  'full',
  'flat',
  'charged',
  'empty',
  'the',
  'of',
  'shade',
  'shaded',
  'way',
  'down',
  'sun',
  'time',
  'discharged',
  'gone',
  'left',
  'it',
  'my',
  'our',
  'their',
  'its',
  'dead',
  'and',
  'or',
  '',
  ',',
  '.',
  '?',
  '!',
  ';',
]);
const claimVerbs = list('says say reckons reckon said thinks claims bets');

/** Makes numbers of number words: "two", "a couple of", "one and a half", "twenty five", "half an", "3/4". */
export function numbers(state: State): void {
  const out: Token[] = [];
  const { tokens } = state;
  let isChanged = false;
  for (let i = 0; i < tokens.length; ) {
    const read =
      tokens[i]!.kind === 'word'
        ? wordNumber(state, i)
        : tokens[i]!.kind === 'number'
          ? digitNumber(state, i)
          : undefined;
    if (!read) {
      out.push(tokens[i]!);
      i++;
      continue;
    }
    const first = tokens[i]!;
    const last = tokens[read.end - 1]!;
    const made = token(
      'number',
      String(read.value),
      state.text.slice(first.from, last.to),
      read.value,
      first.from,
      last.to,
      first.isGlued,
    );
    made.isKnown = true;
    out.push(made);
    i = ofOne(state, read);
    isChanged = true;
  }
  if (isChanged) state.tokens = out;
}

/** "0.9 of an amp": the words between a part and its unit. */
const ofOne = (state: State, { value, end }: Read): number =>
  value < 1 && wordAt(state, end) === 'of' && /^an?$/.test(wordAt(state, end + 1)) && isUnit(state, end + 2)
    ? end + 2
    : end;

interface Read {
  readonly value: number;
  readonly end: number;
}

/** "point nine": tenths. */
function tenths(state: State, at: number): Read | undefined {
  const digit = wordAt(state, at) === 'point' ? ones[wordAt(state, at + 1)] : undefined;
  return digit !== undefined && digit < 10 ? { value: digit / 10, end: at + 2 } : undefined;
}

function wordNumber(state: State, at: number): Read | undefined {
  const part = tenths(state, at);
  if (part) return part;
  const found = lexicon.find(state, at);
  if (!found) return undefined;
  let end = at + found.length;
  let { value } = found.value;
  const next = textAt(state, end);
  if (found.value.kind === 'scale' && !isUnit(state, end)) return undefined;
  if (value === 0.5 && stateWords.has(next) && found.length === 1) return undefined;
  if (
    found.value.kind === 'phrase' &&
    value < 1 &&
    found.length > 1 &&
    stateWords.has(next) &&
    next !== 'of' &&
    !isOfTime(state, end)
  )
    return undefined;
  if (wordAt(state, at) === 'one' && !counts(state, end) && !claimVerbs.has(wordAt(state, at - 1)))
    return undefined;
  if (found.value.kind === 'ten') {
    const unit = ones[wordAt(state, end)];
    if (unit !== undefined && unit > 0 && unit < 10) {
      value += unit;
      end++;
    }
  }
  if (found.value.kind === 'phrase' && value >= 100) [value, end] = withRest(state, value, end);
  [value, end] = scaled(state, value, end);
  return { value, end };
}

/** "… hundred and twenty five": what follows a hundred or a thousand. */
function withRest(state: State, from: number, at: number): [number, number] {
  const joint = /^(and|n)$/.test(wordAt(state, at)) ? at + 1 : at;
  const small = lexicon.find(state, joint);
  const isRest =
    small && (small.value.kind === 'ten' || small.value.kind === 'one') && small.value.value < 100;
  if (!isRest) return [from, at];
  const end = joint + small.length;
  const unit = small.value.kind === 'ten' ? ones[wordAt(state, end)] : undefined;
  const value = from + small.value.value;
  return unit && unit < 10 ? [value + unit, end + 1] : [value, end];
}

/** "two hundred and fifty", "2 thousand", "two and a half". */
function scaled(state: State, from: number, at: number): [number, number] {
  let value = from;
  let end = at;
  const scale = scales[wordAt(state, end)];
  if (scale && value < 1000) {
    [value, end] = withRest(state, value * scale, end + 1);
  }
  if (
    wordAt(state, end) === 'and' &&
    wordAt(state, end + 1) === 'a' &&
    (wordAt(state, end + 2) === 'half' || wordAt(state, end + 2) === 'bit')
  ) {
    value += wordAt(state, end + 2) === 'half' ? 0.5 : 0;
    end += 3;
  } else if (wordAt(state, end) === 'and' && wordAt(state, end + 1) === 'half') {
    value += 0.5;
    end += 2;
  }
  return [value, end];
}

const parts = new Set([2, 3, 4, 5, 8, 10]);

/** "3/4 of", "2 1/2", "2 ½", "10 000", "2 and a half". */
function digitNumber(state: State, at: number): Read | undefined {
  const { tokens } = state;
  const first = tokens[at]!;
  const fraction = quotient(state, at);
  if (fraction) return { value: fraction, end: at + 3 };
  const next = tokens[at + 1];
  if (next?.kind === 'number' && !next.isGlued && Number.isInteger(first.value)) {
    const half = quotient(state, at + 1);
    if (half) return { value: first.value + half, end: at + 4 };
    if (next.value > 0 && next.value < 1 && next.raw.length === 1)
      return { value: first.value + next.value, end: at + 2 };
    if (next.text.length === 3 && next.raw === '000') return { value: first.value * 1000, end: at + 2 };
  }
  const [value, end] = scaled(state, first.value, at + 1);
  const isPart = ofOne(state, { value, end }) > end;
  return end > at + 1 || isPart ? { value, end } : undefined;
}

function quotient(state: State, at: number): number {
  const [a, slash, b, after] = [
    state.tokens[at]!,
    state.tokens[at + 1],
    state.tokens[at + 2],
    textAt(state, at + 3),
  ];
  if (slash?.text !== '/' || b?.kind !== 'number' || !b.isGlued || !slash.isGlued) return 0;
  if (!(a.value < b.value && parts.has(b.value) && Number.isInteger(a.value)) || a.value === 0) return 0;
  return after === 'awg' || after === 'b&s' || after === 'gauge' || after === '/' ? 0 : a.value / b.value;
}

/** "a third of the time". */
const isOfTime = (state: State, at: number): boolean =>
  wordAt(state, at) === 'the' && wordAt(state, at + 1) === 'time';

const isUnit = (state: State, at: number): boolean => unitLexicon.find(state, at) !== undefined;

/** Whether a number word here goes with a unit, a number or a size ("one 100ah", "one day"). */
function counts(state: State, at: number): boolean {
  return (
    state.tokens[at]?.kind === 'number' ||
    isUnit(state, at) ||
    wordAt(state, at) === 'hundred' ||
    (wordAt(state, at) === 'and' && wordAt(state, at + 2) === 'half')
  );
}
