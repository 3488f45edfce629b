import { markKnown, type State, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';

const rigNouns = list(`
  rig setup system outfit van camper caravan ute truck bus motorhome trailer boat set kit gear battery
  fridge one rv tent
`);
const strictNouns = list('rig setup system outfit kit gear van camper caravan set');
const family = list(`
  dad mum mom mam brother sister mate wife husband partner uncle aunt aunty nan nana pop grandad grandpa
  gran grandma neighbour neighbor boss friend daughter son cousin missus bro sis mother father inlaws
  oldie hubby girlfriend boyfriend
`);
/** Words with an apostrophe s that own nothing. */
const notOwners = list(`
  its it thats that whats what whos who lets let heres theres wheres hows hes shes days day hours hour
  weeks week todays tonights nights whens whys theyre one there here how battery van car he she everyone
  people caravan truck sun solar fridge minute year month world camp today weekend mornings whose
  something nothing else engine alternator inverter which everything
`);

/** Whose rig is meant: "mine", "dad's rig", "sam's", "our rig". */
export function owners(state: State): void {
  const { tokens, owners: found } = state;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (token.kind !== 'word') continue;
    const owner = ownerAt(state, i);
    if (!owner) continue;
    markKnown(state, i);
    if (!found.includes(owner)) found.push(owner);
  }
  if (found.length > 0) state.owner = found[0];
}

function ownerAt(state: State, at: number): string | undefined {
  const { text, hasApostrophe } = state.tokens[at]!;
  const next = wordAt(state, at + 1);
  if (text === 'mine' || text === 'mines') return 'me';
  if (text === 'ours') return 'us';
  if (text === 'my') return strictNouns.has(next) ? 'me' : undefined;
  if (text === 'our') return strictNouns.has(next) ? 'us' : undefined;
  if (text === 'his' || text === 'hers' || text === 'her' || text === 'theirs' || text === 'their') {
    const isAlone = (text === 'hers' || text === 'theirs' || text === 'his') && ends(state, at + 1);
    return strictNouns.has(next) || isAlone
      ? text.startsWith('hi')
        ? 'him'
        : text.startsWith('he')
          ? 'her'
          : 'them'
      : undefined;
  }
  if (!text.endsWith('s') || text.length < 3 || notOwners.has(text)) return undefined;
  const stem = text.slice(0, -1);
  const isName = state.context.people.includes(stem);
  if (!isName && !family.has(stem) && !hasApostrophe) return undefined;
  if (notOwners.has(stem)) return undefined;
  if (isName || family.has(stem))
    return rigNouns.has(next) ||
      ends(state, at + 1) ||
      next === 'last' ||
      next === 'then' ||
      next === 'is' ||
      next === 'and' ||
      next === 'or' ||
      next === 'lasts' ||
      next === 'going'
      ? stem
      : undefined;
  return strictNouns.has(next) ||
    (next === 'battery' && /^(long|will|is|does|would)$/.test(wordAt(state, at - 1)))
    ? stem
    : undefined;
}

const ends = (state: State, at: number): boolean =>
  at >= state.tokens.length ||
  /^[?.,!:;\n]$/.test(textAt(state, at)) ||
  /^(or|and|then|instead|now|not)$/.test(wordAt(state, at));
