import { placesNamed } from '#places/find.ts';
import { markKnown, type State, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { table } from '../words/table.ts';

/** The middle month of each season south of the equator; north of it half a year later. */
const middle = table({ summers: 1, winters: 7, summer: 1, autumn: 4, winter: 7, spring: 10, fall: 4 });
const leads = list('in this next mid during over late early of the deep through for all');
/** "last winter" tells a tale; "fall" and "spring" are everyday words too. */
const doubtful = list('fall spring');
const halfYear = 6;

/** The month a season stands for: the middle one, by the hemisphere of the place named, southern without one. */
export function seasons(state: State): void {
  const { facts } = state;
  if (facts.month !== undefined) return;
  for (let i = 0; i < state.tokens.length; i++) {
    const word = wordAt(state, i);
    const month = middle[word];
    if (month === undefined || !isSeason(state, i, word)) continue;
    facts.month = isNorthern(state) ? ((month + halfYear - 1) % 12) + 1 : month;
    markKnown(state, i);
    return;
  }
}

function isSeason(state: State, at: number, word: string): boolean {
  const before = textAt(state, at - 1);
  const next = textAt(state, at + 1);
  if (before === 'last') return false;
  if (leads.has(before))
    return !doubtful.has(word) || (before !== 'for' && before !== 'all' && next !== 'of');
  return before === ',' || (!doubtful.has(word) && before !== '');
}

function isNorthern(state: State): boolean {
  const { place, latitudeDeg } = state.facts;
  const latitude = latitudeDeg ?? (place === undefined ? undefined : placesNamed(place)[0]?.latitudeDeg);
  return latitude !== undefined && latitude > 0;
}
