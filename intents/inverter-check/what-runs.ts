import { list } from '#answer/say.ts';
import type { Speech } from '#answer/speech.ts';
import { type Appliance, things } from '#catalog/appliances.ts';
import { decimals } from '#quantity/round.ts';
import type { InverterCheck } from './compute.ts';

/** How many things are named on either side: enough to see where the limit lies. */
const mostNamed = 3;

const isMainsThing = (thing: (typeof things)[number]): thing is Appliance =>
  thing.supply === 'ac' && 'powerW' in thing && !thing.isMedical;

/** What a thing commonly takes from an inverter while it runs, W. */
const inputOf = ({ powerW, inputFactor }: Appliance): number => powerW[1] * (inputFactor?.[1] ?? 1);

const startsAt = (thing: Appliance): number => inputOf(thing) * (thing.surge ?? 1);

/** "rice cooker (500 W)". */
const named = (thing: Appliance): string => `${thing.id} (${decimals(inputOf(thing), 0)} W)`;

/**
 * What commonly runs on an inverter, where nobody said what shall: the biggest things that it carries and starts, and
 * the smallest that are too much for it, by the catalogue's usual watts.
 */
export function whatRuns(
  { ratingW = 0, surgeW = ratingW }: Pick<InverterCheck, 'ratingW' | 'surgeW'>,
  w: Speech,
): string[] {
  const all = things.filter(isMainsThing).toSorted((a, b) => inputOf(b) - inputOf(a));
  const runs = all.filter(thing => inputOf(thing) <= ratingW && startsAt(thing) <= surgeW);
  const tooMuch = all.filter(thing => !runs.includes(thing) && inputOf(thing) > ratingW);
  const names = (some: readonly Appliance[]): string => list(some.map(named), 'or');
  return [
    runs.length === 0
      ? ''
      : w.say('usually-runs', 'One at a time it usually runs things like a {things}.', {
          things: names(runs.slice(0, mostNamed)),
        }),
    tooMuch.length === 0
      ? ''
      : w.say('too-much-for-it', 'Too much for it: a {things}. The label of yours counts.', {
          things: names(tooMuch.slice(-mostNamed).reverse()),
        }),
  ].filter(Boolean);
}
