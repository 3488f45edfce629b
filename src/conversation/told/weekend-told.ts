import type { Recognised } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';

const asking: ReadonlySet<string> = new Set('will would can could does do shall should is enough'.split(' '));
const lasting: ReadonlySet<string> = new Set('last lasts through thru survive do make for'.split(' '));
const between: ReadonlySet<string> = new Set('the this whole full all it us me of'.split(' '));
const mostBetween = 3;

/**
 * "Will it last the weekend?" asks for as long as a weekend is, two days or a long one's three, though the word alone
 * ("on the weekend") tells when something is. Nothing where another time is told.
 */
export function withWeekendTold(stated: Stated, { mentions, words }: Recognised): Stated {
  const { durationH, until, days } = stated;
  if ([durationH, until, days].some(one => one !== undefined)) return stated;
  const times = mentions.filter(({ kind, dimension }) => kind === 'amount' && dimension === 'time');
  const [weekend] = times;
  if (!weekend || times.length > 1 || !/w(?:ee)?k ?end$/.test(weekend.spelled ?? '')) return stated;
  const before = words.slice(0, weekend.from);
  const at = before.findLastIndex(word => !between.has(word));
  const isLasting = before.length - 1 - at <= mostBetween && lasting.has(before[at] ?? '');
  return isLasting && before.some(word => asking.has(word))
    ? { ...stated, durationH: weekend.value }
    : stated;
}
