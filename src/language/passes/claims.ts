import { baseSymbol, type Dimension } from '#quantity/units.ts';
import type { Claim } from '#rig/rig.ts';
import { isStop, markKnown, type Quantity, quantityAt, type State, textAt, wordAt } from '../state.ts';
import { plainWords } from '../words/en/common.ts';
import { list } from '../words/list.ts';
import { type Clause, clauses, result } from './claim-clauses.ts';
import { shortUnit } from './claim-units.ts';
import { unitLexicon } from './unit-words.ts';

/** What a clause may claim: a quantity, or a bare number that takes the unit of the others. */
interface Candidate {
  readonly at: number;
  readonly value: number;
  readonly quantity?: Quantity;
  /** Stands behind "is", "=", "makes". */
  readonly isLikely?: boolean;
}

/** Claims of people ("max says 3 days, lena says 1"), and results stated outright ("that gives 400ah at 12v"). */
export function claims(state: State): void {
  const found = clauses(state);
  if (found.length > 0) fromClauses(state, found);
  if (state.claims.length === 0) stated(state);
}

function fromClauses(state: State, found: readonly Clause[]): void {
  let options = found.map(clause => candidates(state, clause));
  // "A 50 W panel does it, I say 100 W": told of a panel, and claimed all the same.
  if (found.length > 1)
    options = options.map((list, i) => (list.length > 0 ? list : gearIn(state, found[i]!)));
  const shared = commonDimension(options);
  const made: (Claim & { at: number })[] = [];
  for (const [i, clause] of found.entries()) {
    const one = choose(state, options[i]!, shared, clause);
    if (!one) continue;
    if (one.quantity) one.quantity.taken = 'claim';
    else state.tokens[one.at]!.isKnown = true;
    if (one.quantity || !made.some(c => c.who === clause.who))
      made.push({ who: clause.who, at: one.at, ...toldBy(one) });
    markKnown(state, clause.at, clause.from);
    explained(state, one.at, clause.end);
  }
  const unit = made.find(claim => claim.unit)?.unit ?? unitAsked(state);
  state.claims = made.map(({ who, value, unit: own }) => ({ who, value, unit: own || unit }));
}

/** "80 W in amps is 10": the unit that bare numbers are in. */
function unitAsked(state: State): string {
  for (let i = 0; i < state.tokens.length; i++) {
    if (wordAt(state, i) !== 'in') continue;
    const found = unitLexicon.find(state, i + 1);
    if (found && wordAt(state, i + 1) !== 'a') return baseSymbol[found.value.dimension];
  }
  // Bare numbers of a fuse or a cable have the unit of its sizes.
  if (state.cues.has('fuse')) return 'A';
  return state.cues.has('cable') ? 'mm²' : '';
}

function toldBy(one: Candidate): { value: number; unit: string } {
  if (!one.quantity) return { value: one.value, unit: '' };
  return shortUnit(one.quantity);
}

/** "4 days (100h)": the same said again in brackets. */
function explained(state: State, at: number, end: number): void {
  for (let i = at + 1; i < end; i++)
    if (textAt(state, i - 1) === '(') {
      const again = quantityAt(state, i);
      if (again && !again.taken) again.taken = 'claim';
    }
}

/** Quantities of the clause that can be what is claimed, the likeliest first. */
function candidates(state: State, clause: Clause): Candidate[] {
  const all: Candidate[] = [];
  for (let i = clause.from; i < clause.end; i++) {
    const quantity = quantityAt(state, i);
    const token = state.tokens[i]!;
    if (quantity) {
      if (!ownsThing(state, i) && quantity.unit.symbol !== 'times')
        all.push({ at: i, value: quantity.value, quantity });
    } else if (token.kind === 'number' && !ownsThing(state, i)) all.push({ at: i, value: token.value });
  }
  const likely = likeliest(state, all, clause.from);
  return likely ? [{ ...likely, isLikely: true }, ...all.filter(one => one !== likely)] : all;
}

/** What a clause says of gear, where it says nothing else. */
function gearIn(state: State, { from, end }: Clause): Candidate[] {
  return state.quantities.flatMap(quantity => {
    const { at, value } = quantity;
    const isInside = at >= from && at < end && !quantity.taken;
    const owner = state.things.find(one => one.at === at + 1);
    return isInside && owner && owner.kind !== 'load' ? [{ at, value, quantity }] : [];
  });
}

const resultWords = /^(=|makes|make|gives|give|is|lasts|last|like|for|gets|get|needs|need|equals)$/;
const running = list('run runs running last lasts keep keeps power powers does do goes will feeds');

const mostBefore = 4;

function likeliest(state: State, all: readonly Candidate[], from: number): Candidate | undefined {
  // "100ah runs a fridge 3 days": what it does is claimed, not what it is.
  const time = all.find(one => one.quantity?.unit.dimension === 'time');
  const size = all.find(one => one.quantity?.unit.dimension === 'charge');
  if (time && size && size.at < time.at)
    for (let i = size.at + 1; i < time.at; i++) if (running.has(wordAt(state, i))) return time;
  // "you need 16mm2 for 40 amps": the need, not what it is for.
  const need = all.find(one => /^needs?$/.test(textAt(state, one.at - 1)));
  if (need) return need;
  // "we use 60ah, the fridge is 2A": what comes first and stands alone.
  const first = all[0];
  if (first?.quantity && /^([,.;?!\n]|)$/.test(textAt(state, first.at + 1)) && first.at - from < mostBefore)
    return first;
  return all.findLast(one => resultWords.test(textAt(state, one.at - 1)));
}

/** Voltages that are named, not claimed. */
const nominalV = new Set([6, 12, 24, 48, 110, 120, 230, 240]);

/** "an 800w hairdryer": told of a thing, not claimed. A fuse, a cable or a battery may be what is claimed. */
function ownsThing(state: State, at: number): boolean {
  if (textAt(state, at - 1) === '(') return true;
  if (textAt(state, at + 1) === '(') return false;
  const dimension = quantityAt(state, at)?.unit.dimension;
  const thing = state.things.find(
    one => one.at === at + 1 || (one.at === at + 2 && textAt(state, at + 1) === 'of'),
  );
  if (thing)
    return !(
      (thing.kind === 'solar' && textAt(state, at + 1) === 'of') ||
      thing.kind === 'fuse' ||
      thing.kind === 'cable' ||
      (thing.kind === 'battery' && dimension === 'charge') ||
      dimension === 'time'
    );
  return (
    (dimension === 'voltage' && nominalV.has(quantityAt(state, at)!.value)) ||
    (dimension === 'percent' && wordAt(state, at + 1) === 'drop')
  );
}

/** The dimension that most clauses can claim. */
function commonDimension(options: readonly (readonly Candidate[])[]): Dimension | undefined {
  const counts = new Map<Dimension, number>();
  for (const list of options)
    for (const dimension of new Set(list.map(one => one.quantity?.unit.dimension)))
      if (dimension) counts.set(dimension, (counts.get(dimension) ?? 0) + 1);
  let best: Dimension | undefined;
  for (const [dimension, count] of counts)
    if (count > 1 && count > (best ? counts.get(best)! : 0)) best = dimension;
  return best;
}

function choose(
  state: State,
  list: readonly Candidate[],
  shared: Dimension | undefined,
  clause: Clause,
): Candidate | undefined {
  if (list.length === 0) return undefined;
  if (shared) {
    const same = list.find(one => one.quantity?.unit.dimension === shared);
    if (same) return same;
    const bare = list.find(
      one => !one.quantity && (one.at - clause.from < 4 || textAt(state, one.at - 1) === 'is'),
    );
    if (bare) return bare;
  }
  if (list[0]!.quantity || list[0]!.isLikely) return list[0];
  const first = list[0]!;
  const isNear = first.at - clause.from < 4;
  return isNear ? first : list.find(one => one.quantity);
}

/** "two 6v 200ah in series gives 400ah", "no it stays 200", "nope 4 days easy", "runs 2 days i reckon": claims of the speaker. */
function stated(state: State): void {
  if (state.cues.has('question-mark') || state.cues.has('what-if') || isAsking(state)) return;
  const one = result(state);
  if (!one) return;
  const quantity = quantityAt(state, one);
  if (quantity) quantity.taken = 'claim';
  else state.tokens[one]!.isKnown = true;
  const told = quantity ? shortUnit(quantity) : { value: state.tokens[one]!.value, unit: '' };
  state.claims = [{ who: state.context.from, ...told }];
  state.cues.add('statement');
}

const isAsking = (state: State): boolean => {
  for (const cue of state.cues)
    if (
      cue === 'ask-how-long' ||
      cue === 'ask-how-much' ||
      cue === 'ask-what-size' ||
      cue === 'ask-which' ||
      cue === 'ask-drop' ||
      cue === 'ask-charge-level' ||
      cue === 'ask-lowest' ||
      cue === 'save' ||
      cue === 'rig'
    )
      return true;
  return state.tokens.length === 0 || plainWords.has('') || isStop('');
};
