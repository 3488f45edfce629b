import { quantityAt, type State, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { give, isDraw, isFree } from './giving.ts';

/** Words beside amps and watts that are no loads of their own, or stand for two. */
export function drawWords(state: State): void {
  plugRatings(state);
  screens(state);
  mainsWord(state);
  motorWord(state);
  mainsAmps(state);
  bmsAmps(state);
  shared(state);
}

/** "A 50 A anderson", "the pedestal's 30 amp": what a plug stands, not what flows. */
function plugRatings(state: State): void {
  for (const quantity of state.quantities) {
    if (quantity.taken || quantity.unit.dimension !== 'current') continue;
    const near = [wordAt(state, quantity.at + 1), wordAt(state, quantity.at - 1)];
    if (near.some(word => plugs.has(word))) quantity.taken = 'plug';
  }
}

const plugs = list('anderson plug plugs connector connectors socket sockets pedestal pedestals breaker');

/** "Monitor 40 W": with a draw of its own it is a screen. */
function screens(state: State): void {
  for (const one of state.things) {
    if (one.name !== 'monitor' && one.name !== 'monitors') continue;
    const near = [
      quantityAt(state, one.end),
      quantityAt(state, one.end + 1),
      quantityAt(state, one.at - 1),
      quantityAt(state, one.end + 4),
    ];
    if (!near.some(quantity => quantity?.unit.dimension === 'power')) continue;
    one.kind = 'load';
    one.name = 'monitor';
    one.gear = undefined;
    state.cues.delete('monitor');
  }
}

/** "A 60 W mains telly": what kind of telly, and no thing of its own. */
function mainsWord(state: State): void {
  for (const [i, one] of state.things.entries()) {
    const next = state.things[i + 1];
    if (!one.gear?.cues.includes('mains') || one.kind !== 'other') continue;
    if (next?.kind !== 'load' || next.at !== one.end) continue;
    one.isDropped = true;
    next.isAc = true;
  }
}

/** "The grinder is a 550 W motor": what is in it, and no second thing. */
function motorWord(state: State): void {
  for (const [i, one] of state.things.entries()) {
    const owner = state.things[i - 1];
    if (one.name !== 'motor' || owner?.kind !== 'load' || owner.isDropped || !isFree(owner)) continue;
    const watts = quantityAt(state, one.at - 1);
    if (!watts || watts.taken || !isDraw(watts) || state.sentences[owner.at] !== state.sentences[one.at])
      continue;
    one.isDropped = true;
    give(owner, watts);
  }
}

/** "60A mains": a charger that nobody names. */
function mainsAmps(state: State): void {
  if (state.things.some(one => one.kind === 'charger')) return;
  for (const one of state.things) {
    const quantity = quantityAt(state, one.at - 1);
    if (!one.gear?.cues.includes('mains') || quantity?.unit.dimension !== 'current' || quantity.taken)
      continue;
    one.kind = 'charger';
    one.isAc = true;
  }
}

const mostFromBms = 4;

/** "100A bms", "the bms is rated 100 amps": what it lets through, no load. */
function bmsAmps(state: State): void {
  for (const one of state.things) {
    if (!one.gear?.cues.includes('bms')) continue;
    const own = state.quantities.find(
      ({ at, taken, unit }) =>
        !taken &&
        unit.dimension === 'current' &&
        at >= one.at - 2 &&
        at < one.end + mostFromBms &&
        state.segments[at] === one.segment &&
        !state.things.some(other => other.kind === 'load' && other.at === at + 1),
    );
    if (own) own.taken = 'bms';
  }
}

/** "3A of lights and fans": one draw for both; the second is not left to be guessed. */
function shared(state: State): void {
  for (const [i, one] of state.things.entries()) {
    const next = state.things[i + 1];
    if (
      one.kind !== 'load' ||
      next?.kind !== 'load' ||
      next.at !== one.end + 1 ||
      wordAt(state, one.end) !== 'and'
    )
      continue;
    if (wordAt(state, one.at - 1) !== 'of' || !quantityAt(state, one.at - 2) || quantityAt(state, next.end))
      continue;
    next.isDropped = true;
    one.name = `${one.name} and ${next.name}`;
  }
}
