import { present } from '#basics/present.ts';
import type { Mention } from '../../recognise/mention.ts';
import {
  againWords,
  betweenWords,
  lastWords,
  noneWords,
  notWords,
  restWords,
  skySigns,
  stayWords,
  turnWords,
} from '../../words/en/day-plans.ts';
import { isDaySpan, isDayWord, ordinalOf } from './marks.ts';
import { isHours } from './topics.ts';
import { weekdaysOf } from './weekdays.ts';

const isPlainNumber = (m: Mention): boolean => m.kind === 'number' && m.told > 0 && m.told <= 16;

/** Whether a mention may tell something of a day: hours, a sky, that nothing is done. */
const mayTell = (m: Mention): boolean =>
  m.kind === 'sky' ||
  m.kind === 'without' ||
  isHours(m) ||
  m.dimension === 'sun' ||
  ((m.kind === 'amount' || m.kind === 'number') && m.told === 0) ||
  m.text === 'mix' ||
  notWords.has(m.text) ||
  stayWords.has(m.text) ||
  noneWords.has(m.text) ||
  Object.hasOwn(skySigns, m.text);

/** Whether a mention may be the start of words that name days. */
const mayMark = (m: Mention, next: Mention | undefined): boolean =>
  (m.kind === 'rate' && /^(?:each|every|the|\/) /.test(m.text)) ||
  m.kind === 'clock' ||
  isDayWord(m) ||
  isDaySpan(m) ||
  ordinalOf(m) !== undefined ||
  weekdaysOf(m).length > 0 ||
  (m.kind === 'number' && (m.told === 1 || next?.kind === 'sky' || next?.kind === 'without')) ||
  (m.kind === 'amount' && m.told === 0) ||
  m.text === 'today' ||
  m.text === 'todays' ||
  m.text === 'every' ||
  m.text === 'ones' ||
  /^d\d$/.test(m.text) ||
  turnWords.has(m.text) ||
  lastWords.has(m.text) ||
  restWords.has(m.text) ||
  betweenWords.has(m.text);

/**
 * Whether a message may tell a plan at all: most don't, and a look at each mention saves reading them for one. Without
 * words that name days, three things at least must be told of days in turn; with nothing told of them, days are a plan
 * only where three are "the same".
 */
export function mayPlan(mentions: readonly Mention[]): boolean {
  let marks = 0;
  let facts = 0;
  let numbers = 0;
  let again = 0;
  let hasHours = false;
  for (let i = 0; i < mentions.length; i++) {
    const m = present(mentions[i]);
    if (m.kind !== 'sign' && againWords.has(m.text)) again++;
    if (mayMark(m, mentions[i + 1])) marks++;
    if (mayTell(m)) {
      // "4 h sun" tells two.
      facts += m.dimension === 'sun' ? 2 : 1;
      if (m.kind === 'amount' || m.kind === 'number') hasHours = true;
    } else if (isPlainNumber(m)) numbers++;
  }
  if (hasHours || marks > 1) facts += numbers;
  return marks > 0 ? facts > 0 || again > 2 : facts > 2;
}
