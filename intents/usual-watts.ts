import { applianceOf } from '#catalog/appliances.ts';
import { decimals } from '#quantity/round.ts';
import type { StatedLoad } from '#rig/rig.ts';
import { isSpotted } from './spotting.ts';

const asksWatts: readonly string[] = ['how_many_watts|what_watt*|wattage|how_many_w -hour* -solar -panel*'];

/** "How many watts is a rice cooker": the usual watts of the one thing asked after; undefined where they were told. */
export function usualWatts(
  { name, powerW, currentA }: StatedLoad,
  words: readonly string[],
): string | undefined {
  if ((powerW ?? currentA) !== undefined) return undefined;
  const isAsked = isSpotted(words, asksWatts);
  const usual = isAsked ? applianceOf(name)?.powerW : undefined;
  if (!usual) return undefined;
  const [low, likely, high] = usual.map(value => decimals(value, 0));
  return `Usually about ${likely} W while it runs (${low}–${high} W): its label tells.`;
}
