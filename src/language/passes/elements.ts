import type { Quantity, State, Thing } from '../state.ts';

/** A thing or a free quantity, in the order of the message. */
export type Element = { readonly at: number; readonly segment: number } & (
  | { readonly thing: Thing; readonly quantity?: undefined }
  | { readonly quantity: Quantity; readonly thing?: undefined }
);

/** Things and free quantities that pass the test, in order, by segment. */
export function bySegment(state: State, wants: (element: Quantity | Thing) => boolean): Element[][] {
  const { things, quantities, segments } = state;
  const groups: Element[][] = [];
  let [t, q] = [0, 0];
  let last = -1;
  while (t < things.length || q < quantities.length) {
    const thing = things[t];
    const quantity = quantities[q];
    const isThing = !!thing && (!quantity || thing.at < quantity.at);
    const one = isThing ? thing : quantity!;
    if (isThing) t++;
    else q++;
    if ((isThing && thing.isDropped) || (!isThing && quantity!.taken) || !wants(one)) continue;
    const segment = segments[one.at]!;
    if (segment !== last) groups.push([]);
    last = segment;
    groups
      .at(-1)!
      .push(isThing ? { at: one.at, segment, thing } : { at: one.at, segment, quantity: quantity! });
  }
  return groups;
}

/** May the thing take the quantity now? */
export type MayTake = (thing: Thing, quantity: Quantity) => boolean;

/**
 * Gives the quantities of one part to its things. A part that opens with a quantity puts each before its thing
 * ("1.1 A fridge 10 W lamp"), one that opens with a thing after it ("fridge 1.1 A lamp 10 W").
 * Returns the quantities left over.
 */
export function match(
  elements: readonly Element[],
  mayTake: MayTake,
  give: (thing: Thing, quantity: Quantity) => void,
): Quantity[] {
  const isBefore = elements[0]?.quantity !== undefined;
  const left: Quantity[] = [];
  const behind: Thing[] = [];
  for (const { thing, quantity } of elements) {
    if (thing) {
      const own = left.findLastIndex(q => mayTake(thing, q));
      if (own >= 0 && (isBefore || behind.length > 0 || own === left.length - 1))
        give(thing, left.splice(own, 1)[0]!);
      behind.push(thing);
    } else if (quantity && !isBefore) {
      const owner = behind.findLast(t => mayTake(t, quantity));
      if (owner) give(owner, quantity);
      else left.push(quantity);
    } else if (quantity) left.push(quantity);
  }
  if (!isBefore) return left;
  return left.filter(quantity => {
    const owner = behind.findLast(t => t.at < quantity.at && mayTake(t, quantity)) ?? undefined;
    if (owner) give(owner, quantity);
    return !owner;
  });
}
