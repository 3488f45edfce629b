import { present } from '#basics/present.ts';
import type { Token } from '../lex/lex.ts';
import { numeralAt } from '../lex/numbers.ts';
import { dayTimes, weekdays } from '../words/en/calendar.ts';
import type { Mention } from './mention.ts';
import { hasSign } from './unit-at.ts';

const halves: ReadonlySet<string> = new Set(['am', 'pm']);
const near: ReadonlySet<string> = new Set(['tomorrow', 'tmrw', 'tomoz', 'tonight', 'tonite']);
const joins: ReadonlySet<string> = new Set(['at', 'in', 'the', 'on', 'around', 'about', 'of']);

/** "6:30" where nobody said which half of the day. */
const untold = (hour: number): string =>
  `${Math.floor(hour)}:${String(Math.round((hour % 1) * 60)).padStart(2, '0')}`;

interface Part {
  readonly text: string;
  readonly hour: number;
  readonly end: number;
  readonly isClock: boolean;
}

const label = (hour: number): string => {
  const minutes = Math.round((hour % 1) * 60);
  const whole = Math.floor(hour);
  const twelve = whole % 12 === 0 ? 12 : whole % 12;
  return `${twelve}${minutes ? `:${String(minutes).padStart(2, '0')}` : ''}${whole % 24 < 12 ? 'am' : 'pm'}`;
};

const leads: ReadonlySet<string> = new Set(['till', 'til', 'until', 'at', 'by', 'from', 'to', 'gone', 'its']);

const untils: ReadonlySet<string> = new Set(['till', 'til', 'until']);
/** What stands after an hour that is told alone: no unit, and nothing that it could count. */
const isEndOfTime = (next: string): boolean => /^(?:|[?.,;)]|and|then|on|with|if|when|or)$/.test(next);

/** "Half past six", "half seven" after "till", "quarter to ten"; the number that follows and by how much it is moved. */
function shiftAt(
  words: readonly string[],
  at: number,
): { readonly at: number; readonly hours: number } | undefined {
  const first = words[at] === 'a' ? at + 1 : at;
  const part = words[first];
  if (part !== 'half' && part !== 'quarter') return undefined;
  const side = words[first + 1];
  if (side === 'past' || side === 'after') return { at: first + 2, hours: part === 'half' ? 0.5 : 0.25 };
  if (side === 'to' && part === 'quarter') return { at: first + 2, hours: -0.25 };
  return part === 'half' && leads.has(words[at - 1] ?? '') ? { at: first + 1, hours: 0.5 } : undefined;
}

/** A time of the clock at a token: "7am", "7:30 pm", "19:00", "6 o'clock", "7 in the morning". */
function timeAt(tokens: readonly Token[], words: readonly string[], at: number): Part | undefined {
  const shift = shiftAt(words, at);
  if (shift) {
    const numeral = numeralAt(tokens, shift.at);
    if (!numeral || !Number.isInteger(numeral.value) || numeral.value < 1 || numeral.value > 12)
      return undefined;
    const whole = timeAt(tokens, words, shift.at);
    // "Half five amps" is a half and five amps.
    if (
      !whole &&
      shift.at === at + 1 &&
      /^(?:a|amps?|ah|w|watts?|v|volts?|h|hours?|days?|m|metres?)$/.test(words[numeral.end] ?? '')
    )
      return undefined;
    const hour = (whole?.hour ?? numeral.value) + shift.hours;
    return { text: whole ? label(hour) : untold(hour), hour, end: whole?.end ?? numeral.end, isClock: true };
  }
  const numeral = numeralAt(tokens, at);
  if (!numeral || !Number.isFinite(numeral.value) || numeral.value > 24) return undefined;
  let hour = numeral.value;
  let end = numeral.end;
  let isClock = false;
  const isDigits = present(tokens[at]).kind === 'number';
  const minutes = tokens[end + 1];
  if (
    isDigits &&
    (words[end] === ':' || words[end] === '.') &&
    present(tokens[end]).isGlued &&
    minutes?.kind === 'number' &&
    minutes.isGlued &&
    minutes.value < 60 &&
    minutes.text.length === 2
  ) {
    hour += minutes.value / 60;
    end += 2;
    isClock = true;
  }
  // "7.30am"
  if (
    isDigits &&
    !Number.isInteger(numeral.value) &&
    /^\d{1,2}[.]\d{2}$/.test(present(tokens[at]).text) &&
    halves.has(words[end] ?? '')
  )
    hour = Math.floor(numeral.value) + (numeral.value % 1) * (100 / 60);
  if (!isClock && !Number.isInteger(numeral.value) && !halves.has(words[end] ?? '')) return undefined;
  let half = words[end];
  let length = 1;
  if ((half === 'a' || half === 'p') && words[end + 1] === 'm' && present(tokens[end + 1]).kind === 'word') {
    half = `${half}m`;
    length = 2;
  } else if ((half === 'a' || half === 'p') && words[end + 1] === '.' && words[end + 2] === 'm') {
    half = `${half}m`;
    length = words[end + 3] === '.' ? 4 : 3;
  }
  if (halves.has(half ?? '') && hour <= 12.99) {
    hour = (hour % 12) + (half === 'pm' ? 12 : 0);
    return { text: label(hour), hour, end: end + length, isClock: true };
  }
  if (words[end] === 'oclock' || (words[end] === 'o' && words[end + 1] === 'clock')) {
    end += words[end] === 'oclock' ? 1 : 2;
    isClock = true;
  }
  const isHourOfDay = Number.isInteger(numeral.value) && hour >= 1 && hour <= 12;
  // "7 tomorrow morning", "six this evening", "ten tonight".
  if (isHourOfDay || isClock) {
    const isTonight = words[end] === 'tonight' || words[end] === 'tonite';
    const part = words[end] === 'this' || near.has(words[end] ?? '') ? words[end + 1] : undefined;
    if (part === 'morning' || part === 'mornin' || part === 'morn')
      return { text: label(hour % 12), hour: hour % 12, end: end + 2, isClock: true };
    if (isTonight || part === 'evening' || part === 'afternoon' || part === 'arvo' || part === 'night')
      return {
        text: label((hour % 12) + 12),
        hour: (hour % 12) + 12,
        end: end + (isTonight ? 1 : 2),
        isClock: true,
      };
  }
  if (words[end] === 'in' && words[end + 1] === 'the') {
    const part = words[end + 2];
    if (part === 'morning' || part === 'morn' || part === 'mornin')
      return { text: label(hour), hour, end: end + 3, isClock: true };
    if (part === 'evening' || part === 'afternoon' || part === 'arvo')
      return { text: label((hour % 12) + 12), hour: (hour % 12) + 12, end: end + 3, isClock: true };
  }
  if (words[end] === 'at' && words[end + 1] === 'night' && (isClock || (isHourOfDay && hour >= 5)))
    return { text: label((hour % 12) + 12), hour: (hour % 12) + 12, end: end + 2, isClock: true };
  // "Hold til 6?": the hour that comes next, morning or evening.
  if (isHourOfDay && !isClock && untils.has(words[at - 1] ?? '') && isEndOfTime(words[end] ?? ''))
    return { text: untold(hour), hour, end, isClock: true };
  // "17:30" stays as it is told.
  if (isClock)
    return {
      text: hour >= 13 && hour % 1 !== 0 ? untold(hour) : label(hour),
      hour,
      end,
      isClock,
    };
  return undefined;
}

const make = (text: string, hour: number, from: number, to: number, cls: string): Mention => ({
  kind: 'clock',
  key: text,
  cls,
  text,
  from,
  to,
  value: hour,
  told: hour,
  variants: [],
});

const isMinus: ReadonlySet<string> = new Set(['minus', 'negative']);

/** Short days that are words too: they count before a time of the clock ("sun 6pm"). */
const alsoWords: ReadonlySet<string> = new Set(['sun', 'sat', 'mon', 'wed']);
const isTimeNext = (tokens: readonly Token[], words: readonly string[], at: number): boolean =>
  words[at] === 'noon' ||
  words[at] === 'midday' ||
  words[at] === 'midnight' ||
  timeAt(tokens, words, at) !== undefined;

/** A time named at a token: a time of the clock, a day, a time of day, or several of these in a row. */
export function clockAt(tokens: readonly Token[], words: readonly string[], at: number): Mention | undefined {
  const parts: string[] = [];
  let [end, hour, hasClock] = [at, Number.NaN, false];
  // "Minus 5 at night" is a temperature.
  if (isMinus.has(words[at - 1] ?? '') || (tokens[at]!.isGlued && hasSign(tokens, at))) return undefined;
  let i = at;
  for (let n = 0; n < 6 && i < tokens.length; n++) {
    const word = words[i]!;
    const time = timeAt(tokens, words, i);
    if (time) {
      parts.push(time.text);
      ({ hour, end } = time);
      hasClock = true;
      i = end;
    } else if (
      present(tokens[i]).kind === 'word' &&
      word in weekdays &&
      (!alsoWords.has(word) || isTimeNext(tokens, words, i + 1))
    ) {
      if (parts.length > 0 && hasClock && !Number.isNaN(hour)) {
        // "10am monday"
        parts.unshift(word);
      } else parts.push(word);
      i++;
      end = i;
    } else if (near.has(word)) {
      parts.push(word === 'tonight' || word === 'tonite' ? 'tonight' : 'tomorrow');
      i++;
      end = i;
    } else if (hasClock && (word === 'midnight' || word === 'noon' || word === 'midday')) break;
    else if (word in dayTimes && present(tokens[i]).kind === 'word') {
      parts.push(word);
      if (Number.isNaN(hour)) hour = dayTimes[word]!;
      i++;
      end = i;
    } else if (parts.length > 0 && joins.has(word)) i++;
    else break;
  }
  if (parts.length === 0 || end === at) return undefined;
  const only = parts.join(' ');
  const isLone = parts.length === 1 && !hasClock;
  const cls = hasClock ? 'clock' : isLone ? `t:${only in weekdays ? 'weekday' : only}` : 'clock';
  return make(only, hour, at, end, cls);
}
