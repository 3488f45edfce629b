import { present } from '#basics/present.ts';
import type { State } from '../decide/state.ts';
import type { Mention } from '../recognise/mention.ts';
import { plainWords } from '../words/en/common.ts';
import { everyday } from '../words/en/everyday.ts';
import { speakers } from '../words/en/people.ts';
import * as slot from './slots.ts';
import { self } from './whose.ts';

const mostOwners = 3;

/** Owners on both sides, the nearest first, a few of each side. Both lists and results are in order of place. */
export function nearest(of: readonly number[], at: number): readonly number[] {
  let right = 0;
  while (right < of.length && of[right]! < at) right++;
  const out: number[] = [];
  for (let k = right - 1; k >= 0 && k >= right - mostOwners; k--) out.push(of[k]!);
  if (of[right] === at) right++;
  for (let k = right; k < of.length && k < right + mostOwners; k++) out.push(of[k]!);
  return out;
}

/** Words for somebody who is told of elsewhere. */
const others: ReadonlySet<string> = new Set(['he', 'she', 'they', 'her', 'him', 'hes', 'shes']);

const isPerson = (m: Mention): boolean =>
  m.kind === 'person' ||
  m.kind === 'noun' ||
  (m.kind === 'word' && speakers.has(m.text)) ||
  (m.kind === 'place' && !m.text.includes(' ')) ||
  (m.kind === 'word' && (m.cls === '?' || (m.cls.startsWith('c') && /^c\d/.test(m.cls)))) ||
  (m.kind === 'word' && others.has(m.text)) ||
  (m.kind === 'thing' && !m.text.includes(' ') && m.cls === 'thing?');

/** A word before a verb of saying or a colon: somebody, whatever it is called. */
const isSpeaker = (mentions: readonly Mention[], i: number): boolean => {
  const m = present(mentions[i]);
  const next = mentions[i + 1];
  return (
    m.kind !== 'sign' &&
    m.kind !== 'amount' &&
    m.kind !== 'number' &&
    next !== undefined &&
    ((next.kind === 'word' && surelySaid.has(next.text)) ||
      ((next.text === ':' || next.kind === 'amount') && alsoNames.has(m.kind)) ||
      (next.text === ':' && m.kind === 'word') ||
      // "Against your 5.5": the bot's.
      ((m.text === 'your' || m.text === 'you') && (next.kind === 'amount' || next.kind === 'number')))
  );
};
/** What may be somebody's name as well: "May: 4 days", "Dawn 6 A?". */
const alsoNames: ReadonlySet<string> = new Set(['month', 'sky', 'clock', 'level', 'place']);
const surelySaid: ReadonlySet<string> = new Set(
  'says say said sez tell told tells tipping insisted estimates reckons reckoned thinks claims claimed swears bets insists argues guesses believes figures'.split(
    ' ',
  ),
);
/** What stands before a name that opens a clause. */
const opens: ReadonlySet<string> = new Set(['and', 'or', 'but', 'vs', 'v', 'versus', 'while']);

/** A rare word that stands where a name would, opening a clause right before a figure or in brackets after one: "Cletus 2 hours", "26 h (Joost)". */
const isNamed = (mentions: readonly Mention[], i: number): boolean => {
  const m = present(mentions[i]);
  const next = mentions[i + 1];
  const before = mentions[i - 1];
  return (
    m.kind === 'word' &&
    (!before || m.isNewLine || before.kind === 'sign' || opens.has(before.text)) &&
    m.text.length > 2 &&
    !plainWords.has(m.text) &&
    !everyday.has(m.text) &&
    (next?.kind === 'amount' || next?.kind === 'number' || (next?.text === ')' && before?.text === '('))
  );
};
/** How many such words are thought of on each side. */
const mostNamed = 1;
const claimReach = 12;
const mostPeople = 3;

/** Who may claim the amount at `at`. */
export function claimants(mentions: readonly Mention[], at: number): number[] {
  const out: number[] = [];
  for (let i = at - 1, n = 0, named = 0; i >= 0 && i >= at - claimReach && n < 4; i--)
    if (isPerson(mentions[i]!) || isSpeaker(mentions, i)) {
      out.push(i);
      n++;
    } else if (named < mostNamed && isNamed(mentions, i)) {
      out.push(i);
      named++;
    }
  // People told of in so many words from farther off: "Derek has a CPAP of 36 W. … He says 10 hours."
  const isSpokenOf = out.some(i => others.has(present(mentions[i]).text));
  for (let i = (out.at(-1) ?? at) - 1, n = 0; isSpokenOf && i >= 0 && n < mostPeople; i--)
    if (mentions[i]!.kind === 'person') {
      out.push(i);
      n++;
    }
  for (let i = at + 1, n = 0, named = 0; i < mentions.length && i <= at + 6 && n < 2; i++)
    if (isPerson(mentions[i]!) || isSpeaker(mentions, i)) {
      out.push(i);
      n++;
    } else if (named < mostNamed && isNamed(mentions, i)) {
      out.push(i);
      named++;
    }
  return out;
}

const countReach = 6;

/** Whether a count is of what is told elsewhere: "three of them". */
export const isOfThem = (mentions: readonly Mention[], at: number): boolean =>
  mentions[at + 1]?.text === 'of' && mentions[at + 2]?.text === 'them';

/** What may own a count: a load, panels, batteries. */
export function counted(state: State, at: number): readonly number[] {
  const { mentions } = state;
  const out: number[] = [];
  // "Laptops, 90 W each, on a 300 W inverter, three of them".
  const reach = (isOfThem(mentions, at) ? 2 : 1) * countReach;
  for (let i = Math.max(0, at - reach); i < Math.min(mentions.length, at + 8); i++) {
    const m = present(mentions[i]);
    const s = state.slots[i]!;
    if (
      s === slot.load ||
      s === slot.loadCurrent ||
      s === slot.loadPower ||
      s === slot.capacity ||
      s === slot.batteryEnergy ||
      s === slot.solarPower ||
      m.kind === 'chemistry' ||
      m.kind === 'battery' ||
      m.kind === 'solar' ||
      m.kind === 'role'
    ) {
      if ((s === slot.loadCurrent || s === slot.loadPower) && state.owners[i] !== self) continue;
      if (i !== at) out.push(i);
    }
  }
  return nearest(out, at);
}
