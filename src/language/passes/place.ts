import { findPlace } from '#places/find.ts';
import type { Cue } from '../said.ts';
import { markKnown, type State, textAt } from '../state.ts';
import { months } from '../words/en/calendar.ts';
import { plainWords } from '../words/en/common.ts';
import { list } from '../words/list.ts';

const leads = list(`
  in at near round around to for from outside by of through towards toward about across over visiting nr
  up south north east west central down southern northern
`);
/** After these a name is surely a place, also that of a small town. */
const sure = list('in near round around outside nr at');
/** The talk that a small town matters to. */
const outdoors: readonly Cue[] = ['solar', 'sun', 'ask-yield', 'trip', 'camp', 'day-plan'];
const mostWords = 4;
/** Everyday words that names of several words begin with. */
const namesBegin = list(`
  new port south north east west central lake mount cape saint st los las el la san broken great long big
  western northern southern the salt red river hot cold high low
`);

/** Where it is: a known name after "in", "near", "round", beside a month, or where the talk is of sun. */
export function place(state: State): void {
  const words = state.tokens.map(token => (token.kind === 'word' ? token.text : ''));
  const isOutdoors = outdoors.some(cue => state.cues.has(cue)) || state.facts.month !== undefined;
  let found: { name: string; weight: number; length: number } | undefined;
  for (let i = 0; i < words.length; i++) {
    if (!words[i] || words[i]!.length < 3 || (state.tokens[i]!.isKnown && !leads.has(words[i - 1] ?? '')))
      continue;
    const before = words[i - 1] ?? '';
    const lead = before === 'the' ? (words[i - 2] ?? '') : before;
    const isLed = leads.has(lead);
    const weight = isLed ? 3 : context(state, i);
    if (weight === 0 || (plainWords.has(words[i]!) && !namesBegin.has(words[i]!))) continue;
    const end = Math.min(words.length, i + mostWords);
    let last = i;
    while (last + 1 < end && words[last + 1]) last++;
    const isSure = isLed && sure.has(lead) && !state.tokens[i]!.isKnown && isOutdoors;
    const at = findPlace(words.slice(i, last + 1), 0, isSure);
    if (!at || (at.length === 1 && plainWords.has(words[i]!))) continue;
    if (!found || weight > found.weight) {
      found = { name: at.place.name, weight, length: at.length };
      markKnown(state, i, i + at.length);
    }
    i += at.length - 1;
  }
  if (found) state.facts.place = found.name;
}

/** How surely a name without "in" or "near" is a place: month beside it, between commas under the sun, or its capital. */
function context(state: State, at: number): number {
  if (state.tokens[at]!.isKnown) return 0;
  const next = [textAt(state, at + 1), textAt(state, at + 2), textAt(state, at + 3)];
  const previous = textAt(state, at - 1);
  if (
    next.some(text => months[text] !== undefined) ||
    months[previous] !== undefined ||
    (previous === ',' && months[textAt(state, at - 2)] !== undefined)
  )
    return 2;
  const isSolar =
    state.cues.has('solar') ||
    state.cues.has('sun') ||
    state.cues.has('ask-yield') ||
    state.facts.month !== undefined;
  return isSolar ? 1 : 0;
}
