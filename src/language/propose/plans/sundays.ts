import { present } from '#basics/present.ts';
import type { Mention } from '../../recognise/mention.ts';
import { stopOf } from './stops.ts';
import { weekdaysOf } from './weekdays.ts';

/** Whether "sun" at a mention is Sunday: other weekdays are named and it stands where the next one would. */
export function sundays(mentions: readonly Mention[]): ReadonlySet<number> {
  const out = new Set<number>();
  const isSun = (i: number): boolean => mentions[i]?.kind === 'sky' && present(mentions[i]).text === 'sun';
  const named = mentions.map(weekdaysOf);
  if (!named.some(days => days.length > 0) || named.some(days => days.includes(6))) return out;
  const lastSun = mentions.findLastIndex((_, i) => isSun(i));
  /** For each mention the weekday named next after it. */
  const nextNamed: (number | undefined)[] = [];
  for (let i = mentions.length - 1, next: number | undefined; i >= 0; i--) {
    nextNamed[i] = next;
    if (present(named[i]).length > 0) next = named[i]![0];
  }
  let last: number | undefined;
  for (let i = 0; i < mentions.length; i++) {
    const days = named[i]!;
    if (days.length > 0) last = days.at(-1);
    if (!isSun(i) || out.size > 0) continue;
    const before = mentions[i - 1];
    const after = mentions[i + 1];
    const isStart =
      !before ||
      present(mentions[i]).isNewLine ||
      stopOf(before) > 0 ||
      before.text === '-' ||
      before.text === '*' ||
      before.text === ':';
    const isJoined = before !== undefined && /^(?:and|&|\+|n|\/|-|to|thru|on)$/.test(before.text);
    const follows = nextNamed[i];
    const later = lastSun > i;
    const isDirect = before !== undefined && present(named[i - 1]).length > 0;
    if (last === 5 && !(isDirect && later) && !(isDirect && (!after || stopOf(after) > 0))) out.add(i);
    else if (
      isStart &&
      last === undefined &&
      (follows === 5 || follows === 0) &&
      after !== undefined &&
      stopOf(after) === 0
    )
      out.add(i);
    else if (
      isStart &&
      last !== undefined &&
      after !== undefined &&
      stopOf(after) === 0 &&
      (after.kind !== 'sky' || last === 5)
    )
      out.add(i);
    else if (isJoined && last !== undefined && last === 5) out.add(i);
  }
  return out;
}
