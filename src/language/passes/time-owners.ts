import { isAlwaysOn } from '#catalog/appliances.ts';
import { type Quantity, type State, type Thing, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';

/** Words that join several loads into one subject: "… and … get about 4 hours". */
const plurals = list('get both all run are each together');
export const hasDraw = (one: Thing): boolean => one.currentA > 0 || one.powerW > 0;
export const hasTime = (one: Thing): boolean => one.hours >= 0 || one.minutes >= 0;
export const isLoad = (one: Thing): boolean => one.kind === 'load' && !one.isDropped;

/** The loads that a time belongs to: of its own part, the last before, or a group joined by "and". */
export function ownersOf(
  state: State,
  quantity: Quantity,
  loads: readonly Thing[],
  segment: number,
): Thing[] {
  const before = loads.filter(one => one.at < quantity.at);
  const own = before.findLast(one => one.segment === segment && !hasTime(one));
  const last = before.at(-1);
  if (own) return plurals.has(verbBefore(state, quantity)) ? group(state, before, quantity) : [own];
  const after = loads.find(one => one.at > quantity.at && one.segment === segment && !hasTime(one));
  if (after && (!last || !before.some(one => !hasTime(one) && one.segment === segment))) {
    // "10 min pump" goes before its thing only where nothing else waits for a time.
    if (!last || hasTime(last) || state.segments[quantity.at - 1] !== segment) return [after];
  }
  if (last && !hasTime(last) && (!isAlwaysOn(last.appliance) || isDirect(state, last, quantity)))
    return isOwnPart(state, quantity) || isApart(state, last, quantity)
      ? group(state, before, quantity)
      : [last];
  if (before.length > 0) {
    const free = before.findLast(one => !hasTime(one) && !isAlwaysOn(one.appliance));
    if (free && free === before.findLast(one => !isAlwaysOn(one.appliance))) return [free];
    if (
      last &&
      !hasTime(last) &&
      (quantity.per === 'day' || before.length === 1) &&
      hasDraw(last) &&
      !isFarOff(state, last, quantity)
    )
      return [last];
    return [];
  }
  const only = loads.find(one => !hasTime(one));
  return only && state.sentences[only.at] === state.sentences[quantity.at] && quantity.per === 'day'
    ? [only]
    : [];
}

/** "fridge 50w 8 hours", with nothing between; "for 8 hours" is how long it has to run. */
const isDirect = (state: State, one: Thing, quantity: Quantity): boolean => {
  for (let i = one.end; i < quantity.at; i++)
    if (state.tokens[i]!.kind === 'sign' || wordAt(state, i) === 'for') return false;
  return quantity.at - one.end <= 3;
};

const isFarOff = (state: State, one: Thing, quantity: Quantity): boolean =>
  state.sentences[quantity.at]! - state.sentences[one.at]! > 1;

/** In another part of the same sentence: "fish finder 0.8 A and lights 1.2 A, say 11 hours". */
const isApart = (state: State, last: Thing, { at }: Quantity): boolean =>
  last.segment !== state.segments[at] && state.sentences[last.at] === state.sentences[at];

/** Stands the time alone between commas, as in "2 fans 10w plus a 12w router, 10hrs overnight"? */
function isOwnPart(state: State, quantity: Quantity): boolean {
  const before = textAt(state, quantity.at - 1);
  return before === ',' || plurals.has(before) || plurals.has(verbBefore(state, quantity));
}

const verbBefore = (state: State, quantity: Quantity): string => {
  for (let i = quantity.at - 1; i >= quantity.at - 3; i--)
    if (plurals.has(wordAt(state, i))) return wordAt(state, i);
  return '';
};

/** Loads joined by "and", "plus" that still wait for a time, back from the quantity. A comma ends the group. */
function group(state: State, before: readonly Thing[], quantity: Quantity): Thing[] {
  const found: Thing[] = [];
  let until = quantity.at;
  for (let i = before.length - 1; i >= 0; i--) {
    const one = before[i]!;
    if (hasTime(one) || state.sentences[one.at] !== state.sentences[quantity.at]) break;
    if (found.length > 0 && !isJoined(state, one, until)) break;
    if (!isAlwaysOn(one.appliance) || found.length === 0) found.push(one);
    until = one.at;
  }
  return found;
}

function isJoined(state: State, one: Thing, until: number): boolean {
  for (let i = one.end; i < until; i++) {
    const text = textAt(state, i);
    if (text === 'and' || text === 'plus' || text === '+' || text === '&' || text === 'n') return true;
  }
  return false;
}
