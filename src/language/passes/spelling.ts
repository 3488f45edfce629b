import { Near } from '../near.ts';
import { type State, textAt, wordAt } from '../state.ts';
import { everyday } from '../words/en/everyday.ts';
import { slips } from '../words/en/slips.ts';
import { vocabulary } from './vocabulary.ts';

const leastLetters = 5;
const mostLetters = 14;
/** Words worth mending: those of the trade, long enough that a slip can't make another word of them. */
const mendable = new Near([
  'fridge',
  'freezer',
  'battery',
  'batteries',
  'lithium',
  'inverter',
  'charger',
  'generator',
  'alternator',
  'isolator',
  'solar',
  'panel',
  'panels',
  'cable',
  'kettle',
  'toaster',
  'microwave',
  'laptop',
  'lights',
  'light',
  'heater',
  'blanket',
  'blender',
  'router',
  'hours',
  'hour',
  'minutes',
  'minute',
  'night',
  'nights',
  'percent',
  'watts',
  'volts',
  'metres',
  'average',
  'averages',
  'averaging',
  'parallel',
  'series',
  'controller',
  'flooded',
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
  'overcast',
  'january',
  'february',
  'september',
  'october',
  'november',
  'december',
  'august',
  'voltage',
  'starter',
  'weekend',
  'driving',
  'charge',
  'charging',
  'recharge',
  'compressor',
  'television',
  'telly',
  'coffee',
  'induction',
  'lamps',
  'capacity',
  'consumption',
  'discharge',
  'working',
  'forget',
  'without',
  'modified',
  'telling',
  'running',
  'quarter',
  'enough',
  'smallest',
  'generators',
  'cooler',
  'teach',
  'lesson',
  'privacy',
  'everything',
]);
/** After a number also short units are mended: "12 amsp", "3 dyas". */
const units = new Near([
  'amps',
  'watts',
  'volts',
  'hours',
  'days',
  'nights',
  'mins',
  'minutes',
  'weeks',
  'metres',
  'feet',
]);

/** Mends slips of the finger in words of the trade, and units behind a number. */
export function spelling(state: State): void {
  for (let i = 0; i < state.tokens.length; i++) {
    const token = state.tokens[i]!;
    if (token.kind !== 'word') continue;
    const slip = slips[token.text];
    if (slip !== undefined) {
      token.text = slip;
      continue;
    }
    if (token.text.length < 3 || token.text.length > mostLetters || vocabulary.has(token.text)) continue;
    const isUnit = state.tokens[i - 1]?.kind === 'number';
    if (token.text.length < leastLetters && !isUnit) continue;
    if (everyday.has(token.text) || isName(state, i)) continue;
    const mended =
      (isUnit ? units.find(token.text) : undefined) ??
      (token.text.length >= leastLetters ? mendable.find(token.text) : undefined);
    if (mended) token.text = mended;
  }
}

/** Names of people and places are left alone: "Wendy says", "near Solaris". */
function isName(state: State, at: number): boolean {
  const { raw, text } = state.tokens[at]!;
  if (state.context.people.includes(text)) return true;
  if (
    /^(says|reckons|thinks|claims|said|wants|bets)$/.test(wordAt(state, at + 1)) ||
    textAt(state, at + 1) === ':'
  )
    return true;
  const isCapital = raw[0] !== raw[0]!.toLowerCase() && raw !== raw.toUpperCase() && at > 0;
  return isCapital && /^(in|near|at|around|round|to|from|,)$/.test(textAt(state, at - 1));
}
