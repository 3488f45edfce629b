import { isKnownPlace } from '#intents/which-place.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';

/** How many words of a place's name may stand before and behind the one that was taken for all of it. */
const mostBeside = 2;

/**
 * A place whose name was taken for less than it is: "Springs" of Alice Springs, where "Alice" is a person's name. With
 * the words beside it, where those make a place that is known and it alone makes none.
 */
export function withPlaceTold(facts: Stated, { words }: Recognised): Stated {
  const { place } = facts;
  if (place === undefined || isKnownPlace(place)) return facts;
  const told = place.toLowerCase().split(' ');
  const at = words.findIndex((_, i) => told.every((word, k) => words[i + k] === word));
  if (at < 0) return facts;
  for (let before = mostBeside; before >= 0; before--)
    for (let behind = mostBeside; behind >= 0; behind--) {
      const name = words.slice(Math.max(0, at - before), at + told.length + behind).join(' ');
      if (before + behind > 0 && at >= before && isKnownPlace(name)) return { ...facts, place: name };
    }
  return facts;
}
