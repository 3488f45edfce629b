import type { Quantity, Thing } from '../state.ts';

/** Amps or watts, not those of a whole day. */
export const isDraw = (quantity: Quantity): boolean =>
  quantity.per !== 'day' && (quantity.unit.dimension === 'current' || quantity.unit.dimension === 'power');

/** Has no draw yet. */
export const isFree = (one: Thing): boolean => one.currentA === 0 && one.powerW === 0;

/** Gives a thing its amps or watts. */
export function give(one: Thing, quantity: Quantity): void {
  if (quantity.unit.dimension === 'current') one.currentA = quantity.value;
  else one.powerW = quantity.value;
  if (quantity.count && !one.count) one.count = quantity.count;
  if (quantity.per === 'hour' && quantity.unit.dimension === 'power') one.isAverage = true;
  quantity.taken = one.kind;
}
