import { isSpoken } from '#basics/spoken.ts';
import type { Mention } from '#language/recognise/mention.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';

// "Mine only does 3 and it's a 100 W": what a panel gives, and no count of panels.

/** Behind these another thing is said: a number before them counts nothing after them. */
const joins: ReadonlySet<string> = new Set(
  'and its thats but with from off out today yesterday while though when this'.split(' '),
);
/** But of several things they go on to speak of the same. */
const ofSeveral: ReadonlySet<string> = new Set('each theyre both they all apiece them of are'.split(' '));

/** Whether a number may count what an amount sizes: nothing stands between that begins another thing. */
function mayCount(number: Mention, amount: Mention, { words, mentions }: Recognised): boolean {
  if (number.from > amount.from) return true;
  const between = words.slice(number.to, amount.from).filter(isSpoken);
  // What a gear word follows is a count of that.
  const isOfThing = mentions.some(
    ({ kind, from, to }) =>
      from >= number.to && to <= amount.from && (kind === 'solar' || kind === 'battery'),
  );
  const behind = words.slice(amount.to, amount.to + 2);
  const isSame = [...between, ...behind].some(word => ofSeveral.has(word));
  return isOfThing || isSame || !between.some(word => joins.has(word));
}

/** One thing without a count that no number beside its size tells. */
function counted<T extends { count?: number }>(one: T, size: number | undefined, said: Recognised): T {
  const { count, ...rest } = one;
  if (count === undefined || count < 2 || size === undefined) return one;
  const amount = said.mentions.find(({ kind, value }) => kind === 'amount' && value === size);
  const numbers = said.mentions.filter(({ kind, value }) => kind === 'number' && value === count);
  if (!amount || numbers.length === 0 || numbers.some(number => mayCount(number, amount, said))) return one;
  return rest as T;
}

/** Panels and batteries without a count that was said of something else. */
export function withCountTold(facts: Stated, said: Recognised): Stated {
  const { solar, batteries } = facts;
  return {
    ...facts,
    ...(solar && { solar: solar.map(one => counted(one, one.powerW, said)) }),
    ...(batteries && { batteries: batteries.map(one => counted(one, one.capacityAh, said)) }),
  };
}
