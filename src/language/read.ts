import { assemble } from './passes/assemble.ts';
import { banks } from './passes/banks.ts';
import { bareDraws } from './passes/bare-draws.ts';
import { batteries } from './passes/batteries.ts';
import { blankets } from './passes/blankets.ts';
import { cable } from './passes/cable.ts';
import { calendar } from './passes/calendar.ts';
import { claims } from './passes/claims.ts';
import { convert } from './passes/convert.ts';
import { corrections } from './passes/corrections.ts';
import { counts } from './passes/counts.ts';
import { cues } from './passes/cues.ts';
import { daily } from './passes/daily.ts';
import { dates } from './passes/dates.ts';
import { days } from './passes/days.ts';
import { drawWords } from './passes/draw-words.ts';
import { draws } from './passes/draws.ts';
import { driving } from './passes/driving.ts';
import { eachOwn } from './passes/each-own.ts';
import { fullness } from './passes/fullness.ts';
import { lessons } from './passes/lessons.ts';
import { modifiers } from './passes/modifiers.ts';
import { numbers } from './passes/numbers.ts';
import { owners } from './passes/owners.ts';
import { percents } from './passes/percents.ts';
import { place } from './passes/place.ts';
import { problems } from './passes/problems.ts';
import { quantities } from './passes/quantities.ts';
import { removals } from './passes/removals.ts';
import { script } from './passes/script.ts';
import { seasons } from './passes/seasons.ts';
import { segments } from './passes/segments.ts';
import { spelling } from './passes/spelling.ts';
import { supply } from './passes/supply.ts';
import { temperature } from './passes/temperature.ts';
import { things } from './passes/things.ts';
import { times } from './passes/times.ts';
import { volts } from './passes/volts.ts';
import type { Context, Said } from './said.ts';
import { scan } from './scan.ts';
import { createState, type State } from './state.ts';

/** One step of reading: takes what is there, adds what it finds. Linear in the message. */
export type Pass = (state: State) => void;

/**
 * The steps, in order: words into quantities and things; what is claimed, corrected or converted is set aside;
 * then each quantity finds the thing it belongs to; then what colours the whole.
 */
export const passes: readonly Pass[] = [
  script,
  spelling,
  numbers,
  quantities,
  cues,
  things,
  segments,
  owners,
  claims,
  corrections,
  removals,
  convert,
  problems,
  calendar,
  dates,
  place,
  seasons,
  counts,
  eachOwn,
  blankets,
  daily,
  batteries,
  bareDraws,
  drawWords,
  draws,
  days,
  driving,
  percents,
  fullness,
  volts,
  times,
  cable,
  modifiers,
  banks,
  temperature,
  supply,
  lessons,
  assemble,
];

/** Longer messages are cut: no chat sends any. */
const mostCharacters = 4096;

/**
 * Reads a message: what it plainly states, what it asks, and what is wrong with it. Pure; never throws; takes time
 * in proportion to the length.
 */
export function read(text: string, context: Context): Said {
  const cut = text.length > mostCharacters ? text.slice(0, mostCharacters) : text;
  const state = createState(cut, context, scan(cut));
  if (state.tokens.length > 0) for (const pass of passes) run(state, pass);
  return said(state);
}

/** Runs a pass and notes it where it found something: facts, cues, things taken or set aside. */
function run(state: State, pass: Pass): void {
  const before = size(state);
  pass(state);
  if (size(state) !== before) state.trace.push(pass.name);
}

const size = (state: State): number => {
  let count =
    state.tokens.length +
    state.things.length +
    state.cues.size +
    state.issues.length +
    state.claims.length +
    state.removed.length +
    state.corrections.length +
    state.owners.length;
  for (const _ in state.facts) count += 1;
  for (const quantity of state.quantities) if (quantity.taken) count++;
  return count;
};

function said(state: State): Said {
  const {
    facts,
    cues,
    removed,
    corrections,
    owner,
    owners,
    conversion,
    term,
    choice,
    lesson,
    bareLoads,
    issues,
    fuseA,
    hoursOff,
    countSaid,
    trace,
  } = state;
  let [words, known] = [0, 0];
  const bare: number[] = [];
  for (const token of state.tokens) {
    if (token.kind === 'sign') continue;
    words++;
    if (token.isKnown) known++;
    else if (token.kind === 'number') bare.push(token.value);
  }
  const loose = state.quantities
    .filter(q => !q.taken && q.unit.dimension !== 'other')
    .map(q => ({
      value: q.value,
      unit: q.unit.dimension === 'time' ? 'h' : q.unit.symbol,
      ...(q.per === 'day' && { isDaily: true }),
    }));
  return {
    facts,
    cues,
    claims: state.claims,
    removed,
    corrections,
    owner,
    owners,
    conversion,
    term,
    choice,
    lesson,
    bareLoads,
    loose,
    numbers: bare,
    issues,
    fuseA,
    hoursOff,
    count: countSaid,
    words,
    known,
    trace,
  };
}
