import { isPlateOutput } from '#intents/facts.ts';
import type { Mention } from '#language/recognise/mention.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import type { StatedLoad } from '#rig/rig.ts';

/** Words before a figure by which it is what goes in: "input 1000 W", "draws 1000 W". */
const intoIt: ReadonlySet<string> = new Set(
  'input draws draw drawing drew pulls pull pulling sucks consumes consuming consumption'.split(' '),
);
/** Words between these and the figure that change nothing. */
const fillers: ReadonlySet<string> = new Set(
  'is of at about around roughly nearly up to power rating wattage max maximum : ='.split(' '),
);
/** Where what goes in comes from. */
const sockets: ReadonlySet<string> = new Set('wall plug socket outlet mains powerpoint inverter'.split(' '));
const fromThere: ReadonlySet<string> = new Set(['off', 'from', 'at']);

/** Whether the words by a figure say that it is what goes in. */
function isIntoIt({ from, to }: Mention, { words, mentions }: Recognised): boolean {
  const before = words.slice(Math.max(0, from - 4), from).reverse();
  const first = before.find(word => !fillers.has(word));
  if (first !== undefined && intoIt.has(first)) return true;
  const behind = words.slice(to, to + 4);
  const ends = mentions.find(m => m.from >= to && ['amount', 'thing'].includes(m.kind))?.from ?? Infinity;
  // A socket may be a thing itself.
  const own = behind.slice(0, ends - to + 1);
  if (own.slice(0, 2).includes('input')) return true;
  return own.some((word, i) => fromThere.has(word) && own.slice(i + 1).some(next => sockets.has(next)));
}

/**
 * Whether the watts told of a thing whose plate gives what comes out (a microwave) are what it takes in: "1000 W input",
 * "draws 1000 W", "1000 W off the wall".
 */
export function isInputTold({ name, powerW }: StatedLoad, recognised: Recognised): boolean {
  if (powerW === undefined || !isPlateOutput(name)) return false;
  return recognised.mentions.some(
    m =>
      m.kind === 'amount' &&
      m.dimension === 'power' &&
      Math.abs(m.value - powerW) < 0.5 &&
      isIntoIt(m, recognised),
  );
}
