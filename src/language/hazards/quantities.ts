import { present } from '#basics/present.ts';
import type { Word } from './words.ts';

export type Unit = 'A' | 'Ah' | 'W' | 'V' | 'm' | 'mm2' | 'C' | 'h' | 'year' | 'hp' | '%';

/** A number of a message with its unit, and the word that it stands at. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit | undefined;
  readonly at: number;
  /** The word after it and its unit. */
  readonly end: number;
  /** Whether its unit was taken from its value alone. */
  readonly isBare?: boolean;
}

const units: Readonly<Record<string, Unit>> = Object.fromEntries(
  Object.entries({
    A: 'a amp amps ampere amperes amper amos',
    Ah: 'ah amphour amphours',
    W: 'w watt watts kw kilowatt kilowatts kva',
    V: 'v volt volts',
    m: 'm metre metres meter meters ft foot feet cm',
    mm2: 'sqmm square squared awg gauge',
    C: '° c celsius degrees degree fahrenheit f',
    h: 'h hr hrs hour hours',
    year: 'year years yr yrs yo',
    '%': '% percent',
  }).flatMap(([unit, words]) => words.split(' ').map(word => [word, unit as Unit])),
);
const scale: Readonly<Record<string, number>> = {
  kw: 1000,
  kilowatt: 1000,
  kilowatts: 1000,
  kva: 1000,
  ft: 0.305,
  foot: 0.305,
  feet: 0.305,
  cm: 0.01,
};

/** IEC 60228 has no AWG; the areas of ASTM B258, mm². */
const gaugeMm2: Readonly<Record<number, number>> = {
  2: 33.6,
  4: 21.2,
  6: 13.3,
  8: 8.4,
  10: 5.3,
  12: 3.3,
  14: 2.1,
  16: 1.3,
  18: 0.8,
  20: 0.5,
};

const small =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const numberWords: ReadonlyMap<string, number> = new Map([
  ...small.map((word, i) => [word, i] as const),
  ...tens.map((word, i) => [word, 20 + 10 * i] as const),
]);
const numberWord = (word: string): number | undefined => numberWords.get(word);

interface Read {
  readonly value: number;
  readonly next: number;
}

/** A number in words from here: "a hundred and twenty", "eighteen hundred", "two point five". */
function spelt(words: readonly Word[], from: number): Read | undefined {
  let i = from;
  let value = numberWord(present(words[i]).text);
  if (value === undefined && present(words[i]).text === 'a' && words[i + 1]?.text === 'hundred') value = 1;
  if (value === undefined) return undefined;
  i += 1;
  let whole = 0;
  for (; i < words.length; i += 1) {
    const word = present(words[i]).text;
    const more = numberWord(word);
    if (word === 'hundred') value *= 100;
    else if (word === 'thousand') {
      whole += value * 1000;
      value = 0;
    } else if (word === 'point' && numberWord(words[i + 1]?.text ?? '') !== undefined) {
      let digits = '';
      for (i += 1; i < words.length && numberWord(present(words[i]).text) !== undefined; i += 1)
        digits += numberWord(present(words[i]).text);
      return { value: whole + value + Number(`0.${digits}`), next: i };
    } else if (more !== undefined && (value % 100 === 0 || (value % 10 === 0 && more < 10))) value += more;
    else if (word !== 'and' || numberWord(words[i + 1]?.text ?? '') === undefined || value % 100 !== 0) break;
  }
  return { value: whole + value, next: i };
}

const toUnit = (
  value: number,
  words: readonly Word[],
  next: number,
): { value: number; unit: Unit | undefined; used: number } => {
  const word = words[next]?.text ?? '';
  const after = words[next + 1]?.text ?? '';
  const unit = units[word];
  if (unit === 'A' && /^(h|hr|hrs|hour|hours)$/.test(after)) return { value, unit: 'Ah', used: 2 };
  if (
    /^(?:mm|milli?met(?:re|er)s?|mil)$/.test(word) &&
    /^(?:²|2|sq|square|squared|cable|wire|flex)$/.test(after)
  )
    return { value, unit: 'mm2', used: 2 };
  if (word === 'awg' || word === 'gauge')
    return { value: gaugeMm2[value] ?? 0, unit: gaugeMm2[value] ? 'mm2' : undefined, used: 1 };
  if (unit === 'C') {
    const isF = [word, after, words[next + 2]?.text].some(w => w === 'f' || w === 'fahrenheit');
    return { value: isF ? ((value - 32) * 5) / 9 : value, unit: 'C', used: 1 };
  }
  return { value: value * (scale[word] ?? 1), unit, used: unit ? 1 : 0 };
};

/** The numbers of a message, in digits or words, with their units; below-zero ones without a unit are °C. */
export function quantitiesOf(words: readonly Word[]): readonly Quantity[] {
  const found: Quantity[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const here = present(words[at]);
    const read = here.value === undefined ? spelt(words, at) : { value: here.value, next: at + 1 };
    if (!read) continue;
    const before = words[at - 1]?.text;
    const isMinus = before === 'minus' && read.value > 0;
    const isGauge = before === 'awg' && gaugeMm2[read.value] !== undefined;
    const { value, unit, used } = isGauge
      ? { value: gaugeMm2[read.value]!, unit: 'mm2' as const, used: 0 }
      : toUnit(isMinus ? -read.value : read.value, words, read.next);
    const isCold = unit === undefined && value < 0 && value >= -40 && Number.isInteger(value);
    found.push({
      value,
      unit: isCold ? 'C' : unit,
      at,
      end: read.next + used,
      ...(isCold ? { isBare: true } : {}),
    });
    at = read.next - 1 + used;
  }
  return found;
}
