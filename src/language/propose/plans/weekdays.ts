import { present } from '#basics/present.ts';
import type { Mention } from '../../recognise/mention.ts';
import { weekdays } from '../../words/en/calendar.ts';
import { connectors, endWords, rangeWords } from '../../words/en/day-plans.ts';
import { isDayWord, mark } from './marks.ts';
import type { Mark } from './symbol.ts';

const partOfDay = /^(?:evening|night|afternoon|arvo|morning)$/;

/** The weekdays that a mention names; none where it is a time of the clock. */
export function weekdaysOf(m: Mention | undefined): readonly number[] {
  if (!m || (m.kind !== 'clock' && m.kind !== 'weekday')) return [];
  if (m.cls === 'clock' && /\d/.test(m.text)) return [];
  const out: number[] = [];
  for (const word of m.text.split(' ')) {
    if (Object.hasOwn(weekdays, word)) out.push(weekdays[word]!);
    else if (!partOfDay.test(word)) return [];
  }
  return out;
}

/** "Fri", "sat and sun", "mon, wed and fri", "tue to thu", as `weekdaysAt` of each mention finds them. */
export function weekdayMarkAt(
  mentions: readonly Mention[],
  at: number,
  daysAt: (i: number) => readonly number[],
): Mark | undefined {
  const days = [...daysAt(at)];
  if (days.length === 0) return undefined;
  const before = mentions[at - 1]?.text ?? '';
  if (endWords.has(before) || (/morning/.test(present(mentions[at]).text) && !isDayWord(mentions[at + 1])))
    return undefined;
  let i = at + 1;
  let hasAnd = false;
  for (;;) {
    let next = i;
    const join = mentions[next]?.text ?? '';
    if (join === ',') next++;
    const isJoin = connectors.has(mentions[next]?.text ?? '');
    const isRange = !isJoin && rangeWords.has(mentions[next]?.text ?? '');
    if (isJoin || isRange) next++;
    while (mentions[next]?.text === 'on' || mentions[next]?.text === 'then') next++;
    const more = next >= mentions.length || present(mentions[next]).isNewLine ? [] : daysAt(next);
    if (more.length === 0 || next - i > 3) break;
    // "None on Saturday, Sunday 3 h": a comma alone joins only where another day follows with "and".
    if (join === ',' && !isJoin && hasAnd) break;
    if (isJoin) hasAnd = true;
    if (join === ',' && !isJoin && !isList(mentions, next, days.length + 1, daysAt)) break;
    if (isRange) {
      for (let d = (days.at(-1)! + 1) % 7; d !== more[0]; d = (d + 1) % 7) days.push(d);
    }
    days.push(...more);
    i = next + 1;
  }
  return mark('weekdays', at, i, days);
}

/** Whether a list of weekdays goes on and ends with "and", a colon or a verb: "mon, wed and fri". */
function isList(
  mentions: readonly Mention[],
  at: number,
  before: number,
  daysAt: (i: number) => readonly number[],
): boolean {
  let i = at;
  let count = before;
  while (i < mentions.length) {
    if (daysAt(i).length === 0) return false;
    const join = mentions[i + 1]?.text ?? '';
    if (join === ':') return true;
    const isAnd = connectors.has(join) || (join === ',' && connectors.has(mentions[i + 2]?.text ?? ''));
    if (isAnd) return daysAt(join === ',' ? i + 3 : i + 2).length > 0;
    if (join !== ',' || (daysAt(i + 2).length === 0 && count >= 3)) return count >= 3;
    count++;
    i += 2;
  }
  return false;
}
