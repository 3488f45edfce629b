import { markKnown, quantityAt, type State, textAt, wordAt } from '../state.ts';
import { doubtfulDays, doubtfulMonths, months, weekdays } from '../words/en/calendar.ts';
import { list } from '../words/list.ts';

const monthLeads = list(`
  in of for during this next mid early late until till from to through about say by last end around since
  it em im
`);

/** The month asked about: by name, "next month", "this month". */
export function calendar(state: State): void {
  for (let i = 0; i < state.tokens.length; i++) {
    const word = wordAt(state, i);
    if (word === 'month' && (wordAt(state, i - 1) === 'next' || wordAt(state, i - 1) === 'this')) {
      const now = state.context.at.getUTCMonth();
      state.facts.month ??= wordAt(state, i - 1) === 'next' ? ((now + 1) % 12) + 1 : now + 1;
      markKnown(state, i - 1, i + 1);
      continue;
    }
    if (
      word === 'time' &&
      wordAt(state, i - 1) === 'this' &&
      wordAt(state, i + 1) === 'of' &&
      wordAt(state, i + 2) === 'year'
    ) {
      state.facts.month ??= state.context.at.getUTCMonth() + 1;
      continue;
    }
    const month = months[word];
    if (month === undefined) continue;
    if (doubtfulMonths.has(word) && !isMonth(state, i)) continue;
    state.facts.month ??= month;
    markKnown(state, i);
  }
}

/** "in may", ", may", "may?" after a place; not "we may", "the march". */
function isMonth(state: State, at: number): boolean {
  const before = wordAt(state, at - 1);
  if (monthLeads.has(before) && !(before === 'to' && wordAt(state, at) === 'march')) return true;
  const next = textAt(state, at + 1);
  if (
    state.tokens[at]!.raw[0] === 'M' &&
    at > 0 &&
    (next === '' || next === '?' || next === ',' || next === '.')
  )
    return true;
  return (
    (textAt(state, at - 1) === ',' || quantityAt(state, at - 1) !== undefined) &&
    (next === '' || next === '?' || next === ',' || next === '.')
  );
}

/** The day of the week at a token (Monday 0), or −1; "sun" and "sat" only beside other days or words of time. */
export function weekdayAt(state: State, at: number): number {
  const word = wordAt(state, at);
  const day = weekdays[word];
  if (day === undefined) return -1;
  if (!doubtfulDays.has(word)) return day;
  const isDay = (i: number): boolean => weekdays[wordAt(state, i)] !== undefined && i !== at;
  if (
    isDay(at - 1) ||
    isDay(at + 1) ||
    ((/^(and|n|to)$/.test(wordAt(state, at + 1)) ||
      textAt(state, at + 1) === ',' ||
      textAt(state, at + 1) === '-') &&
      isDay(at + 2)) ||
    ((/^(and|n|to)$/.test(wordAt(state, at - 1)) ||
      textAt(state, at - 1) === ',' ||
      textAt(state, at - 1) === '-') &&
      isDay(at - 2))
  )
    return day;
  if (/^(till|til|until|from|leave|arrive|arriving|leaving|next|this|by)$/.test(wordAt(state, at - 1)))
    return day;
  if (word === 'sun' || word === 'sat')
    return /^(pm|am|noon|lunch|morning|arvo|evening|night)$/.test(wordAt(state, at + 1)) ? day : -1;
  return day;
}
